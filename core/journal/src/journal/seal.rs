//! A record that is not sealed is moved under its key once, whole or not at all.
//!
//! A sealed copy is made beside the plain file and held against it row by row. Then the plain
//! file steps aside, the sealed one takes its place, and the plain one is overwritten and
//! removed. Wherever that is broken off, the next opening finds by the names what is whole and
//! goes on from there: see [`finish`]. Safety copies and what was set aside follow the same way.

use std::io::{Read, Write};
use std::path::Path;

use rusqlite::Connection;

use super::files::{self, with_ending, Is, INDEX, LOG, SEALING, UNSEALED};
use super::{place, schema, store, Key};
use crate::private_file;
use crate::time::Instant;
use crate::trouble::{Kind, Trouble};

/// The key that a record now has, and whether it got it now.
pub(super) struct Brought<'a> {
    pub(super) key: Option<&'a Key>,
    pub(super) sealed_now: bool,
}

/// Brings a record under a key, or leaves one without a key as it is; the key it now has. Where
/// there is no room to move it, it is opened as it is, and moved another time.
///
/// # Errors
/// What stands in the way of opening it at all.
pub(super) fn brought_under<'a>(path: &Path, key: Option<&'a Key>, now: Instant) -> Result<Brought<'a>, Trouble> {
    let Some(key) = key else {
        put_back(path)?;
        return Ok(Brought { key: None, sealed_now: false });
    };
    for moved in files::half_moved(path) {
        finish(&moved, key, now)?;
    }
    let was_plain = files::tell(path, Some(key)) == Is::Plain;
    if was_plain {
        match move_over(path, key) {
            Err(trouble) if matches!(trouble.kind, Kind::Full | Kind::ReadOnly) => {
                std::fs::remove_file(with_ending(path, SEALING)).ok();
                return Ok(Brought { key: None, sealed_now: false });
            }
            moved => moved?,
        }
    }
    if store::refuse_another_key(path, Some(key)).is_ok() {
        what_lies_beside(path, key);
    }
    Ok(Brought { key: Some(key), sealed_now: was_plain })
}

/// Seals safety copies and what was set aside. What can't be done now is done another time.
pub(super) fn what_lies_beside(path: &Path, key: &Key) {
    for file in files::copies_and_set_aside(path) {
        // The log of a sealed file is sealed.
        let of_sealed = file.to_str().and_then(|name| name.strip_suffix(LOG)).map(Path::new);
        if of_sealed.is_some_and(|file| matches!(files::tell(file, Some(key)), Is::SealedWithIt | Is::Sealed)) {
            continue;
        }
        let sealed = match files::tell(&file, Some(key)) {
            Is::SealedWithIt | Is::Sealed | Is::Missing | Is::Empty => continue,
            Is::Plain => move_over(&file, key).or_else(|_| move_as_bytes(&file, key)),
            Is::Unknown => move_as_bytes(&file, key),
        };
        if sealed.is_err() {
            std::fs::remove_file(with_ending(&file, SEALING)).ok();
        }
    }
}

/// Without a key a record that stepped aside for its sealed copy, which never took its place, is
/// put back.
fn put_back(path: &Path) -> Result<(), Trouble> {
    let unsealed = with_ending(path, UNSEALED);
    if files::tell(path, None) == Is::Missing && unsealed.exists() {
        rename(&unsealed, path)?;
        std::fs::remove_file(with_ending(path, SEALING)).ok();
    }
    Ok(())
}

/// Goes on where a move was broken off.
fn finish(path: &Path, key: &Key, now: Instant) -> Result<(), Trouble> {
    let (sealing, unsealed) = (with_ending(path, SEALING), with_ending(path, UNSEALED));
    if !unsealed.exists() {
        // Nobody knows whether it is whole: it is made anew out of the plain file.
        std::fs::remove_file(&sealing).ok();
        return Ok(());
    }
    match files::tell(path, Some(key)) {
        Is::Missing | Is::Empty => {
            // The plain file steps aside only once the sealed copy was held against it.
            if files::tell(&sealing, Some(key)) == Is::SealedWithIt && store::opens(&sealing, key) {
                rename(&sealing, path)?;
                discard_plain(&unsealed, path, key, now)
            } else if sealing.exists() && files::tell(&sealing, Some(key)) == Is::Sealed {
                Err(Trouble::new(Kind::Locked, "trouble-other-key"))
            } else {
                std::fs::remove_file(&sealing).ok();
                rename(&unsealed, path)
            }
        }
        Is::SealedWithIt if store::opens(path, key) => discard_plain(&unsealed, path, key, now),
        // Another key, or damage: what is beside is not touched until the record itself opens.
        Is::SealedWithIt | Is::Sealed | Is::Unknown => Ok(()),
        // A plain file was put back by hand. Both are kept.
        Is::Plain => {
            std::fs::remove_file(&sealing).ok();
            rename(&unsealed, &files::name_aside(path, now))
        }
    }
}

/// Overwrites and removes the plain file, where the sealed one has every change that it has.
/// Where it has not, which nothing here makes, it is kept aside.
fn discard_plain(unsealed: &Path, sealed: &Path, key: &Key, now: Instant) -> Result<(), Trouble> {
    if holds_all_of(sealed, unsealed, key) {
        return files::wipe(unsealed);
    }
    rename(unsealed, &files::name_aside(sealed, now))
}

fn holds_all_of(sealed: &Path, plain: &Path, key: &Key) -> bool {
    // It is overwritten from its beginning on, and was held against it before that.
    if files::tell(plain, None) != Is::Plain {
        return true;
    }
    let lacks = || {
        let store = store::once_more(plain, None)?;
        if store
            .query_row("SELECT count(*) FROM sqlite_schema WHERE name = 'change'", [], |row| row.get::<_, i64>(0))?
            == 0
        {
            return Ok(0);
        }
        store::attach(&store, sealed, "sealed", key)?;
        let sql = "SELECT EXISTS(SELECT row, crc FROM main.change EXCEPT SELECT row, crc FROM sealed.change)";
        Ok::<i64, Trouble>(store.query_row(sql, [], |row| row.get(0))?)
    };
    lacks().is_ok_and(|lacks| lacks == 0)
}

/// Moves one store under a key.
fn move_over(path: &Path, key: &Key) -> Result<(), Trouble> {
    let (sealing, unsealed) = (with_ending(path, SEALING), with_ending(path, UNSEALED));
    let plain = store::once_more(path, None)?;
    // A newer file, and one that is not ours, stay as they are.
    schema::version(&plain)?;
    let sound: String = plain.query_row("PRAGMA quick_check(1)", [], |row| row.get(0))?;
    if sound != "ok" {
        return Err(Trouble::new(Kind::Damaged, "trouble-damaged"));
    }
    // Nobody else has it open from here on, and nothing of it lies in its log.
    plain.pragma_update(None, "locking_mode", "EXCLUSIVE")?;
    let mode: String = plain.query_row("PRAGMA journal_mode = DELETE", [], |row| row.get(0))?;
    if mode != "delete" {
        return Err(Trouble::new(Kind::Busy, "trouble-busy"));
    }
    let same_place = !place::is_another(&plain, path).unwrap_or(true);
    new_file(&sealing)?;
    store::attach(&plain, &sealing, "sealed", key)?;
    plain.execute_batch("BEGIN EXCLUSIVE")?;
    plain.query_row("SELECT sqlcipher_export('sealed')", [], |_| Ok(()))?;
    for number in ["user_version", "application_id"] {
        let value: i32 = plain.query_row(&format!("PRAGMA main.{number}"), [], |row| row.get(0))?;
        plain.pragma_update(Some("sealed"), number, value)?;
    }
    hold_against(&plain)?;
    if same_place {
        // It is the same file still, under another number of the file system.
        place::move_to(&plain, "sealed", &sealing)?;
    }
    plain.execute_batch("COMMIT")?;
    plain.execute_batch("DETACH sealed")?;
    check(&sealing, key)?;
    // Windows renames no file that is open; elsewhere the lock is held to the end.
    #[cfg(not(unix))]
    plain.close().map_err(|(_, why)| why)?;
    change_places(path, &sealing, &unsealed)?;
    files::wipe(&unsealed)?;
    for ending in [LOG, INDEX] {
        std::fs::remove_file(with_ending(&unsealed, ending)).ok();
    }
    Ok(())
}

/// Every table of the plain store is in the sealed one, row by row.
fn hold_against(store: &Connection) -> Result<(), Trouble> {
    let differs = || Trouble::new(Kind::Fault, "trouble-fault");
    let names = |of: &str| -> Result<Vec<String>, Trouble> {
        let sql = format!("SELECT name || '|' || coalesce(sql, '') FROM {of}.sqlite_schema ORDER BY 1");
        let mut statement = store.prepare(&sql)?;
        let found = statement.query_map([], |row| row.get(0))?.collect::<Result<_, _>>()?;
        Ok(found)
    };
    if names("main")? != names("sealed")? {
        return Err(differs());
    }
    let mut statement = store.prepare("SELECT name FROM main.sqlite_schema WHERE type = 'table'")?;
    let tables = statement.query_map([], |row| row.get::<_, String>(0))?.collect::<Result<Vec<_>, _>>()?;
    for table in tables {
        let sql = format!(
            "SELECT (SELECT count(*) FROM main.\"{table}\") = (SELECT count(*) FROM sealed.\"{table}\")
             AND NOT EXISTS(SELECT * FROM main.\"{table}\" EXCEPT SELECT * FROM sealed.\"{table}\")"
        );
        if !store.query_row(&sql, [], |row| row.get::<_, bool>(0))? {
            return Err(differs());
        }
    }
    Ok(())
}

/// The sealed copy, read anew from the disk: every page's sum, and the store's own check.
fn check(sealing: &Path, key: &Key) -> Result<(), Trouble> {
    let store = store::once_more(sealing, Some(key))?;
    let wrong = store.prepare("PRAGMA cipher_integrity_check")?.exists([])?;
    let sound: String = store.query_row("PRAGMA quick_check(1)", [], |row| row.get(0))?;
    if wrong || sound != "ok" {
        return Err(Trouble::new(Kind::Full, "trouble-disk"));
    }
    Ok(())
}

/// Bytes in a piece of a file that no store reads any more.
const PIECE: u64 = 1 << 20;

/// A damaged file, byte by byte as rows of a sealed store: `SELECT bytes FROM piece ORDER BY number`.
fn move_as_bytes(path: &Path, key: &Key) -> Result<(), Trouble> {
    let (sealing, unsealed) = (with_ending(path, SEALING), with_ending(path, UNSEALED));
    let cannot = |_| Trouble::new(Kind::Full, "trouble-disk");
    new_file(&sealing)?;
    let store = store::to_fill(&sealing, Some(key))?;
    store.execute_batch("BEGIN; CREATE TABLE piece(number INTEGER PRIMARY KEY, bytes BLOB NOT NULL) STRICT;")?;
    let mut file = private_file::open(path)?;
    loop {
        let mut piece = Vec::new();
        Read::by_ref(&mut file).take(PIECE).read_to_end(&mut piece).map_err(cannot)?;
        if piece.is_empty() {
            break;
        }
        store.execute("INSERT INTO piece(bytes) VALUES (?1)", [piece])?;
    }
    store.execute_batch("COMMIT")?;
    drop(store);
    check(&sealing, key)?;
    let same = bytes_of(&sealing, key)? == std::fs::read(path).map_err(cannot)?;
    if !same {
        return Err(Trouble::new(Kind::Full, "trouble-disk"));
    }
    change_places(path, &sealing, &unsealed)?;
    files::wipe(&unsealed)
}

fn bytes_of(sealed: &Path, key: &Key) -> Result<Vec<u8>, Trouble> {
    let store = store::once_more(sealed, Some(key))?;
    let mut statement = store.prepare("SELECT bytes FROM piece ORDER BY number")?;
    let mut all = Vec::new();
    let mut rows = statement.query([])?;
    while let Some(row) = rows.next()? {
        all.write_all(row.get_ref(0)?.as_blob().map_err(rusqlite::Error::from)?).ok();
    }
    Ok(all)
}

fn new_file(path: &Path) -> Result<(), Trouble> {
    for ending in ["", LOG, INDEX, "-journal"] {
        std::fs::remove_file(with_ending(path, ending)).ok();
    }
    private_file::create_new(path).map(drop).map_err(|_| Trouble::new(Kind::Full, "trouble-disk"))
}

fn change_places(path: &Path, sealing: &Path, unsealed: &Path) -> Result<(), Trouble> {
    rename(path, unsealed)?;
    rename(sealing, path)
}

/// Renames a file, and lets that reach the disk before anything that rests on it.
fn rename(from: &Path, to: &Path) -> Result<(), Trouble> {
    std::fs::rename(from, to).map_err(|_| Trouble::new(Kind::ReadOnly, "trouble-read-only"))?;
    files::keep_folder(to);
    Ok(())
}
