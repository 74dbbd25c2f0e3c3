//! What families share, in: sealed or plain, opened, and merged into the family it is from.

use std::io::BufRead;

use serde_json::json;

use super::state::{as_of, present, Caseload, Pane};
use crate::gather::{self, Record};
use crate::journal::{files, Journal};
use crate::limits;
use crate::record::{text, Kind, NAME_OF_CASE};
use crate::screen::shapes::{CaseloadUpdate, Clock, Event, Place};
use crate::share::family_file::{self, FamilyFile, Header};
use crate::share::file_kind::{self, FileKind};
use crate::share::sealed::{self, OpenWith, Sealed};
use crate::share::{exchange, names};
use crate::time::{Instant, Moment};
use crate::trouble::{Kind as TroubleKind, Trouble};

/// Said of a file that is no family's.
const NOT_ONE: &str = "family-file-not-one";

/// The keys of a family, as they are pinned.
struct Pinned {
    sealing: String,
    /// Those of all its phones.
    sealing_all: String,
    signing: String,
}

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
    pub fn import_file(&mut self, file: &mut dyn BufRead, clock: &Clock) -> Result<CaseloadUpdate, Trouble> {
        self.desk.not_locked()?;
        self.clear_messages();
        let whole = sealed::read_whole(file)?;
        match self.take(whole, clock)? {
            Took::Family(id) => self.open_family(&id, clock)?,
            Took::Waits(sealed) => {
                self.has_room_to_wait()?;
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
    /// Those of [`Self::import_file`] but for that one.
    pub fn import_quietly(&mut self, file: &mut dyn BufRead, clock: &Clock) -> Result<CaseloadUpdate, Trouble> {
        self.desk.not_locked()?;
        let whole = sealed::read_whole(file)?;
        if !sealed::is_sealed(&whole) {
            // Anybody may have put it there. One that is no family's is passed over.
            let ours = family_file::is_one(&whole) || file_kind::detect(&whole) == FileKind::Record;
            if ours && !whole.is_empty() {
                return Err(Trouble::bad("file", "desk-unsealed"));
            }
            return Ok(CaseloadUpdate { caseload: self.here(clock)?, effects: Vec::new() });
        }
        match self.take(whole, clock) {
            Err(why) if why.key == NOT_ONE => {}
            Err(why) => return Err(why),
            Ok(Took::Family(_)) => {}
            Ok(Took::Waits(sealed)) => {
                self.has_room_to_wait()?;
                self.waits.push_back(sealed);
            }
        }
        if let (Pane::Family(id), None) = (self.active.clone(), &self.opened) {
            self.open_family(&id, clock)?;
        }
        Ok(CaseloadUpdate { caseload: self.here(clock)?, effects: Vec::new() })
    }

    fn has_room_to_wait(&self) -> Result<(), Trouble> {
        match self.waits.len() < limits::WAITING {
            true => Ok(()),
            false => Err(Trouble::bad("file", "sealed-too-many-wait").with("count", limits::WAITING)),
        }
    }

    fn take(&mut self, whole: Vec<u8>, clock: &Clock) -> Result<Took, Trouble> {
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
        self.active = Pane::Desk;
        let place = if self.waits.is_empty() { Place::Desk } else { Place::Sealed };
        self.desk.update(Event::Go { place }, clock).map(drop)
    }

    /// What was said of the last file is not said of the next.
    fn clear_messages(&mut self) {
        self.desk.clear_messages();
        if let Some(opened) = &mut self.opened {
            opened.app.clear_messages();
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

    /// Takes in what a family shared: signed with the key that was pinned when it shared first,
    /// or, for a family that is new here, with any, which is pinned by that.
    fn take_family(&mut self, file: FamilyFile, clock: &Clock) -> Result<String, Trouble> {
        let FamilyFile { header, changes } = file;
        let now = Instant::from_unix_milliseconds(clock.unix_milliseconds);
        if header.made.instant().since(now) > limits::AHEAD {
            return Err(Trouble::bad("", "family-file-ahead"));
        }
        let pinned = self.check_signer(&header)?;
        let path = self.path_of(&header.family);
        self.close_if_open(&header.family)?;
        // What came before was signed by nobody: it gives way.
        if pinned.is_some() && self.is_by_nobody(&header.family)? {
            files::erase(&path)?;
        }
        let mut journal = self.open_journal(&path, now)?.journal;
        let merged = journal.merge(&changes, now)?;
        keep_days(&journal, &as_of(clock, Some(&header.made)))?;
        drop(journal);
        // An older file after a newer one adds what the newer did not have, and is no news.
        let id = self.case_of(&header.family, pinned, &header.made, clock)?;
        self.found.remove(&id);
        if merged.other > 0 {
            self.desk.tell_of("family-file-other");
        }
        Ok(id)
    }

    /// The keys that are pinned once a file is in; none for one that nobody signed.
    ///
    /// # Errors
    /// `family-file-unsigned`, `family-key-changed`.
    fn check_signer(&self, header: &Header) -> Result<Option<Pinned>, Trouble> {
        let changed = || Trouble::bad("", "family-key-changed");
        let known = match self.case_named(&header.family)? {
            Some(id) => self.desk.record(&id)?.map(|(_, fields)| fields),
            None => None,
        };
        let Some(key) = &header.signing_key else {
            // Nobody signed it: what is here is not to be changed by it.
            return if known.is_none() { Ok(None) } else { Err(Trouble::bad("", "family-file-unsigned")) };
        };
        if let Some(case) = &known {
            let pinned = text(case, "signing_keys").unwrap_or_default();
            let may = match pinned {
                // From before files were signed: the one that plans are sealed for signs now.
                "" => text(case, "sealing_key").is_none_or(|sealing| sealing == header.sealing_key),
                pinned => pinned.split_whitespace().any(|known| known == key),
            };
            if !may {
                return Err(changed());
            }
        }
        let next = header.next_signing_key.as_ref().unwrap_or(key);
        let mut signing: Vec<&str> = vec![next];
        signing.extend(header.phones.iter().map(String::as_str).filter(|phone| phone != next));
        // What one phone does not know of the others another has said before.
        let before = known.as_ref().and_then(|case| text(case, "sealing_keys")).unwrap_or_default();
        let mut sealing: Vec<&str> = vec![&header.sealing_key];
        for key in header.phones_open.iter().map(String::as_str).chain(before.split_whitespace()) {
            if !sealing.contains(&key) && sealing.len() <= limits::PHONES {
                sealing.push(key);
            }
        }
        Ok(Some(Pinned {
            sealing: header.sealing_key.clone(),
            sealing_all: sealing.join(" "),
            signing: signing.join(" "),
        }))
    }

    fn is_by_nobody(&self, family: &str) -> Result<bool, Trouble> {
        let Some(id) = self.case_named(family)? else { return Ok(false) };
        let case = self.desk.record(&id)?.map(|(_, fields)| fields).unwrap_or_default();
        Ok(text(&case, "signing_keys").is_none() && text(&case, "sealing_key").is_none())
    }

    fn case_named(&self, family: &str) -> Result<Option<String>, Trouble> {
        for id in self.desk.ids_of(Kind::CaseFamily)? {
            if self.case(&id)?.0 == family {
                return Ok(Some(id));
            }
        }
        Ok(None)
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
        let mut journal = self.open_journal(&path, now)?.journal;
        let report = exchange::begin_with(&mut journal, &mut &*plain, now);
        match report {
            Ok(report) if report.taken > 0 => {
                let (_, zone) = present(clock);
                let latest = report.latest.filter(|at| at.instant() <= now);
                let made = latest.unwrap_or_else(|| Moment::new(now, zone));
                keep_days(&journal, &as_of(clock, Some(&made)))?;
                drop(journal);
                self.case_of(&family, None, &made, clock)
            }
            other => {
                drop(journal);
                files::erase(&path)?;
                Err(other.err().unwrap_or(why))
            }
        }
    }

    /// A journal that is written to is not open to be read at the same time.
    fn close_if_open(&mut self, family: &str) -> Result<(), Trouble> {
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
        pinned: Option<Pinned>,
        made: &Moment,
        clock: &Clock,
    ) -> Result<String, Trouble> {
        let known = self.case_named(family)?;
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
                if let Some(pinned) = pinned {
                    w.set(&id, "sealing_key", &json!(pinned.sealing))?;
                    w.set(&id, "sealing_keys", &json!(pinned.sealing_all))?;
                    w.set(&id, "signing_keys", &json!(pinned.signing))?;
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
        let journal = self.open_journal(&path, now)?.journal;
        let settings = journal.record(crate::record::SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
        let name = text(&settings, "sheet_name").map(|name| names::shown(name).chars().take(80).collect());
        Ok(name)
    }
}

/// Works out what each day made while the file comes in: the list and the family's screens only
/// read.
fn keep_days(journal: &Journal, at: &Clock) -> Result<(), Trouble> {
    let (now, zone) = present(at);
    let record = Record::new(journal, now, zone)?;
    gather::supply::work_out_all(&record)?;
    journal.keep_days(&record.worked_out());
    Ok(())
}
