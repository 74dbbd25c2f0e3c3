//! The first two weeks, day by day: milk comes in, and a mean of a rise says nothing.

use super::head_words::HeadWords;
use crate::answer::supply::DayProduction;
use crate::gather::supply::{FirstDays, SupplyInputs};
use crate::screen::View;

/// The words on top, a line a day, and no mean.
pub(super) fn render(view: &View<'_>, look: &SupplyInputs, first: FirstDays) -> HeadWords {
    let words = view.words();
    let of_then = |day: &&DayProduction| day.day >= first.birth;
    let lines = look.days.iter().filter(of_then).map(|day| line(view, look, first, day));
    let mut lines: Vec<String> = lines.collect();
    lines.push(words.say("supply-first-days-why"));
    HeadWords {
        headline: words.say("supply-first-days"),
        figure: String::new(),
        caption: words.say("supply-first-days-caption"),
        lines,
    }
}

fn line(view: &View<'_>, look: &SupplyInputs, first: FirstDays, day: &DayProduction) -> String {
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
