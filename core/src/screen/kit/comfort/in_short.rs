//! Comfort in short, for the visit sheet: what can be told, a line each, and nothing of the rest.

use super::{ceilings, flange, letdowns, of_each, planned, trial_text};
use crate::answer::letdown::letdowns;
use crate::answer::trial::answer;
use crate::gather::comfort::ComfortInputs;
use crate::gather::trial::TrialInputs;
use crate::record::{moment, text, Kind};
use crate::screen::View;
use crate::time::Instant;
use crate::trouble::Trouble;

/// A line: what it is about, what is said, and what that rests on.
pub(in crate::screen) struct InShort {
    pub(in crate::screen) about: String,
    pub(in crate::screen) said: String,
    pub(in crate::screen) rests_on: String,
}

/// The lines there are, and whether to look at the flange first. Of comparisons those that went on
/// since then; where amounts stay private, none that is decided by them.
pub(in crate::screen) fn in_short(
    view: &View<'_>,
    since: Instant,
    amounts: bool,
) -> Result<(Vec<InShort>, Option<String>), Trouble> {
    let words = view.words();
    let inputs = ComfortInputs::read(view)?;
    let mut lines = Vec::new();
    let all = of_each(view, &inputs);
    let (about, said, _) = ceilings::head(view, &all, &inputs.rules);
    if !said.is_empty() {
        let ranges = all.iter().filter_map(|one| ceilings::range_in_short(view, one));
        lines.push(InShort { about, said, rests_on: ranges.collect::<Vec<_>>().join(" \u{b7} ") });
    }
    for (setting, said) in planned::in_short(view)? {
        lines.push(InShort { about: words.say("plan-setting-at-most"), said: setting, rests_on: said });
    }
    if let Some(first) = letdowns(&inputs.heard, view.now).and_then(|found| found.first) {
        lines.push(InShort {
            about: words.say("letdown-headline"),
            said: words.running(first.median),
            rests_on: letdowns::rests(view, &first),
        });
    }
    for (id, fields) in view.journal.fields_of_kind(Kind::Trial)? {
        let over = moment(&fields, "ended").is_some_and(|ended| ended.instant() < since);
        if over || (!amounts && text(&fields, "outcome") == Some("amount")) {
            continue;
        }
        let Some(trial) = TrialInputs::read(view, &id)? else { continue };
        let said = answer(&trial.done, &trial.set_up, &trial.rules);
        lines.push(InShort {
            about: trial_text::title(view, &fields),
            said: trial_text::verdict(view, &fields, &said),
            rests_on: trial_text::caption(view, &said),
        });
    }
    Ok((lines, flange::line(view)?))
}
