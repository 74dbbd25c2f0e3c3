//! Events after a session: its amounts.

use serde_json::{json, Value};

use super::state::{buzz, App, Present};
use crate::gather::amount_scale::AmountScale;
use crate::quantity::{Entered, Quantity, Unit, Volume, VolumeUnit};
use crate::record::{Amount, FieldType};
use crate::screen::shapes::{Effect, Part, Place};
use crate::screen::{amount_of, field_of};
use crate::trouble::Trouble;

const PARTS: [Part; 3] = [Part::Left, Part::Right, Part::Together];

impl App {
    fn say_amount(&mut self, id: &str, part: Part, amount: &Amount, present: Present) -> Result<Vec<Effect>, Trouble> {
        let value = amount.to_json();
        FieldType::Amount.check(field_of(part), &value)?;
        self.journal_mut()?.act("amount", id, present.now, |w| w.set(id, field_of(part), &value))?;
        Ok(vec![buzz("amount")])
    }

    /// What the person saw beside the line that they drew. A height would mean another amount
    /// once the scale has changed.
    pub(super) fn draw_amount(
        &mut self,
        id: &str,
        part: Part,
        typed: &str,
        unit: &str,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        self.read(present)?.session(id)?;
        let field = field_of(part);
        let unit = VolumeUnit::from_ucum(unit).ok_or_else(|| Trouble::bad(field, "bad-unit"))?;
        let amount = Entered::parse(typed, unit).map_err(|_| Trouble::bad(field, "bad-number"))?;
        self.say_amount(id, part, &Amount::Known(amount), present)
    }

    pub(super) fn step_amount(
        &mut self,
        id: &str,
        part: Part,
        steps: i32,
        fine: bool,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let session = record.session(id)?;
        let scale = AmountScale::for_session(&record, &session)?;
        let step = if fine { scale.fine_step() } else { scale.step() };
        let before = amount_of(&session, part).and_then(Amount::known).map_or(0.0, |v: Volume| v.in_unit(step.unit));
        // Onto the marks of the step: from 62 the next are 65 and 60.
        let place = before / step.by;
        let from = if steps > 0 { (place + 1e-9).floor() } else { (place - 1e-9).ceil() };
        let tidy = (from + f64::from(steps)) * step.by;
        let amount = Amount::Known(Entered::of((tidy * 1000.0).round() / 1000.0, step.unit));
        if tidy < 0.0 {
            return Ok(Vec::new());
        }
        self.say_amount(id, part, &amount, present)
    }

    pub(super) fn amount_unknown(&mut self, id: &str, part: Part, present: Present) -> Result<Vec<Effect>, Trouble> {
        let said = amount_of(&self.read(present)?.session(id)?, part) == Some(&Amount::Unknown);
        if said {
            self.journal_mut()?.act("amount", id, present.now, |w| w.set(id, field_of(part), &Value::Null))?;
            return Ok(vec![buzz("amount")]);
        }
        self.say_amount(id, part, &Amount::Unknown, present)
    }

    /// The amounts are settled: what has not been said of them is for later.
    pub(super) fn settle(&mut self, id: &str, name: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let session = self.read(present)?.session(id)?;
        let wanted = |part: Part| match (session.together.is_some(), part) {
            (true, Part::Together) => true,
            (false, Part::Left) => session.sides.left(),
            (false, Part::Right) => session.sides.right(),
            _ => false,
        };
        self.journal_mut()?.act(name, id, present.now, |w| {
            for part in PARTS {
                if wanted(part) && amount_of(&session, part).is_none() {
                    w.set(id, field_of(part), &Amount::Later.to_json())?;
                }
            }
            w.set(id, "settled", &json!(true))
        })?;
        // Where it was opened for this, there is nothing more to do there.
        self.places.retain(|place| !matches!(place, Place::Amounts { id: settled } if settled == id));
        Ok(vec![buzz("settled")])
    }

    /// One container or two: what was said of the other way is set aside.
    pub(super) fn measure_together(
        &mut self,
        id: &str,
        together: bool,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let session = self.read(present)?.session(id)?;
        if session.together.is_some() == together {
            return Ok(Vec::new());
        }
        self.journal_mut()?.act("measure", id, present.now, |w| {
            if together {
                w.set(id, "amount_left", &Value::Null)?;
                w.set(id, "amount_right", &Value::Null)?;
                w.set(id, "amount_together", &Amount::Later.to_json())
            } else {
                w.set(id, "amount_together", &Value::Null)
            }
        })?;
        Ok(vec![buzz("measure")])
    }
}
