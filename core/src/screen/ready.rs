//! Before a session: how long each side has rested, and what to start.

use super::shapes::{Action, ChoiceRow, Column, Event, Notice, Part, Place, ReadyScreen, Screen, Sign, Tone, Weight};
use super::View;
use crate::gather::next_session::SetUp;
use crate::record::choices::{METHODS, SIDES};
use crate::record::{Kind, Session};
use crate::time::{Instant, Span};
use crate::trouble::Trouble;

/// Rest that fills a column to its top: a scale of the drawing, no advice.
const FULL_COLUMN: Span = Span::hours(8);
/// How far back sessions that lack an amount are still spoken of.
const SPEAKS_OF_LACKING: Span = Span::hours(7 * 24);
/// How many sessions are looked at for the last use of each side.
const LOOKS_BACK: u32 = 40;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Now, words.say("place-now"), words.date(view.today()))?;
    frame.ask_again_milliseconds = Some(30_000);
    frame.notices.extend(lacking(view)?);
    frame.notices.extend(super::plan::notice(view)?);
    let pumps = view.named(Kind::Pump)?;
    let set_up = SetUp::next(view)?;
    let last = last_ends(view)?;
    let (figure, caption) = match last.0.max(last.1) {
        Some(end) => (words.span(view.now.since(end)), words.say("ready-since-last")),
        None => (words.clock(&view.present()), words.say("ready-first")),
    };
    let columns = vec![column(view, Part::Left, last.0), column(view, Part::Right, last.1)];
    let spoken = columns.iter().map(|c| c.spoken.clone()).collect::<Vec<_>>().join(" ");
    let method = words.say(&format!("choice-method-{}", set_up.method));
    let sides = words.say(&format!("choice-sides-{}", set_up.sides.name()));
    let how = words.with("ready-how", &[("method", method.into()), ("sides", sides.into())]);
    Ok(Screen::Ready {
        frame,
        ready: ReadyScreen {
            figure,
            caption,
            columns,
            set_up: rows(view, &set_up, &pumps),
            start: Action::new("start", words.say("start"), Event::Start)
                .spoken(words.with("start-spoken", &[("how", how.clone().into())]))
                .detail(how)
                .weight(Weight::Main)
                .sign(Sign::Start),
            add: std::iter::once(
                Action::new("place-day", words.say("ready-today"), Event::Go { place: Place::Day { days_back: 0 } })
                    .weight(Weight::Quiet)
                    .sign(Sign::Day),
            )
            .chain(["feed", "sign", "note"].map(|kind| {
                Action::new(
                    format!("add-{kind}"),
                    words.say(&format!("kind-{kind}")),
                    Event::Add { kind: kind.to_owned(), days_back: 0 },
                )
                .spoken(words.say(&format!("add-{kind}")))
                .weight(Weight::Quiet)
                .sign(Sign::Add)
            }))
            .collect(),
            spoken,
        },
    })
}

fn rows(view: &View<'_>, set_up: &SetUp, pumps: &[(String, String)]) -> Vec<ChoiceRow> {
    let words = view.words();
    let choice = |field: &str, value: &str, label: String, chosen: bool| {
        let event = Event::SetUp { field: field.to_owned(), value: value.to_owned() };
        Action::new(format!("{field}-{value}"), label, event).chosen(chosen)
    };
    let mut rows = vec![
        ChoiceRow {
            key: "sides".to_owned(),
            label: words.say("field-sides"),
            options: ["left", "both", "right"]
                .iter()
                .filter(|s| SIDES.contains(s))
                .map(|s| choice("next_sides", s, words.say(&format!("choice-sides-{s}")), set_up.sides.name() == *s))
                .collect(),
        },
        ChoiceRow {
            key: "method".to_owned(),
            label: words.say("field-method"),
            options: METHODS
                .iter()
                .map(|m| choice("next_method", m, words.say(&format!("choice-method-{m}")), set_up.method == *m))
                .collect(),
        },
    ];
    if pumps.len() > 1 && set_up.method.ends_with("_pump") {
        rows.push(ChoiceRow {
            key: "pump".to_owned(),
            label: words.say("field-pump"),
            options: pumps
                .iter()
                .map(|(id, name)| choice("next_pump", id, name.clone(), set_up.pump.as_ref() == Some(id)))
                .collect(),
        });
    }
    rows
}

/// When each side was last used to its end.
fn last_ends(view: &View<'_>) -> Result<(Option<Instant>, Option<Instant>), Trouble> {
    let mut ends = (None, None);
    for row in view.journal.latest_sessions(view.now, LOOKS_BACK)? {
        let session: Session = view.session(&row.subject)?;
        let end = row.until.or(row.at);
        if session.sides.left() {
            ends.0 = ends.0.max(end);
        }
        if session.sides.right() {
            ends.1 = ends.1.max(end);
        }
        if ends.0.is_some() && ends.1.is_some() {
            break;
        }
    }
    Ok(ends)
}

fn column(view: &View<'_>, part: Part, last: Option<Instant>) -> Column {
    let words = view.words();
    let side = if part == Part::Left { "left" } else { "right" };
    let label = words.say(&format!("side-{side}"));
    match last.map(|end| view.now.since(end)) {
        Some(rested) => Column {
            part,
            spoken: words.with("rested-spoken", &[("side", label.clone().into()), ("span", words.span(rested).into())]),
            label,
            text: words.span(rested),
            height: Some(rested.share_of(FULL_COLUMN).clamp(0.0, 1.0)),
            ghost: None,
        },
        None => Column {
            part,
            spoken: words.with("rested-unknown-spoken", &[("side", label.clone().into())]),
            label,
            text: String::new(),
            height: None,
            ghost: None,
        },
    }
}

fn lacking(view: &View<'_>) -> Result<Option<Notice>, Trouble> {
    let words = view.words();
    let lacking = view.journal.lacking(view.now.minus(SPEAKS_OF_LACKING))?;
    let Some(first) = lacking.first() else { return Ok(None) };
    let text = words.with("lacking", &[("count", (lacking.len() as i64).into())]);
    Ok(Some(Notice {
        key: "lacking".to_owned(),
        tone: Tone::Quiet,
        spoken: text.clone(),
        text,
        actions: vec![Action::new(
            "open-lacking",
            words.say("open-lacking"),
            Event::Go { place: Place::Entry { id: first.subject.clone() } },
        )
        .weight(Weight::Quiet)],
    }))
}
