//! What families share, in: sealed or plain, opened, and merged into the family it is from.

use std::io::BufRead;

use serde_json::json;

use super::{Beside, Caseload};
use crate::journal::Journal;
use crate::record::{text, Kind, NAME_OF_CASE};
use crate::screen::shapes::{CaseloadUpdate, Clock, Event, Place};
use crate::share::exchange;
use crate::share::family_file::{self, FamilyFile};
use crate::share::sealed::{self, OpenWith, Sealed};
use crate::time::{Instant, Moment};
use crate::trouble::{Kind as TroubleKind, Trouble};

/// Said of a file that is no family's.
const NOT_ONE: &str = "family-file-not-one";

/// What came of a file.
enum Took {
    /// It is of this family, by its record on the desk.
    Family(String),
    /// It is sealed with a passphrase.
    Waits(Vec<u8>),
}

impl Caseload {
    /// Brings a file in and opens the family it is from: a family file, sealed or plain,
    /// or a record in the exchange form.
    ///
    /// # Errors
    /// Those of [`sealed::open`] and [`family_file::read`], or that nothing of it could be
    /// taken; nothing was changed then.
    pub fn bring_in(&mut self, file: &mut dyn BufRead, clock: &Clock) -> Result<CaseloadUpdate, Trouble> {
        self.let_go_of_what_was_said();
        match self.take(file, clock)? {
            Took::Family(id) => self.open_family(&id, clock)?,
            Took::Waits(sealed) => {
                self.waits.push_front(sealed);
                self.ask_for_passphrase(clock)?;
            }
        }
        Ok(CaseloadUpdate { caseload: self.here(clock)?, effects: Vec::new() })
    }

    /// Takes a file in that nobody opened by hand, such as one in a folder that is watched:
    /// what is open beside the list stays open, and what is being written there goes on. A
    /// folder holds other things too: a file that is no family's is passed over in silence, and
    /// one with a passphrase waits until it is asked for.
    ///
    /// # Errors
    /// Those of [`Self::bring_in`] but for that one.
    pub fn take_in(&mut self, file: &mut dyn BufRead, clock: &Clock) -> Result<CaseloadUpdate, Trouble> {
        match self.take(file, clock) {
            Err(why) if why.key == NOT_ONE => {}
            Err(why) => return Err(why),
            Ok(Took::Family(_)) => {}
            Ok(Took::Waits(sealed)) => self.waits.push_back(sealed),
        }
        if let (Beside::Family(id), None) = (self.beside.clone(), &self.opened) {
            self.open_family(&id, clock)?;
        }
        Ok(CaseloadUpdate { caseload: self.here(clock)?, effects: Vec::new() })
    }

    fn take(&mut self, file: &mut dyn BufRead, clock: &Clock) -> Result<Took, Trouble> {
        let whole = sealed::read_whole(file)?;
        if !sealed::is_sealed(&whole) {
            return self.take_plain(&whole, clock).map(Took::Family);
        }
        match sealed::how(&whole)? {
            Sealed::WithPassphrase => Ok(Took::Waits(whole)),
            Sealed::ForKeys => {
                let keys = self.desk.own_keys()?;
                let plain = sealed::open(&whole, &OpenWith::Keys(vec![keys.opens().to_owned()]))?;
                self.take_plain(&plain, clock).map(Took::Family)
            }
        }
    }

    /// Asks for the passphrase of the next file that waits; leaves that page where none does.
    pub(super) fn ask_for_passphrase(&mut self, clock: &Clock) -> Result<(), Trouble> {
        self.beside = Beside::Desk;
        let place = if self.waits.is_empty() { Place::Desk } else { Place::Sealed };
        self.desk.update(Event::Go { place }, clock).map(drop)
    }

    /// What was said of the last file is not said of the next.
    fn let_go_of_what_was_said(&mut self) {
        self.desk.let_go_of_what_was_said();
        if let Some(opened) = &mut self.opened {
            opened.app.let_go_of_what_was_said();
        }
    }

    /// Opens the file that waits for its passphrase.
    pub(super) fn open_waiting(&mut self, typed: &str, clock: &Clock) -> Result<(), Trouble> {
        let file = self.waits.front().ok_or_else(|| Trouble::bad("open-passphrase", "sealed-nothing-waits"))?;
        let typed = typed.trim();
        if typed.is_empty() {
            return Err(Trouble::bad("open-passphrase", "bad-passphrase-empty"));
        }
        let plain = sealed::open(file, &OpenWith::Passphrase(typed.to_owned()))?;
        let family = self.take_plain(&plain, clock)?;
        self.waits.pop_front();
        self.open_family(&family, clock)
    }

    /// The record on the desk of the family that it is from.
    fn take_plain(&mut self, plain: &[u8], clock: &Clock) -> Result<String, Trouble> {
        match family_file::read(plain) {
            Ok(file) => self.take_family(file, clock),
            // A record in the exchange form says no family of its own: it gets one.
            Err(why) if why.key == NOT_ONE => self.take_record(plain, clock, why),
            Err(why) => Err(why),
        }
    }

    fn take_family(&mut self, file: FamilyFile, clock: &Clock) -> Result<String, Trouble> {
        let FamilyFile { header, changes } = file;
        let now = Instant::from_unix_milliseconds(clock.unix_milliseconds);
        let path = self.path_of(&header.family);
        self.let_go_of(&header.family)?;
        let mut journal = Journal::open(&path, &self.opening.device, now)?.journal;
        journal.merge(&changes, now)?;
        drop(journal);
        // An older file after a newer one adds what the newer did not have, and is no news.
        let id = self.case_of(&header.family, Some(&header.sealing_key), &header.made, clock)?;
        self.found.remove(&id);
        Ok(id)
    }

    fn take_record(&mut self, plain: &[u8], clock: &Clock, why: Trouble) -> Result<String, Trouble> {
        let now = Instant::from_unix_milliseconds(clock.unix_milliseconds);
        // Two records may come in within one millisecond: neither takes the other's place.
        let mut number = now.unix_milliseconds();
        let name = |number: i64| format!("{}-{number}", self.opening.device);
        while self.path_of(&name(number)).exists() {
            number += 1;
        }
        let family = name(number);
        let path = self.path_of(&family);
        let mut journal = Journal::open(&path, &self.opening.device, now)?.journal;
        let report = exchange::begin_with(&mut journal, &mut &*plain, now);
        drop(journal);
        match report {
            Ok(report) if report.taken > 0 => {
                let (_, zone) = super::present(clock);
                let latest = report.latest.filter(|at| at.instant() <= now);
                let made = latest.unwrap_or_else(|| Moment::new(now, zone));
                self.case_of(&family, None, &made, clock)
            }
            other => {
                super::erase_files(&path)?;
                Err(other.err().unwrap_or(why))
            }
        }
    }

    /// A journal that is written to is not open to be read at the same time.
    fn let_go_of(&mut self, family: &str) -> Result<(), Trouble> {
        let same = match &self.opened {
            Some(opened) => self.case(&opened.id)?.0 == family,
            None => false,
        };
        if same {
            self.opened = None;
        }
        Ok(())
    }

    /// The record on the desk of a family; made where there is none.
    fn case_of(
        &mut self,
        family: &str,
        sealing_key: Option<&str>,
        made: &Moment,
        clock: &Clock,
    ) -> Result<String, Trouble> {
        let mut known = None;
        for id in self.desk.ids_of(Kind::CaseFamily)? {
            if self.case(&id)?.0 == family {
                known = Some(id);
            }
        }
        let newer = match &known {
            Some(id) => self.case(id)?.1.is_none_or(|shared| shared.instant() < made.instant()),
            None => true,
        };
        let name = match &known {
            Some(id) => self.desk.record(id)?.and_then(|(_, fields)| text(&fields, NAME_OF_CASE).map(str::to_owned)),
            None => None,
        };
        let name = match name {
            Some(name) => Some(name),
            None => self.name_in(family, clock)?,
        };
        let now = Instant::from_unix_milliseconds(clock.unix_milliseconds);
        self.desk.quietly(now, |w| {
            let id = known.unwrap_or_else(|| w.new_id());
            w.set(&id, "kind", &json!(Kind::CaseFamily.name()))?;
            w.set(&id, "family", &json!(family))?;
            if let Some(name) = name {
                w.set(&id, NAME_OF_CASE, &json!(name))?;
            }
            if newer {
                w.set(&id, "shared", &made.to_json())?;
                if let Some(key) = sealing_key {
                    w.set(&id, "sealing_key", &json!(key))?;
                }
            }
            Ok(id)
        })
    }

    /// The name that the parent chose for what is shared, if any.
    fn name_in(&self, family: &str, clock: &Clock) -> Result<Option<String>, Trouble> {
        let now = Instant::from_unix_milliseconds(clock.unix_milliseconds);
        let path = self.path_of(family);
        if !path.exists() {
            return Err(Trouble::new(TroubleKind::Missing, "trouble-no-such-record"));
        }
        let journal = Journal::open(&path, &self.opening.device, now)?.journal;
        let settings = journal.record(crate::record::SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
        let name = text(&settings, "sheet_name").map(|name| name.chars().take(80).collect());
        Ok(name)
    }
}
