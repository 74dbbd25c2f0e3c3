//! What stays on this device: secret keys. No change, and so never merged, never in a file
//! that leaves; only the backups beside the record have it too.

use rusqlite::{params, OptionalExtension};

use super::Journal;
use crate::trouble::Trouble;

impl Journal {
    /// What is kept under a name.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn secret(&self, name: &str) -> Result<Option<String>, Trouble> {
        let found = self
            .connection
            .prepare_cached("SELECT value FROM secret WHERE name = ?1")?
            .query_row(params![name], |row| row.get(0))
            .optional()?;
        Ok(found)
    }

    /// Keeps values under names, all or none. What is kept already stays as it is: a key
    /// that was handed out must go on opening.
    ///
    /// # Errors
    /// Where the store can't be written.
    pub fn keep_secrets(&mut self, named: &[(&str, &str)]) -> Result<(), Trouble> {
        let store = self.begin()?;
        for (name, value) in named {
            store.execute("INSERT OR IGNORE INTO secret(name, value) VALUES (?1, ?2)", params![name, value])?;
        }
        store.commit()?;
        Ok(())
    }

    /// Keeps a value under a name in place of what was kept there: no key, but what is known of
    /// others' keys.
    ///
    /// # Errors
    /// Where the store can't be written.
    pub fn set_secret(&mut self, name: &str, value: &str) -> Result<(), Trouble> {
        let store = self.begin()?;
        store.execute("INSERT OR REPLACE INTO secret(name, value) VALUES (?1, ?2)", params![name, value])?;
        store.commit()?;
        Ok(())
    }
}
