//! What a network keeps of a family beside its rows, to know whether it changed and how long it
//! may be kept. It has dates, so it is in no table and no report.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::trouble::Stop;

/// What is kept of one family, by its pseudonym.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Entry {
    /// It is in the tables.
    Counted {
        /// What its record held: the same heads are not worked out again.
        heads: String,
        /// When its record changed last, in Unix milliseconds: an older copy says nothing new.
        changed: i64,
        /// When it said yes, in Unix milliseconds.
        given: i64,
        /// The last day that its yes holds on, as ISO 8601 has it, so that the order of texts is
        /// that of days.
        until: Option<String>,
    },
    /// It took its yes back, at that Unix millisecond: a copy that does not know is not taken in.
    Withdrawn {
        /// When.
        at: i64,
    },
    /// Not a family: a file that could not be read.
    Refused {
        /// What it held.
        heads: String,
    },
}

/// Those of one bucket.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Ledger(pub BTreeMap<String, Entry>);

impl Ledger {
    /// From its file.
    ///
    /// # Errors
    /// Where it is none.
    pub fn read(bytes: &[u8]) -> Result<Self, Stop> {
        serde_json::from_slice(bytes).map_err(|why| Stop::Json { what: "a ledger", why })
    }

    /// As its file.
    ///
    /// # Errors
    /// None that can be.
    pub fn write(&self) -> Result<Vec<u8>, Stop> {
        serde_json::to_vec(self).map_err(|why| Stop::Json { what: "a ledger", why })
    }
}
