//! What is set: the rhythm, fixed points, the calendar; and what studies say.

use crate::answer::night::{Origin, Sourced};
use crate::gather::tonight::TonightInputs;
use crate::guidance::Evidence;
use crate::record::{FixedPoint, Kind, RHYTHM};
use crate::screen::shapes::{Action, ChoiceRow, Event, Export, ListRow, Place, Section, Sign, Weight};
use crate::screen::View;
use crate::time::Span;

/// How many sessions a day can be chosen with one tap.
const OFFERED: [u32; 6] = [5, 6, 7, 8, 10, 12];

pub(super) fn how_many(view: &View<'_>, look: &TonightInputs) -> ChoiceRow {
    let words = view.words();
    let chosen = look.gathered.frame.sessions.map(|n| n.value.get());
    ChoiceRow {
        key: "sessions_a_day".to_owned(),
        label: words.say("field-sessions-a-day"),
        options: OFFERED
            .iter()
            .map(|n| {
                let event =
                    Event::Enter { id: RHYTHM.to_owned(), field: "sessions_a_day".to_owned(), typed: n.to_string() };
                Action::new(format!("sessions-{n}"), n.to_string(), event)
                    .spoken(words.with("sessions-a-day-spoken", &[("count", i64::from(*n).into())]))
                    .chosen(chosen == Some(*n))
            })
            .collect(),
    }
}

fn opens(view: &View<'_>, key: String, title: String, detail: String, id: &str) -> ListRow {
    view.text_row(title, detail).opens(key, Event::Go { place: Place::Entry { id: id.to_owned() } })
}

pub(super) fn section(view: &View<'_>, look: &TonightInputs) -> Section {
    let words = view.words();
    let mut section = crate::screen::section::section("set", words.say("tonight-set"));
    section.rows.push(opens(view, "open-rhythm".to_owned(), words.say("rhythm"), rhythm(view, look), RHYTHM));
    for point in &look.gathered.points {
        section.rows.push(opens(
            view,
            format!("open-{}", point.id),
            super::head::point_name(view, Some(point.kind)),
            when(view, point),
            &point.id,
        ));
    }
    section.lines = vec![words.say("tonight-set-line")];
    if asks_for_birth(look) {
        let event = Event::Add { kind: Kind::Child.name().to_owned(), days_back: 0 };
        let child = look.child.clone().map(|id| Event::Go { place: Place::Entry { id } });
        section.actions.push(Action::new("set-birth", words.say("set-birth"), child.unwrap_or(event)));
    }
    section.actions.push(
        Action::new(
            "add-fixed_point",
            words.say("add-fixed_point"),
            Event::Add { kind: "fixed_point".to_owned(), days_back: 0 },
        )
        .weight(Weight::Quiet)
        .sign(Sign::Add),
    );
    if look.plan.as_ref().is_some_and(|p| !p.sessions.is_empty()) {
        section.actions.push(
            Action::new(
                "hand-over-calendar",
                words.say("hand-over-calendar"),
                Event::Export { what: Export::Calendar },
            )
            .detail(words.say("hand-over-calendar-detail"))
            .weight(Weight::Quiet)
            .sign(Sign::Calendar),
        );
    }
    section
}

fn when(view: &View<'_>, point: &FixedPoint) -> String {
    let words = view.words();
    let days = match point.date() {
        Some(date) => words.plain_date(date),
        None => words.say(&format!("choice-days-{}", point.days())),
    };
    let (from, until) = (words.clock_time(point.from), words.clock_time(point.until));
    words.with("fixed-point-when", &[("from", from.into()), ("until", until.into()), ("days", days.into())])
}

/// Whether the gap hangs on a birth date that nobody wrote down.
fn asks_for_birth(look: &TonightInputs) -> bool {
    let frame = &look.gathered.frame;
    frame.first_days.is_none() && matches!(frame.longest.origin, Origin::Rule(_))
}

/// What is kept to, and where each part comes from.
fn rhythm(view: &View<'_>, look: &TonightInputs) -> String {
    let words = view.words();
    let frame = &look.gathered.frame;
    let origin = |origin: Origin| match origin {
        Origin::Set => words.say("origin-set"),
        Origin::AsDone => words.say("origin-as-done"),
        Origin::Rule(_) => words.say("origin-rule"),
        Origin::Start => words.say("origin-start"),
    };
    let of_span = |span: Sourced<Span>| (words.span(span.value), origin(span.origin));
    let (longest, from) = of_span(frame.longest);
    let mut parts = Vec::new();
    if let Some(sessions) = frame.sessions {
        parts.push(words.with(
            "rhythm-sessions",
            &[("count", i64::from(sessions.value.get()).into()), ("origin", origin(sessions.origin).into())],
        ));
    }
    parts.push(words.with("rhythm-longest", &[("longest", longest.into()), ("origin", from.into())]));
    let (sleep_from, sleep_until) = frame.sleep.value;
    parts.push(words.with(
        "rhythm-sleep",
        &[
            ("from", words.clock_time(sleep_from).into()),
            ("until", words.clock_time(sleep_until).into()),
            ("origin", origin(frame.sleep.origin).into()),
        ],
    ));
    if let Some(sessions) = frame.sessions.filter(|_| frame.ending.is_none()) {
        let (least, early) = (frame.rules.least_sessions, frame.rules.least_sessions_early);
        if frame.first_days == Some(true) && sessions.value < early {
            parts.push(words.with("rhythm-few-early", &[("least", i64::from(early.get()).into())]));
        } else if sessions.value < least {
            parts.push(words.with("rhythm-few", &[("least", i64::from(least.get()).into())]));
        }
    }
    if asks_for_birth(look) {
        parts.push(words.say("rhythm-birth-unknown"));
    }
    parts.join(" ")
}

/// The evidence on how many sessions a day: it differs, and is told with its sources.
pub(super) fn evidence(view: &View<'_>) -> Section {
    let words = view.words();
    let mut section = crate::screen::section::section("evidence", words.say("evidence"));
    section.lines = vec![words.say("evidence-differs")];
    section.rows = Evidence::on_sessions_a_day()
        .iter()
        .map(|evidence| {
            let source = words.with(
                if evidence.from_memory { "evidence-source-from-memory" } else { "evidence-source" },
                &[("source", evidence.source.as_str().into()), ("year", evidence.year.to_string().into())],
            );
            view.text_row(words.say(&format!("evidence-{}", evidence.key)), source)
        })
        .collect();
    section
}
