//! The figures behind, for the consultant.

use crate::answer::supply::course::{course, Course};
use crate::answer::supply::level::{level, Level};
use crate::answer::supply::{Of, PartOfDay, Series, Side};
use crate::gather::supply::SupplyInputs;
use crate::quantity::{say_decimal, Share};
use crate::record::RULES;
use crate::screen::shapes::{Action, Event, ListGroup, ListRow, ListScreen, Place, Screen};
use crate::screen::words::with_sign;
use crate::screen::{View, Words};
use crate::trouble::Trouble;

/// Days listed one by one, the latest first.
const LISTED: usize = 60;

pub(in crate::screen) fn show(view: &View<'_>, days: u32) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame =
        view.frame(&Place::SupplyFigures { days }, words.say("supply-figures"), words.say("supply-figures-subtitle"))?;
    frame.back = Some(view.back());
    let look = SupplyInputs::over(view, days)?;
    let mut groups = vec![series(view, &look, "both", Of::Both)];
    for (name, side) in [("left", Side::Left), ("right", Side::Right)] {
        groups.push(series(view, &look, name, Of::Side(side)));
    }
    for (part, name) in PartOfDay::ALL.iter().zip(["night", "morning", "afternoon", "evening"]) {
        groups.push(series(view, &look, name, Of::Part(*part)));
    }
    groups.push(changes(view, &look));
    groups.push(by_day(view, &look)?);
    groups.insert(0, compare(view));
    groups.push(rules(view));
    groups.retain(|g| !g.rows.is_empty() || !g.add.is_empty());
    Ok(Screen::List { frame, list: ListScreen { intro: words.say("supply-figures-intro"), groups } })
}

/// The way to two spans beside each other.
fn compare(view: &View<'_>) -> ListGroup {
    let words = view.words();
    let open = Action::new("open-compare", words.say("compare-open"), Event::Go { place: Place::Compare { days: 0 } })
        .detail(words.say("compare-open-detail"));
    ListGroup {
        key: "compare".to_owned(),
        title: String::new(),
        rows: Vec::new(),
        empty: String::new(),
        add: vec![open],
    }
}

fn group(key: &str, title: String, rows: Vec<ListRow>) -> ListGroup {
    ListGroup { key: key.to_owned(), title, rows, empty: String::new(), add: Vec::new() }
}

fn series(view: &View<'_>, look: &SupplyInputs, name: &str, of: Of) -> ListGroup {
    let words = view.words();
    let told = Series::of(look.days_of_level(), of, &look.rules);
    let series = Series::of(look.days_along(), of, &look.rules).by_week_where_long();
    let rests = told.rests_on;
    let mut rows = vec![view.text_row(
        words.say("figures-rests-on"),
        words.with(
            "figures-rests-on-detail",
            &[
                ("complete", rests.complete.get().into()),
                ("days", rests.days.get().into()),
                ("observed", rests.observed.per_cent().into()),
                ("doubtful", rests.doubtful.per_cent().into()),
            ],
        ),
    )];
    let found = if of == Of::Both { look.level } else { level(&told, &look.rules) };
    if let Level::Known(level) = found {
        rows.push(view.text_row(
            words.say("figures-level"),
            words.with(
                "figures-value",
                &[("value", words.production(level.value).into()), ("range", super::head::range(view, &level).into())],
            ),
        ));
    }
    if let Ok(found) = course(&series, &look.rules) {
        rows.extend(course_rows(view, &found));
    }
    group(&format!("figures-{name}"), words.say(&format!("figures-of-{name}")), rows)
}

fn course_rows(view: &View<'_>, course: &Course) -> Vec<ListRow> {
    let words = view.words();
    let percent = |words: Words<'_>, s: Share| words.signed_figure(s.fraction() * 100.0, 1);
    let mut rows = vec![view.text_row(
        words.say("figures-slope"),
        words.with(
            "figures-slope-detail",
            &[
                ("value", words.signed(course.drift.value).into()),
                ("low", words.low().signed(course.drift.low).into()),
                ("high", words.high().signed(course.drift.high).into()),
                ("points", course.points().get().into()),
            ],
        ),
    )];
    if let Some(share) = course.share_a_week {
        rows.push(view.text_row(
            words.say("figures-percent"),
            words.with(
                "figures-percent-detail",
                &[
                    ("value", percent(words, share.value).into()),
                    ("low", percent(words.low(), share.low).into()),
                    ("high", percent(words.high(), share.high).into()),
                ],
            ),
        ));
    }
    if let Some(trend) = &course.trend {
        rows.push(view.text_row(
            words.say("figures-trend"),
            words.with(
                "figures-trend-detail",
                &[
                    ("s", with_sign(trend.trend.s as f64, 0).into()),
                    ("tau", with_sign(trend.trend.tau, 2).into()),
                    ("p", say_decimal(trend.trend.p, 3).into()),
                    ("inflation", say_decimal(trend.variance_inflation, 2).into()),
                ],
            ),
        ));
    }
    rows
}

fn changes(view: &View<'_>, look: &SupplyInputs) -> ListGroup {
    let words = view.words();
    let rows = look
        .changes
        .iter()
        .rev()
        .map(|change| {
            let share = change.share.map(|s| with_sign(s.fraction() * 100.0, 0)).unwrap_or_default();
            view.text_row(
                words.plain_date(change.on.date()),
                words.with(
                    "figures-change-detail",
                    &[
                        ("from", words.short_date(change.earliest).into()),
                        ("to", words.short_date(change.latest).into()),
                        ("size", words.signed_production(change.size.value).into()),
                        ("low", words.low().signed_production(change.size.low).into()),
                        ("high", words.high().signed_production(change.size.high).into()),
                        ("percent", share.into()),
                    ],
                ),
            )
        })
        .collect();
    group("figures-changes", words.say("figures-changes"), rows)
}

fn by_day(view: &View<'_>, look: &SupplyInputs) -> Result<ListGroup, Trouble> {
    let words = view.words();
    let latest = look.days.iter().rev().take(LISTED);
    let clock = match (look.days.get(look.days.len().saturating_sub(LISTED)), look.days.last()) {
        (Some(first), Some(last)) => view.journal.known_by_day(first.day, last.day)?,
        _ => Vec::new(),
    };
    let rows = latest
        .map(|day| {
            let made = day.production().map(|p| words.production(p)).unwrap_or_else(|| words.say("amount-unknown"));
            let by_clock = clock.iter().find(|(d, _)| *d == day.day).map(|(_, v)| words.volume(*v));
            let counts = day.observed() >= look.rules.complete_day && day.production().is_some();
            view.text_row(
                words.date(day.day),
                words.with(
                    match (counts, day.longest_gap) {
                        (true, _) => "figures-day",
                        (false, Some(_)) => "figures-day-left-out-gap",
                        (false, None) => "figures-day-left-out",
                    },
                    &[
                        ("made", made.into()),
                        ("observed", day.observed().per_cent().into()),
                        ("clock", by_clock.unwrap_or_else(|| words.say("amount-nothing-said")).into()),
                        ("emptyings", day.emptyings.get().into()),
                        ("gap", day.longest_gap.map(|g| words.span(g)).unwrap_or_default().into()),
                    ],
                ),
            )
        })
        .collect();
    Ok(group("figures-days", words.say("figures-days"), rows))
}

fn rules(view: &View<'_>) -> ListGroup {
    let words = view.words();
    let mut group = group("figures-rules", words.say("figures-rules"), Vec::new());
    group.add =
        vec![Action::new("open-rules", words.say("rules"), Event::Go { place: Place::Entry { id: RULES.to_owned() } })
            .detail(words.say("rules-detail"))];
    group
}
