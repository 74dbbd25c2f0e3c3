//! What is left out of whatever leaves.

use serde_json::json;

use super::state::{buzz, App, Present};
use crate::record::{Kind, SETTINGS};
use crate::screen::shapes::Effect;
use crate::share::parts::{LeftOut, SharePart};
use crate::trouble::{Detail, Trouble};

impl App {
    /// Leaves a part out of whatever is shared, or takes it in again.
    pub(super) fn leave_out(&mut self, part: &str, out: bool, present: Present) -> Result<Vec<Effect>, Trouble> {
        let part = SharePart::named(part).ok_or_else(|| {
            Trouble::bad("part", "bad-choice")
                .with("words", Detail::choices(SharePart::ALL.iter().map(|part| part.name())))
        })?;
        let fields = self.journal()?.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
        let mut left_out = LeftOut::read(&fields);
        left_out.set(part, out);
        let value = Some(left_out.write()).filter(|text| !text.is_empty());
        self.journal_mut()?.act(if out { "leave-out" } else { "take-in" }, SETTINGS, present.now, |w| {
            w.set(SETTINGS, "kind", &json!(Kind::Settings.name()))?;
            w.set(SETTINGS, "left_out", &json!(value))
        })?;
        Ok(vec![buzz("leave-out")])
    }

    /// What the person leaves out of whatever is shared.
    pub(super) fn left_out(&self) -> Result<LeftOut, Trouble> {
        Ok(LeftOut::read(&self.journal()?.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default()))
    }
}
