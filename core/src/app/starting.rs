//! The first screen passed, and what is asked once after it.

use serde_json::{json, Value};

use super::state::{buzz, App, Present};
use crate::quantity::{Unit, VolumeUnit};
use crate::record::{Kind, RHYTHM, SETTINGS};
use crate::screen::next_starting_question;
use crate::screen::shapes::{Effect, Place, StartingQuestion};
use crate::trouble::Trouble;

impl App {
    pub(super) fn begin(&mut self, present: Present) -> Result<Vec<Effect>, Trouble> {
        self.set_up("welcomed", "true", present)?;
        self.places = vec![Place::Now, Place::Starting { question: StartingQuestion::Units }];
        Ok(Vec::new())
    }

    /// Keeps the answer, and asks what comes next.
    pub(super) fn starting_answer(
        &mut self,
        question: StartingQuestion,
        answer: &str,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        match question {
            StartingQuestion::Units => {
                let unit = VolumeUnit::from_ucum(answer).ok_or_else(|| Trouble::bad("volume_unit", "bad-unit"))?;
                self.keep_answer(SETTINGS, Kind::Settings, "volume_unit", &json!(unit.ucum()), present)?;
            }
            StartingQuestion::Birth => {
                let days: u32 = answer.parse().map_err(|_| Trouble::bad("birth", "bad-date"))?;
                let birth = self.read(present)?.today().earlier_by(days).date();
                self.keep_answer("", Kind::Child, "birth", &json!(birth.format("%Y-%m-%d").to_string()), present)?;
            }
            StartingQuestion::SessionsADay => {
                let count: u32 = answer.parse().map_err(|_| Trouble::bad("sessions_a_day", "bad-number"))?;
                self.keep_answer(RHYTHM, Kind::Rhythm, "sessions_a_day", &json!(count), present)?;
            }
        }
        self.places.truncate(1);
        if let Some(question) = next_starting_question(question) {
            self.go(Place::Starting { question });
        }
        Ok(vec![buzz("enter")])
    }

    /// A field of the record of which there is one, or of a new one.
    fn keep_answer(
        &mut self,
        subject: &str,
        kind: Kind,
        field: &str,
        value: &Value,
        present: Present,
    ) -> Result<(), Trouble> {
        let spec = kind.field(field).ok_or_else(|| Trouble::bad(field, "bad-field"))?;
        spec.field_type.check(field, value)?;
        self.journal_mut()?.act("enter", subject, present.now, |w| {
            let id = if subject.is_empty() { w.new_id() } else { subject.to_owned() };
            w.set(&id, "kind", &json!(kind.name()))?;
            w.set(&id, field, value)
        })
    }
}
