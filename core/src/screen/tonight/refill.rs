//! How milk comes back, in words.

use crate::answer::refill::{Flattens, Well, WellOf};
use crate::answer::supply::Side;
use crate::gather::tonight::TonightInputs;
use crate::guidance::RefillRules;
use crate::screen::shapes::Section;
use crate::screen::View;

pub(super) fn section(view: &View<'_>, look: &TonightInputs) -> Option<Section> {
    let words = view.words();
    look.plan.as_ref()?;
    let mut section = crate::screen::section::section("refill", words.say("refill"));
    if look.refill.wells.is_empty() {
        section.lines = vec![
            words.with("refill-needs", &[("count", (crate::answer::refill::well::LEAST_INTERVALS as i64).into())])
        ];
        return Some(section);
    }
    let rules = RefillRules::read(&look.rules);
    for well in &look.refill.wells {
        section.rows.push(view.text_row(title(view, well), detail(view, well)));
        if !well.is_within(rules.highest_rate) {
            section.lines.push(words.with(
                "refill-outside",
                &[("side", title(view, well).into()), ("highest", words.by_the_hour(rules.highest_rate).into())],
            ));
        }
    }
    section.lines.push(words.say("refill-published"));
    Some(section)
}

fn title(view: &View<'_>, well: &Well) -> String {
    let words = view.words();
    match well.of {
        WellOf::Side(Side::Left) => words.say("side-left"),
        WellOf::Side(Side::Right) => words.say("side-right"),
        WellOf::Together => words.say("choice-sides-both"),
    }
}

fn detail(view: &View<'_>, well: &Well) -> String {
    let words = view.words();
    let (low, high) = (words.low().by_the_hour(well.rate.low), words.high().by_the_hour(well.rate.high));
    let rate = words.with(
        if well.rate_is_close { "refill-rate" } else { "refill-rate-roughly" },
        &[("rate", words.by_the_hour(well.rate.value).into()), ("low", low.into()), ("high", high.into())],
    );
    let slows = match well.flattens {
        Flattens::At(level) => words.with(
            "refill-flattens",
            &[("level", words.volume(level.value).into()), ("range", words.volume_range(level.low, level.high).into())],
        ),
        Flattens::NoSignUpTo(gap) => words.with("refill-no-sign", &[("gap", words.span(gap).into())]),
        Flattens::CannotTellYet => words.with("refill-cannot-tell", &[("gap", words.span(well.longest).into())]),
    };
    let rests = words.with(
        "refill-rests-on",
        &[("count", i64::from(well.intervals.get()).into()), ("days", i64::from(well.days.get()).into())],
    );
    format!("{rate} {slows} {rests}")
}
