//! Events of counting a pump's cycles.

use serde_json::json;

use super::kit::of_kind;
use super::state::{buzz, App, Present};
use crate::record::{Kind, Taps};
use crate::screen::shapes::{Effect, Place};
use crate::trouble::Trouble;

impl App {
    /// Begins to count, and opens the page on which to tap.
    pub(super) fn begin_count(&mut self, pump: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        of_kind(&record, pump, Kind::Pump)?;
        let at = record.present().to_json();
        let id = self.journal_mut()?.act("add", "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::SpeedCount.name()))?;
            w.set(&id, "at", &at)?;
            w.set(&id, "pump", &json!(pump))?;
            Ok(id)
        })?;
        self.go(Place::SpeedCount { id });
        Ok(vec![buzz("add")])
    }

    /// One tap: a cycle begins.
    pub(super) fn tap_along(&mut self, count: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let fields = of_kind(&self.read(present)?, count, Kind::SpeedCount)?;
        let taps = Taps::from_json(fields.get("taps")).with(present.now);
        self.set_fields(count, Kind::SpeedCount, fields, vec![("taps".to_owned(), taps.to_json())], "tap", present)?;
        Ok(vec![buzz("tap")])
    }

    /// Counts once more.
    pub(super) fn count_again(&mut self, count: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let fields = of_kind(&self.read(present)?, count, Kind::SpeedCount)?;
        let nothing = vec![("taps".to_owned(), serde_json::Value::Null)];
        self.set_fields(count, Kind::SpeedCount, fields, nothing, "clear", present)?;
        Ok(vec![buzz("clear")])
    }
}
