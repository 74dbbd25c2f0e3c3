//! A file of time and pressure, as a digital manometer writes it.
//!
//! In: rows of text, any of the separators, signs, units and ways to write a time that are
//! in use; read as a stream, so that a file of any size takes the memory of what is kept of
//! it. Out: a [`TraceFile`] on an even grid, in the file's own unit, with what was
//! noted on the way, or one [`Trouble`] that says what to do. [`rows`] cuts the stream into
//! lines of bounded length, [`layout`] finds out from the first of them how they are written,
//! [`cells`] reads one, [`clock`] puts their times in order, [`spikes`] finds lone
//! bad rows, and [`grid`] lays the others evenly.

mod cells;
mod clock;
mod grid;
mod header;
mod layout;
mod reading;
mod rows;
mod spikes;

use std::io::BufRead;

pub use crate::answer::trace::{Notes, Samples, TimeUnit, TraceFile};
use crate::trouble::Trouble;

/// Reads a trace.
///
/// # Errors
/// Where the file is no trace that could be read; the sentence says why, and the line where
/// it is about one.
pub fn read(file: &mut dyn BufRead) -> Result<TraceFile, Trouble> {
    reading::read(file)
}
