//! What went wrong, told so that a person can act on it.
//!
//! Inside, a [`Trouble`] names a sentence by key; the sentence itself stands in
//! `core/locales`. It never holds personal data: no note, no name, no amount.

use thiserror::Error;

/// Stable kinds of trouble.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// What was given cannot be taken as it is.
    BadInput,
    /// Another program has the record open.
    Busy,
    /// The record may not be written here.
    ReadOnly,
    /// There is no room on the disk.
    Full,
    /// The record was written by a newer version.
    Newer,
    /// The file is damaged.
    Damaged,
    /// The record is sealed, and not with the key that was given.
    Locked,
    /// The file is not there, or may not be read.
    Missing,
    /// A fault of the program itself.
    Fault,
}

/// What went wrong: kind, field, and the sentence that tells it.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("{kind:?} {key} in `{field}`")]
pub struct Trouble {
    /// Stable kind.
    pub kind: Kind,
    /// The field it is about, or empty.
    pub field: String,
    /// Key of the sentence; `<key>-do` says what to do.
    pub key: &'static str,
    /// What the sentence needs, already fit to be read.
    pub needs: Vec<(&'static str, String)>,
}

impl Trouble {
    /// Trouble of a kind, told by a sentence.
    pub fn new(kind: Kind, key: &'static str) -> Self {
        Self { kind, field: String::new(), key, needs: Vec::new() }
    }

    /// Something given that cannot be taken.
    pub fn bad(field: &str, key: &'static str) -> Self {
        Self { field: field.to_owned(), ..Self::new(Kind::BadInput, key) }
    }

    /// Adds what the sentence needs.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<String>) -> Self {
        self.needs.push((name, value.into()));
        self
    }
}

/// A store's own words turned into ours; where no store is built in, there is nothing to turn.
#[cfg(feature = "store")]
impl From<rusqlite::Error> for Trouble {
    fn from(error: rusqlite::Error) -> Self {
        use rusqlite::{Error, ErrorCode as Code};
        if matches!(
            error,
            Error::InvalidColumnType(..)
                | Error::FromSqlConversionFailure(..)
                | Error::IntegralValueOutOfRange(..)
                | Error::Utf8Error(..)
                | Error::QueryReturnedNoRows
        ) {
            // Tables are STRICT: what is not of its column's type was not written by us.
            return Self::new(Kind::Damaged, "trouble-damaged");
        }
        let (kind, key) = match error.sqlite_error_code() {
            Some(Code::DatabaseBusy | Code::DatabaseLocked) => (Kind::Busy, "trouble-busy"),
            Some(Code::ReadOnly | Code::PermissionDenied | Code::AuthorizationForStatementDenied) => {
                (Kind::ReadOnly, "trouble-read-only")
            }
            Some(Code::DiskFull | Code::TooBig) => (Kind::Full, "trouble-full"),
            Some(Code::DatabaseCorrupt | Code::NotADatabase) => (Kind::Damaged, "trouble-damaged"),
            Some(Code::CannotOpen) => (Kind::Missing, "trouble-cannot-open"),
            Some(Code::SystemIoFailure) => (Kind::Full, "trouble-disk"),
            _ => (Kind::Fault, "trouble-fault"),
        };
        Self::new(kind, key)
    }
}
