//! The place of a session in the comparison that runs.

use serde_json::{json, Value};

use crate::answer::trial::Design;
use crate::gather::trial::next_of_running;
use crate::gather::Record;
use crate::record::Sides;
use crate::trouble::Trouble;

/// A session that begins takes its place in the trial that runs, as far as it can be of it.
pub(super) fn place_in_trial(record: &Record<'_>, sides: Sides) -> Result<Vec<(&'static str, Value)>, Trouble> {
    let Some(next) = next_of_running(record)? else { return Ok(Vec::new()) };
    if next.design == Design::Sides && sides != Sides::Both {
        return Ok(Vec::new());
    }
    Ok(vec![("trial", json!(next.id)), ("trial_place", json!(next.place)), ("trial_drawn", json!(next.way.name()))])
}
