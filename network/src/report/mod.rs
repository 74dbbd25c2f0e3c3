//! Reports: what a network may know of many families, and of none of them.
//!
//! In: the store. Out: counts and percentiles of cells of families. [`listed`] reads the ten SQL
//! texts, [`engine`] runs them over the store's files, [`small_cells`] takes out what would show a
//! few, [`released`] sees that no two reports of one store show a few between them, [`written`]
//! writes a file, [`picture`] draws it.

pub mod engine;
pub mod listed;
pub mod picture;
pub mod released;
pub mod small_cells;
pub mod written;

pub use listed::{Report, REPORTS};
pub use small_cells::{Published, Rule};

use crate::store::Store;
use crate::trouble::Stop;
use engine::Engine;

/// Works a report out and publishes it: what was suppressed says so, and a cell that would
/// differ from what was published before by a few families stays as it was.
///
/// # Errors
/// Where the store can't be read, or another rule was used before.
pub fn publish(store: &Store, report: &Report, rule: &Rule) -> Result<Published, Stop> {
    let engine = Engine::over(store)?;
    let found = engine.run(&report.sql())?;
    let now = small_cells::suppress(report, found, rule)?;
    released::publish(store, &engine, report, rule, now)
}
