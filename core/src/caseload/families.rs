//! The families' journals: a file each, opened to be read, merged into, and erased.

use std::path::{Path, PathBuf};

use super::state::{as_of, present, Caseload, Found, Opened, Pane, FOLDER};
use crate::app::App;
use crate::gather::reasons::Reason;
use crate::gather::{Record, Shared};
use crate::journal::{self, files, Journal};
use crate::record::{moment, text, Kind};
use crate::screen::shapes::{Clock, Place};
use crate::screen::View;
use crate::time::{Instant, Moment};
use crate::trouble::{Kind as TroubleKind, Trouble};

/// Each begins so, so that no family's name can be one of the system's.
const START: &str = "family-";
const ENDING: &str = ".drawwell";

impl Caseload {
    /// The journal of a family, by what it goes by among all.
    pub(super) fn path_of(&self, family: &str) -> PathBuf {
        self.folder.join(FOLDER).join(format!("{START}{family}{ENDING}"))
    }

    /// Opens a family's journal with the desk's key.
    pub(super) fn open_journal(&self, path: &Path, now: Instant) -> Result<journal::Opened, Trouble> {
        Journal::open_with_key(path, &self.opening.device, self.key.as_ref(), now)
    }

    /// What a record on the desk says of a family: what it goes by, and when it shared last.
    pub(super) fn case(&self, id: &str) -> Result<(String, Option<Moment>), Trouble> {
        let missing = || Trouble::new(TroubleKind::Missing, "trouble-no-such-record");
        let (kind, fields) = self.desk.record(id)?.ok_or_else(missing)?;
        let family = text(&fields, "family").filter(|_| kind == Kind::CaseFamily).ok_or_else(missing)?;
        Ok((family.to_owned(), moment(&fields, "shared")))
    }

    /// Opens a family beside the list.
    pub(super) fn open_family(&mut self, id: &str, clock: &Clock) -> Result<(), Trouble> {
        self.open_to_read(id, clock)?;
        self.active = Pane::Family(id.to_owned());
        Ok(())
    }

    /// Opens a family's journal, unless it is the one that is open.
    fn open_to_read(&mut self, id: &str, clock: &Clock) -> Result<(), Trouble> {
        let (family, shared) = self.case(id)?;
        if self.opened.as_ref().is_none_or(|opened| opened.id != id) {
            let at = as_of(clock, shared.as_ref());
            let shared = self.shared()?;
            let app = App::open_to_read(self.path_of(&family), self.key.clone(), self.opening.clone(), shared, &at)?;
            let app = match self.renderer {
                Some(renderer) => app.with_sheet_renderer(renderer),
                None => app,
            };
            self.opened = Some(Opened { id: id.to_owned(), app });
        }
        Ok(())
    }

    /// The family that a place of the desk is about, by its record on the desk: what is kept
    /// of it, or a plan that is written for it.
    pub(super) fn family_at(&self, place: &Place) -> Result<Option<String>, Trouble> {
        if let Place::CaseFamily { id } = place {
            return Ok(Some(id.clone()));
        }
        let Some(wanted) = self.desk.plan_is_for(place)? else { return Ok(None) };
        for id in self.desk.ids_of(Kind::CaseFamily)? {
            if self.case(&id)?.0 == wanted {
                return Ok(Some(id));
            }
        }
        Ok(None)
    }

    /// Opens the family that a place of the desk is about, where its record can be read;
    /// gives the clock as it stood when that was shared.
    pub(super) fn open_family_at(&mut self, place: &Place, clock: &Clock) -> Result<Option<Clock>, Trouble> {
        let Some(id) = self.family_at(place)? else { return Ok(None) };
        // What is kept of a family that was removed is gone, too.
        let Ok((_, shared)) = self.case(&id) else { return Ok(None) };
        // A plan can be written also where the record is damaged.
        Ok(self.open_to_read(&id, clock).ok().map(|()| as_of(clock, shared.as_ref())))
    }

    /// What the desk keeps once for all families.
    fn shared(&self) -> Result<Shared, Trouble> {
        self.desk.shared_kit()
    }

    /// Looks at each family whose record or present has changed since it was looked at.
    pub(super) fn look_at_all(&mut self, clock: &Clock) -> Result<(), Trouble> {
        let kit = self.shared()?;
        // A range or a rule that was set anew may change every family's reasons.
        if kit != self.found_with {
            self.found.clear();
        }
        let mut ids = Vec::new();
        for id in self.desk.ids_of(Kind::CaseFamily)? {
            let (family, shared) = self.case(&id)?;
            let at = as_of(clock, shared.as_ref());
            let minute = at.unix_milliseconds / 60_000;
            let known = self.found.get(&id).is_some_and(|found| found.as_of == minute && found.shared == shared);
            if !known {
                let reasons = self.reasons_of(&family, &kit, &at)?;
                self.found.insert(id.clone(), Found { shared, reasons, as_of: minute });
            }
            ids.push(id);
        }
        self.found.retain(|id, _| ids.contains(id));
        self.found_with = kit;
        Ok(())
    }

    fn reasons_of(&self, family: &str, kit: &Shared, at: &Clock) -> Result<Vec<Reason>, Trouble> {
        let now = Instant::from_unix_milliseconds(at.unix_milliseconds);
        // A damaged journal is a reason for a look, and no reason for the others to wait.
        let journal = match self.open_journal(&self.path_of(family), now) {
            Ok(opened) => opened.journal,
            Err(trouble) => return Ok(vec![Reason::CannotBeRead(trouble.key)]),
        };
        let (_, zone) = present(at);
        let mut record = Record::new(&journal, now, zone)?;
        record.shared = Some(kit);
        let mut reasons = super::reasons::of(&View::new(record, self.texts()), &kit.rules)?;
        // What the family shares after that brings all of it again.
        if files::set_aside_last(&self.path_of(family)).is_some_and(|damaged| damaged >= now) {
            reasons.insert(0, Reason::Salvaged);
        }
        Ok(reasons)
    }

    /// Removes a family from this machine for good: its journal with all copies, and what
    /// the desk wrote down of it.
    pub(super) fn remove(&mut self, id: &str, clock: &Clock) -> Result<(), Trouble> {
        let (family, _) = self.case(id)?;
        if self.opened.as_ref().is_some_and(|opened| opened.id == id) {
            self.opened = None;
        }
        files::erase(&self.path_of(&family))?;
        self.desk.erase_case(id, clock)?;
        self.found.remove(id);
        self.active = Pane::Desk;
        self.desk.update(crate::screen::shapes::Event::Go { place: Place::Desk }, clock)?;
        Ok(())
    }
}
