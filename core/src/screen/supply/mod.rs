//! Supply: how much milk is made, whether that holds, and since when not.
//!
//! What there is to say is gathered in [`crate::gather::supply`]; each file says a part of
//! it: [`head`] the words on top, [`weeks`] and [`hours`] the pictures,
//! [`changes`] since when, [`against`] what it is held against, [`asks`] the
//! gentle questions, [`figures`] the numbers behind.

mod against;
mod asks;
mod changes;
mod children;
mod compare;
mod figures;
mod first_days;
mod head;
mod head_words;
mod hours;
mod intake;
mod weeks;

pub(super) use against::group as against;
pub(super) use asks::drop_text;
pub(super) use changes::notes as changes;
pub(super) use compare::show as show_compared;
pub(super) use figures::show as show_figures;
pub(super) use head::render;
pub(super) use intake::{rests_on_rule as intake_by_rule, sources as intake_sources};
pub(super) use weeks::both as weeks;

use self::head_words::HeadWords;
use super::shapes::Event;
use super::shapes::{
    Action, ChoiceRow, Column, ListGroup, Part, Place, Screen, SideCourse, Sign, SupplyScreen, Weight,
};
use super::View;
use crate::answer::supply::{course::course, level::level, Of, PartOfDay, Series, Side};
use crate::gather::supply::SupplyInputs;
use crate::quantity::Quantity;
use crate::trouble::Trouble;

/// The spans that can be chosen; 0 is all there are.
const SPANS: [u32; 4] = [7, 14, 28, 0];

/// What is met first: the word, the figure, what it rests on, and the picture. The rest lies behind one tap.
pub(super) fn show(view: &View<'_>, days: u32) -> Result<Screen, Trouble> {
    let words = view.words();
    let frame = view.frame(&Place::Supply { days }, words.say("place-supply"), words.say("supply-subtitle"))?;
    let look = SupplyInputs::over(view, days)?;
    let said = head::render(view, &look);
    let more = Action::new("supply-more", words.say("supply-more"), Event::Go { place: Place::SupplyMore { days } })
        .detail(words.say("supply-more-detail"))
        .sign(Sign::Later);
    let supply = SupplyScreen {
        spans: spans(view, days),
        weeks: weeks::both(view, &look)?,
        asks: asks::notices(view, &look)?,
        behind: (!look.is_empty()).then_some(more),
        kept: Some(super::kept::kept_action(view)?),
        // Of the first days each is told by itself: they are what there is instead of a figure.
        lines: if look.first_days.is_some() { said.lines.clone() } else { Vec::new() },
        ..empty(&said)
    };
    Ok(Screen::Supply { frame, supply })
}

/// The rest: how sure that is, since when, left and right, by the hour, and what it is held against.
pub(super) fn show_more(view: &View<'_>, days: u32) -> Result<Screen, Trouble> {
    let words = view.words();
    let place = Place::SupplyMore { days };
    let mut frame = view.frame(&place, words.say("supply-more"), words.say("supply-more-detail"))?;
    frame.back = Some(view.back());
    let look = SupplyInputs::over(view, days)?;
    let mut said = head::render(view, &look);
    said.lines.extend(head::observed(view, &look));
    let figures = Event::Go { place: Place::SupplyFigures { days } };
    let figures =
        Action::new("supply-figures", words.say("supply-figures"), figures).weight(Weight::Quiet).sign(Sign::Supply);
    let supply = SupplyScreen {
        changes: changes::notes(view, &look)?,
        sides: sides(view, &look),
        hours: if look.is_empty() { hours::of_nothing() } else { hours::picture(view, &look)? },
        parts: parts(view, &look),
        against: against::group(view, &look)?,
        behind: (!look.is_empty()).then_some(figures),
        lines: said.lines.clone(),
        ..empty(&said)
    };
    Ok(Screen::Supply { frame, supply })
}

/// The words on top, and nothing below them. A voice hears all of them at once.
fn empty(said: &HeadWords) -> SupplyScreen {
    let nothing = |key: &str| ListGroup {
        key: key.to_owned(),
        title: String::new(),
        rows: Vec::new(),
        empty: String::new(),
        add: Vec::new(),
    };
    SupplyScreen {
        spans: ChoiceRow { key: "supply-span".to_owned(), label: String::new(), options: Vec::new() },
        weeks: weeks::nothing(),
        changes: Vec::new(),
        sides: Vec::new(),
        hours: hours::of_nothing(),
        parts: nothing("parts"),
        against: nothing("against"),
        asks: Vec::new(),
        behind: None,
        kept: None,
        spoken: std::iter::once(format!("{}. {}.", said.headline, said.figure))
            .chain(std::iter::once(said.caption.clone()))
            .chain(said.lines.clone())
            .filter(|s| s != ". ." && !s.is_empty())
            .collect::<Vec<_>>()
            .join(" "),
        headline: said.headline.clone(),
        figure: said.figure.clone(),
        caption: said.caption.clone(),
        lines: Vec::new(),
    }
}

fn spans(view: &View<'_>, days: u32) -> ChoiceRow {
    let words = view.words();
    ChoiceRow {
        key: "supply-span".to_owned(),
        label: words.say("supply-span"),
        options: SPANS
            .iter()
            .map(|span| {
                let label = match span {
                    0 => words.say("supply-span-all"),
                    days => words.with("supply-span-days", &[("days", (*days).into())]),
                };
                Action::new(format!("span-{span}"), label, Event::Go { place: Place::Supply { days: *span } })
                    .chosen(*span == days)
            })
            .collect(),
    }
}

/// Left and right, each by what was measured of it alone.
pub(super) fn sides(view: &View<'_>, look: &SupplyInputs) -> Vec<SideCourse> {
    let words = view.words();
    let all = Side::BOTH.map(|side| Series::of(look.days_along(), Of::Side(side), &look.rules).by_week_where_long());
    let level = |side| level(&Series::of(look.days_of_level(), Of::Side(side), &look.rules), &look.rules).known();
    let levels = Side::BOTH.map(level);
    let most = levels.iter().flatten().map(|l| l.value.canonical()).fold(0.0, f64::max);
    Side::BOTH
        .iter()
        .zip(&all)
        .zip(&levels)
        .filter(|((_, series), _)| !series.days.is_empty())
        .map(|((side, series), level)| {
            let (part, name) = match side {
                Side::Left => (Part::Left, "left"),
                Side::Right => (Part::Right, "right"),
            };
            let label = words.say(&format!("side-{name}"));
            let found = course(series, &look.rules);
            let headline = head::heading(view, found.as_ref());
            let text = level.map(|l| words.production(l.value)).unwrap_or_else(|| words.say("amount-nothing-said"));
            let detail = match level {
                Some(l) => head::range(view, l),
                None => words.say("supply-side-unknown"),
            };
            let height = level.filter(|_| most > 0.0).map(|l| (l.value.canonical() / most * 0.9) as f32);
            SideCourse {
                column: Column {
                    part,
                    spoken: words.with(
                        "supply-side-spoken",
                        &[
                            ("side", label.clone().into()),
                            ("figure", text.clone().into()),
                            ("word", headline.clone().into()),
                        ],
                    ),
                    label,
                    text,
                    height,
                    ghost: None,
                },
                headline,
                detail,
                weeks: weeks::of_side(view, look, *side, found.as_ref().ok()),
            }
        })
        .collect()
}

/// Morning, afternoon, evening, night apart, each as a rate by the hour.
fn parts(view: &View<'_>, look: &SupplyInputs) -> ListGroup {
    let words = view.words();
    let mut rows = Vec::new();
    for (part, name) in PartOfDay::ALL.iter().zip(["night", "morning", "afternoon", "evening"]) {
        let told = Series::of(look.days_of_level(), Of::Part(*part), &look.rules);
        let Some(level) = level(&told, &look.rules).known() else { continue };
        let series = Series::of(look.days_along(), Of::Part(*part), &look.rules).by_week_where_long();
        let title = words.say(&format!("part-of-day-{name}"));
        let word = head::heading(view, course(&series, &look.rules).as_ref());
        let detail =
            words.with("supply-part", &[("rate", words.by_the_hour(level.value).into()), ("word", word.into())]);
        rows.push(view.text_row(title, detail));
    }
    ListGroup {
        key: "parts".to_owned(),
        title: if rows.is_empty() { String::new() } else { words.say("supply-parts") },
        rows,
        empty: String::new(),
        add: Vec::new(),
    }
}
