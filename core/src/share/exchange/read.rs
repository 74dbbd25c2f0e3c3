//! A file, in: every line that can be taken is, and the others are told.

use std::collections::BTreeMap;
use std::io::{BufRead, Read};

use serde_json::Value;

use super::line::{self, Line};
use super::VERSION;
use crate::journal::{Difference, Journal, Writing};
use crate::limits;
use crate::record::{check, moment, text, whole_number, Fields, Kind};
use crate::time::{Instant, Moment};
use crate::trouble::{Kind as TroubleKind, Trouble};

/// How many wrong lines are told one by one; the rest are counted.
pub const MOST_WRONG_LINES_TOLD: usize = 50;

/// The fields of the settings and the rhythm that are this record's own: what it is called among
/// all, what is left out of what is shared, and what its calendar wrote.
const OWN: &[&str] = &["family", "left_out", "calendar"];

/// A line that was not taken.
#[derive(Debug, Clone, PartialEq)]
pub struct WrongLine {
    /// Its number, from 1.
    pub line: u64,
    /// Why.
    pub why: Trouble,
}

/// What came of a file.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Report {
    /// Records that were new or changed something.
    pub taken: u64,
    /// Records that said nothing new.
    pub unchanged: u64,
    /// Lines that were not taken, the first ones.
    pub wrong: Vec<WrongLine>,
    /// How many lines were not taken in all.
    pub wrong_count: u64,
    /// Fields that were left because they are this record's own.
    pub kept_back: u64,
    /// Changes of another phone that were left: their names are here with other content.
    pub other: u64,
    /// Changes of what was erased here: they were left, and it stays gone.
    pub erased: u64,
    /// Changes of another phone that were left until then: they are dated far ahead.
    pub ahead: u64,
    /// The latest moment that was written down, in the zone it was written in; a visit may lie
    /// ahead and is none.
    pub latest: Option<Moment>,
}

/// Brings a file in, as one act that can be taken back. A record that is known
/// gets the fields the file gives it and keeps the others. `now` is the
/// present: what lies ahead of it is not taken. Nobody signed it: into a journal that is not
/// empty it brings no consultant, no consent, no plan, and nothing that is the record's own.
///
/// # Errors
/// Only where nothing at all could be done: the file can't be read, it is of a
/// newer version, or the journal can't be written. Then nothing was changed.
pub fn import(journal: &mut Journal, file: &mut dyn BufRead, now: Instant) -> Result<Report, Trouble> {
    let empty = journal.is_empty()?;
    journal.act("bring-in", "", now, |writing| take_all(writing, file, now, empty))
}

/// As [`import`], but nothing to be taken back: what a record begins with.
///
/// # Errors
/// As [`import`].
pub fn begin_with(journal: &mut Journal, file: &mut dyn BufRead, now: Instant) -> Result<Report, Trouble> {
    let empty = journal.is_empty()?;
    journal.quiet_act(now, |writing| take_all(writing, file, now, empty))
}

/// What would come of a file, without taking it.
///
/// # Errors
/// As [`import`].
pub fn look_in(journal: &mut Journal, file: &mut dyn BufRead, now: Instant) -> Result<Report, Trouble> {
    look_at(journal, file, now).map(|(report, _)| report)
}

/// The same, with what it would change.
///
/// # Errors
/// As [`import`].
pub fn look_at(
    journal: &mut Journal,
    file: &mut dyn BufRead,
    now: Instant,
) -> Result<(Report, Vec<Difference>), Trouble> {
    let empty = journal.is_empty()?;
    journal.without_keeping(now, |writing| {
        let before = writing.sequence();
        let report = take_all(writing, file, now, empty)?;
        Ok((report, writing.differences(before)?))
    })
}

fn take_all(writing: &mut Writing<'_>, file: &mut dyn BufRead, now: Instant, empty: bool) -> Result<Report, Trouble> {
    let mut taking = Taking { writing, now, empty, levels: BTreeMap::new(), report: Report::default() };
    let mut number = 0;
    let mut bytes = Vec::new();
    loop {
        bytes.clear();
        let read = file
            .take(limits::EXCHANGE_LINE)
            .read_until(b'\n', &mut bytes)
            .map_err(|_| Trouble::new(TroubleKind::Missing, "trouble-cannot-read-file"))?;
        if read == 0 {
            return Ok(taking.report);
        }
        number += 1;
        let whole_line = bytes.ends_with(b"\n") || (read as u64) < limits::EXCHANGE_LINE;
        let outcome = if whole_line {
            taking.take(number, &bytes)
        } else {
            pass_over(file)?;
            Err(Trouble::bad("", "line-too-long"))
        };
        match outcome {
            Ok(()) => {}
            Err(why) if why.kind == TroubleKind::BadInput => taking.tell(number, why),
            Err(fatal) => return Err(fatal),
        }
    }
}

fn pass_over(file: &mut dyn BufRead) -> Result<(), Trouble> {
    let mut rest = Vec::new();
    loop {
        rest.clear();
        let read = file
            .take(limits::EXCHANGE_LINE)
            .read_until(b'\n', &mut rest)
            .map_err(|_| Trouble::new(TroubleKind::Missing, "trouble-cannot-read-file"))?;
        if read == 0 || rest.ends_with(b"\n") {
            return Ok(());
        }
    }
}

struct Taking<'w, 'j> {
    writing: &'w mut Writing<'j>,
    now: Instant,
    /// The record that it comes into was empty before.
    empty: bool,
    /// Levels of each pump that was asked for.
    levels: BTreeMap<String, Option<u32>>,
    report: Report,
}

impl Taking<'_, '_> {
    fn tell(&mut self, line: u64, why: Trouble) {
        self.report.wrong_count += 1;
        if self.report.wrong.len() < MOST_WRONG_LINES_TOLD {
            self.report.wrong.push(WrongLine { line, why });
        }
    }

    fn take(&mut self, number: u64, bytes: &[u8]) -> Result<(), Trouble> {
        let text = std::str::from_utf8(bytes).map_err(|_| Trouble::bad("", "line-not-utf8"))?;
        let text = text.trim_start_matches('\u{feff}').trim();
        if text.is_empty() || (number == 1 && is_header(text)?) {
            return Ok(());
        }
        let Line { kind, id, mut fields } = line::read(text)?;
        // That the words were the same is said here, and nowhere else.
        fields.remove("compared");
        let known = self.writing.knows(&id)?;
        if !self.empty {
            self.keep_back(kind, &id, &mut fields)?;
        }
        let merged = if known {
            let (there, mut all) = match self.writing.record(&id)? {
                Some(found) => found,
                None => (kind, Default::default()),
            };
            if there != kind {
                return Err(Trouble::bad("id", "line-other-kind"));
            }
            all.extend(fields.clone());
            Some(all)
        } else {
            None
        };
        let whole_record = merged.as_ref().unwrap_or(&fields);
        let levels = match (kind, text_of_pump(whole_record)) {
            (Kind::Session, Some(pump)) => self.levels_of(pump)?,
            _ => None,
        };
        check::whole_record(kind, whole_record, Some(self.now), levels)?;
        if let Some(at) = tells_of(kind, whole_record) {
            if self.report.latest.as_ref().is_none_or(|latest| latest.instant() < at.instant()) {
                self.report.latest = Some(at);
            }
        }
        if kind == Kind::Pump {
            self.levels.remove(&id);
        }
        let before = self.writing.sequence();
        if known {
            self.writing.set(&id, "kind", &Value::from(kind.name()))?;
            for (key, value) in &fields {
                self.writing.set(&id, key, value)?;
            }
        } else {
            self.writing.set_first(&id, "kind", &Value::from(kind.name()))?;
            for (key, value) in &fields {
                self.writing.set_first(&id, key, value)?;
            }
        }
        if self.writing.sequence() > before {
            self.report.taken += 1;
        } else {
            self.report.unchanged += 1;
        }
        Ok(())
    }

    /// Takes out of a line what a file that nobody signed may not bring into a record that is not
    /// empty.
    fn keep_back(&mut self, kind: Kind, id: &str, fields: &mut Fields) -> Result<(), Trouble> {
        let there = self.writing.record(id)?.map(|(_, fields)| fields).unwrap_or_default();
        if matches!(kind, Kind::Consultant | Kind::Consent | Kind::Plan | Kind::PlanPart | Kind::CaseFamily) {
            let same = fields.iter().all(|(key, value)| there.get(key) == Some(value));
            return if same { Ok(()) } else { Err(Trouble::bad("fact", "line-only-when-empty")) };
        }
        if matches!(kind, Kind::Settings | Kind::Rhythm) {
            for key in OWN {
                let other = fields.remove(*key).is_some_and(|value| there.get(*key) != Some(&value));
                self.report.kept_back += u64::from(other);
            }
        }
        Ok(())
    }

    fn levels_of(&mut self, pump: &str) -> Result<Option<u32>, Trouble> {
        if let Some(known) = self.levels.get(pump) {
            return Ok(*known);
        }
        let levels = self.writing.record(pump)?.and_then(|(_, fields)| whole_number(&fields, "levels"));
        self.levels.insert(pump.to_owned(), levels);
        Ok(levels)
    }
}

/// When what a record tells of was over.
fn tells_of(kind: Kind, fields: &Fields) -> Option<Moment> {
    let at = kind.time_field().and_then(|key| moment(fields, key));
    match kind {
        Kind::Visit => None,
        Kind::Session => moment(fields, "ended").or(at),
        _ => at,
    }
}

fn text_of_pump(fields: &Fields) -> Option<&str> {
    text(fields, "pump")
}

/// Whether the first line is the header; a newer version's file is refused.
fn is_header(text: &str) -> Result<bool, Trouble> {
    let Ok(value) = serde_json::from_str::<Value>(text) else { return Ok(false) };
    if value.get("drawwell").is_none() {
        return Ok(false);
    }
    match value.get("version").and_then(Value::as_u64) {
        Some(version) if version <= VERSION => Ok(true),
        _ => Err(Trouble::new(TroubleKind::Newer, "trouble-newer-file")),
    }
}
