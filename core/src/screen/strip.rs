//! A session as it ran: phases as bands, letdowns as notches, the setting as a
//! step line, pain beneath.

use super::shapes::{Band, Notch, PainMark, Phase as ShownPhase, StepPoint, Strip, Tick};
use super::View;
use crate::quantity::{Quantity, SpeedUnit};
use crate::record::mark::{MarkKind, Phase};
use crate::record::Session;
use crate::time::{Instant, Span};

/// A strip is never shorter than this, so that its first minute can be read.
const SHORTEST: Span = Span::minutes(10);
/// Cycles per minute at the top and foot of a strip: a scale of the drawing.
const CYCLES: (f64, f64) = (20.0, 130.0);
/// Level at the top of a strip where the pump's own top is not known.
const LEVELS: f32 = 12.0;

pub(super) fn draw(view: &View<'_>, session: &Session, now: Instant) -> Strip {
    let words = view.words();
    let Some(from) = session.started.as_ref().map(|m| m.instant()) else {
        return Strip {
            bands: Vec::new(),
            notches: Vec::new(),
            vacuum: Vec::new(),
            cycles: Vec::new(),
            pains: Vec::new(),
            ticks: Vec::new(),
            key: String::new(),
            spoken: words.say("strip-nothing"),
        };
    };
    let end = session.ended.as_ref().map_or(now, |m| m.instant()).max(from);
    let shortest = view.settings.session_length.unwrap_or(SHORTEST).max(SHORTEST);
    let length =
        if session.is_running() { end.since(from).max(shortest) } else { end.since(from).max(Span::minutes(1)) };
    let at = |instant: Instant| instant.since(from).share_of(length).clamp(0.0, 1.0);
    Strip {
        bands: bands(view, session, from, end, &at),
        notches: session
            .marks
            .iter()
            .filter(|(_, m)| m.kind == MarkKind::Letdown)
            .map(|(_, m)| Notch { at: at(m.at.instant()), label: words.running(m.at.instant().since(from)) })
            .collect(),
        vacuum: vacuum(view, session, &at),
        cycles: cycles(view, session, &at),
        pains: pains(view, session, &at),
        ticks: ticks(view, length),
        key: key(view, session),
        spoken: spoken(view, session, from, end),
    }
}

/// What its lines and signs are: of those that are there.
fn key(view: &View<'_>, session: &Session) -> String {
    let words = view.words();
    let any = |wanted: &dyn Fn(&MarkKind) -> bool| session.marks.iter().any(|(_, mark)| wanted(&mark.kind));
    let has_vacuum = |kind: &MarkKind| matches!(kind, MarkKind::Setting { level, vacuum, .. } if level.is_some() || vacuum.is_some());
    let there = [
        ("strip-key-vacuum", any(&has_vacuum)),
        ("strip-key-cycles", any(&|kind| matches!(kind, MarkKind::Setting { cycles: Some(_), .. }))),
        ("strip-key-letdown", any(&|kind| *kind == MarkKind::Letdown)),
        ("strip-key-pain", any(&|kind| matches!(kind, MarkKind::Pain { .. }))),
    ];
    there.into_iter().filter(|(_, there)| *there).map(|(name, _)| words.say(name)).collect::<Vec<_>>().join(" · ")
}

fn shown(phase: Phase) -> ShownPhase {
    match phase {
        Phase::Letdown => ShownPhase::Letdown,
        Phase::Expression => ShownPhase::Expression,
        Phase::Rest => ShownPhase::Rest,
    }
}

fn bands(view: &View<'_>, session: &Session, from: Instant, end: Instant, at: &dyn Fn(Instant) -> f32) -> Vec<Band> {
    let words = view.words();
    let phases = session.phases();
    let first = phases.first().map_or(end, |(_, start)| *start);
    let mut bands = Vec::new();
    if first > from {
        bands.push(Band { from: 0.0, to: at(first), phase: ShownPhase::Unsaid, label: String::new() });
    }
    for (index, (phase, start)) in phases.iter().enumerate() {
        let stop = phases.get(index + 1).map_or(end, |(_, next)| *next);
        bands.push(Band {
            from: at(*start),
            to: at(stop),
            phase: shown(*phase),
            label: words.say(&format!("phase-{}", phase.name())),
        });
    }
    bands
}

/// A figure of the step line, which says where it is only that of last time.
fn step_label(view: &View<'_>, figure: String, carried: bool) -> String {
    match carried {
        true => view.words().with("strip-last-time", &[("value", figure.into())]),
        false => figure,
    }
}

fn vacuum(view: &View<'_>, session: &Session, at: &dyn Fn(Instant) -> f32) -> Vec<StepPoint> {
    let mut highest = LEVELS;
    for (_, mark) in &session.marks {
        if let MarkKind::Setting { level: Some(level), .. } = &mark.kind {
            highest = highest.max(level.get() as f32);
        }
    }
    session
        .marks
        .iter()
        .filter_map(|(_, mark)| match &mark.kind {
            MarkKind::Setting { level: Some(level), carried, .. } => Some(StepPoint {
                at: at(mark.at.instant()),
                height: level.get() as f32 / highest,
                label: step_label(view, level.get().to_string(), *carried),
            }),
            MarkKind::Setting { vacuum: Some(vacuum), carried, .. } => Some(StepPoint {
                at: at(mark.at.instant()),
                height: (vacuum.quantity().canonical() / 400.0).clamp(0.0, 1.0) as f32,
                label: step_label(view, vacuum.typed().to_owned(), *carried),
            }),
            _ => None,
        })
        .collect()
}

fn cycles(view: &View<'_>, session: &Session, at: &dyn Fn(Instant) -> f32) -> Vec<StepPoint> {
    session
        .marks
        .iter()
        .filter_map(|(_, mark)| match &mark.kind {
            MarkKind::Setting { cycles: Some(cycles), carried, .. } => {
                let share = (cycles.quantity().canonical() - CYCLES.0) / (CYCLES.1 - CYCLES.0);
                Some(StepPoint {
                    at: at(mark.at.instant()),
                    height: share.clamp(0.0, 1.0) as f32,
                    label: step_label(view, cycles.say_in(SpeedUnit::PerMinute), *carried),
                })
            }
            _ => None,
        })
        .collect()
}

fn pains(view: &View<'_>, session: &Session, at: &dyn Fn(Instant) -> f32) -> Vec<PainMark> {
    let words = view.words();
    session
        .marks
        .iter()
        .filter_map(|(_, mark)| match &mark.kind {
            MarkKind::Pain { score } => Some(PainMark {
                at: at(mark.at.instant()),
                height: score.map(|s| s.get() as f32 / 10.0),
                turned_down: false,
                label: score.map_or_else(|| words.say("pain-unsaid"), |s| s.get().to_string()),
            }),
            MarkKind::Setting { for_discomfort: true, .. } => Some(PainMark {
                at: at(mark.at.instant()),
                height: None,
                turned_down: true,
                label: words.say("turned-down-short"),
            }),
            _ => None,
        })
        .collect()
}

fn ticks(view: &View<'_>, length: Span) -> Vec<Tick> {
    let words = view.words();
    let minutes = length.in_minutes().max(1);
    let step = [1, 2, 5, 10, 15, 30, 60, 120, 240, 480].into_iter().find(|s| minutes / s <= 5).unwrap_or(480);
    (0..)
        .map(|i| i * step)
        .take_while(|m| *m <= minutes)
        .map(|m| Tick {
            at: Span::minutes(m).share_of(length).clamp(0.0, 1.0),
            label: if m == 0 { "0".to_owned() } else { words.span(Span::minutes(m)) },
        })
        .collect()
}

fn spoken(view: &View<'_>, session: &Session, from: Instant, end: Instant) -> String {
    let words = view.words();
    let mut parts = vec![words.with("strip-spoken-length", &[("span", words.span(end.since(from)).into())])];
    let phases = session.phases();
    for (index, (phase, start)) in phases.iter().enumerate() {
        let stop = phases.get(index + 1).map_or(end, |(_, next)| *next);
        parts.push(words.with(
            "strip-spoken-phase",
            &[
                ("phase", words.say(&format!("phase-{}", phase.name())).into()),
                ("span", words.span(stop.since(*start)).into()),
            ],
        ));
    }
    match session.letdowns_marked().get() {
        0 => parts.push(words.say("strip-spoken-no-letdown")),
        count => parts.push(words.with("strip-spoken-letdowns", &[("count", count.into())])),
    }
    let hurts = session.marks.iter().filter(|(_, m)| matches!(m.kind, MarkKind::Pain { .. })).count();
    if hurts > 0 {
        parts.push(words.with("strip-spoken-pains", &[("count", (hurts as i64).into())]));
    }
    let down =
        session.marks.iter().filter(|(_, m)| matches!(m.kind, MarkKind::Setting { for_discomfort: true, .. })).count();
    if down > 0 {
        parts.push(words.with("strip-spoken-turned-down", &[("count", (down as i64).into())]));
    }
    parts.join(" ")
}
