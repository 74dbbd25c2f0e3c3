//! Acts taken back, and done again.

use super::act::{changed, Act, ActKind};
use super::Journal;
use crate::time::Instant;
use crate::trouble::Trouble;
use rusqlite::{params, Connection, OptionalExtension};

impl Journal {
    /// The act that would be taken back next.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn undoable(&self) -> Result<Option<Act>, Trouble> {
        self.find_act(
            "SELECT number, name, subject FROM act WHERE undoes = 0 AND undone = 0 ORDER BY number DESC LIMIT 1",
        )
    }

    /// The act that would be done again next. A new act makes an end of it.
    ///
    /// # Errors
    /// Where the store can't be read.
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
    ///
    /// # Errors
    /// Where the store can't be written.
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
    ///
    /// # Errors
    /// Where the store can't be written.
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
