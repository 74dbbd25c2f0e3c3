//! The journal: one SQLite file in which every change is kept for good.
//!
//! In: acts, each a few fields set at once. Out: records as folded from their
//! changes, days, and the changes themselves. Changes are the truth; records
//! and day rollups are a projection of them, written in the same transaction,
//! and can be rebuilt at any time with the same result. Read [`change`] first,
//! then [`fold`], [`writing`] and [`projection`]. On the disk: [`store`] opens every
//! connection, [`files`] knows every file of a record, [`seal`] moves one that is not
//! sealed under its [`key`], [`recover`] keeps what can be read of a damaged one.

pub mod act;
pub mod backup;
mod built;
pub mod change;
pub mod clock;
mod erase;
mod fields_read;
pub mod files;
mod fold;
mod follow;
mod identify;
mod image;
mod key;
mod memory;
mod merging;
mod milk_events;
mod open;
mod opening;
mod place;
pub mod projection;
mod reading;
pub mod recover;
mod removals;
mod restamp;
mod row_number;
mod runs;
mod schema;
mod seal;
mod secrets;
mod since;
mod store;
mod undo;
mod verify;
mod writing;

pub use crate::record::Row;
pub use act::{Act, Difference};
pub use backup::KEPT_BACKUPS;
pub use change::{Change, Dot, GONE};
pub use clock::Stamp;
pub use identify::is_sealed;
pub use key::Key;
pub use merging::Merged;
pub use opening::Opened;
pub use projection::DayRollup;
pub use reading::{Head, LateEdit};
pub use recover::Salvaged;
pub use removals::KeptDay;
pub use runs::Ran;
pub use since::Seen;
pub use store::opens;
pub use verify::{verify, Health};
pub use writing::Writing;

use std::path::{Path, PathBuf};

use rusqlite::{Transaction, TransactionBehavior};

use crate::trouble::Trouble;

/// An open journal.
#[derive(Debug)]
pub struct Journal {
    connection: rusqlite::Connection,
    path: PathBuf,
    /// What it is sealed with; nothing of one that is not.
    key: Option<Key>,
    device: String,
    /// Opened where nothing can be written.
    read_only: bool,
}

impl Journal {
    /// Where it lies.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// The name under which this device writes.
    pub fn device(&self) -> &str {
        &self.device
    }

    /// What it is sealed with; nothing of one that is not.
    pub fn key(&self) -> Option<&Key> {
        self.key.as_ref()
    }

    /// Whether it can only be read: on a disk that is full or may not be written.
    pub fn is_read_only(&self) -> bool {
        self.read_only
    }

    /// The bare connection, for tests that make the store fail.
    #[doc(hidden)]
    pub fn connection(&self) -> &rusqlite::Connection {
        &self.connection
    }

    /// As [`Self::connection`], to set its hooks.
    #[doc(hidden)]
    pub fn connection_mut(&mut self) -> &mut rusqlite::Connection {
        &mut self.connection
    }

    /// Begins to write. A beginning that was interrupted before may have left
    /// the store in a transaction that nobody holds: it is let go first.
    fn begin(&mut self) -> Result<Transaction<'_>, Trouble> {
        if !self.connection.is_autocommit() {
            self.connection.execute_batch("ROLLBACK")?;
        }
        Ok(self.connection.transaction_with_behavior(TransactionBehavior::Immediate)?)
    }
}
