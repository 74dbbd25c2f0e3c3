//! The first two weeks, day by day: milk comes in, and a mean of a rise says nothing.

use super::head::Said;
use super::look::Look;
use crate::answer::supply::DayProduction;
use crate::guidance::{NightRules, Rules};
use crate::record::{date, Kind, RULES};
use crate::screen::View;
use crate::time::{LocalDay, Span};
use crate::trouble::Trouble;

/// Whether these are the first days after the latest birth.
pub(super) fn since(view: &View<'_>) -> Result<Option<FirstDays>, Trouble> {
    let rules = NightRules::read(&Rules::read(&view.record(RULES)?.1));
    let early = |from: LocalDay| Span::hours(24 * view.today().days_since(from)) < rules.early;
    let children = view.journal.fields_of_kind(Kind::Child)?;
    let births = children.iter().filter_map(|(_, fields)| date(fields, "birth")).map(LocalDay::on);
    let latest = births.filter(|birth| *birth <= view.today()).max();
    Ok(latest.filter(|birth| early(*birth)).map(|birth| FirstDays { birth }))
}

/// That these are the first days.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::screen) struct FirstDays {
    /// The latest birth.
    birth: LocalDay,
}

/// The words on top, a line a day, and no mean.
pub(super) fn said(view: &View<'_>, look: &Look, first: FirstDays) -> Said {
    let words = view.words();
    let of_then = |day: &&DayProduction| day.day >= first.birth;
    let lines = look.days.iter().filter(of_then).map(|day| line(view, look, first, day));
    let mut lines: Vec<String> = lines.collect();
    lines.push(words.say("supply-first-days-why"));
    Said {
        headline: words.say("supply-first-days"),
        figure: String::new(),
        caption: words.say("supply-first-days-caption"),
        lines,
    }
}

fn line(view: &View<'_>, look: &Look, first: FirstDays, day: &DayProduction) -> String {
    let words = view.words();
    let date = words.short_date(day.day);
    let age = day.day.days_since(first.birth);
    let date = words.with("supply-day-of-life", &[("date", date.into()), ("day", age.into())]);
    let whole = day.observed() >= look.rules.complete_day;
    match day.production() {
        Some(made) if whole => {
            words.with("supply-first-day", &[("date", date.into()), ("production", words.production(made).into())])
        }
        _ => words.with("supply-first-day-open", &[("date", date.into())]),
    }
}
