//! Where the file lies. A folder that was copied to a second machine, or put back from a copy,
//! would let two devices give out the same numbers: it is noticed by the file itself being
//! another, and the device goes on under a new name.
//!
//! What tells a file from its copy is its number in the file system and when it was made there.
//! A picture of a whole disk has both; that is not noticed.

use std::path::Path;
use std::time::UNIX_EPOCH;

use rusqlite::{params, Connection, OptionalExtension};

use crate::trouble::Trouble;

/// What a file is known by; none where the system tells nothing.
fn mark(path: &Path) -> Option<String> {
    let file = std::fs::metadata(path).ok()?;
    let made = file.created().ok().and_then(|at| at.duration_since(UNIX_EPOCH).ok()).map(|at| at.as_nanos());
    #[cfg(unix)]
    let number = Some(std::os::unix::fs::MetadataExt::ino(&file));
    #[cfg(not(unix))]
    let number: Option<u64> = None;
    match (number, made) {
        (None, None) => None,
        (number, made) => Some(format!("{}-{}", number.unwrap_or_default(), made.unwrap_or_default())),
    }
}

/// Whether the file is another than the one that was written in last.
pub(super) fn is_another(store: &Connection, path: &Path) -> Result<bool, Trouble> {
    let known: Option<String> = store.query_row("SELECT mark FROM place", [], |row| row.get(0)).optional()?;
    Ok(match (known, mark(path)) {
        (Some(known), Some(now)) => known != now,
        _ => false,
    })
}

/// Remembers which file it is, where that is not known or has changed.
pub(super) fn remember(store: &Connection, path: &Path) -> Result<(), Trouble> {
    let known: Option<String> = store.query_row("SELECT mark FROM place", [], |row| row.get(0)).optional()?;
    let now = mark(path);
    if now.is_some() && known != now {
        store.execute("INSERT OR REPLACE INTO place(only, mark) VALUES (1, ?1)", params![now])?;
    }
    Ok(())
}

/// Says in a copy of the store, under the name it is attached by, that it lies in another file
/// and is the same record still.
pub(super) fn move_to(store: &Connection, copy: &str, path: &Path) -> Result<(), Trouble> {
    if let Some(now) = mark(path) {
        store.execute(&format!("UPDATE {copy}.place SET mark = ?1"), params![now])?;
    }
    Ok(())
}
