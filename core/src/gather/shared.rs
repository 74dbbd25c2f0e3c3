//! What a consultant's desk keeps once for all families, and adds to each family's record.

use crate::guidance::CaseloadRules;
use crate::record::{text, Fields, Kind};

/// What a consultant's desk keeps once for all families.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Shared {
    /// Pumps with their makers' ranges, by their name.
    pub pumps: Vec<Fields>,
    /// Gauges, by their name.
    pub gauges: Vec<Fields>,
    /// Pumps that are on offer, with the figures of their technical sheets, by their name.
    pub offered: Vec<Fields>,
    /// Flange sizes in stock.
    pub flange_sizes: Option<serde_json::Value>,
    /// When a family needs a look.
    pub rules: CaseloadRules,
}

impl Shared {
    /// Adds to a family's pump, gauge or pump on offer what the desk knows of one of the same name. What
    /// the family's own record says goes before.
    pub fn complete(&self, kind: Kind, fields: &mut Fields) {
        let known = match kind {
            Kind::Pump => &self.pumps,
            Kind::Gauge => &self.gauges,
            Kind::OfferedPump => &self.offered,
            _ => return,
        };
        let name = |fields: &Fields| text(fields, "name").map(|name| name.trim().to_lowercase());
        let Some(own) = name(fields) else { return };
        if let Some(same) = known.iter().find(|other| name(other).as_deref() == Some(own.as_str())) {
            for (key, value) in same {
                fields.entry(key.clone()).or_insert_with(|| value.clone());
            }
        }
    }
}
