//! Before a session: how long each side has rested, and what to start.

use super::shapes::{
    Action, Arc, ChoiceRow, Event, Notice, Part, Place, ReadyScreen, Rest, Screen, SetUpLine, Sign, Tone, Weight,
};
use super::View;
use crate::gather::next_session::SetUp;
use crate::record::choices::{METHODS, SIDES};
use crate::record::{Kind, Session, SETTINGS};
use crate::time::{Instant, Moment, Span};
use crate::trouble::Trouble;
use chrono::Timelike;

/// Once around the face of a clock.
const FACE: Span = Span::hours(12);
/// How far back sessions that lack an amount are still spoken of.
const SPEAKS_OF_LACKING: Span = Span::hours(7 * 24);
/// How many sessions are looked at for the last use of each side.
const LOOKS_BACK: u32 = 40;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Now, words.say("place-now"), words.date(view.today()))?;
    frame.ask_again_milliseconds = Some(30_000);
    frame.notices.extend(lacking(view)?);
    frame.notices.extend(super::kept::kept_notice(view)?);
    frame.notices.extend(super::plan::notice(view)?);
    frame.notices.extend(super::kit::trial_notice(view)?);
    let pumps = view.named(Kind::Pump)?;
    let set_up = SetUp::next(view)?;
    let last = last_ends(view)?;
    let (figure, caption) = match last.0.max(last.1) {
        Some(end) => (words.span(view.now.since(end)), words.say("ready-since-last")),
        None => (words.clock(&view.present()), words.say("ready-first")),
    };
    let rests = vec![rest(view, Part::Left, last.0), rest(view, Part::Right, last.1)];
    let spoken = rests.iter().map(|c| c.spoken.clone()).collect::<Vec<_>>().join(" ");
    let how = how(view, &set_up, &pumps);
    let go = |key: &str, place: Place| Action::new(key, words.say(key), Event::Go { place });
    Ok(Screen::Ready {
        frame,
        ready: ReadyScreen {
            figure,
            caption,
            lead: if last == (None, None) { words.say("lead-ready") } else { String::new() },
            rests,
            set_up: SetUpLine {
                spoken: words.with("set-up-spoken", &[("how", how.clone().into())]),
                spoken_open: words.with("set-up-spoken-open", &[("how", how.clone().into())]),
                text: how.clone(),
                // Where nothing is logged yet nobody has said how it is done.
                open: last == (None, None),
                rows: rows(view, &set_up, &pumps),
            },
            start: Action::new("start", words.say("start"), Event::Start)
                .spoken(words.with("start-spoken", &[("how", how.into())]))
                .weight(Weight::Main)
                .sign(Sign::Start),
            just_pumped: go("just-pumped", Place::JustPumped { minutes_ago: None })
                .spoken(words.say("just-pumped-spoken")),
            today: today(view)?,
            settings: go("ready-settings", Place::Entry { id: SETTINGS.to_owned() })
                .spoken(words.say("ready-settings-spoken"))
                .sign(Sign::Settings)
                .weight(Weight::Quiet),
            add: ["feed", "sign", "note"]
                .map(|kind| {
                    Action::new(
                        format!("add-{kind}"),
                        words.say(&format!("kind-{kind}")),
                        Event::Add { kind: kind.to_owned(), days_back: 0 },
                    )
                    .spoken(words.say(&format!("add-{kind}")))
                    .weight(Weight::Quiet)
                    .sign(Sign::Add)
                })
                .into(),
            spoken,
        },
    })
}

/// How the next session is done, in a line: the sides, and the pump where one is used.
pub(super) fn how(view: &View<'_>, set_up: &SetUp, pumps: &[(String, String)]) -> String {
    let words = view.words();
    let sides = words.say(&format!("choice-sides-{}", set_up.sides.name()));
    let pump = set_up.pump.as_ref().and_then(|id| pumps.iter().find(|(known, _)| known == id));
    let how = match pump {
        Some((_, name)) => name.clone(),
        None => words.say(&format!("choice-method-{}", set_up.method)),
    };
    words.with("ready-how", &[("sides", sides.into()), ("how", how.into())])
}

/// What today holds so far, and what of it is not known.
fn today(view: &View<'_>) -> Result<Action, Trouble> {
    let words = view.words();
    let (figure, sessions) = super::day::in_a_line(view, &view.journal.rollup(view.today())?);
    if view.journal.rollup(view.today())?.sessions.get() == 0 {
        return Ok(open_today(view, words.say("today-nothing")));
    }
    let line = words.with("today-line", &[("figure", figure.into()), ("sessions", sessions.into())]);
    Ok(open_today(view, line))
}

fn open_today(view: &View<'_>, line: String) -> Action {
    let words = view.words();
    Action::new("place-day", words.say("ready-today"), Event::Go { place: Place::Day { days_back: 0 } })
        .spoken(words.with("today-spoken", &[("line", line.clone().into())]))
        .detail(line)
        .weight(Weight::Quiet)
        .sign(Sign::Later)
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

fn rest(view: &View<'_>, part: Part, last: Option<Instant>) -> Rest {
    let words = view.words();
    let side = if part == Part::Left { "left" } else { "right" };
    let label = words.say(&format!("side-{side}"));
    match last {
        Some(end) => {
            let rested = view.now.since(end);
            let text = words.span(rested);
            Rest {
                part,
                spoken: words.with("rested-spoken", &[("side", label.clone().into()), ("span", text.clone().into())]),
                label,
                text,
                arc: Some(arc(&view.present(), rested)),
            }
        }
        None => Rest {
            part,
            spoken: words.with("rested-unknown-spoken", &[("side", label.clone().into())]),
            label,
            text: String::new(),
            arc: None,
        },
    }
}

/// From so long ago to now on the face of a clock.
fn arc(now: &Moment, rested: Span) -> Arc {
    let wall = now.on_the_wall().time();
    let to = Span::seconds(i64::from(wall.num_seconds_from_midnight())).share_of(FACE).fract();
    let back = rested.share_of(FACE).clamp(0.0, 1.0);
    // Never before the top of the face.
    Arc { from: 1.0 + to - back, to: 1.0 + to }
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
            Event::Go { place: Place::Amounts { id: first.subject.clone() } },
        )
        .weight(Weight::Quiet)],
    }))
}
