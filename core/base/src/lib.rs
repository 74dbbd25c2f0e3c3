#![forbid(unsafe_code)]
#![warn(clippy::missing_errors_doc)]
//! What everything in Drawwell stands on: quantities, times, what can be written down, and what
//! can go wrong.
//!
//! No file and no store: a record here is fields by name, wherever they came from. Read [`record`]
//! first.

pub mod limits;
pub mod quantity;
pub mod record;
pub mod time;
pub mod trouble;
