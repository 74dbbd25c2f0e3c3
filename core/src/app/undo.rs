//! Undo and redo.

use super::state::{buzz, App, Present};
use crate::screen::shapes::{Effect, Tone};
use crate::trouble::Trouble;

impl App {
    pub(super) fn undo(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        if self.journal_mut()?.undo(present.now)?.is_none() {
            self.tell("nothing-to-undo", Tone::Quiet);
            return Ok(Vec::new());
        }
        self.go_on_with_what_need_not_end(present)?;
        let mut effects = self.session_effects(present)?;
        effects.push(buzz("undo"));
        Ok(effects)
    }

    pub(super) fn redo(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        if self.journal_mut()?.redo(present.now)?.is_none() {
            self.tell("nothing-to-redo", Tone::Quiet);
            return Ok(Vec::new());
        }
        let mut effects = self.session_effects(present)?;
        effects.push(buzz("redo"));
        Ok(effects)
    }
}
