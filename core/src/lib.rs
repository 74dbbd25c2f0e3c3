#![forbid(unsafe_code)]
#![warn(clippy::missing_errors_doc)]
//! The record of milk expression, and the arithmetic between visits.
//!
//! Data goes one way: somebody records a fact, the [`journal`] keeps it, what a question needs is
//! [`gather`]ed, an [`answer`] is worked out, a [`screen`] or a [`share`] shows it. [`app`] is the one reducer: an event and
//! the present moment in, a screen and effects out. There is no clock, no zone
//! of the machine, no randomness and no file but the journal in here.

pub mod app;
pub mod caseload;
pub mod gather;
pub mod screen;
pub mod share;
pub mod text;

// The floors below, each a crate of its own, under the names they have in the house.
pub use drawwell_answers::{answer, guidance, statistics};
pub use drawwell_base::{limits, quantity, record, time, trouble};
pub use drawwell_journal::{journal, private_file};
