//! What leaves the record and what comes in: the exchange form, tables, a health record,
//! the calendar, and traces.
//!
//! In: a journal. Out: bytes another program or another phone can read. Nothing
//! is worked out here.

pub mod bottle_link;
pub mod calendar;
pub mod exchange;
pub mod family_file;
pub mod file_kind;
pub mod health_record;
pub mod names;
pub mod parts;
pub mod plan;
pub mod sealed;
pub mod spreadsheet;
pub mod trace_file;
