//! The desk looks after what it keeps: safety copies of its own journal, which holds the
//! consultant's only keys and plans, and of every family's; and it looks for damage in them.

use std::path::PathBuf;

use super::Caseload;
use crate::app::maintain;
use crate::journal::{files, Health, Key};
use crate::record::Kind;
use crate::screen::shapes::{CaseloadUpdate, Clock};
use crate::time::Instant;
use crate::trouble::{Kind as TroubleKind, Trouble};

/// What is to be looked after. It holds nothing of the desk: taps go on meanwhile.
#[derive(Debug)]
pub struct Maintenance {
    key: Option<Key>,
    desk: Option<PathBuf>,
    families: Vec<PathBuf>,
}

/// What came of it.
#[derive(Debug)]
pub struct Maintained {
    desk: Result<Health, Trouble>,
    damaged: Vec<PathBuf>,
}

impl Maintenance {
    /// Copies and looks; slow, so off the thread that draws.
    pub fn run(&self, clock: &Clock) -> Maintained {
        let desk = self.desk.as_ref().map_or(Ok(Health::Sound), |desk| maintain(desk, self.key.as_ref(), clock));
        let is_damaged = |path: &&PathBuf| {
            let looked = maintain(path, self.key.as_ref(), clock);
            if !path.exists() {
                // The family was removed meanwhile: no copy of it is to stay.
                files::erase(path).ok();
            }
            looked.is_err_and(|trouble| trouble.kind == TroubleKind::Damaged)
        };
        Maintained { desk, damaged: self.families.iter().filter(is_damaged).cloned().collect() }
    }
}

impl Caseload {
    /// What is to be looked after now.
    ///
    /// # Errors
    /// Where the desk's own journal can't be read.
    pub fn maintenance(&self) -> Result<Maintenance, Trouble> {
        if self.desk.is_locked() {
            return Ok(Maintenance { key: None, desk: None, families: Vec::new() });
        }
        let mut families = Vec::new();
        for id in self.desk.ids_of(Kind::CaseFamily)? {
            let path = self.path_of(&self.case(&id)?.0);
            // One that is not sealed yet is when it is opened next; its copy would not be.
            if path.is_file() && self.desk.lies_as_the_desk_does(&path) {
                families.push(path);
            }
        }
        let desk = Some(self.desk.path().to_owned());
        Ok(Maintenance { key: self.desk.key_in_use(), desk, families })
    }

    /// Mends what was found damaged, and shows both panes.
    ///
    /// # Errors
    /// Where the desk's own journal was damaged: it is mended, and told.
    pub fn finish_maintenance(&mut self, maintained: Maintained, clock: &Clock) -> Result<CaseloadUpdate, Trouble> {
        let now = Instant::from_unix_milliseconds(clock.unix_milliseconds);
        for path in maintained.damaged {
            // Not while it is open: its connection would be to the file that was set aside.
            self.opened = None;
            // What can't be mended now is told in the list.
            crate::journal::Journal::recover_with_key(&path, &self.opening.device, self.key.as_ref(), now).ok();
            self.found.clear();
        }
        self.desk.finish_maintenance(maintained.desk, clock)?;
        if let (super::Pane::Family(id), None) = (self.active.clone(), &self.opened) {
            self.open_family(&id, clock)?;
        }
        Ok(CaseloadUpdate { caseload: self.here(clock)?, effects: Vec::new() })
    }

    /// Looks after all at once, for a host that waits.
    ///
    /// # Errors
    /// As [`Self::finish_maintenance`].
    pub fn maintain(&mut self, clock: &Clock) -> Result<CaseloadUpdate, Trouble> {
        let maintained = self.maintenance()?.run(clock);
        self.finish_maintenance(maintained, clock)
    }
}
