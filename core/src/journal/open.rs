//! Opening a journal: made where there is none, brought up to date where it is
//! older, refused politely where it is newer, set aside and salvaged where it
//! is damaged.

use std::path::Path;
use std::time::Duration;

use rusqlite::config::DbConfig;
use rusqlite::{params, Connection};

use super::{built, salvage, schema, Journal, Salvaged};
use crate::time::Instant;
use crate::trouble::{Kind, Trouble};

/// An open journal, and what was salvaged if it had been damaged.
#[derive(Debug)]
pub struct Opened {
    /// The journal.
    pub journal: Journal,
    /// What was kept, where the file was damaged.
    pub salvaged: Option<Salvaged>,
}

impl Journal {
    /// Opens the journal at a path for a device. `device` is letters, figures
    /// and `_`, at most 32, stable for this device and used by no other.
    pub fn open(path: &Path, device: &str, now: Instant) -> Result<Opened, Trouble> {
        let clean = (1..=32).contains(&device.len()) && device.chars().all(|c| c.is_ascii_alphanumeric() || c == '_');
        if !clean {
            return Err(Trouble::bad("device", "trouble-device-name"));
        }
        match Self::open_sound(path, device) {
            Ok(journal) => Ok(Opened { journal, salvaged: None }),
            Err(trouble) if trouble.kind == Kind::Damaged => {
                let salvaged = salvage::salvage(path, device, now)?;
                Ok(Opened { journal: Self::open_sound(path, device)?, salvaged: Some(salvaged) })
            }
            Err(trouble) => Err(trouble),
        }
    }

    /// Sets a journal aside that turned out to be damaged while it was open,
    /// and opens what could be kept of it.
    pub fn mend(path: &Path, device: &str, now: Instant) -> Result<Opened, Trouble> {
        let salvaged = salvage::salvage(path, device, now)?;
        Ok(Opened { journal: Self::open_sound(path, device)?, salvaged: Some(salvaged) })
    }

    /// Opens a file that is sound; damage is an error.
    pub(super) fn open_sound(path: &Path, device: &str) -> Result<Self, Trouble> {
        refuse_truncated(path)?;
        let mut connection = Connection::open(path)?;
        connection.busy_timeout(Duration::from_secs(2))?;
        let version = schema::version(&connection)?;
        connection.set_db_config(DbConfig::SQLITE_DBCONFIG_DEFENSIVE, true)?;
        connection.set_prepared_statement_cache_capacity(64);
        connection.pragma_update(None, "journal_mode", "WAL")?;
        connection.pragma_update(None, "synchronous", "FULL")?;
        connection.pragma_update(None, "foreign_keys", true)?;
        connection.pragma_update(None, "trusted_schema", false)?;
        connection.pragma_update(None, "cache_size", -8000)?;
        schema::migrate(&mut connection, version)?;
        built::follow_the_data(&mut connection)?;
        let device = own_name(&connection, device)?;
        let journal = Self { connection, path: path.to_owned(), device };
        journal.touch_every_table()?;
        Ok(journal)
    }

    fn touch_every_table(&self) -> Result<(), Trouble> {
        for table in [
            "device",
            "change",
            "act",
            "clock",
            "field",
            "awaited",
            "record",
            "day_rollup",
            "removal",
            "day_production",
            "run",
            "secret",
            "built",
        ] {
            self.connection
                .query_row(&format!("SELECT count(*) FROM (SELECT 1 FROM {table} LIMIT 1)"), [], |_| Ok(()))?;
        }
        Ok(())
    }
}

/// The name this device writes under: the one it first wrote under here.
fn own_name(connection: &Connection, device: &str) -> Result<String, Trouble> {
    connection.execute(
        "INSERT INTO clock(only, device, stamp, ahead_milliseconds)
         SELECT 1, ?1, 0, 0 WHERE NOT EXISTS (SELECT 1 FROM clock)",
        params![device],
    )?;
    let known: String = connection.query_row("SELECT device FROM clock", [], |r| r.get(0))?;
    if known == device || known.starts_with(&format!("{device}.")) {
        return Ok(known);
    }
    // The file came from another device: write under our own name from here on.
    write_under(connection, device)?;
    Ok(device.to_owned())
}

/// From here on changes are written under a name, and stamped after all others.
pub(super) fn write_under(connection: &Connection, name: &str) -> Result<(), Trouble> {
    connection.execute(
        "UPDATE clock SET device = ?1, stamp = max(stamp, coalesce((SELECT max(stamp) FROM change), 0))",
        params![name],
    )?;
    Ok(())
}

/// A file shorter than its own header says has lost its end. Only where no
/// write-ahead log could still bring that end.
fn refuse_truncated(path: &Path) -> Result<(), Trouble> {
    use std::io::Read;
    let Ok(mut file) = std::fs::File::open(path) else { return Ok(()) };
    let length = file.metadata().map(|m| m.len()).unwrap_or(0);
    if length == 0 || !path.is_file() {
        return Ok(());
    }
    let mut header = [0_u8; 100];
    let damaged = || Err(Trouble::new(Kind::Damaged, "trouble-damaged"));
    if file.read_exact(&mut header).is_err() {
        return damaged();
    }
    let log = salvage::beside(path, "-wal");
    if std::fs::metadata(log).map(|m| m.len() > 0).unwrap_or(false) {
        return Ok(());
    }
    let be = |range: std::ops::Range<usize>| {
        header.get(range).unwrap_or_default().iter().fold(0_u64, |n, b| n << 8 | u64::from(*b))
    };
    let page = match be(16..18) {
        1 => 65_536,
        size => size,
    };
    if page * be(28..32) > length {
        return damaged();
    }
    Ok(())
}
