//! The fold: from changes in any order to one value a field.
//!
//! Of all changes to a field, those that no other change replaces are its
//! heads. The head with the greatest (stamp, device) is the field's value; the
//! others are kept and shown. Heads depend on the set of changes alone, so any
//! order and any repeats give the same record.

use std::collections::HashSet;

use rusqlite::{params, Connection, OptionalExtension};

use super::change::write_dots;
use super::{Change, Dot, Stamp};
use crate::trouble::Trouble;

/// A field as it stands.
pub(super) struct Standing {
    pub(super) value: String,
    pub(super) dot: Dot,
    pub(super) heads: u32,
}

pub(super) fn standing(store: &Connection, subject: &str, field: &str) -> Result<Option<Standing>, Trouble> {
    let found = store
        .prepare_cached("SELECT value, device, device_seq, heads FROM field WHERE subject = ?1 AND field = ?2")?
        .query_row(params![subject, field], |r| {
            Ok(Standing {
                value: r.get(0)?,
                dot: Dot { device: r.get(1)?, sequence: r.get(2)? },
                heads: r.get(3)?,
            })
        })
        .optional()?;
    Ok(found)
}

/// The heads of a field, the value that counts first.
pub(super) fn heads(store: &Connection, subject: &str, field: &str) -> Result<Vec<Change>, Trouble> {
    let sql = format!("SELECT {} FROM change WHERE subject = ?1 AND field = ?2", Change::COLUMNS);
    let mut statement = store.prepare_cached(&sql)?;
    let all: Vec<Change> = statement
        .query_map(params![subject, field], |r| Change::from_row(r).map(|(c, _)| c))?
        .collect::<Result<_, _>>()?;
    Ok(heads_of(all))
}

/// The heads among all changes of one field, the value that counts first.
pub(super) fn heads_of(all: Vec<Change>) -> Vec<Change> {
    let replaced: HashSet<Dot> = all.iter().flat_map(|c| c.replaces.iter().cloned()).collect();
    let mut heads: Vec<Change> = all.into_iter().filter(|c| !replaced.contains(&c.dot)).collect();
    heads.sort_by(|a, b| rank(b).cmp(&rank(a)));
    heads
}

fn rank(change: &Change) -> (Stamp, &str, i64) {
    (change.stamp, &change.dot.device, change.dot.sequence)
}

/// Keeps a change. False where it was known already.
pub(super) fn keep(store: &Connection, change: &Change) -> Result<bool, Trouble> {
    let added = store
        .prepare_cached(
            "INSERT INTO change(device, device_seq, stamp, subject, field, value, replaces, crc)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8) ON CONFLICT(device, device_seq) DO NOTHING",
        )?
        .execute(params![
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

/// Brings a field up to date with a change that was just kept.
pub(super) fn fold(store: &Connection, change: &Change, before: Option<&Standing>) -> Result<(), Trouble> {
    let simple = match before {
        None => true,
        Some(b) => b.heads == 1 && matches!(change.replaces.as_slice(), [only] if *only == b.dot),
    };
    if simple {
        return stand(store, change, 1);
    }
    let heads = heads(store, &change.subject, &change.field)?;
    match heads.first() {
        Some(winner) => stand(store, winner, heads.len()),
        None => Ok(()),
    }
}

pub(super) fn stand(store: &Connection, winner: &Change, heads: usize) -> Result<(), Trouble> {
    store
        .prepare_cached(
            "INSERT INTO field(subject, field, value, device, device_seq, heads) VALUES (?1, ?2, ?3, ?4, ?5, ?6)
             ON CONFLICT(subject, field) DO UPDATE SET
             value = excluded.value, device = excluded.device, device_seq = excluded.device_seq, heads = excluded.heads",
        )?
        .execute(params![
            winner.subject,
            winner.field,
            winner.value,
            winner.dot.device,
            winner.dot.sequence,
            heads as i64,
        ])?;
    Ok(())
}
