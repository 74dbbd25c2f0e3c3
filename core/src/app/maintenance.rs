//! Keeps a record safe: copies of it, and a look for damage.

use std::path::Path;

use super::state::{App, Present};
use crate::journal::{self, Health, Key};
use crate::screen::shapes::{Clock, Update};
use crate::trouble::Trouble;

impl App {
    /// Backs the record up and looks for damage. Slow with a long record: a
    /// host that must not wait calls [`maintain`] by itself and brings what
    /// came of it to [`Self::finish_maintenance`].
    ///
    /// # Errors
    /// As [`maintain`].
    pub fn maintain(&mut self, clock: &Clock) -> Result<Update, Trouble> {
        if self.is_locked() {
            return Ok(Update { screen: self.here(clock)?, effects: Vec::new() });
        }
        let outcome = maintain(&self.path, self.key_in_use().as_ref(), clock);
        self.finish_maintenance(outcome, clock)
    }

    /// Where the record lies.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Recovers what [`maintain`] found damaged.
    ///
    /// # Errors
    /// What was found, where it is damage: it is mended then, and told.
    pub fn finish_maintenance(&mut self, outcome: Result<Health, Trouble>, clock: &Clock) -> Result<Update, Trouble> {
        let (present, _) = Present::read(clock);
        if self.is_locked() {
            return Ok(Update { screen: self.here(clock)?, effects: Vec::new() });
        }
        match self.recovering(present, |_| outcome)? {
            Health::ProjectionWrong => self.journal_mut()?.rebuild()?,
            Health::Sound | Health::Damaged => {}
        }
        Ok(Update { screen: self.here(clock)?, effects: Vec::new() })
    }
}

/// Backs a record up if its last copy is old enough, and then looks for damage.
/// Reads through connections of its own, so that taps go on meanwhile.
///
/// # Errors
/// Where the copy can't be made, or the record is damaged.
pub fn maintain(path: &Path, key: Option<&Key>, clock: &Clock) -> Result<Health, Trouble> {
    let (present, _) = Present::read(clock);
    if journal::backup::back_up(path, key, present.now)?.is_none() {
        return Ok(Health::Sound);
    }
    match journal::verify(path, key)? {
        Health::Damaged => Err(Trouble::new(crate::trouble::Kind::Damaged, "trouble-damaged")),
        other => Ok(other),
    }
}
