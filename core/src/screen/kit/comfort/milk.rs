//! Milk against vacuum: whether more vacuum brings more, within what is comfortable.

use super::super::plot::empty;
use super::super::pump_words::section;
use super::setting::Setting;
use crate::answer::comfort::{Ceiling, Comfort};
use crate::answer::milk_by_vacuum::{milk_by_vacuum, ByChoice, MilkByVacuum, Place, Says};
use crate::gather::comfort::ComfortInputs;
use crate::quantity::{say_decimal, Share, Vacuum};
use crate::record::mark::Phase;
use crate::record::Kind;
use crate::screen::shapes::{Action, Event, PlotCourse, PlotPicture, RibbonPoint, Section, Sign, Tick};
use crate::screen::View;

/// The height of the picture reaches at least so far to either side.
const LEAST_SHARE: f64 = 0.1;

/// None where no session says milk and a vacuum that a hand set.
pub(super) fn section_of(view: &View<'_>, inputs: &ComfortInputs, all: &[Comfort]) -> Option<Section> {
    let words = view.words();
    let found = milk_by_vacuum(&inputs.milk, lowest_ceiling(all), &inputs.rules)?;
    let mut lines = vec![says(view, &found)];
    lines.push(words.say(match found.by_choice {
        ByChoice::Drawn => "milk-drawn",
        ByChoice::Chosen => "milk-chosen",
        ByChoice::StrongerAfterLess => "milk-stronger-after-less",
    }));
    lines.push(words.with("milk-rests-on", &[("sessions", found.sessions.get().into())]));
    if found.above_ceiling.get() > 0 {
        lines.push(words.with("milk-above-ceiling", &[("sessions", found.above_ceiling.get().into())]));
    }
    let actions = match found.by_choice {
        ByChoice::Drawn => Vec::new(),
        ByChoice::Chosen | ByChoice::StrongerAfterLess => {
            let add = Event::Add { kind: Kind::Trial.name().to_owned(), days_back: 0 };
            vec![Action::new("milk-trial", words.say("add-trial"), add).sign(Sign::Add)]
        }
    };
    Some(Section { lines, plot: picture(view, &found), actions, ..section(view, "comfort-milk") })
}

/// What neither side is to go above while it expresses; nothing where that is not known in mmHg.
fn lowest_ceiling(all: &[Comfort]) -> Option<Vacuum> {
    let told = all.iter().filter(|one| one.phase == Phase::Expression).filter_map(|one| one.in_vacuum.as_ref());
    let known = told.filter_map(|told| match told.ceiling {
        Ceiling::At(found) => Some(found.value),
        Ceiling::RareUpTo(_) | Ceiling::NotRareFrom(_) | Ceiling::NeverVaried | Ceiling::CannotTellYet(_) => None,
    });
    known.reduce(|a, b| if b < a { b } else { a })
}

pub(super) fn says<Q>(view: &View<'_>, found: &MilkByVacuum<Q>) -> String {
    let words = view.words();
    let shares = |key: &str, [value, low, high]: [Share; 3]| {
        let needs = [
            ("share", words.chance(positive(value)).into()),
            ("low", percent(low).into()),
            ("high", percent(high).into()),
        ];
        words.with(key, &needs)
    };
    match found.says {
        Says::Rises(by) => shares("milk-rises", by),
        Says::NoSignOfMore(by) => shares("milk-no-sign-of-more", by),
        Says::LessAtHigher(by) => shares("milk-less-at-higher", by),
        Says::NeverVaried => words.say("milk-never-varied"),
        Says::CannotTellYet(more) => words.with("milk-needs", &[("more", more.get().into())]),
    }
}

fn positive(share: Share) -> Share {
    Share::of(share.fraction().abs())
}

/// A share with its sign, in per cent.
pub(super) fn percent(share: Share) -> String {
    format!("{}%", crate::screen::words::with_sign(share.fraction() * 100.0, 0))
}

/// The curve with its range, against what comes in the middle.
fn picture<Q: Setting>(view: &View<'_>, found: &MilkByVacuum<Q>) -> Option<PlotPicture> {
    let (first, last) = (found.curve.first()?, found.curve.last()?);
    let words = view.words();
    let shown: Vec<Q> = found.curve.iter().map(|place| place.at).collect();
    let across = Q::ladder(view, &shown);
    let reach = |place: &Place<Q>| place.against_middle.iter().map(|s| s.fraction().abs()).fold(0.0, f64::max);
    let top = found.curve.iter().map(reach).fold(LEAST_SHARE, f64::max);
    let height = |share: Share| ((share.fraction() / top + 1.0) / 2.0).clamp(0.0, 1.0) as f32;
    let point = |place: &Place<Q>| {
        let [middle, low, high] = place.against_middle.map(height);
        RibbonPoint { at: across.at(place.at), low, middle, high }
    };
    let label = |at: f32, value: f64| Tick { at, label: percent(Share::of(value)) };
    Some(PlotPicture {
        courses: vec![PlotCourse { points: found.curve.iter().map(point).collect(), dashed: false }],
        ticks: across.labels,
        scale: vec![label(0.0, -top), Tick { at: 0.5, label: say_decimal(0.0, 0) }, label(1.0, top)],
        legend: words.say("milk-legend"),
        spoken: words.with(
            "milk-spoken",
            &[
                ("first", first.at.say(view).into()),
                ("low", percent(first.against_middle[0]).into()),
                ("last", last.at.say(view).into()),
                ("high", percent(last.against_middle[0]).into()),
            ],
        ),
        ..empty()
    })
}
