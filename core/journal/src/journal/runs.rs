//! How long each pump ran, kept ready by pump and time.

use rusqlite::{params, Connection};

use super::Journal;
use crate::quantity::Count;
use crate::record::Run;
use crate::time::{Instant, Span};
use crate::trouble::Trouble;

/// Stands for "nobody knows how long".
const NOT_KNOWN: i64 = -1;

/// Brings the run of a session up to date.
pub(super) fn keep(store: &Connection, subject: &str, now: Option<&Run>) -> Result<(), Trouble> {
    match now {
        None => {
            store.prepare_cached("DELETE FROM run WHERE subject = ?1")?.execute(params![subject])?;
        }
        Some(run) => {
            let lasted = run.lasted.map_or(NOT_KNOWN, Span::in_milliseconds);
            store
                .prepare_cached(
                    "INSERT INTO run(subject, pump, at, milliseconds) VALUES (?1, ?2, ?3, ?4)
                     ON CONFLICT(subject) DO UPDATE SET pump = excluded.pump, at = excluded.at,
                     milliseconds = excluded.milliseconds
                     WHERE pump <> excluded.pump OR at <> excluded.at OR milliseconds <> excluded.milliseconds",
                )?
                .execute(params![subject, run.pump, run.at.unix_milliseconds(), lasted])?;
        }
    }
    Ok(())
}

/// How long a pump ran over a stretch of time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ran {
    /// Sessions whose length is known, taken together.
    pub span: Span,
    /// How many sessions there were.
    pub sessions: Count,
    /// How many of them have no known length: they are not in the span.
    pub of_unknown_length: Count,
}

impl Journal {
    /// How long a pump ran between two instants.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn ran(&self, pump: &str, from: Instant, until: Instant) -> Result<Ran, Trouble> {
        let found = self
            .connection
            .prepare_cached(
                "SELECT coalesce(sum(max(milliseconds, 0)), 0), count(*), coalesce(sum(milliseconds < 0), 0)
                 FROM run WHERE pump = ?1 AND at >= ?2 AND at < ?3",
            )?
            .query_row(params![pump, from.unix_milliseconds(), until.unix_milliseconds()], |row| {
                Ok(Ran {
                    span: Span::milliseconds(row.get(0)?),
                    sessions: Count::new(row.get(1)?),
                    of_unknown_length: Count::new(row.get(2)?),
                })
            })?;
        Ok(found)
    }
}
