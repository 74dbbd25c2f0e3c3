//! What went wrong, told so that a person can act on it.
//!
//! Inside, a [`Trouble`] names a sentence by key; the sentence itself stands in
//! `core/locales`. It never holds personal data: no note, no name, no amount.

use thiserror::Error;

use crate::quantity::{Quantity, Rounding, Unit};
use crate::time::Span;

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

/// What a sentence needs, with its type: figures and words come at the edge, in the person's
/// language.
#[derive(Debug, Clone, PartialEq)]
pub enum Detail {
    /// As somebody wrote it, or a name: of a file, a table, a heading.
    Text(String),
    /// The choices that there are, by their names in the record.
    Choices(Vec<String>),
    /// How many, or which line of a file.
    Count(u64),
    /// A figure; its unit, where it has one, is a [`Detail::Unit`] beside it.
    Figure {
        /// The figure, in that unit.
        value: f64,
        /// How many places are read of it.
        places: usize,
        /// Which way: what is said to be taken is taken.
        rounding: Rounding,
    },
    /// A unit, by its UCUM code.
    Unit(&'static str),
    /// A length of time.
    Span(Span),
    /// A day.
    Date(chrono::NaiveDate),
}

impl Detail {
    /// A quantity's figure in a unit; [`Detail::unit`] says the unit.
    pub fn figure<Q: Quantity>(quantity: Q, unit: Q::Unit, rounding: Rounding) -> Self {
        Self::Figure { value: quantity.in_unit(unit), places: unit.places(), rounding }
    }

    /// A number without a unit, or one whose unit stands in the sentence.
    pub fn number(value: f64, places: usize) -> Self {
        Self::Figure { value, places, rounding: Rounding::Nearest }
    }

    /// The unit of a figure.
    pub fn unit(unit: impl Unit) -> Self {
        Self::Unit(unit.ucum())
    }

    /// The choices that there are.
    pub fn choices<'a>(names: impl IntoIterator<Item = &'a str>) -> Self {
        Self::Choices(names.into_iter().map(str::to_owned).collect())
    }
}

impl From<&str> for Detail {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

impl From<String> for Detail {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

impl From<u32> for Detail {
    fn from(count: u32) -> Self {
        Self::Count(u64::from(count))
    }
}

impl From<u64> for Detail {
    fn from(count: u64) -> Self {
        Self::Count(count)
    }
}

impl From<usize> for Detail {
    fn from(count: usize) -> Self {
        Self::Count(count as u64)
    }
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
    /// What the sentence needs, as it is: whoever shows it renders it.
    pub needs: Vec<(&'static str, Detail)>,
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
    pub fn with(mut self, name: &'static str, value: impl Into<Detail>) -> Self {
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
