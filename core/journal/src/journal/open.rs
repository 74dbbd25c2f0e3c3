//! Opening a file that is sound: made where there is none, brought up to date where it is
//! older, refused politely where it is newer.

use std::path::Path;

use rusqlite::{params, Connection, OptionalExtension};

use super::{files, follow, memory, place, row_number, schema, store, Journal, Key, Stamp};
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

    /// An empty journal in memory, in place of one that can't be opened; nothing is written in it.
    ///
    /// # Errors
    /// Where there is no memory for it.
    pub fn stand_in(path: &Path, now: Instant) -> Result<Self, Trouble> {
        let mut connection = memory::in_memory()?;
        schema::migrate(&mut connection, 0)?;
        follow::follow_the_data(&mut connection)?;
        own_name(&connection, "", path, now)?;
        connection.pragma_update(None, "query_only", true)?;
        Ok(Self { connection, path: path.to_owned(), key: None, device: UNNAMED.to_owned(), read_only: true })
    }

    /// Opens a file that is sound; damage is an error.
    pub(super) fn open_sound(path: &Path, device: &str, key: Option<&Key>, now: Instant) -> Result<Self, Trouble> {
        let (mut connection, version) = store::to_write(path, key)?;
        schema::migrate(&mut connection, version)?;
        follow::follow_the_data(&mut connection)?;
        let device = own_name(&connection, device, path, now)?;
        let journal = Self { connection, path: path.to_owned(), key: key.cloned(), device, read_only: false };
        journal.touch_every_table()?;
        private_file::close_to_others(path, 0o600);
        private_file::sweep(path);
        Ok(journal)
    }

    /// Opens a file that can't be written, on a disk that is full or may not be: what is in it
    /// can be read. What its log still holds can't be without writing, and then nothing is shown
    /// rather than less.
    pub(super) fn open_to_read(path: &Path, key: Option<&Key>) -> Result<Self, Trouble> {
        let cannot = || Trouble::new(Kind::ReadOnly, "trouble-read-only");
        if files::has_a_log(path) {
            return Err(cannot());
        }
        let key = key.filter(|_| files::tell(path, None) != files::Is::Plain);
        let connection = store::to_read(path, key)?;
        if schema::version(&connection)? != schema::VERSION {
            return Err(cannot());
        }
        let device = connection.query_row("SELECT device FROM clock", [], |row| row.get(0))?;
        let journal = Self { connection, path: path.to_owned(), key: key.cloned(), device, read_only: true };
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
            "milk_event",
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

/// A name of this device that was not used before: two that begin anew at one moment, or under a
/// clock that was set back, are not to give out the same numbers.
pub(super) fn again(device: &str, now: Instant) -> String {
    let mut bytes = [0_u8; 8];
    match getrandom::fill(&mut bytes) {
        Ok(()) => format!("{device}.{:016x}", u64::from_be_bytes(bytes)),
        Err(_) => format!("{device}.{}", now.unix_milliseconds()),
    }
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
