//! A pump: what it pulls, how sure that is, and what would settle it.

use super::pump_parts::{parts, years};
use super::pump_text::{headline, render};
use super::pump_words::{bare, day_of, notice, opens, section, side_text};
use super::{choice, levels, speed, two_gauges, wear};
use crate::answer::pump::{doubts, Grade, Whose};
use crate::gather::kit::{CheckInputs, PumpInputs};
use crate::record::check::LEEWAY;
use crate::record::{text, Kind};
use crate::screen::shapes::{Action, Event, FindingsScreen, Notice, Place, Screen, Section, Sign, Weight};
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let look = PumpInputs::over(view, id)?;
    let name = view.name_of(Kind::Pump, &look.fields);
    let subtitle = text(&look.fields, "grade").map(|g| words.say(&format!("choice-grade-{g}"))).unwrap_or_default();
    let mut frame = view.frame(&Place::Pump { id: id.to_owned() }, name, subtitle)?;
    frame.back = Some(view.back());
    let said = match look.latest() {
        Some(latest) => render(view, &look, latest)?,
        None => not_checked(view, &look),
    };
    // The verdict, the dial, what to do; what they rest on comes under that.
    let says = Section { lines: said.lines.clone(), ..bare("says") };
    let findings = FindingsScreen {
        actions: actions(view, &look),
        sections: std::iter::once(says).chain(sections(view, &look)?).collect(),
        lines: Vec::new(),
        asks: match look.latest() {
            Some(latest) => asks(view, &look, latest),
            None => choice::stated_asks(view, &look.id, &look.fields, &look.rules),
        },
        ..said
    };
    Ok(Screen::Findings { frame, findings })
}

/// What the latest check of a pump said; none where it was not checked.
pub(in crate::screen) fn checked(view: &View<'_>, id: &str) -> Result<Option<FindingsScreen>, Trouble> {
    let look = PumpInputs::over(view, id)?;
    look.latest().map(|latest| render(view, &look, latest)).transpose()
}

/// The rules that a pump's range rests on; none where it is the maker's own.
pub(in crate::screen) fn limits_rules(view: &View<'_>, id: &str) -> Result<&'static [&'static str], Trouble> {
    Ok(match PumpInputs::over_latest(view, id, 0)?.limits.whose {
        Whose::Maker => &[],
        Whose::Grade(Grade::Hospital) => &["hospital_low", "hospital_high"],
        Whose::Grade(_) => &["personal_low", "personal_high"],
        Whose::Any => &["good_low", "good_high"],
    })
}

fn not_checked(view: &View<'_>, look: &PumpInputs) -> FindingsScreen {
    let words = view.words();
    let (headline, caption) = (words.say("pump-not-checked"), words.say("pump-not-checked-caption"));
    FindingsScreen {
        spoken: words.with("row-spoken", &[("title", headline.clone().into()), ("detail", caption.clone().into())]),
        headline,
        figure: String::new(),
        caption,
        dial: None,
        lines: choice::stated_lines(view, &look.fields, &look.rules)
            .into_iter()
            .chain([words.say("pump-defers")])
            .collect(),
        asks: Vec::new(),
        actions: Vec::new(),
        sections: Vec::new(),
    }
}

fn actions(view: &View<'_>, look: &PumpInputs) -> Vec<Action> {
    let words = view.words();
    vec![
        Action::new("check", words.say("pump-check"), Event::BeginCheck { pump: look.id.clone() })
            .sign(Sign::Kit)
            .weight(Weight::Main),
        Action::new("trace", words.say("pump-trace"), Event::BeginTrace { pump: look.id.clone() }).sign(Sign::In),
        Action::new("details", words.say("pump-details"), Event::Go { place: Place::Entry { id: look.id.clone() } })
            .weight(Weight::Quiet),
    ]
}

/// Checks that a line about a pump looks at: the latest may hold no highest level.
const IN_SHORT: u32 = 4;

/// One line about a pump, for the list.
pub(super) fn in_short(view: &View<'_>, id: &str) -> Result<String, Trouble> {
    let words = view.words();
    let look = PumpInputs::over_latest(view, id, IN_SHORT)?;
    let Some(latest) = look.latest() else {
        let not_checked = words.say("pump-not-checked");
        return Ok(match choice::stated_in_short(view, &look.fields, &look.rules) {
            Some(stated) => {
                words.with("pump-not-checked-stated", &[("said", not_checked.into()), ("stated", stated.into())])
            }
            None => not_checked,
        });
    };
    let sides = look.sides(latest);
    let headline = headline(view, &look, latest, &sides, &look.doubts(latest));
    Ok(match day_of(view, latest) {
        Some(day) => words.with("pump-in-short", &[("date", words.short_date(day).into()), ("said", headline.into())]),
        None => headline,
    })
}

/// Gentle questions before the readings are believed.
pub(super) fn asks(view: &View<'_>, look: &PumpInputs, latest: &CheckInputs) -> Vec<Notice> {
    let words = view.words();
    let check = &latest.check.id;
    let right = Action::new(
        "readings-right",
        words.say("readings-are-right"),
        Event::ReadingsAreRight { check: check.clone() },
    );
    look.doubts(latest)
        .iter()
        .map(|doubt| match doubt {
            doubts::Doubt::PerhapsKilopascal { read, meant } => {
                let text = words.with(
                    "asks-kilopascal",
                    &[("read", words.vacuum(*read).into()), ("meant", words.vacuum(*meant).into())],
                );
                let meant = Event::MeantIn { id: check.clone(), unit: "kPa".to_owned() };
                notice(
                    "kilopascal",
                    text,
                    vec![Action::new("meant-kilopascal", words.say("meant-kilopascal"), meant), right.clone()],
                )
            }
            doubts::Doubt::FarApart { low, high, .. } => {
                let text = words.with("asks-far-apart", &[("range", words.vacuums_between(*low, *high).into())]);
                let open = Event::Go { place: Place::Check { id: check.clone() } };
                notice("far-apart", text, vec![Action::new("open-check", words.say("asks-look"), open), right.clone()])
            }
        })
        .collect()
}

fn sections(view: &View<'_>, look: &PumpInputs) -> Result<Vec<Section>, Trouble> {
    let mut found = Vec::new();
    found.extend(levels::section(view, look)?);
    found.extend(speed::section_of(view, look)?);
    found.extend(wear::section(view, look)?);
    found.extend(two_gauges::section_of(view, look)?);
    found.extend(choice::claim_checked(view, look));
    found.push(checks(view, look));
    found.extend(traces(view, look)?);
    found.push(parts(view, look)?);
    found.push(years(view, look)?);
    found.retain(|s| !s.lines.is_empty() || !s.rows.is_empty() || !s.actions.is_empty() || s.plot.is_some());
    Ok(found)
}

/// Checks that are listed, the latest first.
const LISTED: usize = 24;

fn checks(view: &View<'_>, look: &PumpInputs) -> Section {
    let words = view.words();
    let rows = look
        .checks
        .iter()
        .rev()
        .take(LISTED)
        .map(|looked| {
            let title = day_of(view, looked).map(|day| words.plain_date(day.date())).unwrap_or_default();
            let mut parts: Vec<String> = looked
                .pulls
                .iter()
                .filter_map(|(side, pull)| {
                    let pull = pull.as_ref().ok()?;
                    Some(words.with(
                        "side-value",
                        &[("side", side_text(view, *side).into()), ("value", words.vacuum(pull.estimate.value).into())],
                    ))
                })
                .collect();
            parts.push(words.with("readings-count", &[("count", looked.check.readings.len().to_string().into())]));
            let place = Place::Check { id: looked.check.id.clone() };
            opens(view, format!("open-{}", looked.check.id), title, parts.join(" \u{b7} "), place)
        })
        .collect();
    Section { rows, ..section(view, "checks") }
}

fn traces(view: &View<'_>, look: &PumpInputs) -> Result<Option<Section>, Trouble> {
    let words = view.words();
    let mut rows = Vec::new();
    for row in view.journal.naming(Kind::Trace, "pump", &look.id, view.now.plus(LEEWAY), LISTED as u32)? {
        let (_, fields) = view.record(&row.subject)?;
        let at = crate::record::moment(&fields, "at");
        let title = at.map(|at| words.plain_date(LocalDay::of(&at, view.settings.day_start).date()));
        let side = text(&fields, "side").map(|side| words.say(&format!("choice-side-{side}"))).unwrap_or_default();
        let place = Place::Trace { id: row.subject.clone() };
        rows.push(opens(view, format!("open-{}", row.subject), title.unwrap_or_default(), side, place));
    }
    Ok((!rows.is_empty()).then(|| Section { rows, ..section(view, "traces") }))
}
