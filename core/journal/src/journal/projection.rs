//! What is derived from the fields and kept beside them: a row a record, and a
//! rollup a day. Rebuilt from the changes it is the same to the bit.

use std::collections::{BTreeMap, BTreeSet, HashSet};

use rusqlite::{params, Connection, OptionalExtension};
use serde_json::Value;

use super::{built, fold, milk_events, removals, runs};
use super::{Change, Dot};
use crate::quantity::{Count, Quantity, Volume};
use crate::record::{flag, moment, text, Amount, Fields, Kind, Removal, Row, Run, Session, MARKS, SETTINGS};
use crate::time::{DayStart, Instant, LocalDay};
use crate::trouble::Trouble;

/// Stands for "no time" in the index.
const NO_TIME: i64 = i64::MIN;
/// Stands for "no day" in the index.
const NO_DAY: i32 = i32::MIN;

/// What a day brought by the clock. What is unknown is counted, never added.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayRollup {
    /// Sessions that collect milk, started on the day.
    pub sessions: Count,
    /// From the left.
    pub left: SideSum,
    /// From the right.
    pub right: SideSum,
    /// From both in one container.
    pub together: SideSum,
}

/// A sum over what is known, and how much is not.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SideSum {
    /// The sum of what is known.
    pub volume: Volume,
    /// How many amounts are in it.
    pub known: Count,
    /// How many could not be added.
    pub unknown: Count,
}

impl SideSum {
    /// Nothing at all.
    pub fn empty() -> Self {
        Self { volume: Volume::from_canonical(0.0), known: Count::new(0), unknown: Count::new(0) }
    }

    fn add(&mut self, amount: Option<&Amount>) {
        match amount.and_then(Amount::known) {
            Some(volume) => {
                self.volume = Volume::from_canonical(self.volume.canonical() + volume.canonical());
                self.known = Count::new(self.known.get() + 1);
            }
            None => self.unknown = Count::new(self.unknown.get() + 1),
        }
    }
}

impl DayRollup {
    /// A day without sessions.
    pub fn empty() -> Self {
        Self { sessions: Count::new(0), left: SideSum::empty(), right: SideSum::empty(), together: SideSum::empty() }
    }

    /// Everything that is known of the day.
    pub fn known(&self) -> Volume {
        Volume::from_canonical(
            self.left.volume.canonical() + self.right.volume.canonical() + self.together.volume.canonical(),
        )
    }

    /// How many amounts are known.
    pub fn known_count(&self) -> Count {
        Count::new(self.left.known.get() + self.right.known.get() + self.together.known.get())
    }

    /// Adds a session that collects milk.
    pub fn add(&mut self, session: &Session) {
        self.sessions = Count::new(self.sessions.get() + 1);
        if session.together.is_some() {
            self.together.add(session.together.as_ref());
            return;
        }
        if session.sides.left() {
            self.left.add(session.left.as_ref());
        }
        if session.sides.right() {
            self.right.add(session.right.as_ref());
        }
    }
}

/// The hour at which days begin.
pub(super) fn day_start(store: &Connection) -> Result<DayStart, Trouble> {
    let found = fold::field_state(store, SETTINGS, "day_start")?;
    let hour = found.and_then(|s| s.value.parse::<u32>().ok()).and_then(DayStart::at_hour);
    Ok(hour.unwrap_or(DayStart::MIDNIGHT))
}

/// A subject's fields that say something; marks only where asked for.
pub(super) fn fields(store: &Connection, subject: &str, with_marks: bool) -> Result<Fields, Trouble> {
    fields_and_pain(store, subject, with_marks).map(|(fields, _)| fields)
}

/// The same, and whether pain was said in any of them: marks are looked at for that alone, since
/// every screen asks for sessions with pain.
fn fields_and_pain(store: &Connection, subject: &str, with_marks: bool) -> Result<(Fields, bool), Trouble> {
    let mut pain = false;
    let mut statement = store.prepare_cached("SELECT field, value FROM field WHERE subject = ?1 ORDER BY field")?;
    let mut rows = statement.query(params![subject])?;
    let mut fields = Fields::new();
    while let Some(row) = rows.next()? {
        let key = row.get_ref(0)?.as_str().map_err(rusqlite::Error::from)?;
        let json = row.get_ref(1)?.as_str().map_err(rusqlite::Error::from)?;
        pain |= match key.starts_with(MARKS) {
            true => json.contains("\"pain\""),
            false => key.starts_with("pain_") && json != "null",
        };
        if !with_marks && key.starts_with(MARKS) {
            continue;
        }
        if let Ok(value) = serde_json::from_str::<Value>(json) {
            if !value.is_null() {
                fields.insert(key.to_owned(), value);
            }
        }
    }
    Ok((fields, pain))
}

fn row_of(subject: &str, fields: &Fields, pain: bool, start: DayStart) -> Option<Row> {
    let kind = Kind::named(text(fields, "kind")?)?;
    let at = kind.time_field().and_then(|key| moment(fields, key));
    let taken_out = flag(fields, "taken_out");
    let session = (kind == Kind::Session).then(|| Session::read(subject, fields));
    let until = session.as_ref().and_then(|s| s.ended.as_ref()).map(|m| m.instant());
    let running = !taken_out && session.as_ref().is_some_and(Session::is_running);
    Some(Row {
        subject: subject.to_owned(),
        kind,
        at: at.as_ref().map(|m| m.instant()),
        until,
        day: at.as_ref().map(|m| LocalDay::of(m, start)),
        running,
        lacks: !taken_out && session.as_ref().is_some_and(|s| !s.is_running() && s.lacks_amount()),
        taken_out,
        pain: kind == Kind::Session && !running && pain,
    })
}

/// Brings the rows of subjects, and the days they touch, up to date.
pub(super) fn project(store: &Connection, subjects: &BTreeSet<String>) -> Result<(), Trouble> {
    let start = day_start(store)?;
    let mut days = BTreeSet::new();
    for subject in subjects {
        let before = row(store, subject)?;
        let (fields, pain) = fields_and_pain(store, subject, false)?;
        let after = row_of(subject, &fields, pain, start);
        for seen in [&before, &after].into_iter().flatten() {
            if seen.kind == Kind::Session {
                days.extend(seen.day);
            }
        }
        match (&before, &after) {
            (_, Some(after)) if before.as_ref() != Some(after) => write_row(store, after)?,
            (Some(_), None) => {
                store.prepare_cached("DELETE FROM record WHERE subject = ?1")?.execute(params![subject])?;
            }
            _ => {}
        }
        if [&before, &after].into_iter().flatten().any(|row| row.kind == Kind::Session) {
            removals::keep(store, subject, Removal::read(subject, &fields).as_ref())?;
            runs::keep(store, subject, Run::read(subject, &fields).as_ref())?;
        }
        if [&before, &after].into_iter().flatten().any(|row| row.kind == Kind::MilkEvent) {
            milk_events::keep(store, subject, &fields)?;
        }
    }
    for day in days {
        roll_up(store, day)?;
    }
    Ok(())
}

fn write_row(store: &Connection, row: &Row) -> Result<(), Trouble> {
    store
        .prepare_cached(
            "INSERT INTO record(subject, kind, at, until, day, running, lacks, taken_out, pain)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)
             ON CONFLICT(subject) DO UPDATE SET kind = excluded.kind, at = excluded.at, until = excluded.until,
             day = excluded.day, running = excluded.running, lacks = excluded.lacks, taken_out = excluded.taken_out,
             pain = excluded.pain",
        )?
        .execute(params![
            row.subject,
            row.kind.name(),
            row.at.map_or(NO_TIME, Instant::unix_milliseconds),
            row.until.map_or(NO_TIME, Instant::unix_milliseconds),
            row.day.map_or(NO_DAY, LocalDay::number),
            row.running,
            row.lacks,
            row.taken_out,
            row.pain,
        ])?;
    Ok(())
}

/// The columns of a row, in the order of [`read_row`].
pub(super) const ROW_COLUMNS: &str = "subject, kind, at, until, day, running, lacks, taken_out, pain";

pub(super) fn read_row(row: &rusqlite::Row<'_>) -> rusqlite::Result<Option<Row>> {
    let time = |ms: i64| (ms != NO_TIME).then_some(Instant::from_unix_milliseconds(ms));
    let Some(kind) = Kind::named(row.get_ref(1)?.as_str()?) else { return Ok(None) };
    Ok(Some(Row {
        subject: row.get(0)?,
        kind,
        at: time(row.get(2)?),
        until: time(row.get(3)?),
        day: LocalDay::from_number(row.get(4)?),
        running: row.get(5)?,
        lacks: row.get(6)?,
        taken_out: row.get(7)?,
        pain: row.get(8)?,
    }))
}

pub(super) fn row(store: &Connection, subject: &str) -> Result<Option<Row>, Trouble> {
    let sql = format!("SELECT {ROW_COLUMNS} FROM record WHERE subject = ?1");
    let found = store.prepare_cached(&sql)?.query_row(params![subject], read_row).optional()?;
    Ok(found.flatten())
}

fn roll_up(store: &Connection, day: LocalDay) -> Result<(), Trouble> {
    let mut rollup = DayRollup::empty();
    let mut statement = store.prepare_cached(
        "SELECT subject FROM record INDEXED BY record_by_day
         WHERE day = ?1 AND kind = 'session' AND taken_out = 0 ORDER BY at, subject",
    )?;
    let subjects: Vec<String> = statement.query_map(params![day.number()], |r| r.get(0))?.collect::<Result<_, _>>()?;
    for subject in subjects {
        let session = Session::read(&subject, &fields(store, &subject, false)?);
        if session.collects() && !session.is_running() {
            rollup.add(&session);
        }
    }
    if rollup.sessions.get() == 0 {
        store.prepare_cached("DELETE FROM day_rollup WHERE day = ?1")?.execute(params![day.number()])?;
        return Ok(());
    }
    store
        .prepare_cached("INSERT OR REPLACE INTO day_rollup VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)")?
        .execute(params![
            day.number(),
            rollup.sessions.get(),
            rollup.left.volume.canonical(),
            rollup.left.known.get(),
            rollup.left.unknown.get(),
            rollup.right.volume.canonical(),
            rollup.right.known.get(),
            rollup.right.unknown.get(),
            rollup.together.volume.canonical(),
            rollup.together.known.get(),
            rollup.together.unknown.get(),
        ])?;
    Ok(())
}

pub(super) fn read_rollup(store: &Connection, day: LocalDay) -> Result<DayRollup, Trouble> {
    let sum = |r: &rusqlite::Row<'_>, from: usize| -> rusqlite::Result<SideSum> {
        Ok(SideSum {
            volume: Volume::from_canonical(r.get(from)?),
            known: Count::new(r.get(from + 1)?),
            unknown: Count::new(r.get(from + 2)?),
        })
    };
    let found = store
        .prepare_cached("SELECT * FROM day_rollup WHERE day = ?1")?
        .query_row(params![day.number()], |r| {
            Ok(DayRollup { sessions: Count::new(r.get(1)?), left: sum(r, 2)?, right: sum(r, 5)?, together: sum(r, 8)? })
        })
        .optional()?;
    Ok(found.unwrap_or_else(DayRollup::empty))
}

/// The tables that are derived from the changes, but for days, which are worked out when they are asked for.
pub(super) const DERIVED: [&str; 7] = ["field", "awaited", "record", "day_rollup", "removal", "run", "milk_event"];

/// Builds fields, rows and rollups anew from the changes.
pub(super) fn rebuild(store: &Connection) -> Result<(), Trouble> {
    for table in DERIVED {
        store.execute(&format!("DELETE FROM {table}"), [])?;
    }
    removals::forget_days(store)?;
    let sql = format!("SELECT {} FROM change ORDER BY subject, field", Change::COLUMNS);
    let mut statement = store.prepare(&sql)?;
    let mut rows = statement.query([])?;
    let mut subjects = BTreeSet::new();
    let mut group: BTreeMap<(String, String), Vec<Change>> = BTreeMap::new();
    while let Some(row) = rows.next()? {
        let (change, _) = Change::from_row(row)?;
        let key = (change.subject.clone(), change.field.clone());
        if !group.contains_key(&key) {
            stand_all(store, &mut group)?;
        }
        subjects.insert(change.subject.clone());
        group.entry(key).or_default().push(change);
    }
    stand_all(store, &mut group)?;
    project(store, &subjects)?;
    built::by_todays_data(store)
}

fn stand_all(store: &Connection, group: &mut BTreeMap<(String, String), Vec<Change>>) -> Result<(), Trouble> {
    for (_, changes) in std::mem::take(group) {
        let known: HashSet<Dot> = changes.iter().map(|c| c.dot.clone()).collect();
        for change in &changes {
            for replaced in change.replaces.iter().filter(|dot| !known.contains(dot)) {
                fold::awaits(store, &change.subject, &change.field, replaced)?;
            }
        }
        if let Some((winner, others)) = fold::heads_of(changes).split_first() {
            fold::stand(store, winner, others)?;
        }
    }
    Ok(())
}

/// Every row that is in the index, for when the hour of a new day changes.
pub(super) fn all_subjects(store: &Connection) -> Result<BTreeSet<String>, Trouble> {
    let mut statement = store.prepare_cached("SELECT subject FROM record WHERE day <> ?1")?;
    let found = statement.query_map(params![NO_DAY], |r| r.get(0))?.collect::<Result<_, _>>()?;
    Ok(found)
}

pub(super) fn record(store: &rusqlite::Connection, subject: &str) -> Result<Option<(Kind, Fields)>, Trouble> {
    let fields = fields(store, subject, true)?;
    Ok(crate::record::text(&fields, "kind").and_then(Kind::named).map(|kind| (kind, fields)))
}
