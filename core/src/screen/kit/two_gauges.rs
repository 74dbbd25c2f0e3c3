//! Two gauges held against each other on one pump.

use super::pump_words::{day_of, section, side_text};
use crate::answer::pump::two_gauges::two_gauges;
use crate::gather::kit::{CheckInputs, PumpInputs};
use crate::quantity::{Quantity, Vacuum};
use crate::screen::shapes::Section;
use crate::screen::View;
use crate::trouble::Trouble;

/// The latest two checks of one day that were done alike with different gauges; none where there are none.
pub(super) fn section_of(view: &View<'_>, look: &PumpInputs) -> Result<Option<Section>, Trouble> {
    let words = view.words();
    let Some((one, other)) = pair(view, look) else { return Ok(None) };
    let name = |looked: &CheckInputs| -> Result<String, Trouble> {
        let name = looked.check.gauge.as_deref().map(|id| view.name_of_id(id)).transpose()?.flatten();
        Ok(name.unwrap_or_else(|| words.say("kind-gauge")))
    };
    let (one_name, other_name) = (name(one)?, name(other)?);
    let mut lines = Vec::new();
    for (side, pull) in &one.pulls {
        let (Ok(first), Some(second)) = (pull, other.pull(*side)) else { continue };
        let Some(found) = two_gauges(first, second) else { continue };
        let key = if found.agree() { "gauges-agree" } else { "gauges-differ" };
        let by = Vacuum::from_canonical(found.by.canonical().abs());
        lines.push(words.with(
            key,
            &[
                ("side", side_text(view, *side).into()),
                ("one", one_name.clone().into()),
                ("other", other_name.clone().into()),
                ("by", words.vacuum(by).into()),
                ("allowed", words.high().vacuum(found.allowed).into()),
            ],
        ));
    }
    lines.extend((!lines.is_empty()).then(|| words.say("gauges-which")));
    Ok((!lines.is_empty()).then(|| Section { lines, ..section(view, "gauges") }))
}

fn pair<'l>(view: &View<'_>, look: &'l PumpInputs) -> Option<(&'l CheckInputs, &'l CheckInputs)> {
    let with_gauge = |looked: &&CheckInputs| looked.check.gauge.is_some() && !looked.pulls.is_empty();
    let checks: Vec<&CheckInputs> = look.checks.iter().filter(with_gauge).collect();
    let alike = |one: &CheckInputs, other: &CheckInputs| {
        one.check.gauge != other.check.gauge
            && one.check.set_up == other.check.set_up
            && day_of(view, one).is_some()
            && day_of(view, one) == day_of(view, other)
    };
    checks.iter().rev().find_map(|one| {
        let other = checks.iter().rev().find(|other| alike(one, other))?;
        Some((*one, *other))
    })
}
