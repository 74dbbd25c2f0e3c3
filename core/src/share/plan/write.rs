//! A plan, out.

use serde_json::json;

use super::{subject_of, VERSION};
use crate::record::{text, Fields, Kind};
use crate::share::exchange::write_line;
use crate::share::sealed::{own_keys::OwnKeys, seal, signed, SealFor};
use crate::time::Moment;
use crate::trouble::Trouble;

/// For whom a plan is, and from whom.
#[derive(Debug, Clone, PartialEq)]
pub struct Addressee {
    /// What the family goes by among all.
    pub family: String,
    /// The public keys it is sealed for, those of all its phones: age recipients.
    pub sealing_keys: Vec<String>,
    /// What the consultant goes by.
    pub from: String,
    /// How often the plan was sent, this time too.
    pub revision: u64,
}

/// What a consultant does not set, and what stays on her desk.
const STAYS: &[&str] = &["kind", "answer", "answered", "revision", "sent", "came", "signing_key", "plan", "taken_out"];

/// Writes a plan: signed, and sealed for the family. `parts` stand in their order.
///
/// # Errors
/// `plan-empty` where it says nothing, `plan-part-empty` with the number of a part that
/// says nothing, and those of [`seal`] and [`signed::sign`].
pub fn write(
    id: &str,
    plan: &Fields,
    parts: &[Fields],
    to: &Addressee,
    keys: &OwnKeys,
    made: &Moment,
) -> Result<Vec<u8>, Trouble> {
    let says = |fields: &Fields| {
        let mut said = fields.clone();
        said.retain(|key, _| !STAYS.contains(&key.as_str()));
        said
    };
    if parts.is_empty() && text(plan, "plan_words").is_none_or(|words| words.trim().is_empty()) {
        return Err(Trouble::bad("plan", "plan-empty"));
    }
    let mut lines = vec![json!({
        "drawwell": "plan",
        "version": VERSION,
        "plan": id,
        "family": to.family,
        "revision": to.revision,
        "from": to.from,
        "made": made.to_json(),
    })
    .to_string()];
    let mut whole = says(plan);
    whole.insert("at".to_owned(), made.to_json());
    whole.insert("plan_for".to_owned(), json!(to.family));
    whole.insert("plan_from".to_owned(), json!(to.from));
    let subject = subject_of(id);
    lines.push(write_line(&subject, Kind::Plan, &whole));
    for (number, part) in (1_u64..).zip(parts) {
        let mut part = says(part);
        // What it is about, and at least one thing about it.
        let rule_without_value = text(&part, "plan_part") == Some("rule") && !part.contains_key("rule_value");
        if part.len() < 2 || !part.contains_key("plan_part") || rule_without_value {
            return Err(Trouble::bad("plan_part", "plan-part-empty").with("number", number));
        }
        part.insert("plan".to_owned(), json!(subject));
        lines.push(write_line(&format!("{subject}-{number}"), Kind::PlanPart, &part));
    }
    let text = lines.join("\n") + "\n";
    // What a phone would refuse is said here, where it can be mended.
    super::read(&text)?;
    let comment = format!("drawwell plan for {}, made {}", to.family, made.to_rfc3339());
    let signed = signed::sign(&text, &comment, keys)?;
    seal(signed.as_bytes(), &SealFor::Keys(to.sealing_keys.clone()))
}
