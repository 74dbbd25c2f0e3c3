//! The record as tables: CSV (RFC 4180), each with a Table Schema beside it.
//!
//! In: a journal and which parts are left out. Out: one file a table. The columns
//! follow from the table of kinds, so that a new field is a new column by itself; a
//! column's name ends in its unit, and figures stand in that unit whatever the person
//! reads. What is unknown is an empty cell, never 0, and the cell beside it says why.
//! Text that a spreadsheet could take for a formula gets an apostrophe in front.
//! [`write_all`] puts all of them into one file. `docs/files.md` lists every column. Read [`table`] first, then [`column`].

mod cell;
mod column;
mod package;
mod schema;
mod table;
mod write;

pub use package::write_all;
pub use schema::schema;
pub use table::Table;
pub use write::{write, write_row};

/// Content type of a table.
pub const CONTENT_TYPE: &str = "text/csv";
/// Content type of all tables in one file.
pub const ALL_CONTENT_TYPE: &str = "application/zip";
/// Content type of a Table Schema (Frictionless Table Schema 1.0).
pub const SCHEMA_CONTENT_TYPE: &str = "application/json";
