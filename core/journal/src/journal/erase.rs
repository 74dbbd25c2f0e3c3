//! Erasing for good. Changes are never changed, but a person may ask that nothing of them
//! stays: then all that was ever said of a record goes, and its room in the file with it.

use std::collections::BTreeSet;

use rusqlite::{params, Connection};
use serde_json::Value;

use super::{Difference, Journal};
use crate::time::Instant;
use crate::trouble::Trouble;

/// The field that says that a subject was erased: so its numbers are not used again.
pub(super) const ERASED: &str = "erased";

/// The subjects that were erased here or on another device.
pub(super) fn erased(store: &Connection) -> Result<BTreeSet<String>, Trouble> {
    let mut statement = store.prepare_cached("SELECT subject FROM field WHERE field = ?1 AND value = 'true'")?;
    let found = statement.query_map(params![ERASED], |row| row.get(0))?.collect::<Result<_, _>>()?;
    Ok(found)
}

/// Whether a subject was erased.
pub(super) fn is_erased(store: &Connection, subject: &str) -> Result<bool, Trouble> {
    let sql = "SELECT EXISTS(SELECT 1 FROM field WHERE subject = ?1 AND field = ?2 AND value = 'true')";
    Ok(store.prepare_cached(sql)?.query_row(params![subject, ERASED], |row| row.get(0))?)
}

/// Takes away what is here of subjects that another device has erased; what went, where it is to
/// be told.
pub(super) fn follow(store: &Connection, subjects: &[&str], tells: bool) -> Result<Vec<Difference>, Trouble> {
    let mut went = Vec::new();
    for subject in subjects {
        if tells {
            let mut statement = store.prepare_cached(
                "SELECT field, value FROM field WHERE subject = ?1 AND NOT (field = ?2) AND NOT (value = 'null')",
            )?;
            let mut rows = statement.query(params![subject, ERASED])?;
            while let Some(row) = rows.next()? {
                let value = row.get_ref(1)?.as_str().map_err(rusqlite::Error::from)?;
                went.push(Difference {
                    subject: (*subject).to_owned(),
                    field: row.get(0)?,
                    before: serde_json::from_str(value).unwrap_or(Value::Null),
                    after: Value::Null,
                });
            }
        }
        store.execute("DELETE FROM change WHERE subject = ?1 AND NOT (field = ?2)", params![subject, ERASED])?;
        store.execute("DELETE FROM taken WHERE subject = ?1", params![subject])?;
        store.execute("DELETE FROM act WHERE subject = ?1", params![subject])?;
    }
    if !subjects.is_empty() {
        super::projection::rebuild(store)?;
    }
    Ok(went)
}

impl Journal {
    /// Erases everything that was ever said of some subjects, with what undo still knew of
    /// it, and overwrites the room it took.
    ///
    /// # Errors
    /// Where the store can't be written.
    pub fn erase(&mut self, subjects: &[String], now: Instant) -> Result<(), Trouble> {
        // Said after them, so that this device's numbers go on from here.
        self.quiet_act(now, |w| {
            for subject in subjects {
                w.set(subject, ERASED, &Value::Bool(true))?;
            }
            Ok(())
        })?;
        self.connection.pragma_update(None, "secure_delete", true)?;
        let store = self.begin()?;
        for subject in subjects {
            store.execute("DELETE FROM change WHERE subject = ?1 AND NOT (field = ?2)", params![subject, ERASED])?;
        }
        // What undo keeps names what was done, and to what.
        store.execute_batch("DELETE FROM act; DELETE FROM taken;")?;
        super::projection::rebuild(&store)?;
        store.commit()?;
        self.connection.execute_batch("VACUUM; PRAGMA wal_checkpoint(TRUNCATE);")?;
        for backup in self.backups() {
            std::fs::remove_file(backup).ok();
        }
        Ok(())
    }
}
