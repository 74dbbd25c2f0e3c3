//! The fold: from changes in any order to one value a field.
//!
//! Of all changes to a field, those that no other change replaces are its
//! heads. The head with the greatest (stamp, device) is the field's value; the
//! others are kept and shown. Heads depend on the set of changes alone, so any
//! order and any repeats give the same record.

//!
//! A field keeps its heads beside its value, so that a change that comes in
//! touches that field alone; a replaced change that has not come yet is
//! awaited.

use std::collections::HashSet;

use rusqlite::{params, Connection, OptionalExtension};

use super::change::{read_dots, write_dots};
use super::{row_number, Change, Dot, Stamp};
use crate::record::mark::as_touched;
use crate::record::MARKS;
use crate::trouble::Trouble;

/// A field as it stands.
pub(super) struct Standing {
    pub(super) value: String,
    /// The head that counts.
    pub(super) dot: Dot,
    /// Heads beside it.
    pub(super) others: Vec<Dot>,
}

impl Standing {
    /// Every head, the one that counts first.
    pub(super) fn heads(self) -> Vec<Dot> {
        let mut heads = vec![self.dot];
        heads.extend(self.others);
        heads
    }
}

pub(super) fn standing(store: &Connection, subject: &str, field: &str) -> Result<Option<Standing>, Trouble> {
    let found = store
        .prepare_cached("SELECT value, device, device_seq, others FROM field WHERE subject = ?1 AND field = ?2")?
        .query_row(params![subject, field], |r| {
            Ok(Standing {
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

/// Keeps a change of the device of a number. False where it was known already.
pub(super) fn keep(store: &Connection, device_number: i64, change: &Change) -> Result<bool, Trouble> {
    let added = store
        .prepare_cached(
            "INSERT INTO change(row, device, device_seq, stamp, subject, field, value, replaces, crc)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9) ON CONFLICT(row) DO NOTHING",
        )?
        .execute(params![
            row_number::row(device_number, change.dot.sequence),
            change.dot.device,
            change.dot.sequence,
            change.stamp.raw(),
            change.subject,
            change.field,
            change.value,
            write_dots(&change.replaces),
            change.checksum(),
        ])?;
    Ok(added == 1)
}

/// Brings a field up to date with a change from elsewhere that was just kept.
pub(super) fn fold(store: &Connection, new: &Change) -> Result<(), Trouble> {
    let mut heads = standing(store, &new.subject, &new.field)?.map(Standing::heads).unwrap_or_default();
    for replaced in &new.replaces {
        match heads.iter().position(|head| head == replaced) {
            Some(place) => drop(heads.remove(place)),
            None => await_if_unknown(store, new, replaced)?,
        }
    }
    let was_awaited = store
        .prepare_cached("DELETE FROM awaited WHERE subject = ?1 AND field = ?2 AND device = ?3 AND device_seq = ?4")?
        .execute(params![new.subject, new.field, new.dot.device, new.dot.sequence])?
        > 0;
    if !was_awaited {
        heads.push(new.dot.clone());
    }
    if heads.as_slice() == [new.dot.clone()] {
        return stand(store, new, &[]);
    }
    let mut heads = heads.iter().filter_map(|dot| change(store, dot).transpose()).collect::<Result<Vec<_>, _>>()?;
    sort(&mut heads);
    match heads.split_first() {
        Some((winner, others)) => stand(store, winner, others),
        None => Ok(()),
    }
}

/// Remembers that a change was replaced before it came.
fn await_if_unknown(store: &Connection, by: &Change, dot: &Dot) -> Result<(), Trouble> {
    if change(store, dot)?.is_some() {
        return Ok(());
    }
    awaits(store, by, dot)
}

pub(super) fn awaits(store: &Connection, by: &Change, dot: &Dot) -> Result<(), Trouble> {
    store
        .prepare_cached("INSERT OR IGNORE INTO awaited(subject, field, device, device_seq) VALUES (?1, ?2, ?3, ?4)")?
        .execute(params![by.subject, by.field, dot.device, dot.sequence])?;
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
            touched.as_ref().unwrap_or(&winner.value),
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
