//! The children that what is made is held against.

use crate::answer::age::early_by;
use crate::gather::supply::SupplyInputs;
use crate::quantity::{Entered, Mass, Share};
use crate::record::{moment, text, whole_number, Fields, Kind};
use crate::screen::View;
use crate::time::{LocalDay, Span};
use crate::trouble::Trouble;

/// A weight is recent enough to reckon a need from for so many days.
const WEIGHT_HOLDS: Span = Span::hours(24 * 21);

/// A share in per cent.
pub(super) fn share_percent(share: Option<Share>) -> i64 {
    share.map_or(0, Share::per_cent)
}

/// A child, as it is held against.
pub(super) struct Child {
    pub(super) name: String,
    fields: Fields,
    id: String,
}

impl Child {
    /// Whole days since birth.
    pub(super) fn age(&self, on: LocalDay) -> Option<i64> {
        let birth = text(&self.fields, "birth").and_then(|d| chrono::NaiveDate::parse_from_str(d, "%Y-%m-%d").ok())?;
        Some(on.days_since(LocalDay::on(birth)))
    }

    pub(super) fn is_preterm(&self, look: &SupplyInputs) -> bool {
        whole_number(&self.fields, "gestation_weeks").is_some_and(|weeks| weeks < look.rules.preterm_below_weeks.get())
    }

    /// Whole days since the day it was due, for one that came before the weeks of the rule.
    pub(super) fn days_since_due(&self, on: LocalDay, look: &SupplyInputs) -> Option<i64> {
        let weeks = whole_number(&self.fields, "gestation_weeks").filter(|_| self.is_preterm(look))?;
        let days = whole_number(&self.fields, "gestation_days").unwrap_or(0);
        Some(self.age(on)? - early_by(weeks, days))
    }

    /// The latest weight that is recent enough. A weight that names no child is taken for the
    /// only one there is.
    pub(super) fn weight(&self, view: &View<'_>, only: bool) -> Result<Option<Mass>, Trouble> {
        for (_, fields) in view.journal.fields_of_kind(Kind::Weight)?.into_iter().rev() {
            let of = text(&fields, "child");
            let at = moment(&fields, "at").map(|m| m.instant()).filter(|at| *at <= view.now);
            let recent = at.is_some_and(|at| view.now.since(at) <= WEIGHT_HOLDS);
            if recent && (of == Some(&self.id) || (of.is_none() && only)) {
                return Ok(fields.get("weight").and_then(Entered::<Mass>::from_json).map(|e| e.quantity()));
            }
        }
        Ok(None)
    }
}

pub(super) fn children(view: &View<'_>) -> Result<Vec<Child>, Trouble> {
    view.journal
        .of_kind(Kind::Child)?
        .into_iter()
        .map(|row| {
            let (kind, fields) = view.record(&row.subject)?;
            Ok(Child { name: view.name_of(kind, &fields), fields, id: row.subject })
        })
        .collect()
}
