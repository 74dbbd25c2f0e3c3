//! A plan, in. Its signature was checked before.

use serde_json::Value;

use super::{subject_of, MOST_PARTS, VERSION};
use crate::limits;
use crate::record::{date, kinds::rule_of_a_family, text, Fields, Kind};
use crate::share::exchange::read_line;
use crate::time::{LocalDay, Moment};
use crate::trouble::{Kind as TroubleKind, Trouble};

/// A plan as it was read.
#[derive(Debug, Clone, PartialEq)]
pub struct ReadPlan {
    /// The family it is for.
    pub family: String,
    /// How often it was sent by then, from 1; a plan of version 1 did not say.
    pub revision: u64,
    /// When it was made.
    pub made: Moment,
    /// The last day on which it may be accepted.
    pub good_until: Option<LocalDay>,
    /// Its record: id and fields.
    pub plan: (String, Fields),
    /// Its parts, in order.
    pub parts: Vec<(String, Fields)>,
}

/// Reads the text of a plan.
///
/// # Errors
/// `plan-not-one`, `plan-line` with the number of the line that can't be read and why,
/// `plan-rule` where it sets a rule that there is not, or beyond its bounds,
/// `trouble-newer-file`.
pub fn read(signed_text: &str) -> Result<ReadPlan, Trouble> {
    let bad = || Trouble::bad("", "plan-not-one");
    let mut lines = (1..).zip(signed_text.lines());
    let header: Value = lines.next().and_then(|(_, line)| serde_json::from_str(line).ok()).ok_or_else(bad)?;
    if header.get("drawwell").and_then(Value::as_str) != Some("plan") {
        return Err(bad());
    }
    match header.get("version").and_then(Value::as_u64) {
        Some(version) if version <= VERSION => {}
        Some(_) => return Err(Trouble::new(TroubleKind::Newer, "trouble-newer-file")),
        None => return Err(bad()),
    }
    let word = |key: &str| header.get(key).and_then(Value::as_str).map(str::to_owned).ok_or_else(bad);
    let subject = subject_of(&word("plan")?);
    let mut plan = None;
    let mut parts = Vec::new();
    for (number, line) in lines.filter(|(_, line)| !line.trim().is_empty()) {
        let told = || Trouble::bad("", "plan-line").with("line", number);
        if line.len() > limits::LINE {
            return Err(told());
        }
        let (kind, id, fields) = read_line(line).map_err(|_| told())?;
        match kind {
            Kind::Plan if plan.is_none() && id == subject => plan = Some((id, fields)),
            Kind::PlanPart if id == format!("{subject}-{}", parts.len() + 1) && parts.len() < MOST_PARTS => {
                parts.push((id, checked(fields, number, &subject)?));
            }
            _ => return Err(told()),
        }
    }
    let plan = plan.ok_or_else(bad)?;
    let revision = match header.get("revision") {
        None => 1,
        Some(said) => said.as_u64().filter(|said| (1..=limits::PLAN_REVISIONS).contains(said)).ok_or_else(bad)?,
    };
    Ok(ReadPlan {
        revision,
        family: word("family")?,
        made: header.get("made").and_then(|made| Moment::from_json(made).ok()).ok_or_else(bad)?,
        good_until: date(&plan.1, "good_until").map(LocalDay::on),
        plan,
        parts,
    })
}

/// A part that can be answered: of this plan, with nothing in it that only a parent says.
fn checked(fields: Fields, number: u64, subject: &str) -> Result<Fields, Trouble> {
    let told = || Trouble::bad("", "plan-line").with("line", number);
    let answered = ["answer", "answered", "taken_out"].iter().any(|key| fields.contains_key(*key));
    if answered || text(&fields, "plan") != Some(subject) || text(&fields, "plan_part").is_none() {
        return Err(told());
    }
    if text(&fields, "plan_part") == Some("rule") && rule(&fields).is_none() {
        return Err(Trouble::bad("rule", "plan-rule").with("line", number));
    }
    Ok(fields)
}

/// The rule that a part sets anew, with its value; none where there is none of that name or
/// the value lies beyond its bounds.
fn rule(fields: &Fields) -> Option<(&str, f64)> {
    let rule = rule_of_a_family(text(fields, "rule")?)?;
    let value = fields.get("rule_value").filter(|value| rule.field_type.check(rule.key, value).is_ok())?;
    Some((rule.key, value.as_f64()?))
}
