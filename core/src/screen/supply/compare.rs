//! Two spans of days beside each other: these days, and as many before them.

use super::head::range;
use crate::answer::caution::comfort::SessionPain;
use crate::answer::supply::against_before::SpanOfDays;
use crate::answer::supply::level::Level;
use crate::gather::days;
use crate::gather::supply::{rules, Beginning};
use crate::quantity::Score;
use crate::screen::section::section;
use crate::screen::shapes::{Action, Event, FindingsScreen, ListRow, Place, Screen, Section, Weight};
use crate::screen::{visit, View};
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Days a span may have; 0 is since the last visit.
const SPANS: [u32; 4] = [0, 7, 14, 28];
/// Longer spans are not read session by session.
const MOST_DAYS: u32 = 120;

pub(in crate::screen) fn show(view: &View<'_>, days: u32) -> Result<Screen, Trouble> {
    let words = view.words();
    let place = Place::Compare { days };
    let mut frame = view.frame(&place, words.say("compare-page"), String::new())?;
    frame.back = Some(view.back());
    let yesterday = view.today().earlier_by(1);
    let since = visit::last_before_today(view)?.map(|at| LocalDay::of(&at, view.settings.day_start));
    let length = match (days, since) {
        (0, Some(day)) => u32::try_from(yesterday.days_since(day) + 1).unwrap_or(1).clamp(1, MOST_DAYS),
        (0, None) => 14,
        (days, _) => days.clamp(1, MOST_DAYS),
    };
    let middle = yesterday.earlier_by(length - 1);
    let (from, until) = (middle.earlier_by(length), middle.earlier_by(1));
    let spans = [(middle, yesterday), (from, until)];
    let rows = rows(view, spans)?;
    let choices = SPANS.iter().map(|span| {
        let label = match span {
            0 => words.say("compare-since-visit"),
            days => words.with("supply-span-days", &[("days", (*days).into())]),
        };
        Action::new(format!("compare-{span}"), label, Event::Go { place: Place::Compare { days: *span } })
            .chosen(*span == days)
            .weight(Weight::Plain)
    });
    let said = |(from, until): (LocalDay, LocalDay)| {
        words
            .with("compare-span", &[("from", words.short_date(from).into()), ("until", words.short_date(until).into())])
    };
    let headline = said(spans[0]);
    let caption = words.with("compare-against", &[("span", said(spans[1]).into())]);
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: std::iter::once(format!("{headline} {caption}"))
                .chain(rows.iter().map(|row| row.spoken.clone()))
                .collect::<Vec<_>>()
                .join(". "),
            headline,
            figure: String::new(),
            caption,
            dial: None,
            lines: Vec::new(),
            asks: Vec::new(),
            actions: choices.collect(),
            sections: vec![Section {
                lines: vec![words.say("compare-no-cause")],
                rows,
                ..section("compared", words.say("compare-title"))
            }],
        },
    })
}

type Days = (LocalDay, LocalDay);

fn rows(view: &View<'_>, [now, before]: [Days; 2]) -> Result<Vec<ListRow>, Trouble> {
    let words = view.words();
    let rules = rules(view)?;
    let Some(beginning) = Beginning::of(view)? else {
        return Ok(vec![view.text_row(words.say("compare-nothing"), String::new())]);
    };
    let over = |(from, until): Days| -> Result<SpanOfDays, Trouble> {
        Ok(SpanOfDays::of(&days::days(view, from, until, beginning.calendar())?, &rules))
    };
    let (these, those) = (over(now)?, over(before)?);
    let two = |title: &str, one: String, other: String| {
        view.text_row(words.say(title), words.with("compare-two", &[("now", one.into()), ("before", other.into())]))
    };
    let level = |span: &SpanOfDays| match &span.level {
        Level::Known(level) => format!("{} ({})", words.production(level.value), range(view, level)),
        Level::NeedsDays(days) => words.with("compare-needs-days", &[("days", days.get().into())]),
        Level::TooMuchMissing => words.say("compare-too-much-missing"),
    };
    let mut rows = vec![two("compare-level", level(&these), level(&those))];
    let difference = match these.more_than(&those) {
        Some(more) => words.with(
            "compare-difference",
            &[
                ("value", words.signed_production(more.value).into()),
                ("low", words.low().signed_production(more.low).into()),
                ("high", words.high().signed_production(more.high).into()),
            ],
        ),
        None => words.say("compare-cannot-tell"),
    };
    rows.push(view.text_row(words.say("compare-more"), difference));
    let gap = |span: &SpanOfDays| span.longest_gap.map_or_else(|| words.say("compare-unknown"), |gap| words.span(gap));
    rows.push(two("compare-gap", gap(&these), gap(&those)));
    let pain = |days: Days| -> Result<String, Trouble> {
        Ok(match highest_pain(view, days)? {
            Some(score) => words.with("compare-pain-score", &[("score", score.get().into())]),
            None => words.say("compare-unknown"),
        })
    };
    rows.push(two("compare-pain", pain(now)?, pain(before)?));
    Ok(rows)
}

/// The highest pain that was written down; none where none was.
fn highest_pain(view: &View<'_>, (from, until): Days) -> Result<Option<Score>, Trouble> {
    let mut highest = None;
    let mut day = from;
    while day <= until {
        for row in view.journal.of_day(day)?.into_iter().filter(|row| !row.taken_out) {
            if row.kind == crate::record::Kind::Session {
                let pain = SessionPain::read(&row.subject, &view.record(&row.subject)?.1);
                highest = highest.max(pain.and_then(|pain| pain.highest()));
            }
        }
        let Some(next) = LocalDay::from_number(day.number() + 1) else { break };
        day = next;
    }
    Ok(highest)
}
