//! A plan from the consultant: whose it is, what each part says and would change, and the
//! answer to each. On her desk: what she is writing.

mod of_desk;
mod page;
mod pumps;
mod rules;
mod says;
mod setting_beside;
mod waits;

pub(super) use of_desk::{said_for as part_is_for, say_what_stands, show as show_on_desk};
pub(super) use page::show;
pub(super) use pumps::{offered as pumps_of_family, FIELD as PUMP_NAME};
pub(super) use rules::{of_part as rule_of_part, show as show_rules};
pub(super) use says::{in_itself as said_in_part, title as title_of_part};
pub(super) use waits::{group, notice};

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
