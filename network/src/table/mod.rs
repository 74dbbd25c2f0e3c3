//! The tables of a network, declared once: what is written, what is told of it in the docs and
//! what its data package says all follow from [`TABLES`].

pub mod cell;
pub mod declared;
pub mod package;

pub use cell::{Cell, Row};
pub use declared::{
    Checks, Comfort, Days, Families, FollowUp, Refills, Refused, Sessions, Trends, ALL as TABLES, VERSION,
};

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Holds {
    /// Whole numbers.
    Whole,
    /// Words or pseudonyms.
    Text,
}

/// A column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Column {
    /// Its name.
    pub name: &'static str,
    /// What it holds.
    pub holds: Holds,
    /// Whether it may say nothing.
    pub may_lack: bool,
    /// Its unit, or what its words are.
    pub unit: &'static str,
    /// What it means.
    pub meaning: &'static str,
}

/// A table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Table {
    /// Its name.
    pub name: &'static str,
    /// What one row is.
    pub one_row: &'static str,
    /// Where its figures come from.
    pub source: &'static str,
    /// Its columns, in order; the first is the family.
    pub columns: &'static [Column],
}

/// What becomes a row of a table.
pub trait IntoRow {
    /// Its table.
    const TABLE: Table;
    /// Its cells, in the order of the table's columns.
    fn into_row(self) -> Row;
}

impl Table {
    /// The table of a name.
    pub fn named(name: &str) -> Option<&'static Self> {
        TABLES.iter().find(|table| table.name == name)
    }
}
