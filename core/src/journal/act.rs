//! Acts: what a person did, so that it can be taken back, also after a restart.

use rusqlite::{params, Connection, OptionalExtension};
use serde_json::Value;

use super::{fold, row_number, Change, Journal, Writing};
use crate::time::Instant;
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
    writing: &Writing<'_>,
    first: i64,
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
        .execute(params![name, subject, undoes, writing.device(), first, writing.sequence()])?;
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
fn changed(store: &Connection, act: i64) -> Result<Vec<Difference>, Trouble> {
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

impl Journal {
    /// The act that would be taken back next.
    pub fn undoable(&self) -> Result<Option<Act>, Trouble> {
        self.find_act(
            "SELECT number, name, subject FROM act WHERE undoes = 0 AND undone = 0 ORDER BY number DESC LIMIT 1",
        )
    }

    /// The act that would be done again next. A new act makes an end of it.
    pub fn redoable(&self) -> Result<Option<Act>, Trouble> {
        self.find_act(
            "SELECT a.number, a.name, a.subject FROM act u JOIN act a ON a.number = u.undoes
             WHERE u.undoes > 0 AND u.undone = 0
             AND u.number > coalesce((SELECT max(number) FROM act WHERE undoes = 0), 0)
             ORDER BY u.number DESC LIMIT 1",
        )
    }

    fn find_act(&self, sql: &str) -> Result<Option<Act>, Trouble> {
        let found = self
            .connection
            .prepare_cached(sql)?
            .query_row([], |r| Ok(Act { number: r.get(0)?, name: r.get(1)?, subject: r.get(2)? }))
            .optional()?;
        Ok(found)
    }

    /// Takes the last act back. None where there is nothing to take back.
    pub fn undo(&mut self, now: Instant) -> Result<Option<Act>, Trouble> {
        let Some(act) = self.undoable()? else { return Ok(None) };
        self.act_of_kind(ActKind::Undo(act.number), &act.name, &act.subject, now, |writing| {
            let store = writing.store();
            for was in changed(store, act.number)?.into_iter().rev() {
                writing.set(&was.subject, &was.field, &was.before)?;
            }
            set_undone(store, act.number, true)
        })?;
        Ok(Some(act))
    }

    /// Does the act again that was taken back last.
    pub fn redo(&mut self, now: Instant) -> Result<Option<Act>, Trouble> {
        let Some(act) = self.redoable()? else { return Ok(None) };
        self.act_of_kind(ActKind::Redo, &act.name, &act.subject, now, |writing| {
            let store = writing.store();
            for is in changed(store, act.number)? {
                writing.set(&is.subject, &is.field, &is.after)?;
            }
            set_undone(store, act.number, false)?;
            store.prepare_cached("UPDATE act SET undone = 1 WHERE undoes = ?1")?.execute(params![act.number])?;
            Ok(())
        })?;
        Ok(Some(act))
    }
}

fn set_undone(store: &Connection, act: i64, undone: bool) -> Result<(), Trouble> {
    store.prepare_cached("UPDATE act SET undone = ?2 WHERE number = ?1")?.execute(params![act, undone])?;
    Ok(())
}
