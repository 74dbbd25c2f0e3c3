//! Events of cautions.

use serde_json::json;

use super::{buzz, App, Present};
use crate::record::Kind;
use crate::screen::shapes::Effect;
use crate::time::Moment;
use crate::trouble::{Kind as TroubleKind, Trouble};

impl App {
    /// A caution was dealt with; a later fact brings it back.
    pub(super) fn caution_dealt(&mut self, key: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let view = self.view(present)?;
        let cautions = crate::screen::standing_cautions(&view)?;
        let caution = cautions
            .iter()
            .find(|caution| caution.key() == key)
            .ok_or_else(|| Trouble::new(TroubleKind::Missing, "trouble-no-such-record"))?;
        let (at, seen) = (view.present(), Moment::new(caution.seen, view.zone));
        let key = caution.key();
        self.journal_mut()?.act("caution-dealt", "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::CautionDealt.name()))?;
            w.set(&id, "at", &at.to_json())?;
            w.set(&id, "caution", &json!(key))?;
            w.set(&id, "seen", &seen.to_json())
        })?;
        if self.places.len() > 1 {
            self.places.pop();
        }
        Ok(vec![buzz("caution-dealt")])
    }
}
