//! Looking for damage that no one has stepped on yet.

use std::path::Path;

use super::{store, Change, Journal, Key};
use crate::trouble::Trouble;

/// What a thorough look found.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Health {
    /// All is well.
    Sound,
    /// The changes are whole, but what was derived from them was not.
    ProjectionWrong,
    /// The file itself, or a change in it, is damaged.
    Damaged,
}

/// Checks the file's structure, every change's checksum, and that every
/// field says what its change says. Reads the whole file.
/// It reads through a connection of its own, so that what lies on the disk
/// is looked at and not what this one remembers of it.
///
/// # Errors
/// Where the file can't be looked at; damage is an answer, and no error.
pub fn verify(path: &Path, key: Option<&Key>) -> Result<Health, Trouble> {
    let connection = store::once_more(path, key)?;
    let sound: String = connection.query_row("PRAGMA quick_check(1)", [], |r| r.get(0))?;
    if sound != "ok" {
        return Ok(Health::Damaged);
    }
    let sql = format!("SELECT {} FROM change", Change::COLUMNS);
    let mut statement = connection.prepare(&sql)?;
    let mut rows = statement.query([])?;
    while let Some(row) = rows.next()? {
        if !Change::from_row(row)?.1 {
            return Ok(Health::Damaged);
        }
    }
    let wrong: i64 = connection.query_row(
        "SELECT EXISTS(SELECT 1 FROM field LEFT JOIN device ON device.name = field.device
         LEFT JOIN change ON change.row = device.number << 40 | field.device_seq
         WHERE (change.value IS NOT field.value AND NOT (change.value = '{\"gone\":true}' AND field.value = 'null')) OR change.subject IS NOT field.subject OR change.field IS NOT field.field)",
        [],
        |r| r.get(0),
    )?;
    Ok(if wrong == 0 { Health::Sound } else { Health::ProjectionWrong })
}

impl Journal {
    /// As [`verify`], for this journal.
    ///
    /// # Errors
    /// Where the file can't be looked at; damage is an answer, and no error.
    pub fn verify(&self) -> Result<Health, Trouble> {
        verify(&self.path, self.key.as_ref())
    }
}
