//! Words for what a pump does, said alike wherever it is said.

use crate::answer::pump::{Grade, Limits, Settles, Verdict, Whose};
use crate::gather::kit::{CheckInputs, PumpInputs, SideInputs};
use crate::quantity::{say_decimal, Share, Vacuum};
use crate::record::Sides;
use crate::screen::shapes::{Action, Event, ListRow, Notice, Place, Section, Tone};
use crate::screen::View;
use crate::time::{Instant, LocalDay, Span};

pub(super) fn day_of(view: &View<'_>, looked: &CheckInputs) -> Option<LocalDay> {
    looked.check.at.as_ref().map(|at| LocalDay::of(at, view.settings.day_start))
}

/// A side by its word.
pub(super) fn side_text(view: &View<'_>, side: Sides) -> String {
    view.words().say(match side {
        Sides::Left => "side-left",
        Sides::Right => "side-right",
        Sides::Both => "side-one-port",
    })
}

/// A range in words; either end may be open.
pub(super) fn range_text(view: &View<'_>, low: Option<Vacuum>, high: Option<Vacuum>) -> String {
    let words = view.words();
    match (low, high) {
        (Some(low), Some(high)) => words.vacuums_between(low, high),
        (Some(low), None) => words.with("limit-from", &[("low", words.vacuum(low).into())]),
        (None, Some(high)) => words.with("limit-to", &[("high", words.vacuum(high).into())]),
        (None, None) => String::new(),
    }
}

/// A range in words, with whose it is.
pub(super) fn limits_text(view: &View<'_>, limits: &Limits) -> String {
    let words = view.words();
    let range = range_text(view, limits.low, limits.high.or(limits.usually_to));
    if range.is_empty() {
        return range;
    }
    words.with(
        match limits.whose {
            Whose::Maker => "limits-maker",
            Whose::Grade(Grade::Hospital) => "limits-hospital",
            Whose::Grade(_) => "limits-personal",
            Whose::Any => "limits-any",
        },
        &[("range", range.into())],
    )
}

/// How sure a verdict is: of both sides at once where it is the same.
pub(super) fn chance_lines(view: &View<'_>, look: &PumpInputs, sides: &[SideInputs]) -> Vec<String> {
    let words = view.words();
    let said: Vec<(String, &str, String)> = sides
        .iter()
        .filter_map(|side| {
            let (key, chance) = chance(side)?;
            Some((side_text(view, side.side), key, words.chance(chance)))
        })
        .collect();
    let range = range_text(view, look.limits.low, look.limits.high);
    let line = |side: String, key: &str, chance: &str| {
        words.with(key, &[("side", side.into()), ("chance", chance.to_owned().into()), ("range", range.clone().into())])
    };
    match said.as_slice() {
        [(_, key, chance), (_, other, alike)] if key == other && chance == alike => {
            vec![line(words.say("side-each"), key, chance)]
        }
        _ => said.into_iter().map(|(side, key, chance)| line(side, key, &chance)).collect(),
    }
}

fn chance(side: &SideInputs) -> Option<(&'static str, Share)> {
    let judged = side.judged?;
    Some(match judged.verdict {
        Verdict::Below => ("chance-below", judged.below),
        Verdict::Above => ("chance-above", judged.above),
        Verdict::Meets | Verdict::CannotTell => ("chance-meets", judged.meets),
    })
}

/// What would settle a verdict that can't be given: the most that any side needs.
pub(super) fn settles_line(view: &View<'_>, sides: &[SideInputs]) -> Option<String> {
    let words = view.words();
    let all: Vec<Settles> = sides.iter().filter_map(|side| side.judged.map(|judged| judged.settles)).collect();
    let needed = all.iter().filter_map(|s| if let Settles::MoreReadings(more) = s { Some(more.get()) } else { None });
    let classes = all.iter().filter_map(|s| if let Settles::BetterGauge(class) = s { Some(*class) } else { None });
    if all.contains(&Settles::Neither) {
        return Some(words.say("settles-neither"));
    }
    if let Some(class) = classes.reduce(f64::min) {
        return Some(words.with("settles-gauge", &[("class", say_decimal(class, 2).into())]));
    }
    needed.max().map(|more| words.with("settles-readings", &[("more", more.into())]))
}

pub(super) fn notice(key: &str, text: String, actions: Vec<Action>) -> Notice {
    Notice { key: key.to_owned(), tone: Tone::Asks, spoken: text.clone(), text, actions }
}

/// A section of lines that need no title: they go on from what stands over them.
pub(super) fn bare(key: &str) -> Section {
    crate::screen::section::section(key, String::new())
}

/// A section of words and rows.
pub(super) fn section(view: &View<'_>, key: &str) -> Section {
    crate::screen::section::section(key, view.words().say(&format!("section-{key}")))
}

/// A row that opens a place.
pub(super) fn opens(view: &View<'_>, key: String, title: String, detail: String, place: Place) -> ListRow {
    view.text_row(title, detail).opens(key, Event::Go { place })
}

pub(super) fn date_at_noon(view: &View<'_>, date: &str) -> Option<(chrono::NaiveDate, Instant)> {
    let date = chrono::NaiveDate::parse_from_str(date, "%Y-%m-%d").ok()?;
    let begins = LocalDay::on(date).begins(view.zone, view.settings.day_start);
    Some((date, begins.plus(Span::hours(12))))
}
