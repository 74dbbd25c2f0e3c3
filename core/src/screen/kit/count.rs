//! A pump's cycles counted by tapping along with it.

use super::pump_words::section;
use crate::answer::pump::speed_steps::{counted, NoCount, CYCLES_COUNTED};
use crate::answer::Estimate;
use crate::quantity::{Quantity, Rounding, Speed, SpeedUnit};
use crate::record::{text, Kind, Taps};
use crate::screen::shapes::{Action, Event, FindingsScreen, Place, Screen, Section, Sign, Weight};
use crate::screen::{field_row, View};
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (_, fields) = view.record(id)?;
    let pump = text(&fields, "pump").map(|pump| view.name_of_id(pump)).transpose()?.flatten().unwrap_or_default();
    let mut frame = view.frame(&Place::SpeedCount { id: id.to_owned() }, words.say("kind-speed_count"), pump)?;
    frame.back = Some(view.back());
    let taps = Taps::from_json(fields.get("taps"));
    let (headline, caption) = match counted(&taps) {
        Ok(found) => (rate(view, &found), words.with("count-range", &[("range", range(view, &found).into())])),
        Err(NoCount::Uneven) => (words.say("count-uneven"), words.say("count-uneven-do")),
        Err(NoCount::Needs(_)) if taps.spans().is_empty() => {
            (words.say("count-begin"), words.with("count-begin-do", &[("cycles", CYCLES_COUNTED.into())]))
        }
        Err(NoCount::Needs(more)) => {
            (words.with("count-needs", &[("more", more.get().into())]), words.say("count-needs-do"))
        }
    };
    let tap = Event::TapAlong { count: id.to_owned() };
    let mut actions = vec![Action::new("tap", words.say("count-tap"), tap).sign(Sign::Add).weight(Weight::Main)];
    if !taps.spans().is_empty() {
        let again = Event::CountAgain { count: id.to_owned() };
        actions.push(Action::new("count-again", words.say("count-again"), again).sign(Sign::Undo));
    }
    let mut rows = Vec::new();
    if let Some(spec) = Kind::SpeedCount.field("speed_step") {
        rows = field_row::rows(view, id, Kind::SpeedCount, spec, &fields)?;
    }
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [headline.as_str(), caption.as_str()].join(". "),
            headline,
            figure: String::new(),
            caption,
            dial: None,
            lines: vec![words.say("count-how")],
            asks: Vec::new(),
            actions,
            sections: vec![Section { fields: rows, ..section(view, "count-step") }],
        },
    })
}

/// A counted speed.
pub(super) fn rate(view: &View<'_>, found: &Estimate<Speed>) -> String {
    view.words().with_unit(Rounding::Nearest.say(found.value.canonical(), 0), SpeedUnit::PerMinute)
}

/// Its range, rounded outward.
pub(super) fn range(view: &View<'_>, found: &Estimate<Speed>) -> String {
    let words = view.words();
    words.with(
        "range",
        &[
            ("low", Rounding::Down.say(found.low.canonical(), 0).into()),
            ("high", Rounding::Up.say(found.high.canonical(), 0).into()),
            ("unit", words.unit(SpeedUnit::PerMinute).into()),
        ],
    )
}
