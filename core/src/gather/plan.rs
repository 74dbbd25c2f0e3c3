//! What belongs to a plan.

use super::Record;
use crate::journal::Journal;
use crate::record::{text, Fields, Kind};
use crate::trouble::Trouble;

/// The parts of a plan, in order.
pub(crate) fn parts_of_plan(journal: &Journal, plan: &str) -> Result<Vec<(String, Fields)>, Trouble> {
    let mut found = Vec::new();
    for row in journal.of_kind(Kind::PlanPart)? {
        let fields = journal.record(&row.subject)?.map(|(_, fields)| fields).unwrap_or_default();
        if text(&fields, "plan") == Some(plan) {
            found.push((row.subject, fields));
        }
    }
    // `plan-x-10` stands after `plan-x-9`.
    found.sort_by(|a, b| (a.0.len(), &a.0).cmp(&(b.0.len(), &b.0)));
    Ok(found)
}

/// The pump that a part of a plan is about.
pub(crate) enum PartPump {
    /// One of the record.
    Pump {
        /// Its id.
        id: String,
    },
    /// The only one there is, which nobody wrote down.
    Unwritten,
    /// One that the record does not know by this name.
    Unknown(String),
    /// None is named, and there are several.
    NotNamed,
}

/// The pump that a part names, or the only one there is.
pub(crate) fn pump_of_part(record: &Record<'_>, part: &Fields) -> Result<PartPump, Trouble> {
    let name = |fields: &Fields| text(fields, "name").unwrap_or_default().trim().to_owned();
    let all = record.journal.fields_of_kind(Kind::Pump)?;
    let pumps: Vec<(String, String)> = all.into_iter().map(|(id, fields)| (id, name(&fields))).collect();
    let same = |a: &str, b: &str| a.trim().to_lowercase() == b.trim().to_lowercase();
    Ok(match text(part, "pump_name").filter(|name| !name.trim().is_empty()) {
        Some(wanted) => match pumps.into_iter().find(|(_, name)| same(name, wanted)) {
            Some((id, _)) => PartPump::Pump { id },
            None => PartPump::Unknown(wanted.to_owned()),
        },
        None if pumps.is_empty() => PartPump::Unwritten,
        None => match <[(String, String); 1]>::try_from(pumps) {
            Ok([(id, _)]) => PartPump::Pump { id },
            Err(_) => PartPump::NotNamed,
        },
    })
}
