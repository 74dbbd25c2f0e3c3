//! What is tapped while a session runs.

use drawwell_core::{
    quantity::{Level, Score},
    record::{mark::Phase, Mark, MarkKind, MARKS},
};

use crate::chance::Chance;

use super::{
    fact::{cycles, vacuum, Fact},
    routine::{Doing, With},
    story,
};

/// How much of a session is tapped in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Care {
    /// Start and finish.
    Plain,
    /// Phases, letdowns, settings, what hurts.
    Full,
}

/// The strengths of one session, in the pump's own terms.
#[derive(Debug, Clone, Copy)]
pub(super) struct Strength {
    pub(super) letdown: i64,
    pub(super) expression: i64,
}

/// Adds the marks of one session to its fact.
pub(super) fn add(
    mut fact: Fact,
    doing: &Doing,
    seconds: i64,
    care: Care,
    strength: Strength,
    chance: &mut Chance,
) -> Fact {
    let mut tapped = vec![(0, MarkKind::Phase(Phase::Letdown)), (0, set(doing, strength.letdown, 68.0, false))];
    if care == Care::Full {
        letdowns_and_phases(&mut tapped, doing, seconds, strength, chance);
    } else {
        let switched = chance.whole(95, 150);
        tapped.push((switched, MarkKind::Phase(Phase::Expression)));
        tapped.push((switched, set(doing, strength.expression, 50.0, false)));
    }
    tapped.retain(|(at, _)| *at < seconds);
    tapped.sort_by_key(|(at, _)| *at);
    for (number, (at, kind)) in tapped.into_iter().enumerate() {
        let mark = Mark { at: story::moment(doing.day, doing.second + at), side: None, kind };
        fact = fact.says(&format!("{MARKS}{number:03}"), mark.to_json(None));
    }
    fact
}

fn letdowns_and_phases(
    tapped: &mut Vec<(i64, MarkKind)>,
    doing: &Doing,
    seconds: i64,
    strength: Strength,
    chance: &mut Chance,
) {
    let first = chance.whole(60, 150);
    tapped.push((first, MarkKind::Letdown));
    let mut at = first + chance.whole(4, 20);
    tapped.push((at, MarkKind::Phase(Phase::Expression)));
    tapped.push((at, set(doing, strength.expression, 50.0, false)));

    if chance.happens(story::hurts(doing.day as f64) / 9.0) {
        let hurt = at + chance.whole(20, 90);
        let score = chance.around(story::hurts(doing.day as f64) + 1.0, 0.8).round().clamp(1.0, 9.0);
        tapped.push((hurt, MarkKind::Pain { score: Some(Score::new(score as u32)) }));
        tapped.push((hurt + chance.whole(4, 15), set(doing, softer(doing, strength.expression), 50.0, true)));
    }

    at += chance.whole(290, 420);
    if seconds - at < 240 {
        return;
    }
    if chance.happens(0.10) {
        let rest = at - chance.whole(70, 110);
        tapped.push((rest, MarkKind::Phase(Phase::Rest)));
    }
    tapped.push((at, MarkKind::Phase(Phase::Letdown)));
    tapped.push((at, set(doing, strength.letdown, 68.0, false)));
    if chance.happens(0.85) {
        at += chance.whole(45, 130);
        tapped.push((at, MarkKind::Letdown));
    } else {
        at += 120;
    }
    at += chance.whole(5, 25);
    tapped.push((at, MarkKind::Phase(Phase::Expression)));
    tapped.push((at, set(doing, strength.expression, 48.0, false)));
    if chance.happens(0.35) {
        tapped.push((at + chance.whole(100, 200), MarkKind::Letdown));
    }
}

fn softer(doing: &Doing, strength: i64) -> i64 {
    if doing.with == With::WardPump {
        strength - 20
    } else {
        strength - 1
    }
}

/// The ward's pump shows mmHg, the one at home a level.
fn set(doing: &Doing, strength: i64, speed: f64, for_discomfort: bool) -> MarkKind {
    let on_ward = doing.with == With::WardPump;
    MarkKind::Setting {
        level: (!on_ward).then(|| Level::new(u32::try_from(strength).unwrap_or(0))),
        vacuum: on_ward.then(|| vacuum(strength as f64)),
        cycles: Some(cycles(speed)),
        for_discomfort,
        carried: false,
    }
}
