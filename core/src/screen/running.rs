//! While a session runs: time, phase, settings, and what a thumb can mark.

use super::shapes::{Action, ChoiceRow, Deed, Dial, Event, Notice, Place, RunningScreen, Screen, Sign, Tone, Weight};
use super::{kit, strip, View};
use crate::gather::asks::ASKS_ABOUT_LONG;
use crate::gather::levels::level_in_vacuum;
use crate::quantity::SpeedUnit;
use crate::record::mark::{MarkKind, Phase};
use crate::record::{moment, opposite, whole_number, Fields, Session};
use crate::time::{Instant, Moment, Span};
use crate::trouble::Trouble;

/// How long after `it hurts` its score can be told with one tap.
const ASKS_HOW_MUCH: Span = Span::minutes(3);
/// A session is taken to last about this long where no other is known.
const USUAL_LENGTH: Span = Span::minutes(20);

pub(super) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (_, fields) = view.record(id)?;
    let session = Session::read(id, &fields);
    let started = session.started.clone().unwrap_or_else(|| view.present());
    let elapsed = view.now.since(started.instant());
    let method = words.say(&format!("choice-method-{}", session.method.as_deref().unwrap_or("electric_pump")));
    let title = match session.pump.as_deref() {
        Some(pump) => view.name_of_id(pump)?.unwrap_or(method),
        None => method,
    };
    let side_now = session.side_at(view.now);
    let subtitle = words.with(
        "running-since",
        &[
            ("sides", words.say(&format!("choice-sides-{}", side_now.unwrap_or(session.sides.name()))).into()),
            ("time", words.clock(&started).into()),
        ],
    );
    let mut frame = view.frame(&Place::Now, title, subtitle)?;
    frame.ask_again_milliseconds = Some(1000);
    let asked = moment(&fields, "asked").map(|m| m.instant());
    if view.now.since(asked.unwrap_or(started.instant())) >= ASKS_ABOUT_LONG {
        frame.notices.push(ask_when_ended(view, &session, started.instant())?);
    }
    frame.notices.extend(kit::above_plan_notice(view, &session)?);
    let levels = match session.pump.as_deref() {
        Some(pump) => view.journal.record(pump)?.and_then(|(_, f)| whole_number(&f, "levels")),
        None => None,
    };
    let phase = session.phase_at(view.now);
    let caption = match phase {
        Some((phase, from)) => words.with(
            "running-phase",
            &[
                ("phase", words.say(&format!("phase-{}", phase.name())).into()),
                ("span", words.span(view.now.since(from)).into()),
            ],
        ),
        None => words.say("running-no-phase"),
    };
    let caption = match view.settings.session_length {
        Some(length) => words.with("running-of", &[("caption", caption.into()), ("span", words.span(length).into())]),
        None => caption,
    };
    let figure = words.running(elapsed);
    Ok(Screen::Running {
        frame,
        running: RunningScreen {
            spoken: words
                .with("running-spoken", &[("span", words.span(elapsed).into()), ("phase", caption.clone().into())]),
            figure,
            caption,
            lead: super::lead::lead(view, "lead-running")?,
            strip: strip::draw(view, &session, view.now),
            dials: dials(view, &session, levels, started.instant())?,
            marks: marks(view, &session, phase.map(|(p, _)| p)),
            pain: rows_of(view, &session, &fields)?,
            finish: Action::new("finish", words.say("finish"), Event::Finish).weight(Weight::Main).sign(Sign::Finish),
        },
    })
}

fn mark(view: &View<'_>, key: &str, deed: Deed, sign: Sign) -> Action {
    let words = view.words();
    Action::new(format!("mark-{key}"), words.say(&format!("mark-{key}")), Event::Mark { deed })
        .spoken(words.say(&format!("mark-{key}-spoken")))
        .sign(sign)
}

fn marks(view: &View<'_>, session: &Session, phase: Option<Phase>) -> Vec<Action> {
    let mut marks = vec![mark(view, "letdown", Deed::Letdown, Sign::Letdown)];
    if session.method.as_deref() == Some("electric_pump") {
        marks.push(match phase {
            Some(Phase::Letdown) => mark(view, "expression-phase", Deed::ExpressionPhase, Sign::Later),
            _ => mark(view, "letdown-phase", Deed::LetdownPhase, Sign::Later),
        });
    }
    marks.push(mark(view, "hurts", Deed::Hurts, Sign::Hurts));
    if let Some(other) = session.side_at(view.now).or(Some(session.sides.name())).and_then(opposite) {
        let words = view.words();
        let side = words.say(&format!("choice-sides-{other}"));
        marks.push(
            Action::new("mark-other-side", words.say("mark-change-side"), Event::Mark { deed: Deed::ChangeSide })
                .spoken(words.with("mark-change-side-spoken", &[("side", side.clone().into())]))
                .detail(words.with("mark-change-side-detail", &[("side", side.into())]))
                .sign(Sign::Later),
        );
    }
    marks.push(match phase {
        Some(Phase::Rest) => mark(view, "resume", Deed::ExpressionPhase, Sign::Start),
        _ => mark(view, "rest", Deed::Rest, Sign::Rest),
    });
    marks
}

fn dials(view: &View<'_>, session: &Session, levels: Option<u32>, started: Instant) -> Result<Vec<Dial>, Trouble> {
    if session.method.as_deref() != Some("electric_pump") {
        return Ok(Vec::new());
    }
    let words = view.words();
    let setting = session.setting_at(view.now);
    let shown = session.dials_at(view.now);
    let unset = || words.say("dial-unset");
    let dial = |key: &str, value: String, carried: bool, less: Action, more: Action| {
        let name = words.say(&format!("dial-{key}"));
        let spoken = words.with(&format!("dial-{key}-spoken"), &[("value", value.clone().into())]);
        let (label, spoken) = match carried {
            true => (
                words.with("dial-last-time", &[("dial", name.into())]),
                words.with("dial-last-time-spoken", &[("dial", spoken.into())]),
            ),
            false => (name, spoken),
        };
        let as_last_time = carried.then(|| {
            Action::new(format!("as-last-time-{key}"), label.clone(), Event::Mark { deed: Deed::AsLastTime })
                .spoken(spoken.clone())
                .weight(Weight::Quiet)
        });
        Dial { key: key.to_owned(), label, spoken, value, as_last_time, less, more }
    };
    let carries = |shown: Option<bool>| shown.unwrap_or(false);
    let level_carried = carries(shown.level.as_ref().map(|(_, c)| *c).or(shown.vacuum.as_ref().map(|(_, c)| *c)));
    let cycles_carried = carries(shown.cycles.as_ref().map(|(_, c)| *c));
    let level = setting.level.map(|l| l.get());
    let vacuum = setting.vacuum.as_ref().filter(|_| level.is_none());
    let cycles = setting.cycles.as_ref();
    let pull = match setting.level.filter(|_| !level_carried) {
        Some(level) => level_in_vacuum(view, session, started)?(level),
        None => None,
    };
    let mut dials = vec![
        dial(
            "vacuum",
            match (level, vacuum) {
                (Some(level), _) => level.to_string(),
                (None, Some(vacuum)) => words.entered(vacuum, view.settings.vacuum),
                (None, None) => unset(),
            },
            level_carried,
            mark(view, "softer", Deed::Softer, Sign::Softer).open(level.is_some_and(|l| l > 1) || vacuum.is_some()),
            mark(view, "stronger", Deed::Stronger, Sign::Stronger)
                .open(level.is_none_or(|l| levels.is_none_or(|most| l < most))),
        ),
        dial(
            "cycles",
            cycles.map_or_else(unset, |c| c.say_in(SpeedUnit::PerMinute)),
            cycles_carried,
            mark(view, "slower", Deed::Slower, Sign::Slower).open(cycles.is_some()),
            mark(view, "faster", Deed::Faster, Sign::Faster),
        ),
    ];
    if let (Some(pull), Some(dial)) = (pull, dials.first_mut()) {
        dial.label = words.with("dial-vacuum-about", &[("value", words.vacuum(pull.vacuum.value).into())]);
        let said = words.with(
            "dial-vacuum-about-spoken",
            &[("level", pull.level.get().into()), ("said", kit::level_text(view, &pull).into())],
        );
        dial.spoken = said;
    }
    Ok(dials)
}

/// The next step of a search, the way of a comparison, and what is asked after `it hurts`.
fn rows_of(view: &View<'_>, session: &Session, fields: &Fields) -> Result<Vec<ChoiceRow>, Trouble> {
    let mut rows = kit::rows_while_running(view, session, fields)?;
    let mut pain = pain(view, session);
    if let Some(down) = pain.iter_mut().find(|row| row.key == "pain-down") {
        down.options.extend(kit::search_offer(view, session)?);
    }
    rows.extend(pain);
    Ok(rows)
}

/// After `it hurts`, three rows: whether it was turned down, which side, how much.
fn pain(view: &View<'_>, session: &Session) -> Vec<ChoiceRow> {
    let words = view.words();
    let Some((field, mark)) = session.last_mark(|kind| matches!(kind, MarkKind::Pain { .. })) else {
        return Vec::new();
    };
    let MarkKind::Pain { score: None } = mark.kind else { return Vec::new() };
    if view.now.since(mark.at.instant()) > ASKS_HOW_MUCH {
        return Vec::new();
    }
    let row = |key: &str, label: String, options: Vec<Action>| ChoiceRow { key: key.to_owned(), label, options };
    let mut rows = Vec::new();
    if session.method.as_deref() == Some("electric_pump") {
        rows.push(row(
            "pain-down",
            words.say("pain-down-label"),
            vec![Action::new(
                "pain-turned-down",
                words.say("pain-turned-down"),
                Event::Mark { deed: Deed::TurnedDown },
            )
            .spoken(words.say("pain-turned-down-spoken"))
            .sign(Sign::Softer)],
        ));
    }
    if session.sides.left() && session.sides.right() {
        let side = |side: &str| {
            let event = Event::Enter { id: session.id.clone(), field: format!("{field}/side"), typed: side.to_owned() };
            Action::new(format!("pain-{side}"), words.say(&format!("side-{side}")), event)
                .chosen(mark.side.as_deref() == Some(side))
        };
        rows.push(row("pain-side", words.say("pain-side-label"), ["left", "right"].map(side).into()));
    }
    let score = |score: u32| {
        Action::new(format!("pain-{score}"), score.to_string(), Event::Pain { mark: field.clone(), score })
            .spoken(words.with("pain-score-spoken", &[("score", score.into())]))
    };
    rows.push(row("pain", words.say("pain-label"), (0..=10).map(score).collect()));
    rows
}

/// Asks gently when a session ended that has run for hours.
fn ask_when_ended(view: &View<'_>, session: &Session, started: Instant) -> Result<Notice, Trouble> {
    let words = view.words();
    let usual = usual_length(view)?;
    let text = words.with("asks-ended", &[("span", words.span(view.now.since(started)).into())]);
    let end_at = |key: &str, at: Instant, label_key: &str| {
        let label = words.with(label_key, &[("time", words.clock(&Moment::new(at, view.zone)).into())]);
        let event = Event::FinishAt { session: session.id.clone(), unix_milliseconds: at.unix_milliseconds() };
        Action::new(key, label, event)
    };
    let mut actions = vec![end_at("ended-usual", started.plus(usual), "ended-usual")];
    if let Some((_, last)) = session.marks.last() {
        if last.at.instant() > started.plus(Span::minutes(2)) {
            actions.push(end_at("ended-last-mark", last.at.instant(), "ended-last-mark"));
        }
    }
    actions.push(
        Action::new("still-running", words.say("still-running"), Event::StillRunning { session: session.id.clone() })
            .weight(Weight::Quiet),
    );
    Ok(Notice { key: "asks-ended".to_owned(), tone: Tone::Asks, spoken: text.clone(), text, actions })
}

/// The middle length of the latest sessions.
fn usual_length(view: &View<'_>) -> Result<Span, Trouble> {
    let mut lengths: Vec<Span> = view
        .journal
        .latest_sessions(view.now, 15)?
        .into_iter()
        .filter_map(|row| Some(row.until?.since(row.at?)))
        .collect();
    lengths.sort();
    Ok(lengths.get(lengths.len() / 2).copied().unwrap_or(USUAL_LENGTH))
}
