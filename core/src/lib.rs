#![forbid(unsafe_code)]
//! The record of milk expression, and the arithmetic between visits.
//!
//! Data goes one way: somebody records a fact, the [`journal`] keeps it, a
//! [`screen`] or a [`share`] shows it. [`app`] is the one reducer: an event and
//! the present moment in, a screen and effects out. There is no clock, no zone
//! of the machine, no randomness and no file but the journal in here.

pub mod answer;
pub mod app;
pub mod caseload;
pub mod gather;
pub mod guidance;
pub mod journal;
pub mod limits;
pub mod private_file;
pub mod quantity;
pub mod record;
pub mod screen;
pub mod share;
pub mod statistics;
pub mod text;
pub mod time;
pub mod trouble;
