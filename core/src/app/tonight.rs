//! Events of Tonight: a planned session moved, left out, put off; the plan as a calendar.

use std::io::Write;

use super::{App, Present};
use crate::screen::shapes::Effect;
use crate::time::Instant;
use crate::trouble::Trouble;

impl App {
    pub(super) fn move_planned(
        &mut self,
        _of: Instant,
        _steps: i32,
        _present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        Ok(Vec::new())
    }
    pub(super) fn skip_planned(&mut self, _of: Instant, _present: Present) -> Result<Vec<Effect>, Trouble> {
        Ok(Vec::new())
    }
    pub(super) fn snooze_planned(&mut self, _of: Instant, _present: Present) -> Result<Vec<Effect>, Trouble> {
        Ok(Vec::new())
    }
    pub(super) fn hand_over_calendar(&mut self, _present: Present) -> Result<Vec<Effect>, Trouble> {
        Ok(Vec::new())
    }
    pub(super) fn take_calendar_out(&mut self, _file: &mut dyn Write, _present: Present) -> Result<(), Trouble> {
        Ok(())
    }
}
