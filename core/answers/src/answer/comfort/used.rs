//! What a session says of a setting and how it felt.

use crate::answer::supply::Side;
use crate::answer::Estimate;
use crate::guidance::ComfortRules;
use crate::quantity::{Entered, Level, Quantity, Score, Vacuum};
use crate::record::mark::Phase;
use crate::record::session::PAINS;
use crate::record::{whole_number, Fields, Mark, MarkKind, Session, Sides};
use crate::time::Instant;

/// How strong it was set: as the dial shows it, and in mmHg where that is known.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strength {
    /// The level on the dial.
    pub level: Option<Level>,
    /// In mmHg: as the pump shows it, or by the curve of its check with the gauge's error.
    pub vacuum: Option<Estimate<Vacuum>>,
}

/// A setting that a hand set, and how it felt.
#[derive(Debug, Clone, PartialEq)]
pub struct Felt {
    /// The session.
    pub session: String,
    /// When it began.
    pub at: Instant,
    /// The pump, whose levels they are.
    pub pump: Option<String>,
    /// Which side felt it.
    pub side: Side,
    /// In which phase.
    pub phase: Phase,
    /// How strong.
    pub strength: Strength,
    /// Whether it was comfortable.
    pub comfortable: bool,
}

/// What holds of a dial at an instant on one side.
#[derive(Debug, Clone, Copy, Default)]
struct Dial {
    level: Option<Level>,
    vacuum: Option<Vacuum>,
    /// Set by a hand, and not only carried over.
    by_hand: bool,
}

impl Dial {
    fn strength(self, pull: &Pull<'_>) -> Option<Strength> {
        if !self.by_hand {
            return None;
        }
        let shown = self.vacuum.map(|shown| Estimate { value: shown, low: shown, high: shown });
        let vacuum = shown.or_else(|| self.level.and_then(pull));
        (self.level.is_some() || vacuum.is_some()).then_some(Strength { level: self.level, vacuum })
    }
}

/// What a level pulls, by the curve of the pump at that time; none where there is none.
pub type Pull<'p> = dyn Fn(Level) -> Option<Estimate<Vacuum>> + 'p;

/// What a session says of its settings and how they felt, a side and phase at a time: the
/// strongest that was comfortable, and the weakest that was not. None of one at the breast, of
/// one whose time is not known, or where nothing was said of how it felt.
pub fn felt_in(session: &Session, fields: &Fields, pull: &Pull<'_>, rules: &ComfortRules) -> Vec<Felt> {
    let Some(at) = session.started.as_ref().map(|at| at.instant()).filter(|_| session.collects()) else {
        return Vec::new();
    };
    let mut all = Vec::new();
    for side in Side::BOTH.into_iter().filter(|side| takes_part(session.sides, *side)) {
        for phase in [Phase::Letdown, Phase::Expression] {
            let said = said(session, fields, side, phase, pull, rules);
            let strongest =
                |one: &&(Strength, bool), other: &&(Strength, bool)| one.0.order().total_cmp(&other.0.order());
            let comfortable = said.iter().filter(|(_, comfortable)| *comfortable).max_by(strongest);
            let hurt = said.iter().filter(|(_, comfortable)| !*comfortable).min_by(strongest);
            // What hurt is not comfortable for having been so a while.
            let comfortable = comfortable.filter(|c| hurt.is_none_or(|h| c.0.order() < h.0.order()));
            all.extend(comfortable.into_iter().chain(hurt).map(|(strength, comfortable)| Felt {
                session: session.id.clone(),
                at,
                pump: session.pump.clone(),
                side,
                phase,
                strength: *strength,
                comfortable: *comfortable,
            }));
        }
    }
    all
}

impl Strength {
    /// Where it stands among those of one pump.
    fn order(&self) -> f64 {
        self.vacuum.map(|v| v.value.canonical()).or(self.level.map(|l| f64::from(l.get()))).unwrap_or(0.0)
    }
}

/// Whether a side took part.
pub(in crate::answer) const fn takes_part(sides: Sides, side: Side) -> bool {
    match side {
        Side::Left => sides.left(),
        Side::Right => sides.right(),
    }
}

/// Whether a mark is about a side: the one it names, else the one it was on where a session went
/// from one to the other, else both.
fn felt_by(session: &Session, mark: &Mark, side: Side) -> bool {
    is_about(mark.side.as_deref().or_else(|| session.side_at(mark.at.instant())), side)
}

/// Whether what was said of a side is about this one; said of none it is about both.
fn is_about(said: Option<&str>, side: Side) -> bool {
    takes_part(Sides::named(said), side)
}

fn said(
    session: &Session,
    fields: &Fields,
    side: Side,
    phase: Phase,
    pull: &Pull<'_>,
    rules: &ComfortRules,
) -> Vec<(Strength, bool)> {
    let mut found: Vec<(Strength, bool)> = Vec::new();
    let mut dial = Dial::default();
    // Where no phase was marked it is taken for expressing.
    let mut now = Phase::Expression;
    let mut strongest: Option<Strength> = None;
    let mut last: Option<Strength> = None;
    for (_, mark) in &session.marks {
        let here = felt_by(session, mark, side);
        match &mark.kind {
            MarkKind::Phase(began) => now = *began,
            MarkKind::Setting { level, vacuum, for_discomfort, carried, .. }
                if is_about(mark.side.as_deref(), side) =>
            {
                if *for_discomfort && now == phase && here {
                    found.extend(dial.strength(pull).map(|strength| (strength, false)));
                }
                if level.is_some() || vacuum.is_some() {
                    let vacuum = vacuum.as_ref().map(Entered::quantity);
                    dial = Dial { level: *level, vacuum, by_hand: !carried };
                }
            }
            MarkKind::Pain { score } if now == phase && here => {
                let comfortable = score.is_some_and(|score| score < rules.discomfort_from);
                found.extend(dial.strength(pull).map(|strength| (strength, comfortable)));
            }
            MarkKind::Comfortable if now == phase && here => {
                found.extend(dial.strength(pull).map(|strength| (strength, true)));
            }
            _ => {}
        }
        // What was set before the side was changed is what the other one gets from then on.
        let on = session.side_at(mark.at.instant()).is_none_or(|on| is_about(Some(on), side));
        if now == phase && on {
            if let Some(strength) = dial.strength(pull) {
                strongest = Some(strongest.filter(|s| s.order() >= strength.order()).unwrap_or(strength));
                last = Some(strength);
            }
        }
    }
    let written = written_down(fields, phase, pull);
    if let Some(score) = afterwards(fields, side, phase) {
        if score < rules.discomfort_from {
            found.extend(last.or(written).map(|strength| (strength, true)));
        } else if found.iter().all(|(_, comfortable)| *comfortable) {
            // Where it hurt was not marked: at the strongest, if anywhere.
            found.extend(strongest.or(written).map(|strength| (strength, false)));
        }
    }
    found
}

/// Pain as it was said afterwards, of a side and phase.
fn afterwards(fields: &Fields, side: Side, phase: Phase) -> Option<Score> {
    let of = |sides: Sides| takes_part(sides, side);
    let key = PAINS.iter().find(|(_, sides, of_phase)| of(*sides) && *of_phase == phase).map(|(key, ..)| key)?;
    whole_number(fields, key).map(Score::new)
}

/// The setting of a phase as it was written down afterwards.
fn written_down(fields: &Fields, phase: Phase, pull: &Pull<'_>) -> Option<Strength> {
    let [level, vacuum] = match phase {
        Phase::Letdown => ["level_letdown", "vacuum_letdown"],
        Phase::Expression => ["level_expression", "vacuum_expression"],
        Phase::Rest => return None,
    };
    let level = whole_number(fields, level).map(Level::new);
    let vacuum = fields.get(vacuum).and_then(Entered::<Vacuum>::from_json).map(|typed| typed.quantity());
    Dial { level, vacuum, by_hand: true }.strength(pull)
}
