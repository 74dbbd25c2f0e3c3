//! A damaged file is set aside, and everything that can be read is kept: its
//! own changes and those of the backups, which together are one set.

use super::beside::beside;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use rusqlite::{params, Connection, OpenFlags};

use super::{backup, row_number, Change, Journal};
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

pub(super) fn salvage(path: &Path, device: &str, now: Instant) -> Result<Salvaged, Trouble> {
    let set_aside = set_aside(path, now)?;
    let from_damaged = read_changes(&set_aside);
    let mut journal = Journal::open_sound(path, device, now)?;
    let from_file = journal.take_back(&from_damaged, now)?.taken;
    let copies = backup::copies(path, Some(now));
    // A key that is lost opens nothing any more: the first file that still has it gives it.
    for file in std::iter::once(&set_aside).chain(&copies) {
        journal.take_secrets_from(file);
    }
    let mut from_backup = 0;
    for copy in &copies {
        from_backup += journal.take_back(&read_changes(copy), now)?.taken;
    }
    journal.write_under_a_new_name(device, now)?;
    journal.rebuild()?;
    Ok(Salvaged { set_aside, from_file, from_backup })
}

/// Whether a file that can't be read is a record of ours, and no other file that somebody named
/// by mistake: that one stays where it is.
pub(super) fn is_ours(path: &Path) -> bool {
    let named = path.extension().is_some_and(|ending| ending == "drawwell");
    let has_log = std::fs::metadata(beside(path, "-wal")).is_ok_and(|log| log.len() > 0);
    named || has_log || !backup::copies(path, None).is_empty() || begins_as_ours(path)
}

fn begins_as_ours(path: &Path) -> bool {
    let mut beginning = Vec::new();
    let Ok(file) = std::fs::File::open(path) else { return false };
    if std::io::Read::read_to_end(&mut std::io::Read::take(file, 64 << 10), &mut beginning).is_err() {
        return false;
    }
    let owner = super::schema::APPLICATION_ID.to_be_bytes();
    let holds = |text: &[u8]| beginning.windows(text.len()).any(|part| part == text);
    beginning.get(68..72) == Some(&owner[..]) || holds(b"CREATE TABLE change(")
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
    let mut found = BTreeMap::new();
    // A damaged tree may lead round in circles: no file holds more rows than this.
    let most = std::fs::metadata(path).map_or(0, |m| m.len() / LEAST_ROW_BYTES);
    for order in ["ASC", "DESC"] {
        read_until_it_fails(&connection, order, most, &mut found);
    }
    // What lies between is looked up one by one: each goes down the tree by
    // itself and fails alone.
    let mut last: BTreeMap<i64, i64> = BTreeMap::new();
    for (row, change) in &found {
        let (device, sequence) = row_number::parts(*row);
        // The row's own number has no checksum; the change's has.
        if sequence == change.dot.sequence {
            last.insert(device, sequence);
        }
    }
    let sql = format!("SELECT {}, row FROM change WHERE row = ?1", Change::COLUMNS);
    if let Ok(mut one) = connection.prepare(&sql) {
        for (device, last) in last {
            for row in (1..=last + BEYOND).map(|sequence| row_number::row(device, sequence)) {
                if found.contains_key(&row) {
                    continue;
                }
                if let Ok((change, true)) = one.query_row(params![row], Change::from_row) {
                    found.insert(row, change);
                }
            }
        }
    }
    found.into_values().collect()
}

/// How many numbers are tried beyond the last one that could be read.
const BEYOND: i64 = 20_000;

/// No row of a change is shorter than this.
const LEAST_ROW_BYTES: u64 = 24;

fn read_until_it_fails(connection: &Connection, order: &str, most: u64, found: &mut BTreeMap<i64, Change>) {
    let sql = format!("SELECT {}, row FROM change ORDER BY row {order}", Change::COLUMNS);
    let Ok(mut statement) = connection.prepare(&sql) else { return };
    let Ok(mut rows) = statement.query([]) else { return };
    for _ in 0..most {
        let Ok(Some(row)) = rows.next() else { return };
        if let (Ok((change, true)), Ok(number)) = (Change::from_row(row), row.get(8)) {
            found.insert(number, change);
        }
    }
}
