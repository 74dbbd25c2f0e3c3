//! What the containers hold while a session runs.

use super::session::{add_mark, running_session};
use super::state::{buzz, App, Present};
use crate::gather::so_far::readings;
use crate::quantity::{Entered, Unit, VolumeUnit};
use crate::record::mark::Mark;
use crate::record::{MarkKind, MARKS};
use crate::screen::shapes::Effect;
use crate::trouble::Trouble;

impl App {
    /// So much has come by now. Containers never hold less than before.
    pub(super) fn so_far(&mut self, typed: &str, unit: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let session = running_session(&record)?;
        let unit = VolumeUnit::from_ucum(unit).ok_or_else(|| Trouble::bad("amount", "bad-unit"))?;
        let amount = Entered::parse(typed, unit).map_err(|_| Trouble::bad("amount", "bad-number"))?;
        let (at, id) = (record.present(), session.id.clone());
        let kind = MarkKind::SoFar { amount };
        let mark = Mark { at: at.clone(), side: None, kind: kind.clone() };
        let read = Mark::from_json(MARKS, &mark.to_json(None))?;
        let MarkKind::SoFar { amount } = read.kind else { return Ok(Vec::new()) };
        if readings(&session).last().is_some_and(|(_, held)| amount.quantity() < *held) {
            return Err(Trouble::bad("amount", "bad-so-far"));
        }
        self.journal_mut()?.act("so-far", &id, present.now, |w| add_mark(w, &id, &at, kind))?;
        Ok(vec![buzz("so-far")])
    }
}
