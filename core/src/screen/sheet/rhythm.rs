//! Sessions a day and the gaps between them: the day-by-day figures, in the middle and
//! at their ends.

use super::section::{of_rows, row};
use crate::answer::night::longest_by_day;
use crate::answer::supply::DayProduction;
use crate::gather::supply::SupplyInputs;
use crate::record::Kind;
use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::View;
use crate::time::{LocalDay, Span};
use crate::trouble::Trouble;

pub(super) fn render(view: &View<'_>, look: &SupplyInputs, limit: Span) -> Result<Option<SheetSection>, Trouble> {
    let found = longest_gaps(view, look)?;
    let rows = [sessions(view, look), gaps(view, &found), longest(view, &found), beyond(view, &found, limit)];
    Ok(of_rows(view, "rhythm", rows.into_iter().flatten().collect()))
}

/// The middle of some values, and their ends.
fn spread<T: Ord + Copy>(mut values: Vec<T>) -> Option<(T, T, T)> {
    values.sort_unstable();
    Some((*values.first()?, *values.get(values.len() / 2)?, *values.last()?))
}

/// Over days on which anything was written down: one without is not one without sessions.
fn sessions(view: &View<'_>, look: &SupplyInputs) -> Option<SheetRow> {
    let words = view.words();
    let counts = look.days.iter().map(|day| day.emptyings.get()).filter(|count| *count > 0).collect();
    let (least, middle, most) = spread(counts)?;
    let note = words.with("sheet-from-to", &[("low", least.into()), ("high", most.into())]);
    Some(row(words.say("sheet-sessions-a-day"), middle.to_string(), if least == most { String::new() } else { note }))
}

/// The longest gap of each day that is whole.
fn longest_gaps(view: &View<'_>, look: &SupplyInputs) -> Result<Vec<(LocalDay, Span)>, Trouble> {
    let Some(first) = look.days.first() else { return Ok(Vec::new()) };
    let since = first.day.begins(view.zone, view.settings.day_start).minus(Span::hours(24));
    let rows = view.journal.of_kind_since(Kind::Session, since)?;
    let longest = longest_by_day(&rows, view.zone, view.settings.day_start);
    // A day on which a session seems to be missing says nothing of its gaps.
    let sure = |day: &&DayProduction| day.sessions_missing.get() == 0 && day.unclear.get() == 0;
    Ok(look.days.iter().filter(sure).filter_map(|day| Some((day.day, *longest.get(&day.day)?))).collect())
}

fn gaps(view: &View<'_>, gaps: &[(LocalDay, Span)]) -> Option<SheetRow> {
    let words = view.words();
    let (least, middle, most) = spread(gaps.iter().map(|(_, gap)| *gap).collect())?;
    let note = words.with("sheet-from-to", &[("low", words.span(least).into()), ("high", words.span(most).into())]);
    Some(row(words.say("sheet-longest-gap"), words.span(middle), if least == most { String::new() } else { note }))
}

fn longest(view: &View<'_>, gaps: &[(LocalDay, Span)]) -> Option<SheetRow> {
    let words = view.words();
    let (day, gap) = gaps.iter().max_by_key(|(_, gap)| *gap)?;
    Some(row(words.say("sheet-longest-of-all"), words.span(*gap), words.date(*day)))
}

/// How many days had a gap longer than the limit that is kept to.
fn beyond(view: &View<'_>, gaps: &[(LocalDay, Span)], limit: Span) -> Option<SheetRow> {
    let words = view.words();
    let beyond = gaps.iter().filter(|(_, gap)| *gap > limit).count();
    let value = words.with("sheet-of", &[("some", (beyond as i64).into()), ("all", (gaps.len() as i64).into())]);
    let label = words.with("sheet-days-beyond", &[("limit", words.span(limit).into())]);
    (!gaps.is_empty()).then(|| row(label, value, ""))
}
