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
    /// Labels for kept milk as PDF: of one container, or of all there are where it is empty.
    Labels { on: LabelPaper, container: String },
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

/// Paper that labels are printed on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum LabelPaper {
    /// A4 with 24 labels of 70 by 37 mm.
    A4Of24,
    /// A4 with 65 labels of 38.1 by 21.2 mm.
    A4Of65,
    /// US letter with 30 labels of 2 5/8 by 1 inch.
    LetterOf30,
    /// Strips of 62 by 29 mm, one after the other.
    Strip,
}

/// A size of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Paper {
    A4,
    Letter,
}
