//! What the latest check of a pump says.

use super::dial;
use super::pump_parts::{parts_of, PartInUse};
use super::pump_words::{chance_lines, day_of, settles_line, side_text};
use crate::answer::pump::calibration::past_due;
use crate::answer::pump::{applied, doubts, sides, NoPull, Verdict, Whose};
use crate::gather::kit::{together, CheckInputs, PumpInputs, SideInputs};
use crate::quantity::{say_decimal, AirPressureUnit, Quantity, Vacuum};
use crate::record::gauge::{Connected, Power};
use crate::record::Sides;
use crate::screen::shapes::FindingsScreen;
use crate::screen::View;
use crate::trouble::Trouble;

/// The verdict; on a gauge that was past its date, only as far as the gauge still reads right.
pub(super) fn headline(
    view: &View<'_>,
    look: &PumpInputs,
    looked: &CheckInputs,
    sides: &[SideInputs],
    doubts: &[doubts::Doubt],
) -> String {
    let said = verdict(view, look, sides, doubts);
    let given = doubts.is_empty() && together(sides) != Verdict::CannotTell;
    match gauge_was_due(view, looked) {
        Some(_) if given => view.words().with("verdict-past-due", &[("said", said.into())]),
        _ => said,
    }
}

/// The day on which the gauge of a check was due, where it had passed by then.
fn gauge_was_due(view: &View<'_>, looked: &CheckInputs) -> Option<chrono::NaiveDate> {
    past_due(looked.gauge.as_ref()?, day_of(view, looked)?.date())
}

fn verdict(view: &View<'_>, look: &PumpInputs, sides: &[SideInputs], doubts: &[doubts::Doubt]) -> String {
    let words = view.words();
    if !doubts.is_empty() {
        return words.say("verdict-asks");
    }
    let whose = match look.limits.whose {
        Whose::Maker => "maker",
        Whose::Grade(_) => "grade",
        Whose::Any => "any",
    };
    match together(sides) {
        Verdict::Meets => words.say(&format!("verdict-meets-{whose}")),
        Verdict::Below => words.say(&format!("verdict-below-{whose}")),
        Verdict::Above => words.say(&format!("verdict-above-{whose}")),
        Verdict::CannotTell => match sides.iter().find_map(|side| side.pull.as_ref().err()) {
            Some(NoPull::GaugeUnknown) => words.say("verdict-gauge-unknown"),
            Some(NoPull::AtEndOfSpan) => words.say("verdict-end-of-span"),
            Some(NoPull::Needs(more)) => words.with("verdict-needs", &[("more", more.get().into())]),
            _ => words.say("verdict-cannot-tell"),
        },
    }
}

pub(super) fn render(view: &View<'_>, look: &PumpInputs, latest: &CheckInputs) -> Result<FindingsScreen, Trouble> {
    let words = view.words();
    let sides = look.sides(latest);
    let doubts = look.doubts(latest);
    let headline = headline(view, look, latest, &sides, &doubts);
    let figures: Vec<String> = sides
        .iter()
        .filter_map(|side| side.pull.as_ref().ok().map(|pull| words.vacuum_figure(pull.estimate.value)))
        .collect();
    let figure = match figures.is_empty() {
        true => String::new(),
        false => words.with_unit(figures.join(" \u{b7} "), view.settings.vacuum),
    };
    let caption = caption(view, latest, &sides);
    let dial = (!figures.is_empty())
        .then(|| dial::of_sides(view, &sides, &look.limits, latest.gauge.and_then(|gauge| gauge.span)));
    let mut lines = Vec::new();
    if doubts.is_empty() {
        lines.extend(chance_lines(view, look, &sides));
        lines.extend(settles_line(view, &sides));
        lines.extend(context_lines(view, look, latest, &sides));
    }
    lines.extend(set_up_lines(view, look, latest, &sides)?);
    lines.push(words.say("pump-defers"));
    Ok(FindingsScreen {
        spoken: [headline.as_str(), caption.as_str()].join(". "),
        headline,
        figure,
        caption,
        dial,
        lines,
        asks: Vec::new(),
        actions: Vec::new(),
        sections: Vec::new(),
    })
}

/// Each side with its range, when and with what it was read.
pub(super) fn caption(view: &View<'_>, latest: &CheckInputs, sides: &[SideInputs]) -> String {
    let words = view.words();
    let mut parts: Vec<String> = sides
        .iter()
        .filter_map(|side| {
            let pull = side.pull.as_ref().ok()?;
            Some(words.with(
                "side-range",
                &[
                    ("side", side_text(view, side.side).into()),
                    ("range", words.vacuum_range(pull.estimate.low, pull.estimate.high).into()),
                ],
            ))
        })
        .collect();
    if let Some(day) = day_of(view, latest) {
        parts.push(words.with("checked-on", &[("date", words.plain_date(day.date()).into())]));
    }
    parts.join(" \u{b7} ")
}

/// What else the readings say.
pub(super) fn context_lines(
    view: &View<'_>,
    look: &PumpInputs,
    latest: &CheckInputs,
    sides: &[SideInputs],
) -> Vec<String> {
    let words = view.words();
    let mut lines = Vec::new();
    let pull = |wanted: Sides| sides.iter().find(|s| s.side == wanted).and_then(|s| s.pull.as_ref().ok());
    if let Some(apart) = pull(Sides::Left).zip(pull(Sides::Right)).and_then(|(left, right)| sides::apart(left, right)) {
        let by = Vacuum::from_canonical(apart.by.value.canonical().abs());
        let (low, high) = (apart.by.low.canonical().abs(), apart.by.high.canonical().abs());
        let range = words.vacuum_range(Vacuum::from_canonical(low.min(high)), Vacuum::from_canonical(low.max(high)));
        lines.push(match apart.apart {
            false => words.say("sides-alike"),
            true => words.with(
                if apart.by.value.canonical() > 0.0 { "sides-left-more" } else { "sides-right-more" },
                &[("by", words.vacuum(by).into()), ("range", range.into())],
            ),
        });
    }
    // Below what its grade reaches is not yet below what is held good.
    let (good_low, good_high) = look.rules.good;
    let below = sides.iter().any(|s| s.judged.is_some_and(|j| j.verdict == Verdict::Below));
    if below && look.limits.low.is_some_and(|low| low > good_low) {
        let within = sides.iter().filter_map(|s| s.pull.as_ref().ok()).all(|p| p.estimate.low >= good_low);
        if within {
            lines.push(words.with("still-good", &[("range", words.vacuums_between(good_low, good_high).into())]));
        }
    }
    let highest = latest.check.readings.iter().map(|(_, reading)| reading.vacuum.quantity());
    let highest = highest.max_by(|a, b| a.canonical().total_cmp(&b.canonical()));
    if highest.is_some_and(|read| applied::beyond_hand_exemption(look.grade, read, &look.rules)) {
        lines.push(words.with("hand-exemption", &[("limit", words.vacuum(look.rules.hand_exemption).into())]));
    }
    for (_, reading) in &latest.check.readings {
        if let Some(found) = applied::not_delivered(reading, &look.rules) {
            lines.push(words.with(
                "not-delivered",
                &[
                    ("set", words.vacuum(found.set).into()),
                    ("read", words.vacuum(found.read).into()),
                    ("limit", words.vacuum(look.rules.set_apart).into()),
                ],
            ));
        }
    }
    if let Some(height) = highest.and_then(|read| applied::height(&latest.check, read)) {
        lines.push(words.with(
            "height",
            &[
                ("air", say_decimal(height.air.in_unit(AirPressureUnit::Hectopascal), 0).into()),
                ("share", height.share.per_cent().into()),
                ("read", words.vacuum(highest.unwrap_or(height.at_sea_level)).into()),
                ("level", words.vacuum(height.at_sea_level).into()),
            ],
        ));
    }
    lines
}

/// The gauge, how it was connected, with which parts, and what that means.
pub(super) fn set_up_lines(
    view: &View<'_>,
    look: &PumpInputs,
    latest: &CheckInputs,
    sides: &[SideInputs],
) -> Result<Vec<String>, Trouble> {
    let words = view.words();
    let mut lines = Vec::new();
    match sides.iter().find_map(|side| side.pull.as_ref().ok()) {
        Some(pull) => lines.push(words.with(
            "gauge-wrong-by",
            &[
                ("error", words.high().vacuum(pull.error.greatest).into()),
                ("spread", words.vacuum(pull.repeat.spread).into()),
                ("count", latest.check.readings.len().to_string().into()),
            ],
        )),
        None if latest.gauge.is_none() => lines.push(words.say("gauge-not-named")),
        None => {}
    }
    if let Some(due) = gauge_was_due(view, latest) {
        lines.push(words.with("gauge-past-due", &[("date", words.plain_date(due).into())]));
    }
    lines.push(words.say(match latest.check.set_up.connected {
        Some(Connected::DeadHeaded) => "connected-dead-headed",
        Some(Connected::WithFlange) => "connected-with-flange",
        None => "connected-unsaid",
    }));
    if latest.check.set_up.power == Some(Power::Battery) {
        lines.push(words.say("ran-on-battery"));
    }
    if let Some(at) = latest.check.at.as_ref().map(|at| at.instant()) {
        let then = |part: &&PartInUse| {
            part.since.is_some_and(|(_, since)| since <= at) && part.until.is_none_or(|(_, until)| until >= at)
        };
        let parts = parts_of(view, &look.id)?;
        let names: Vec<&str> = parts.iter().filter(then).map(|part| part.name.as_str()).collect();
        if !names.is_empty() {
            lines.push(words.with("parts-then", &[("names", names.join(", ").into())]));
        }
    }
    Ok(lines)
}
