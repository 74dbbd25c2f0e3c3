//! The platform's own place for keys: Secret Service, Keychain, Windows' credentials. A key is
//! found there by which key a record is sealed with, so that a folder that is moved keeps it.

use std::path::Path;

use drawwell_core::journal::{files, is_sealed, Key};

const SERVICE: &str = "Drawwell";

/// The key of a record: the one it is sealed with, where the platform keeps it; for one that is
/// not sealed a new one, once the platform has kept it and given it back. None where there is no
/// such place, or it refuses: then a sealed record stays closed, and another is not sealed.
pub(crate) fn key_of(record: &Path) -> Option<Key> {
    match files::sealed_with(record) {
        Some(which) => read(&which).filter(|key| key.which() == which),
        None if is_sealed(record) => None,
        None => {
            let key = Key::make().ok()?;
            keep(&key).then_some(key)
        }
    }
}

/// Keeps a key, and looks that it is kept.
pub(crate) fn keep(key: &Key) -> bool {
    write(key).is_some() && read(&key.which()).as_ref() == Some(key)
}

#[cfg(not(target_os = "android"))]
fn entry(which: &str) -> Option<keyring::Entry> {
    keyring::Entry::new(SERVICE, which).ok()
}

#[cfg(not(target_os = "android"))]
fn read(which: &str) -> Option<Key> {
    Key::from_figures(&entry(which)?.get_password().ok()?).ok()
}

#[cfg(not(target_os = "android"))]
fn write(key: &Key) -> Option<()> {
    entry(&key.which())?.set_password(key.figures()).ok()
}

// On a phone the host wraps the key itself.
#[cfg(target_os = "android")]
fn read(_: &str) -> Option<Key> {
    None
}

#[cfg(target_os = "android")]
fn write(_: &Key) -> Option<()> {
    None
}
