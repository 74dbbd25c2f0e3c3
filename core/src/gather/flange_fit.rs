//! What was measured for a flange, and which are there.

use super::Record;
use crate::answer::flange_fit::{candidates, measured, Candidates, Measured};
use crate::guidance::FitRules;
use crate::quantity::{Entered, Length};
use crate::record::{text, Fields, Kind, Sizes, SETTINGS};
use crate::time::Instant;
use crate::trouble::Trouble;

/// What was measured, the sizes in stock, the flanges in use.
pub(crate) struct FitLook {
    pub(crate) rules: FitRules,
    /// Each measurement, the latest first.
    pub(crate) measured: Vec<(String, Fields)>,
    pub(crate) stock: Vec<Length>,
    pub(crate) in_use: Vec<(String, Length)>,
}

impl FitLook {
    pub(crate) fn over(record: &Record<'_>) -> Result<Self, Trouble> {
        let mut found = Vec::new();
        for row in record.journal.of_kind(Kind::Fit)?.into_iter().rev() {
            let (_, fields) = record.record(&row.subject)?;
            found.push((row.subject, fields));
        }
        let settings = record.journal.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
        let shared = record.shared.and_then(|shared| shared.flange_sizes.as_ref());
        let stock = settings.get("flange_sizes").or(shared).and_then(Sizes::from_json);
        let mut in_use: Vec<(String, String, Length)> = Vec::new();
        for row in record.journal.of_kind(Kind::Flange)? {
            let (_, fields) = record.record(&row.subject)?;
            if let Some(size) = fields.get("size").and_then(Entered::<Length>::from_json) {
                let since = text(&fields, "in_use_since").unwrap_or_default().to_owned();
                let side = text(&fields, "side").unwrap_or("both").to_owned();
                // The one that came into use last is the one in use.
                if in_use.iter().any(|(of, from, _)| *of == side && *from > since) {
                    continue;
                }
                in_use.retain(|(of, _, _)| *of != side);
                in_use.push((side, since, size.quantity()));
            }
        }
        let in_use = in_use.into_iter().map(|(side, _, size)| (side, size)).collect();
        Ok(Self {
            rules: FitRules::read(record.rules()?),
            measured: found,
            stock: stock.map(|sizes| sizes.lengths().to_vec()).unwrap_or_default(),
            in_use,
        })
    }

    /// The latest measurement of a side that holds a diameter.
    pub(crate) fn latest(&self, side: &str) -> Option<Measured> {
        self.measured
            .iter()
            .filter_map(|(_, fields)| measured(fields, side))
            .find(|m| m.nipple.before.is_some() || m.nipple.after.is_some())
    }

    /// When a nipple was measured last.
    pub(crate) fn measured_last(&self) -> Option<Instant> {
        ["left", "right"].iter().filter_map(|side| self.latest(side)).map(|m| m.at.instant()).max()
    }

    pub(crate) fn candidates(&self, side: &str) -> Option<Candidates> {
        candidates(&self.latest(side)?.nipple, &self.stock, &self.rules)
    }
}
