//! Backups that make themselves: copies beside the journal, thinned as they age.

use std::path::{Path, PathBuf};
use std::time::Duration;

use rusqlite::backup::Backup;
use rusqlite::Connection;

use super::files::{copies, made_at, with_ending, BACKUP};
use super::{store, Journal, Key};
use crate::private_file;
use crate::time::{Instant, Span};
use crate::trouble::{Kind, Trouble};

/// How many copies are kept.
pub const KEPT_BACKUPS: usize = 5;
/// No copy is made sooner than this after the last.
pub const APART: Span = Span::hours(6);

/// Copies the journal at a path if the last copy is old enough. Reads through
/// a connection of its own, so that taps go on meanwhile.
///
/// # Errors
/// Where the copy can't be made.
pub fn back_up(path: &Path, key: Option<&Key>, now: Instant) -> Result<Option<PathBuf>, Trouble> {
    if let Some(last) = copies(path, Some(now)).first().and_then(|p| made_at(p)) {
        let since = now.since(last);
        if since >= Span::milliseconds(0) && since < APART {
            return Ok(None);
        }
    }
    let source = store::once_more(path, key)?;
    let failed = |_| Trouble::new(Kind::Full, "trouble-disk");
    let (_, half_made) = private_file::half_made_beside(path).map_err(failed)?;
    let target = with_ending(path, &format!("{BACKUP}{}", now.unix_milliseconds()));
    let result = copy(&source, &half_made, key);
    if let Err(trouble) = result {
        std::fs::remove_file(&half_made).ok();
        return Err(trouble);
    }
    std::fs::rename(&half_made, &target).map_err(|_| Trouble::new(Kind::ReadOnly, "trouble-read-only"))?;
    // Never the one that was just made, whatever the names of the others say.
    let others = copies(path, Some(now)).into_iter().filter(|copy| *copy != target);
    for old in others.skip(KEPT_BACKUPS - 1) {
        std::fs::remove_file(old).ok();
    }
    Ok(Some(target))
}

fn copy(source: &Connection, target: &Path, key: Option<&Key>) -> Result<(), Trouble> {
    let mut copy = store::to_fill(target, key)?;
    Backup::new(source, &mut copy)?.run_to_completion(2000, Duration::ZERO, None)?;
    let sound: String = copy.query_row("PRAGMA quick_check(1)", [], |r| r.get(0))?;
    if sound != "ok" {
        return Err(Trouble::new(Kind::Damaged, "trouble-damaged"));
    }
    copy.pragma_update(None, "journal_mode", "DELETE")?;
    Ok(())
}

impl Journal {
    /// Copies this journal if the last copy is old enough.
    ///
    /// # Errors
    /// Where the copy can't be made.
    pub fn back_up(&self, now: Instant) -> Result<Option<PathBuf>, Trouble> {
        back_up(&self.path, self.key.as_ref(), now)
    }

    /// The copies of this journal, newest first.
    pub fn backups(&self) -> Vec<PathBuf> {
        copies(&self.path, None)
    }

    /// When the newest copy was made.
    pub fn last_backup(&self) -> Option<Instant> {
        copies(&self.path, None).first().and_then(|p| made_at(p))
    }
}
