//! Erasing for good. Changes are never changed, but a person may ask that nothing of them
//! stays: then all that was ever said of a record goes, and its room in the file with it.

use rusqlite::params;
use std::path::Path;

use super::Journal;
use crate::time::Instant;
use crate::trouble::{Kind, Trouble};

/// The field that says that a subject was erased: so its numbers are not used again.
const ERASED: &str = "erased";

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
                w.set(subject, ERASED, &serde_json::Value::Bool(true))?;
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

/// Erases a journal's file and everything beside it that was made from it: its log, its
/// backups, what was set aside.
///
/// # Errors
/// Where a file can't be removed; it is tried with all of them first.
pub fn erase_files(path: &Path) -> Result<(), Trouble> {
    let failed = || Trouble::new(Kind::ReadOnly, "trouble-cannot-erase");
    let (Some(folder), Some(name)) = (path.parent(), path.file_name().and_then(|n| n.to_str())) else {
        return Err(failed());
    };
    let mut all_gone = true;
    for entry in std::fs::read_dir(folder).into_iter().flatten().flatten() {
        let beside = entry.file_name();
        let Some(beside) = beside.to_str() else { continue };
        let made_from_it = beside == name
            || ["-wal", "-shm", "-journal", ".backup-", ".damaged-", ".half-"]
                .iter()
                .any(|ending| beside.strip_prefix(name).is_some_and(|rest| rest.starts_with(ending)));
        if made_from_it {
            all_gone &= std::fs::remove_file(entry.path()).is_ok();
        }
    }
    if all_gone {
        Ok(())
    } else {
        Err(failed())
    }
}
