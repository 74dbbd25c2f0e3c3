//! Backups that make themselves: copies beside the journal, thinned as they age.

use std::path::{Path, PathBuf};
use std::time::Duration;

use rusqlite::backup::Backup;
use rusqlite::{Connection, OpenFlags};

use super::salvage::beside;
use super::Journal;
use crate::time::{Instant, Span};
use crate::trouble::{Kind, Trouble};

/// How many copies are kept.
pub const KEPT_BACKUPS: usize = 5;
/// No copy is made sooner than this after the last.
pub const APART: Span = Span::hours(6);

const ENDING: &str = ".backup-";

/// The copies beside a journal, newest first.
pub(super) fn copies(path: &Path) -> Vec<PathBuf> {
    let (Some(folder), Some(name)) = (path.parent(), path.file_name().and_then(|n| n.to_str())) else {
        return Vec::new();
    };
    let prefix = format!("{name}{ENDING}");
    let mut found: Vec<(i64, PathBuf)> = std::fs::read_dir(folder)
        .into_iter()
        .flatten()
        .flatten()
        .filter_map(|entry| {
            let name = entry.file_name();
            let made: i64 = name.to_str()?.strip_prefix(&prefix)?.parse().ok()?;
            Some((made, entry.path()))
        })
        .collect();
    found.sort_by_key(|(made, _)| std::cmp::Reverse(*made));
    found.into_iter().map(|(_, path)| path).collect()
}

fn made_at(path: &Path) -> Option<Instant> {
    let name = path.file_name()?.to_str()?;
    let (_, made) = name.rsplit_once(ENDING)?;
    Some(Instant::from_unix_milliseconds(made.parse().ok()?))
}

/// Copies the journal at a path if the last copy is old enough. Reads through
/// a connection of its own, so that taps go on meanwhile.
pub fn back_up(path: &Path, now: Instant) -> Result<Option<PathBuf>, Trouble> {
    if let Some(last) = copies(path).first().and_then(|p| made_at(p)) {
        let since = now.since(last);
        if since >= Span::milliseconds(0) && since < APART {
            return Ok(None);
        }
    }
    let source = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_WRITE)?;
    source.busy_timeout(Duration::from_secs(2))?;
    let half_made = beside(path, ".backup-in-the-making");
    let target = beside(path, &format!("{ENDING}{}", now.unix_milliseconds()));
    let result = copy(&source, &half_made);
    if let Err(trouble) = result {
        std::fs::remove_file(&half_made).ok();
        return Err(trouble);
    }
    std::fs::rename(&half_made, &target).map_err(|_| Trouble::new(Kind::ReadOnly, "trouble-read-only"))?;
    for old in copies(path).into_iter().skip(KEPT_BACKUPS) {
        std::fs::remove_file(old).ok();
    }
    Ok(Some(target))
}

fn copy(source: &Connection, target: &Path) -> Result<(), Trouble> {
    let mut copy = Connection::open(target)?;
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
    pub fn back_up(&self, now: Instant) -> Result<Option<PathBuf>, Trouble> {
        back_up(&self.path, now)
    }

    /// The copies of this journal, newest first.
    pub fn backups(&self) -> Vec<PathBuf> {
        copies(&self.path)
    }

    /// When the newest copy was made.
    pub fn last_backup(&self) -> Option<Instant> {
        copies(&self.path).first().and_then(|p| made_at(p))
    }
}
