//! Opening a journal whatever its file is like: made where there is none, moved under its key
//! where it is not sealed yet, set aside and salvaged where it is damaged, only read where it
//! can't be written.

use std::path::Path;

use super::open::not_a_record;
use super::{files, identify, recover, seal, store, Journal, Key, Salvaged};
use crate::time::Instant;
use crate::trouble::{Kind, Trouble};

/// An open journal, and what was salvaged if it had been damaged.
#[derive(Debug)]
pub struct Opened {
    /// The journal.
    pub journal: Journal,
    /// What was kept, where the file was damaged.
    pub salvaged: Option<Salvaged>,
    /// It was not sealed before, and is from now on.
    pub sealed_now: bool,
}

impl Journal {
    /// Opens a journal that is not sealed: see [`Self::open_with_key`].
    ///
    /// # Errors
    /// As there.
    pub fn open(path: &Path, device: &str, now: Instant) -> Result<Opened, Trouble> {
        Self::open_with_key(path, device, None, now)
    }

    /// Opens the journal at a path for a device, with the key it is sealed with; one that is not
    /// sealed yet is moved under that key first. `device` is letters, figures
    /// and `_`, at most 32, stable for this device and used by no other; empty for one that
    /// goes on under the name it has here, or is named later ([`Self::is_named`]).
    ///
    /// # Errors
    /// [`Kind::Locked`] where it is sealed and not with this key: nothing is touched then. A file
    /// that is not ours, newer, or in another program's hands.
    pub fn open_with_key(path: &Path, device: &str, key: Option<&Key>, now: Instant) -> Result<Opened, Trouble> {
        let clean = device.len() <= 32 && device.chars().all(|c| c.is_ascii_alphanumeric() || c == '_');
        if !clean {
            return Err(Trouble::bad("device", "trouble-device-name"));
        }
        // A pipe would wait for somebody to write into it.
        if std::fs::metadata(path).is_ok_and(|there| !there.is_file()) {
            return Err(not_a_record());
        }
        let brought = seal::brought_under(path, key, now);
        let sealed_now = brought.as_ref().is_ok_and(|brought| brought.sealed_now);
        match brought.and_then(|brought| Self::open_sound(path, device, brought.key, now)) {
            Ok(journal) => Ok(Opened { journal, salvaged: None, sealed_now }),
            Err(trouble) if trouble.kind == Kind::Damaged => {
                if !identify::is_ours(path) {
                    return Err(not_a_record());
                }
                Self::recover_with_key(path, device, key, now)
            }
            Err(trouble) if matches!(trouble.kind, Kind::Full | Kind::ReadOnly | Kind::Missing) => {
                let journal = Self::open_to_read(path, key).map_err(|why| match why.kind {
                    Kind::Locked => why,
                    _ => trouble,
                })?;
                Ok(Opened { journal, salvaged: None, sealed_now: false })
            }
            Err(trouble) => Err(trouble),
        }
    }

    /// [`Self::recover_with_key`] of a journal that is not sealed.
    ///
    /// # Errors
    /// As there.
    pub fn recover(path: &Path, device: &str, now: Instant) -> Result<Opened, Trouble> {
        Self::recover_with_key(path, device, None, now)
    }

    /// Sets a journal aside that turned out to be damaged while it was open,
    /// and opens what could be kept of it.
    ///
    /// # Errors
    /// [`Kind::Locked`] where it is not damaged but sealed with another key.
    pub fn recover_with_key(path: &Path, device: &str, key: Option<&Key>, now: Instant) -> Result<Opened, Trouble> {
        store::refuse_another_key(path, key)?;
        let salvaged = recover::salvage(path, device, key, now)?;
        Ok(Opened { journal: Self::open_sound(path, device, key, now)?, salvaged: Some(salvaged), sealed_now: false })
    }

    /// Whether its key lies beside it, under a recovery code.
    pub fn has_recovery(&self) -> bool {
        files::with_ending(&self.path, files::RECOVERY).is_file()
    }
}
