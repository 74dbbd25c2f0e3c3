//! What came of a file, as a page.

use super::state::{buzz, App, Present};
use crate::journal::Merged;
use crate::screen::shapes::{Effect, Place};
use crate::share::exchange::Report;
use crate::trouble::Trouble;

impl App {
    /// What came of changes, as a page.
    pub(super) fn report_merged(&mut self, merged: Merged, present: Present) -> Result<Vec<Effect>, Trouble> {
        let report = Report {
            taken: merged.taken,
            unchanged: merged.known,
            other: merged.other,
            erased: merged.erased,
            ahead: merged.ahead,
            ..Report::default()
        };
        self.report_import(report, present)
    }

    pub(super) fn report_import(&mut self, report: Report, present: Present) -> Result<Vec<Effect>, Trouble> {
        self.report = Some(report);
        self.go(Place::Report);
        let mut effects = self.session_effects(present)?;
        effects.extend(self.reminder_effects(present)?);
        effects.extend([buzz("bring-in"), Effect::Maintain]);
        Ok(effects)
    }
}
