//! The one door to the store: every connection is opened here, with its mode, its settings and
//! the key. Who asks says what for.

use std::path::Path;
use std::time::Duration;

use age::secrecy::ExposeSecret;
use rusqlite::config::DbConfig;
use rusqlite::{Connection, OpenFlags};

use super::files::{self, Is};
use super::{identify, image, schema, Key};
use crate::private_file;
use crate::trouble::{Kind, Trouble};

/// So long another program may hold the record before that is told.
const WAITS: Duration = Duration::from_secs(2);

/// Opens the record itself, to write; made where it is not there, for the person alone.
/// It gives the version of its tables, too.
///
/// # Errors
/// Those of [`refuse_another_key`]; damage; a file that is newer or not ours, untouched.
pub(super) fn to_write(path: &Path, key: Option<&Key>) -> Result<(Connection, i32), Trouble> {
    refuse_another_key(path, key)?;
    refuse_truncated(path, key)?;
    // Made here, it is the person's alone before anything is in it; its log follows it.
    private_file::create_new(path).ok();
    let connection = keyed(Connection::open(path)?, key)?;
    connection.busy_timeout(WAITS)?;
    let version = schema::version(&connection)?;
    connection.set_db_config(DbConfig::SQLITE_DBCONFIG_DEFENSIVE, true)?;
    connection.set_prepared_statement_cache_capacity(64);
    connection.pragma_update(None, "journal_mode", "WAL")?;
    connection.pragma_update(None, "synchronous", "FULL")?;
    connection.pragma_update(None, "foreign_keys", true)?;
    connection.pragma_update(None, "trusted_schema", false)?;
    connection.pragma_update(None, "cache_size", -8000)?;
    Ok((connection, version))
}

/// Opens the record where nothing can be written.
pub(super) fn to_read(path: &Path, key: Option<&Key>) -> Result<Connection, Trouble> {
    let cannot = || Trouble::new(Kind::ReadOnly, "trouble-read-only");
    refuse_another_key(path, key)?;
    let mut address = String::from("file:");
    for byte in path.to_str().ok_or_else(cannot)?.bytes() {
        match byte {
            byte if byte.is_ascii_alphanumeric() || b"/.-_".contains(&byte) => address.push(char::from(byte)),
            byte => address.push_str(&format!("%{byte:02X}")),
        }
    }
    address.push_str("?mode=ro&immutable=1");
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_URI | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let connection = keyed(Connection::open_with_flags(address, flags)?, key)?;
    connection.set_prepared_statement_cache_capacity(64);
    connection.pragma_update(None, "trusted_schema", false)?;
    Ok(connection)
}

/// A second connection to a store that is there, such as the record while it is open.
pub(super) fn once_more(path: &Path, key: Option<&Key>) -> Result<Connection, Trouble> {
    let connection = keyed(Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_WRITE)?, key)?;
    connection.busy_timeout(WAITS)?;
    Ok(connection)
}

/// A store to be filled, in a file that was made for it.
pub(super) fn to_fill(path: &Path, key: Option<&Key>) -> Result<Connection, Trouble> {
    keyed(Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_WRITE)?, key)
}

/// Every way to read a file that is damaged, as far as each goes.
pub(super) fn to_salvage(path: &Path, key: Option<&Key>) -> Vec<Connection> {
    let is = files::tell(path, key);
    let sealed = key.filter(|_| is != Is::Plain);
    let plain = (!matches!(is, Is::Sealed | Is::SealedWithIt)).then(|| once_more(path, None).ok()).flatten();
    let with_key = sealed.and_then(|key| once_more(path, Some(key)).ok());
    let in_memory = sealed.and_then(|key| image::read(path, key).ok());
    let all: Vec<Connection> = plain.into_iter().chain(with_key).chain(in_memory).collect();
    for connection in &all {
        // Lets SQLite read a file that is shorter than its header says.
        connection.pragma_update(None, "writable_schema", true).ok();
    }
    all
}

/// Lays a store that is yet to be filled beside one that is open, under a name.
pub(super) fn attach(connection: &Connection, path: &Path, name: &str, key: &Key) -> Result<(), Trouble> {
    let path = path.to_str().ok_or_else(|| Trouble::new(Kind::ReadOnly, "trouble-read-only"))?;
    let key = key.for_the_cipher();
    connection.execute(&format!("ATTACH ?1 AS {name} KEY ?2"), [path, key.expose_secret()])?;
    Ok(())
}

fn keyed(connection: Connection, key: Option<&Key>) -> Result<Connection, Trouble> {
    // It would tell of a wrong key on the terminal.
    connection.query_row("PRAGMA cipher_log_level = NONE", [], |_| Ok(())).ok();
    if let Some(key) = key {
        connection.pragma_update(None, "key", key.for_the_cipher().expose_secret())?;
    }
    Ok(connection)
}

/// Whether a file's first page can be read with a key.
pub fn opens(path: &Path, key: &Key) -> bool {
    files::tell(path, Some(key)) == Is::SealedWithIt || opens_it(path, key)
}

fn opens_it(path: &Path, key: &Key) -> bool {
    let read = |store: Connection| {
        store.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get::<_, i64>(0)).map_err(Trouble::from)
    };
    once_more(path, Some(key)).and_then(read).is_ok()
}

/// A record that is sealed with another key is whole: it is never to be taken for a damaged one.
///
/// # Errors
/// [`Kind::Locked`]: `trouble-no-key`, `trouble-other-key`.
pub(super) fn refuse_another_key(path: &Path, key: Option<&Key>) -> Result<(), Trouble> {
    let locked = |sentence| Err(Trouble::new(Kind::Locked, sentence));
    match (files::tell(path, key), key) {
        (Is::Sealed, None) => locked("trouble-no-key"),
        // Its very beginning is damaged, and what lies beside it tells what it was.
        (Is::Unknown, None) if identify::was_sealed(path, None) => locked("trouble-no-key"),
        // A byte of which key it is may be damaged.
        (Is::Sealed, Some(key)) if !opens(path, key) && !image::fits(path, key) => locked("trouble-other-key"),
        (Is::Unknown, Some(key)) if !opens(path, key) => {
            let known = image::fits(path, key) || identify::was_sealed(path, Some(key)) || identify::was_plain(path);
            match (known, identify::is_ours(path)) {
                (true, _) => Ok(()),
                (false, true) => locked("trouble-other-key"),
                (false, false) => Err(Trouble::new(Kind::BadInput, "trouble-not-a-record")),
            }
        }
        _ => Ok(()),
    }
}

/// A file shorter than its own header says has lost its end. Only where no
/// write-ahead log could still bring that end.
fn refuse_truncated(path: &Path, key: Option<&Key>) -> Result<(), Trouble> {
    use std::io::Read;
    let damaged = || Err(Trouble::new(Kind::Damaged, "trouble-damaged"));
    let length = std::fs::metadata(path).map_or(0, |file| file.len());
    if length == 0 || !path.is_file() {
        return Ok(());
    }
    if key.is_some() {
        // What it says of its length is sealed, and read when it is open.
        let whole = length.is_multiple_of(image::PAGE as u64) || files::has_a_log(path);
        return if whole { Ok(()) } else { damaged() };
    }
    let Ok(mut file) = std::fs::File::open(path) else { return Ok(()) };
    let mut header = [0_u8; 100];
    if file.read_exact(&mut header).is_err() {
        return damaged();
    }
    if files::has_a_log(path) {
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
