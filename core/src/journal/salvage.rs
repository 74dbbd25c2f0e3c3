//! A damaged file is set aside, and everything that can be read is kept: its
//! own changes and those of the backups, which together are one set.

use std::path::{Path, PathBuf};

use rusqlite::{params, Connection, OpenFlags};

use super::{backup, Change, Journal};
use crate::time::Instant;
use crate::trouble::{Kind, Trouble};

/// What was kept of a damaged journal.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Salvaged {
    /// Where the damaged file now lies.
    pub set_aside: PathBuf,
    /// Changes read from the damaged file.
    pub from_file: u64,
    /// Changes that only a backup still had.
    pub from_backup: u64,
}

/// A path with an ending added to its name.
pub(super) fn beside(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}

pub(super) fn salvage(path: &Path, device: &str, now: Instant) -> Result<Salvaged, Trouble> {
    let set_aside = set_aside(path, now)?;
    let from_damaged = read_changes(&set_aside);
    let mut journal = Journal::open_sound(path, device)?;
    let from_file = journal.merge(&from_damaged, now)?.taken;
    let mut from_backup = 0;
    for copy in backup::copies(path) {
        from_backup += journal.merge(&read_changes(&copy), now)?.taken;
    }
    journal.write_under_a_new_name(device, now)?;
    journal.rebuild()?;
    Ok(Salvaged { set_aside, from_file, from_backup })
}

/// Moves a file and its log aside, under a name that is not taken.
fn set_aside(path: &Path, now: Instant) -> Result<PathBuf, Trouble> {
    let mut target = beside(path, &format!(".damaged-{}", now.unix_milliseconds()));
    let mut again = 0;
    while target.exists() {
        again += 1;
        target = beside(path, &format!(".damaged-{}-{again}", now.unix_milliseconds()));
    }
    let fail = |_| Trouble::new(Kind::ReadOnly, "trouble-read-only");
    std::fs::rename(path, &target).map_err(fail)?;
    for ending in ["-wal", "-shm"] {
        let part = beside(path, ending);
        if part.exists() {
            std::fs::rename(&part, beside(&target, ending)).map_err(fail)?;
        }
    }
    Ok(target)
}

/// Every change of a file that can be read and whose checksum holds.
pub(super) fn read_changes(path: &Path) -> Vec<Change> {
    let Ok(connection) = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_WRITE) else {
        return Vec::new();
    };
    // Lets SQLite read a file that is shorter than its header says.
    connection.pragma_update(None, "writable_schema", true).ok();
    let mut found = Vec::new();
    let last = forward(&connection, &mut found).unwrap_or(0);
    // Past the first page that can't be read, row by row: each goes down the
    // tree by itself and fails alone.
    let highest = connection
        .query_row("SELECT max(row) FROM change", [], |r| r.get::<_, Option<i64>>(0))
        .ok()
        .flatten()
        .unwrap_or(last + GUESS);
    let sql = format!("SELECT {} FROM change WHERE row = ?1", Change::COLUMNS);
    if let Ok(mut one) = connection.prepare(&sql) {
        for row in last + 1..=highest {
            if let Ok((change, true)) = one.query_row(params![row], Change::from_row) {
                found.push(change);
            }
        }
    }
    found
}

/// Rows to try where the highest number can't be read either.
const GUESS: i64 = 100_000;

/// Reads rows in order until the first that fails; the last row's number.
fn forward(connection: &Connection, found: &mut Vec<Change>) -> Option<i64> {
    let sql = format!("SELECT {}, row FROM change ORDER BY row", Change::COLUMNS);
    let mut statement = connection.prepare(&sql).ok()?;
    let mut rows = statement.query([]).ok()?;
    let mut last = 0;
    while let Ok(Some(row)) = rows.next() {
        last = row.get(8).unwrap_or(last);
        if let Ok((change, true)) = Change::from_row(row) {
            found.push(change);
        }
    }
    Some(last)
}

impl Journal {
    /// After a salvage some of this device's own numbers may be lost while
    /// another device knows them: it goes on under a name not used before.
    fn write_under_a_new_name(&mut self, device: &str, now: Instant) -> Result<(), Trouble> {
        let name = format!("{device}.{}", now.unix_milliseconds());
        self.connection.execute("UPDATE clock SET device = ?1, device_seq = 0", params![name])?;
        self.device = name;
        Ok(())
    }
}
