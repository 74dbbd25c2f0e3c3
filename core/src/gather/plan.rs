//! What belongs to a plan.

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
