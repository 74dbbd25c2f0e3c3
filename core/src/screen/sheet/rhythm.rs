//! Sessions a day and the gaps between them: the day-by-day figures, in the middle and
//! at their ends.

use std::collections::BTreeMap;

use super::section::{of_rows, row};
use super::sessions::SessionFields;
use crate::answer::night::longest_by_day;
use crate::answer::supply::DayProduction;
use crate::gather::supply::SupplyInputs;
use crate::record::{whole_number, Kind};
use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::View;
use crate::time::{LocalDay, Span};
use crate::trouble::Trouble;

pub(super) fn render(
    view: &View<'_>,
    look: &SupplyInputs,
    told: &[SessionFields],
    limit: Span,
) -> Result<Option<SheetSection>, Trouble> {
    let found = longest_gaps(view, look)?;
    let rows = [
        sessions(view, look),
        minutes(view, look, told),
        letdowns(view, told),
        gaps(view, &found),
        longest(view, &found),
        beyond(view, &found, limit),
    ];
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

/// Minutes of expressing on days of which each session says how long it was.
fn minutes(view: &View<'_>, look: &SupplyInputs, told: &[SessionFields]) -> Option<SheetRow> {
    let words = view.words();
    let mut by_day: BTreeMap<LocalDay, Option<Span>> = BTreeMap::new();
    for session in told.iter().map(|one| &one.session).filter(|session| session.collects()) {
        let Some(started) = &session.started else { continue };
        let lasted = session.ended.as_ref().map(|ended| ended.instant().since(started.instant()));
        let day = by_day.entry(LocalDay::of(started, view.settings.day_start)).or_insert(Some(Span::minutes(0)));
        *day = day.zip(lasted).map(|(sum, one)| Span::milliseconds(sum.in_milliseconds() + one.in_milliseconds()));
    }
    let whole = look.days.iter().filter_map(|day| by_day.get(&day.day).copied().flatten());
    let (least, middle, most) = spread(whole.collect())?;
    let note = words.with("sheet-from-to", &[("low", words.span(least).into()), ("high", words.span(most).into())]);
    Some(row(words.say("sheet-minutes-a-day"), words.span(middle), if least == most { String::new() } else { note }))
}

/// Letdowns of expressing sessions of which any were noted: of the others nobody said. Feeds at
/// the breast are none of them.
fn letdowns(view: &View<'_>, told: &[SessionFields]) -> Option<SheetRow> {
    let words = view.words();
    let noted = |one: &SessionFields| match one.session.letdowns_marked().get() {
        0 => whole_number(&one.fields, "letdowns"),
        marked => Some(marked),
    };
    let told: Vec<&SessionFields> = told.iter().filter(|one| one.session.collects()).collect();
    let counts: Vec<u32> = told.iter().copied().filter_map(noted).collect();
    let of = counts.len() as i64;
    let (least, middle, most) = spread(counts)?;
    let range = words.with("sheet-from-to", &[("low", least.into()), ("high", most.into())]);
    let noted = words.with("sheet-letdowns-noted", &[("count", of.into()), ("all", (told.len() as i64).into())]);
    let note = if least == most { noted } else { [range, noted].join("; ") };
    Some(row(words.say("sheet-letdowns"), middle.to_string(), note))
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
