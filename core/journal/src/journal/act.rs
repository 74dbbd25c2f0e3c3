//! Acts: what a person did, so that it can be taken back, also after a restart.

use rusqlite::{params, Connection};
use serde_json::Value;

use super::{fold, row_number, Change};
use crate::trouble::Trouble;

/// An act that can be taken back or done again.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Act {
    /// Its number.
    pub number: i64,
    /// Key of what it was, such as `finish`.
    pub name: String,
    /// The record it was about, or empty.
    pub subject: String,
}

/// How an act stands in the list of acts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum ActKind {
    /// Can be taken back.
    Undoable,
    /// Is not offered to be taken back.
    Quiet,
    /// Took another act back.
    Undo(i64),
    /// Did an act again that had been taken back.
    Redo,
}

const QUIET: i64 = -1;
const REDO: i64 = -2;

pub(super) fn keep(
    store: &Connection,
    kind: ActKind,
    name: &str,
    subject: &str,
    device: &str,
    (first, last): (i64, i64),
) -> Result<(), Trouble> {
    let undoes = match kind {
        ActKind::Undoable => 0,
        ActKind::Quiet => QUIET,
        ActKind::Redo => REDO,
        ActKind::Undo(number) => number,
    };
    store
        .prepare_cached(
            "INSERT INTO act(name, subject, undoes, undone, device, first_seq, last_seq)
             VALUES (?1, ?2, ?3, 0, ?4, ?5, ?6)",
        )?
        .execute(params![name, subject, undoes, device, first, last])?;
    Ok(())
}

/// One field before something was done, and after.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Difference {
    /// The record.
    pub subject: String,
    /// The field.
    pub field: String,
    /// Its value before, as JSON; null where it said nothing.
    pub before: Value,
    /// Its value after.
    pub after: Value,
}

/// What an act changed: by changes of this device, and by those that it took in.
pub(super) fn changed(store: &Connection, act: i64) -> Result<Vec<Difference>, Trouble> {
    let (device, first, last): (String, i64, i64) = store
        .prepare_cached("SELECT device, first_seq, last_seq FROM act WHERE number = ?1")?
        .query_row(params![act], |r| Ok((r.get(0)?, r.get(1)?, r.get(2)?)))?;
    let number = row_number::of_any_device(store, &device)?;
    let mut found = differences(store, number, first, last)?;
    let mut statement =
        store.prepare_cached("SELECT subject, field, before, after FROM taken WHERE act = ?1 ORDER BY number")?;
    let mut rows = statement.query(params![act])?;
    while let Some(row) = rows.next()? {
        let value =
            |column: usize| Ok::<_, Trouble>(read(row.get_ref(column)?.as_str().map_err(rusqlite::Error::from)?));
        found.push(Difference { subject: row.get(0)?, field: row.get(1)?, before: value(2)?, after: value(3)? });
    }
    Ok(found)
}

fn read(json: &str) -> Value {
    serde_json::from_str(json).unwrap_or(Value::Null)
}

/// What a device changed from one of its numbers to another.
pub(super) fn differences(
    store: &Connection,
    device_number: i64,
    first: i64,
    last: i64,
) -> Result<Vec<Difference>, Trouble> {
    let sql = format!("SELECT {} FROM change WHERE row BETWEEN ?1 AND ?2 ORDER BY row", Change::COLUMNS);
    let mut statement = store.prepare_cached(&sql)?;
    let changes: Vec<Change> = statement
        .query_map(params![row_number::row(device_number, first), row_number::row(device_number, last)], |r| {
            Change::from_row(r).map(|(c, _)| c)
        })?
        .collect::<Result<_, _>>()?;
    let mut out = Vec::with_capacity(changes.len());
    for change in changes {
        let before = match change.replaces.first() {
            Some(dot) => fold::change(store, dot)?,
            None => None,
        };
        out.push(Difference {
            before: before.map_or(Value::Null, |before| read(&before.value)),
            after: read(&change.value),
            subject: change.subject,
            field: change.field,
        });
    }
    Ok(out)
}

/// Keeps what an act took in from elsewhere, so that it can be taken back.
pub(super) fn keep_taken(store: &Connection, differences: &[Difference]) -> Result<(), Trouble> {
    let act: i64 = store.query_row("SELECT max(number) FROM act", [], |r| r.get(0))?;
    for (number, difference) in (0_i64..).zip(differences) {
        store
            .prepare_cached(
                "INSERT INTO taken(act, number, subject, field, before, after) VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
            )?
            .execute(params![
                act,
                number,
                difference.subject,
                difference.field,
                difference.before.to_string(),
                difference.after.to_string(),
            ])?;
    }
    Ok(())
}
