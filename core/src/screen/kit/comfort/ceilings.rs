//! What is comfortable, in words: for each side and phase, with its range and what it rests on.

use super::picture;
use super::setting::Setting;
use crate::answer::comfort::{Ceiling, Comfort, Told};
use crate::answer::supply::Side;
use crate::gather::comfort::ComfortInputs;
use crate::guidance::ComfortRules;
use crate::record::mark::Phase;
use crate::screen::shapes::{ListRow, Section};
use crate::screen::View;
use crate::time::{LocalDay, Moment};

/// The word of the moment, its figure, and what that rests on.
pub(super) fn head(view: &View<'_>, all: &[Comfort], rules: &ComfortRules) -> (String, String, String) {
    let words = view.words();
    let expression = || all.iter().filter(|one| one.phase == Phase::Expression);
    let figures: Vec<String> = expression().filter_map(|one| figure(view, one)).collect();
    let sessions = expression().map(|one| one.sessions.get()).max().unwrap_or(0);
    if !figures.is_empty() {
        let caption = words.with("comfort-caption", &[("sessions", sessions.into())]);
        return (words.say("comfort-headline"), figures.join(" \u{b7} "), caption);
    }
    let caption = match expression().find_map(|one| why_not(view, one)) {
        Some(why) => why,
        None => words.with("comfort-nothing-said", &[("sessions", rules.sessions.get().into())]),
    };
    (words.say("comfort-cannot-tell"), String::new(), caption)
}

fn side_name(side: Side) -> &'static str {
    match side {
        Side::Left => "left",
        Side::Right => "right",
    }
}

fn side_word(view: &View<'_>, side: Side) -> String {
    view.words().say(&format!("side-{}", side_name(side)))
}

/// A side with its ceiling, where it has one.
fn figure(view: &View<'_>, one: &Comfort) -> Option<String> {
    fn value<Q: Setting>(view: &View<'_>, told: &Told<Q>) -> Option<String> {
        match told.ceiling {
            Ceiling::At(found) => Some(found.value.say(view)),
            Ceiling::RareUpTo(setting) => {
                Some(view.words().with("comfort-at-least", &[("setting", setting.say(view).into())]))
            }
            Ceiling::NotRareFrom(_) | Ceiling::NeverVaried | Ceiling::CannotTellYet(_) => None,
        }
    }
    let value = match (&one.in_vacuum, &one.in_levels) {
        (Some(told), _) => value(view, told),
        (None, Some(told)) => value(view, told),
        (None, None) => None,
    }?;
    let side = side_word(view, one.side);
    Some(view.words().with("side-value", &[("side", side.into()), ("value", value.into())]))
}

/// Its range in short, while it expresses, where it has one.
pub(super) fn range_in_short(view: &View<'_>, one: &Comfort) -> Option<String> {
    fn range<Q: Setting>(view: &View<'_>, told: &Told<Q>) -> Option<String> {
        match told.ceiling {
            Ceiling::At(found) => Some(Q::say_between(view, found.low, found.high)),
            _ => None,
        }
    }
    let range = match (&one.in_vacuum, &one.in_levels) {
        (Some(told), _) => range(view, told),
        (None, Some(told)) => range(view, told),
        (None, None) => None,
    }
    .filter(|_| one.phase == Phase::Expression)?;
    let needs =
        [("side", side_word(view, one.side).into()), ("range", range.into()), ("sessions", one.sessions.get().into())];
    Some(view.words().with("comfort-in-short", &needs))
}

fn why_not(view: &View<'_>, one: &Comfort) -> Option<String> {
    match (&one.in_vacuum, &one.in_levels) {
        (Some(told), _) => said(view, told).into_iter().next(),
        (None, Some(told)) => said(view, told).into_iter().next(),
        (None, None) => None,
    }
}

/// Of one side and phase: its words, its picture, its course.
pub(super) fn section_of(view: &View<'_>, one: &Comfort, rules: &ComfortRules) -> Section {
    let words = view.words();
    let phase = words.say(&format!("phase-{}", one.phase.name()));
    let title = words.with("comfort-of", &[("side", side_word(view, one.side).into()), ("phase", phase.into())]);
    let key = format!("comfort-{}-{}", side_name(one.side), one.phase.name());
    let rests = words.with("comfort-rests-on", &[("sessions", one.sessions.get().into())]);
    let (mut lines, plot, rows) = match (&one.in_vacuum, &one.in_levels) {
        (Some(told), _) => {
            (said(view, told), picture::of(view, one.side, told, Some(rules.comfortable)), course(view, told))
        }
        (None, Some(told)) => (said(view, told), picture::of(view, one.side, told, None), course(view, told)),
        (None, None) => (Vec::new(), None, Vec::new()),
    };
    lines.push(rests);
    Section { lines, plot, rows, ..crate::screen::section::section(&key, title) }
}

/// What is told of a ceiling, or why it can't be.
pub(super) fn said<Q: Setting>(view: &View<'_>, told: &Told<Q>) -> Vec<String> {
    let words = view.words();
    match told.ceiling {
        Ceiling::At(found) => vec![words.with(
            "comfort-ceiling",
            &[("setting", found.value.say(view).into()), ("range", Q::say_between(view, found.low, found.high).into())],
        )],
        Ceiling::RareUpTo(setting) => {
            vec![words.with("comfort-rare-up-to", &[("setting", setting.say(view).into())])]
        }
        Ceiling::NotRareFrom(setting) => vec![
            words.with("comfort-not-rare-from", &[("setting", setting.say(view).into())]),
            words.say("comfort-change-today"),
        ],
        Ceiling::NeverVaried => vec![words.say("comfort-never-varied"), words.say("comfort-offer-search")],
        Ceiling::CannotTellYet(more) => {
            vec![words.with("comfort-needs", &[("more", more.get().into())])]
        }
    }
}

/// How it moved: the ceiling of each four weeks that tell one, where there are several.
fn course<Q: Setting>(view: &View<'_>, told: &Told<Q>) -> Vec<ListRow> {
    let words = view.words();
    if told.course.len() < 2 {
        return Vec::new();
    }
    let row = |(until, found): &(crate::time::Instant, crate::answer::Estimate<Q>)| {
        let day = LocalDay::of(&Moment::new(*until, view.zone), view.settings.day_start);
        let title = words.with("comfort-weeks-to", &[("date", words.short_date(day).into())]);
        let range = Q::say_between(view, found.low, found.high);
        let detail = words.with("comfort-value", &[("setting", found.value.say(view).into()), ("range", range.into())]);
        view.text_row(title, detail)
    };
    told.course.iter().map(row).collect()
}

/// What is said to everybody, and what was not counted.
pub(super) fn kind_words(view: &View<'_>, inputs: &ComfortInputs) -> Vec<String> {
    let words = view.words();
    let mut lines = vec![words.say("comfort-less-is-as-good"), words.say("comfort-pain-is-a-reason")];
    if inputs.silent.get() > 0 {
        lines.push(words.with("comfort-silent", &[("sessions", inputs.silent.get().into())]));
    }
    lines
}

/// The band and the study that people ask for, with what they do not say.
pub(super) fn background(view: &View<'_>, rules: &ComfortRules) -> Vec<String> {
    let words = view.words();
    let (low, high) = rules.comfortable;
    vec![
        words.with("comfort-band-said", &[("range", words.vacuums_between(low, high).into())]),
        words.say("comfort-kent"),
        words.say("comfort-how"),
    ]
}
