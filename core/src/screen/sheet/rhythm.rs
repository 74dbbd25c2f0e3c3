//! Sessions a day and the gaps between them: the day-by-day figures, in the middle and
//! at their ends.

use super::section::{of_rows, row};
use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::supply::Look;
use crate::screen::View;
use crate::time::Span;

pub(super) fn told(view: &View<'_>, look: &Look, limit: Span) -> Option<SheetSection> {
    let rows = [sessions(view, look), gaps(view, look), longest(view, look), beyond(view, look, limit)];
    of_rows(view, "rhythm", rows.into_iter().flatten().collect())
}

/// The middle of some values, and their ends.
fn spread<T: Ord + Copy>(mut values: Vec<T>) -> Option<(T, T, T)> {
    values.sort_unstable();
    Some((*values.first()?, *values.get(values.len() / 2)?, *values.last()?))
}

/// Over days on which anything was written down: one without is not one without sessions.
fn sessions(view: &View<'_>, look: &Look) -> Option<SheetRow> {
    let words = view.words();
    let counts = look.days.iter().map(|day| day.emptyings.get()).filter(|count| *count > 0).collect();
    let (least, middle, most) = spread(counts)?;
    let note = words.with("sheet-from-to", &[("low", least.into()), ("high", most.into())]);
    Some(row(words.say("sheet-sessions-a-day"), middle.to_string(), if least == most { String::new() } else { note }))
}

fn gaps(view: &View<'_>, look: &Look) -> Option<SheetRow> {
    let words = view.words();
    let (least, middle, most) = spread(look.days.iter().filter_map(|day| day.longest_gap).collect())?;
    let note = words.with("sheet-from-to", &[("low", words.span(least).into()), ("high", words.span(most).into())]);
    Some(row(words.say("sheet-longest-gap"), words.span(middle), if least == most { String::new() } else { note }))
}

fn longest(view: &View<'_>, look: &Look) -> Option<SheetRow> {
    let words = view.words();
    let day = look.days.iter().filter(|day| day.longest_gap.is_some()).max_by_key(|day| day.longest_gap)?;
    Some(row(words.say("sheet-longest-of-all"), words.span(day.longest_gap?), words.date(day.day)))
}

/// How many days had a gap longer than the limit that is kept to.
fn beyond(view: &View<'_>, look: &Look, limit: Span) -> Option<SheetRow> {
    let words = view.words();
    let known: Vec<Span> = look.days.iter().filter_map(|day| day.longest_gap).collect();
    let beyond = known.iter().filter(|gap| **gap > limit).count();
    let value = words.with("sheet-of", &[("some", (beyond as i64).into()), ("all", (known.len() as i64).into())]);
    let label = words.with("sheet-days-beyond", &[("limit", words.span(limit).into())]);
    (!known.is_empty()).then(|| row(label, value, ""))
}
