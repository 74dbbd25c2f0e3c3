//! Opening a file that is sound: made where there is none, brought up to date where it is
//! older, refused politely where it is newer.

use super::beside::beside;
use std::path::Path;
use std::time::Duration;

use rusqlite::config::DbConfig;
use rusqlite::{params, Connection, OpenFlags, OptionalExtension};

use super::{follow, place, row_number, schema, Journal, Stamp};
use crate::limits;
use crate::private_file;
use crate::time::Instant;
use crate::trouble::{Kind, Trouble};

impl Journal {
    /// After a salvage some of this device's own numbers may be lost while
    /// another device knows them: it goes on under a name not used before.
    ///
    /// # Errors
    /// Where the store can't be written.
    pub fn write_under_a_new_name(&mut self, device: &str, now: Instant) -> Result<(), Trouble> {
        let name = again(device, now);
        write_under(&self.connection, &name, now)?;
        self.device = name;
        Ok(())
    }

    /// Opens a file that is sound; damage is an error.
    pub(super) fn open_sound(path: &Path, device: &str, now: Instant) -> Result<Self, Trouble> {
        refuse_truncated(path)?;
        // Made here, it is the person's alone before anything is in it; its log follows it.
        private_file::create_new(path).ok();
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
        follow::follow_the_data(&mut connection)?;
        let device = own_name(&connection, device, path, now)?;
        let journal = Self { connection, path: path.to_owned(), device, read_only: false };
        journal.touch_every_table()?;
        private_file::close_to_others(path, 0o600);
        private_file::sweep(path);
        Ok(journal)
    }

    /// Opens a file that can't be written, on a disk that is full or may not be: what is in it
    /// can be read. What its log still holds can't be without writing, and then nothing is shown
    /// rather than less.
    pub(super) fn open_to_read(path: &Path) -> Result<Self, Trouble> {
        let cannot = || Trouble::new(Kind::ReadOnly, "trouble-read-only");
        let log = beside(path, "-wal");
        if std::fs::metadata(log).is_ok_and(|log| log.is_file() && log.len() > 0) {
            return Err(cannot());
        }
        let mut address = String::from("file:");
        for byte in path.to_str().ok_or_else(cannot)?.bytes() {
            match byte {
                byte if byte.is_ascii_alphanumeric() || b"/.-_".contains(&byte) => address.push(char::from(byte)),
                byte => address.push_str(&format!("%{byte:02X}")),
            }
        }
        address.push_str("?mode=ro&immutable=1");
        let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_URI | OpenFlags::SQLITE_OPEN_NO_MUTEX;
        let connection = Connection::open_with_flags(address, flags)?;
        if schema::version(&connection)? != schema::VERSION {
            return Err(cannot());
        }
        connection.set_prepared_statement_cache_capacity(64);
        connection.pragma_update(None, "trusted_schema", false)?;
        let device = connection.query_row("SELECT device FROM clock", [], |row| row.get(0))?;
        let journal = Self { connection, path: path.to_owned(), device, read_only: true };
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
            "taken",
            "place",
        ] {
            self.connection
                .query_row(&format!("SELECT count(*) FROM (SELECT 1 FROM {table} LIMIT 1)"), [], |_| Ok(()))?;
        }
        Ok(())
    }
}

/// The name this device writes under: the one it first wrote under here, as long as this is the
/// same file and its numbers last.
fn own_name(connection: &Connection, device: &str, path: &Path, now: Instant) -> Result<String, Trouble> {
    let known: Option<String> = connection.query_row("SELECT device FROM clock", [], |row| row.get(0)).optional()?;
    let device = match device {
        "" => known.as_deref().map_or(UNNAMED, base),
        device => device,
    }
    .to_owned();
    let device = device.as_str();
    let name = match known {
        None => {
            connection.execute(
                "INSERT INTO clock(only, device, stamp, ahead_milliseconds) VALUES (1, ?1, 0, 0)",
                params![device],
            )?;
            device.to_owned()
        }
        Some(known) => {
            let own = known == device || known.starts_with(&format!("{device}."));
            if own && !place::is_another(connection, path)? && !numbers_are_used_up(connection, &known)? {
                known
            } else {
                // From another device: under our own name. From a copy of ours: under a new one.
                let name = if own { again(device, now) } else { device.to_owned() };
                write_under(connection, &name, now)?;
                name
            }
        }
    };
    place::remember(connection, path)?;
    Ok(name)
}

/// A device that has no name yet.
const UNNAMED: &str = "new";

/// A device's name without what tells one time that it began anew from another.
pub(super) fn base(device: &str) -> &str {
    device.split('.').next().unwrap_or_default()
}

impl Journal {
    /// Whether this device has a name of its own here.
    pub fn is_named(&self) -> bool {
        self.device != UNNAMED
    }

    /// The name of this device without what tells one time that it began anew from another.
    pub fn device_base(&self) -> &str {
        base(&self.device)
    }

    /// Names this device, which has written nothing yet.
    ///
    /// # Errors
    /// Where the store can't be written.
    pub fn name_device(&mut self, name: &str, now: Instant) -> Result<(), Trouble> {
        write_under(&self.connection, name, now)?;
        self.device = name.to_owned();
        Ok(())
    }
}

/// A name of this device that was not used before.
pub(super) fn again(device: &str, now: Instant) -> String {
    format!("{device}.{}", now.unix_milliseconds())
}

/// So many numbers are left where a device goes on under another name.
const NUMBERS_LEFT: i64 = 1 << 20;

fn numbers_are_used_up(connection: &Connection, device: &str) -> Result<bool, Trouble> {
    let Some(number) = row_number::of_device(connection, device)? else { return Ok(false) };
    let last: Option<i64> = connection.query_row(
        "SELECT max(row) FROM change WHERE row > ?1 AND row < ?2",
        params![row_number::row(number, 0), row_number::row(number + 1, 0)],
        |row| row.get(0),
    )?;
    Ok(last.is_some_and(|row| row_number::parts(row).1 > limits::NUMBERS - NUMBERS_LEFT))
}

/// From here on changes are written under a name, and stamped after all others but those that
/// are far ahead of now.
pub(super) fn write_under(connection: &Connection, name: &str, now: Instant) -> Result<(), Trouble> {
    let sane = Stamp::at(now).having_seen(Stamp::from_raw(i64::MAX), now);
    let latest: i64 = connection.query_row(
        "SELECT coalesce(max(stamp), 0) FROM change WHERE stamp <= ?1",
        params![sane.raw()],
        |row| row.get(0),
    )?;
    let stamp = Stamp::from_raw(latest);
    connection.execute("UPDATE clock SET device = ?1, stamp = max(stamp, ?2)", params![name, stamp.raw()])?;
    Ok(())
}

pub(super) fn not_a_record() -> Trouble {
    Trouble::new(Kind::BadInput, "trouble-not-a-record")
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
    let log = beside(path, "-wal");
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
