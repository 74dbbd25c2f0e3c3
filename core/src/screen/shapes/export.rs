//! What leaves as a file.

use serde::{Deserialize, Serialize};

/// What leaves as a file.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum Export {
    /// The whole record in the exchange form.
    Record,
    /// The plan of the night as iCalendar.
    Calendar,
    /// The visit sheet as PDF.
    Sheet { paper: Paper },
    /// The page of a choice of pumps as PDF.
    Choice { paper: Paper },
    /// A table as CSV, by its name.
    Table { table: String },
    /// What the columns of a table hold, as a Table Schema.
    TableSchema { table: String },
    /// All tables in one zipped data package.
    Tables,
    /// The record as HL7 FHIR.
    HealthRecord,
    /// The record, sealed for a consultant.
    SealedFor { consultant: String },
    /// The record, sealed with the passphrase that was entered last.
    SealedByPassphrase,
    /// A plan, for the family it was written for.
    Plan { plan: String },
}

/// A size of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Paper {
    A4,
    Letter,
}
