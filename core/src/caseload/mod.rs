//! The caseload: a consultant's desk with many families.
//!
//! In: events, the present, files that families shared. Out: two panes, the list of
//! families on one side and what is open on the other. Each family is a journal of its
//! own, which the desk only reads and merges into; what the consultant herself keeps
//! (gauges, pumps, flanges, notes, plans) is one more journal, the desk's. [`state`] is
//! what it holds, [`families`] keeps the files, [`reasons`] says who needs a look, [`import`] opens what came.

mod families;
mod import;
mod maintenance;
mod own_card;
mod reasons;
mod showing;
mod state;

use std::collections::{BTreeMap, VecDeque};
use std::io::Write;
use std::path::{Path, PathBuf};

use crate::app::App;
use crate::app::SheetRenderer;
use crate::gather::Shared;
use crate::journal::Key;
use crate::private_file;
use crate::screen::caseload::Sought;
use crate::screen::shapes::{CaseloadUpdate, Clock, DeskEvent, Effect, Event, Export, Opening};
use crate::trouble::{Kind as TroubleKind, Trouble};

pub use crate::gather::reasons::{About, Rank, Reason};
pub use maintenance::{Maintained, Maintenance};
pub use state::Caseload;
use state::{Pane, DESK, FOLDER};

/// Where in a folder a desk keeps its own journal.
pub fn desk_record(folder: &Path) -> PathBuf {
    folder.join(DESK)
}

impl Caseload {
    /// What the desk's own journal is sealed with as it is open now.
    pub fn key_in_use(&self) -> Option<Key> {
        self.desk.key_in_use()
    }

    /// Opens the caseload in a folder, making it where there is none.
    ///
    /// # Errors
    /// Where the folder can't be written or the desk's journal can't be opened.
    pub fn open(folder: PathBuf, opening: Opening, clock: &Clock) -> Result<Self, Trouble> {
        Self::open_with_key(folder, None, opening, clock)
    }

    /// The same, with the key that everything in the folder is sealed with.
    ///
    /// # Errors
    /// As there.
    pub fn open_with_key(folder: PathBuf, key: Option<Key>, opening: Opening, clock: &Clock) -> Result<Self, Trouble> {
        let closed = private_file::create_folder(&folder);
        closed
            .and_then(|()| private_file::create_folder(&folder.join(FOLDER)))
            .map_err(|_| Trouble::new(TroubleKind::ReadOnly, "trouble-read-only"))?;
        let desk = App::open_desk(folder.join(DESK), key.clone(), opening.clone(), clock)?;
        let opening = Opening { device: desk.device().to_owned(), ..opening };
        Ok(Self {
            folder,
            key,
            opening,
            desk,
            active: Pane::Desk,
            opened: None,
            found: BTreeMap::new(),
            found_with: Shared::default(),
            waits: VecDeque::new(),
            renderer: None,
            sought: Sought::default(),
            watched: String::new(),
        })
    }

    /// The same, with what sets the visit sheet of a family.
    #[must_use]
    pub fn with_sheet_renderer(self, renderer: SheetRenderer) -> Self {
        Self { renderer: Some(renderer), ..self }
    }

    /// Does what an event asks for and shows both panes.
    ///
    /// # Errors
    /// Where the event can't be done: nothing is changed by it.
    pub fn update(&mut self, event: Event, clock: &Clock) -> Result<CaseloadUpdate, Trouble> {
        let effects = match event {
            // Nothing is open but the page that asks for its recovery code.
            event if self.desk.is_locked() => self.desk.update(event, clock)?.effects,
            Event::OnDesk { event } => self.at_the_desk(event, clock)?,
            Event::EnterSecret { id, secret } if id == crate::screen::OPEN_PASSPHRASE => {
                self.open_waiting(&secret.words, clock)?;
                Vec::new()
            }
            Event::LeaveSealed => {
                self.waits.pop_front();
                self.ask_for_passphrase(clock)?;
                Vec::new()
            }
            Event::Enter { id, typed, .. } if id == crate::screen::caseload::FIND => {
                self.sought.call_name(&typed);
                Vec::new()
            }
            Event::Clear { id, .. } if id == crate::screen::caseload::FIND => {
                self.sought.call_name("");
                Vec::new()
            }
            // The list offers this also where a family is open that is only read.
            Event::PickRecord => self.desk.update(Event::PickRecord, clock)?.effects,
            event => self.active_app().update(event, clock)?.effects,
        };
        self.follow_the_key();
        Ok(CaseloadUpdate { caseload: self.here(clock)?, effects })
    }

    fn at_the_desk(&mut self, event: DeskEvent, clock: &Clock) -> Result<Vec<Effect>, Trouble> {
        match event {
            DeskEvent::OpenFamily { family } => self.open_family(&family, clock)?,
            DeskEvent::OpenDesk { place } => {
                self.active = Pane::Desk;
                self.desk.update(Event::Go { place }, clock)?;
            }
            DeskEvent::OnlyReason { reason } => self.sought.about = About::named(&reason),
            DeskEvent::RemoveFamily { family } => self.remove(&family, clock)?,
            DeskEvent::WritePlan { family } => {
                self.active = Pane::Desk;
                return self.desk.write_plan(&family, clock);
            }
            DeskEvent::WatchFolder => return Ok(vec![Effect::PickFolder]),
            DeskEvent::LeaveFolder => return Ok(vec![Effect::LeaveFolder]),
            DeskEvent::FolderIs { name } => self.watched = name,
        }
        Ok(Vec::new())
    }

    /// Once the desk's own journal is open, or sealed, the families' are with the same key.
    fn follow_the_key(&mut self) {
        let key = self.desk.key_in_use();
        if key != self.key && !self.desk.is_locked() {
            self.key = key;
            self.opened = None;
            self.found.clear();
            self.opening.device = self.desk.device().to_owned();
        }
    }

    /// Writes what an [`Effect::HandOver`] asked a place for.
    ///
    /// # Errors
    /// As [`App::export`].
    pub fn export(&mut self, what: &Export, file: &mut dyn Write, clock: &Clock) -> Result<CaseloadUpdate, Trouble> {
        let at = self.active_clock(clock);
        self.active_app().export(what, file, &at)?;
        Ok(CaseloadUpdate { caseload: self.here(clock)?, effects: Vec::<Effect>::new() })
    }
}
