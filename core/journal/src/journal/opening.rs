//! Opening a journal whatever its file is like: made where there is none, set aside and salvaged
//! where it is damaged, only read where it can't be written.

use std::path::Path;

use super::open::not_a_record;
use super::{salvage, Journal, Salvaged};
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
    /// and `_`, at most 32, stable for this device and used by no other; empty for one that
    /// goes on under the name it has here, or is named later ([`Self::is_named`]).
    ///
    /// # Errors
    /// Where it is no record of ours, is of a newer version, is busy, or can't be opened.
    pub fn open(path: &Path, device: &str, now: Instant) -> Result<Opened, Trouble> {
        let clean = device.len() <= 32 && device.chars().all(|c| c.is_ascii_alphanumeric() || c == '_');
        if !clean {
            return Err(Trouble::bad("device", "trouble-device-name"));
        }
        // A pipe would wait for somebody to write into it.
        if std::fs::metadata(path).is_ok_and(|there| !there.is_file()) {
            return Err(not_a_record());
        }
        match Self::open_sound(path, device, now) {
            Ok(journal) => Ok(Opened { journal, salvaged: None }),
            Err(trouble) if trouble.kind == Kind::Damaged => {
                if !salvage::is_ours(path) {
                    return Err(not_a_record());
                }
                let salvaged = salvage::salvage(path, device, now)?;
                Ok(Opened { journal: Self::open_sound(path, device, now)?, salvaged: Some(salvaged) })
            }
            Err(trouble) if matches!(trouble.kind, Kind::Full | Kind::ReadOnly | Kind::Missing) => {
                let journal = Self::open_to_read(path).map_err(|_| trouble)?;
                Ok(Opened { journal, salvaged: None })
            }
            Err(trouble) => Err(trouble),
        }
    }

    /// Sets a journal aside that turned out to be damaged while it was open,
    /// and opens what could be kept of it.
    ///
    /// # Errors
    /// Where it can't be set aside, or no new one be made.
    pub fn mend(path: &Path, device: &str, now: Instant) -> Result<Opened, Trouble> {
        let salvaged = salvage::salvage(path, device, now)?;
        Ok(Opened { journal: Self::open_sound(path, device, now)?, salvaged: Some(salvaged) })
    }
}
