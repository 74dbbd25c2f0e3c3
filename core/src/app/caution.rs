//! Events of cautions.

use serde_json::{json, Value};

use super::state::{buzz, App, Present};
use crate::answer::caution::{Because, Caution};
use crate::gather::Record;
use crate::record::choices::{DEALT_HOW, SINCE_BEFORE};
use crate::record::{text, Kind, SETTINGS};
use crate::screen::shapes::Effect;
use crate::time::Moment;
use crate::trouble::{Detail, Kind as TroubleKind, Trouble};

fn active(record: &Record<'_>, key: &str) -> Result<Caution, Trouble> {
    let cautions = crate::gather::caution::active(record)?;
    cautions
        .into_iter()
        .find(|caution| caution.key() == key)
        .ok_or_else(|| Trouble::new(TroubleKind::Missing, "trouble-no-such-record"))
}

impl App {
    /// A caution was dealt with; a later fact brings it back.
    pub(super) fn caution_dealt(&mut self, key: &str, how: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        if !DEALT_HOW.contains(&how) {
            return Err(
                Trouble::bad("dealt_how", "bad-choice").with("words", Detail::choices(DEALT_HOW.iter().copied()))
            );
        }
        let record = self.read(present)?;
        let caution = active(&record, key)?;
        let (at, seen) = (record.present(), Moment::new(caution.seen, record.zone));
        let (key, how) = (caution.key(), how.to_owned());
        self.journal_mut()?.act("caution-dealt", "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::CautionDealt.name()))?;
            w.set(&id, "at", &at.to_json())?;
            w.set(&id, "dealt_how", &json!(how))?;
            w.set(&id, "caution", &json!(key))?;
            w.set(&id, "seen", &seen.to_json())
        })?;
        self.back_from_caution();
        Ok(vec![buzz("caution-dealt")])
    }

    /// The signs of a caution, written down once more: still there, or there no more.
    pub(super) fn signs_again(&mut self, key: &str, still: bool, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let caution = active(&record, key)?;
        let mut said: Vec<(&'static str, Value)> = Vec::new();
        for fact in &caution.because {
            let Because::Sign(_, field, side) = fact else { continue };
            let value = match (still, side) {
                (true, Some(side)) => json!(side.name()),
                (true, None) => json!(true),
                (false, Some(_)) => json!("neither"),
                (false, None) => json!(false),
            };
            // The latest of a field counts.
            said.retain(|(known, _)| known != field);
            said.push((field, value));
        }
        self.write_sign(&said, if still { "signs-still" } else { "signs-gone" }, present)
    }

    /// How signs are since they were written down before.
    pub(super) fn since_before(&mut self, word: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        if !SINCE_BEFORE.contains(&word) {
            return Err(
                Trouble::bad("since_before", "bad-choice").with("words", Detail::choices(SINCE_BEFORE.iter().copied()))
            );
        }
        self.write_sign(&[("since_before", json!(word))], "since-before", present)
    }

    fn write_sign(
        &mut self,
        said: &[(&'static str, Value)],
        act: &'static str,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let at = self.read(present)?.present().to_json();
        self.journal_mut()?.act(act, "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::Sign.name()))?;
            w.set(&id, "at", &at)?;
            said.iter().try_for_each(|(field, value)| w.set(&id, field, value))
        })?;
        Ok(vec![buzz(act)])
    }

    /// Opens the dialler with a number that the family set.
    pub(super) fn call(&mut self, which: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let known = Kind::Settings.field(which).filter(|spec| spec.field_type == crate::record::FieldType::Phone);
        let spec = known.ok_or_else(|| Trouble::bad(which, "bad-field"))?;
        let (_, settings) = record.record(SETTINGS)?;
        let number = text(&settings, spec.key).map(str::trim).filter(|number| !number.is_empty());
        let number = number.ok_or_else(|| Trouble::bad(spec.key, "bad-phone"))?;
        Ok(vec![Effect::Dial { number: number.to_owned() }])
    }

    fn back_from_caution(&mut self) {
        if self.places.len() > 1 {
            self.places.pop();
        }
    }
}
