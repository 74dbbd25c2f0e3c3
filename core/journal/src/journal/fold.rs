//! The fold: from changes in any order to one value a field.
//!
//! Of all changes to a field, those that no other change replaces are its
//! heads. The head with the greatest (stamp, device) is the field's value; the
//! others are kept and shown. Heads depend on the set of changes alone, so any
//! order and any repeats give the same record.

//!
//! A field keeps its heads beside its value, so that changes that come in
//! touch that field alone, once however many they are; a replaced change that
//! has not come yet is awaited.

use std::collections::{HashMap, HashSet};

use rusqlite::{params, Connection, OptionalExtension};

use super::change::{read_dots, write_dots};
use super::{row_number, Change, Dot, Stamp};
use crate::record::mark::as_touched;
use crate::record::MARKS;
use crate::trouble::Trouble;

/// A value that says nothing.
const NOTHING: &str = "null";

/// A field as it stands.
pub(super) struct FieldState {
    pub(super) value: String,
    /// The head that counts.
    pub(super) dot: Dot,
    /// Heads beside it.
    pub(super) others: Vec<Dot>,
}

impl FieldState {
    /// Every head, the one that counts first.
    pub(super) fn heads(self) -> Vec<Dot> {
        let mut heads = vec![self.dot];
        heads.extend(self.others);
        heads
    }
}

pub(super) fn field_state(store: &Connection, subject: &str, field: &str) -> Result<Option<FieldState>, Trouble> {
    let found = store
        .prepare_cached("SELECT value, device, device_seq, others FROM field WHERE subject = ?1 AND field = ?2")?
        .query_row(params![subject, field], |r| {
            Ok(FieldState {
                value: r.get(0)?,
                dot: Dot { device: r.get(1)?, sequence: r.get(2)? },
                others: read_dots(r.get_ref(3)?.as_str()?),
            })
        })
        .optional()?;
    Ok(found)
}

/// A change by its name.
pub(super) fn change(store: &Connection, dot: &Dot) -> Result<Option<Change>, Trouble> {
    let Some(row) = row_number::of(store, dot)? else { return Ok(None) };
    let sql = format!("SELECT {} FROM change WHERE row = ?1", Change::COLUMNS);
    let found =
        store.prepare_cached(&sql)?.query_row(params![row], |r| Change::from_row(r).map(|(c, _)| c)).optional()?;
    Ok(found)
}

/// The heads among all changes of one field, the value that counts first.
pub(super) fn heads_of(all: Vec<Change>) -> Vec<Change> {
    let replaced: HashSet<Dot> = all.iter().flat_map(|c| c.replaces.iter().cloned()).collect();
    let mut heads: Vec<Change> = all.into_iter().filter(|c| !replaced.contains(&c.dot)).collect();
    sort(&mut heads);
    heads
}

fn sort(heads: &mut [Change]) {
    heads.sort_by(|a, b| rank(b).cmp(&rank(a)));
}

fn rank(change: &Change) -> (Stamp, &str, i64) {
    (change.stamp, &change.dot.device, change.dot.sequence)
}

/// What came of keeping a change.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Inserted {
    /// It was not here.
    New,
    /// It was here.
    Known,
    /// It was here without its value, which it has now.
    Filled,
    /// Its name was here with other content: one of the two is not what it says.
    Other,
}

/// Keeps a change of the device of a number.
pub(super) fn keep(store: &Connection, device_number: i64, change: &Change) -> Result<Inserted, Trouble> {
    let row = row_number::row(device_number, change.dot.sequence);
    let added = store
        .prepare_cached(
            "INSERT INTO change(row, device, device_seq, stamp, subject, field, value, replaces, crc)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9) ON CONFLICT(row) DO NOTHING",
        )?
        .execute(params![
            row,
            change.dot.device,
            change.dot.sequence,
            change.stamp.raw(),
            change.subject,
            change.field,
            change.value,
            write_dots(&change.replaces),
            change.checksum(),
        ])?;
    if added == 1 {
        return Ok(Inserted::New);
    }
    let Some(here) = self::change(store, &change.dot)? else { return Ok(Inserted::Other) };
    if here == *change {
        return Ok(Inserted::Known);
    }
    if !here.is_but_for_its_value(change) {
        return Ok(Inserted::Other);
    }
    match (here.is_gone(), change.is_gone()) {
        (_, true) => Ok(Inserted::Known),
        (false, false) => Ok(Inserted::Other),
        (true, false) => {
            store.prepare_cached("UPDATE change SET value = ?2, crc = ?3 WHERE row = ?1")?.execute(params![
                row,
                change.value,
                change.checksum()
            ])?;
            Ok(Inserted::Filled)
        }
    }
}

/// Brings one field up to date with all changes of it that were just kept, in time linear in
/// them. `awaiting` says whether any change is awaited at all.
pub(super) fn fold(
    store: &Connection,
    (subject, field): (&str, &str),
    new: &[&Change],
    awaiting: bool,
) -> Result<(), Trouble> {
    let replaced: HashSet<&Dot> = new.iter().flat_map(|change| &change.replaces).collect();
    let awaited = if awaiting { awaited(store, subject, field)? } else { HashSet::new() };
    let before = field_state(store, subject, field)?.map(FieldState::heads).unwrap_or_default();
    let came: HashMap<&Dot, &Change> = new.iter().map(|change| (&change.dot, *change)).collect();
    let mut heads = Vec::new();
    for dot in before.iter().filter(|dot| !replaced.contains(dot) && !came.contains_key(dot)) {
        heads.extend(change(store, dot)?);
    }
    for (dot, change) in &came {
        if awaited.contains(*dot) {
            store
                .prepare_cached(
                    "DELETE FROM awaited WHERE subject = ?1 AND field = ?2 AND device = ?3 AND device_seq = ?4",
                )?
                .execute(params![subject, field, dot.device, dot.sequence])?;
        } else if !replaced.contains(*dot) {
            heads.push((*change).clone());
        }
    }
    let heads_before: HashSet<&Dot> = before.iter().collect();
    for dot in replaced.iter().filter(|dot| !came.contains_key(*dot) && !heads_before.contains(*dot)) {
        if change(store, dot)?.is_none() {
            awaits(store, subject, field, dot)?;
        }
    }
    sort(&mut heads);
    match heads.split_first() {
        Some((winner, others)) => stand(store, winner, others),
        None => Ok(()),
    }
}

fn awaited(store: &Connection, subject: &str, field: &str) -> Result<HashSet<Dot>, Trouble> {
    let mut statement =
        store.prepare_cached("SELECT device, device_seq FROM awaited WHERE subject = ?1 AND field = ?2")?;
    let found = statement
        .query_map(params![subject, field], |r| Ok(Dot { device: r.get(0)?, sequence: r.get(1)? }))?
        .collect::<Result<_, _>>()?;
    Ok(found)
}

/// Whether any change is awaited.
pub(super) fn any_awaited(store: &Connection) -> Result<bool, Trouble> {
    Ok(store.query_row("SELECT EXISTS(SELECT 1 FROM awaited)", [], |r| r.get(0))?)
}

/// Remembers that a change was replaced before it came.
pub(super) fn awaits(store: &Connection, subject: &str, field: &str, dot: &Dot) -> Result<(), Trouble> {
    store
        .prepare_cached("INSERT OR IGNORE INTO awaited(subject, field, device, device_seq) VALUES (?1, ?2, ?3, ?4)")?
        .execute(params![subject, field, dot.device, dot.sequence])?;
    Ok(())
}

/// Writes down what a field says, and which heads stand beside it.
pub(super) fn stand(store: &Connection, winner: &Change, others: &[Change]) -> Result<(), Trouble> {
    let others: Vec<Dot> = others.iter().map(|c| c.dot.clone()).collect();
    let touched = touched(winner);
    store
        .prepare_cached(
            "INSERT INTO field(subject, field, value, device, device_seq, others) VALUES (?1, ?2, ?3, ?4, ?5, ?6)
             ON CONFLICT(subject, field) DO UPDATE SET
             value = excluded.value, device = excluded.device, device_seq = excluded.device_seq, others = excluded.others",
        )?
        .execute(params![
            winner.subject,
            winner.field,
            touched.as_deref().unwrap_or(if winner.is_gone() { NOTHING } else { &winner.value }),
            winner.dot.device,
            winner.dot.sequence,
            write_dots(&others),
        ])?;
    Ok(())
}

/// A mark of before settings said whether they were carried over, that took another value's
/// place: a hand did that.
fn touched(change: &Change) -> Option<String> {
    let amended = !change.replaces.is_empty() && change.field.starts_with(MARKS);
    amended.then(|| as_touched(&change.value)).flatten()
}
