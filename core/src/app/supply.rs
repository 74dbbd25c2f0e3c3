//! Events of Supply: answers to its questions.

use serde_json::Value;

use super::state::{buzz, App, Present};
use crate::record::{check, Kind};
use crate::screen::shapes::Effect;
use crate::time::{Instant, Moment};
use crate::trouble::Trouble;

impl App {
    /// Keeps what a session was answered to be.
    pub(super) fn answer(
        &mut self,
        session: &str,
        field: &str,
        value: Value,
        name: &str,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let (kind, _) = self.read(present)?.record(session)?;
        if kind != Kind::Session {
            return Err(Trouble::bad("session", "bad-field"));
        }
        check::field(kind, field, &value)?;
        self.journal_mut()?.act(name, session, present.now, |w| w.set(session, field, &value))?;
        Ok(vec![buzz(name)])
    }

    /// Writes down a session that was missed, and opens it for its amounts.
    pub(super) fn add_missed(&mut self, at: Instant, present: Present) -> Result<Vec<Effect>, Trouble> {
        if at > present.now.plus(check::LEEWAY) {
            return Err(Trouble::bad("started", "bad-future"));
        }
        let zone = self.read(present)?.zone;
        self.add_at(Kind::Session, &Moment::new(at, zone), present)
    }
}
