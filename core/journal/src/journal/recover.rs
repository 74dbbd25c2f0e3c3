//! A damaged file is set aside, and everything that can be read is kept: its
//! own changes and those of the backups, which together are one set.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use rusqlite::{params, Connection};

use super::files;
use super::{row_number, seal, store, Change, Journal, Key};
use crate::time::Instant;
use crate::trouble::Trouble;

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

pub(super) fn salvage(path: &Path, device: &str, key: Option<&Key>, now: Instant) -> Result<Salvaged, Trouble> {
    let set_aside = files::set_aside(path, now)?;
    let from_damaged = read_changes(&set_aside, key);
    let mut journal = Journal::open_sound(path, device, key, now)?;
    let from_file = journal.take_back(&from_damaged, now)?.taken;
    let copies = files::copies(path, Some(now));
    // A key that is lost opens nothing any more: the first file that still has it gives it.
    for file in std::iter::once(&set_aside).chain(&copies) {
        journal.take_secrets_from(file, key);
    }
    let mut from_backup = 0;
    for copy in &copies {
        from_backup += journal.take_back(&read_changes(copy, key), now)?.taken;
    }
    // One without a name gets a new one from whoever names it, when it knows its keys.
    if !device.is_empty() {
        journal.write_under_a_new_name(device, now)?;
    }
    journal.rebuild()?;
    if let Some(key) = key {
        seal::what_lies_beside(path, key);
    }
    Ok(Salvaged { set_aside, from_file, from_backup })
}

/// Every change of a file that can be read and whose checksum holds.
pub(super) fn read_changes(path: &Path, key: Option<&Key>) -> Vec<Change> {
    // A damaged tree may lead round in circles: no file holds more rows than this.
    let most = std::fs::metadata(path).map_or(0, |m| m.len() / LEAST_ROW_BYTES);
    let mut found = BTreeMap::new();
    for connection in store::to_salvage(path, key) {
        read_as_far_as_it_goes(&connection, most, &mut found);
    }
    found.into_values().collect()
}

fn read_as_far_as_it_goes(connection: &Connection, most: u64, found: &mut BTreeMap<i64, Change>) {
    for order in ["ASC", "DESC"] {
        read_until_it_fails(connection, order, most, found);
    }
    // What lies between is looked up one by one: each goes down the tree by
    // itself and fails alone.
    let mut last: BTreeMap<i64, i64> = BTreeMap::new();
    for (row, change) in &*found {
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

impl Journal {
    /// Takes secrets that another file still has and this one has not; what can't be read is left.
    fn take_secrets_from(&mut self, file: &Path, key: Option<&Key>) {
        for other in store::to_salvage(file, key) {
            let Ok(mut statement) = other.prepare("SELECT name, value FROM secret") else { continue };
            let Ok(rows) = statement.query_map([], |row| Ok((row.get::<_, String>(0)?, row.get::<_, String>(1)?)))
            else {
                continue;
            };
            for (name, value) in rows.map_while(Result::ok) {
                self.keep_secrets(&[(&name, &value)]).ok();
            }
        }
    }
}
