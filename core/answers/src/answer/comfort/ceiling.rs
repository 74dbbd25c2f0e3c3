//! The comfortable ceiling of a side in a phase.

use super::axis::Axis;
use super::used::Felt;
use crate::answer::estimate::{Estimate, CONFIDENCE};
use crate::answer::supply::Side;
use crate::guidance::ComfortRules;
use crate::quantity::{Count, Level, Share, Vacuum};
use crate::record::mark::Phase;
use crate::statistics::{Answered, RisingChance};
use crate::time::{Instant, Span};

/// The highest setting at which discomfort is rare, or why it can't be told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Ceiling<Q> {
    /// It lies here.
    At(Estimate<Q>),
    /// Discomfort was rare up to the strongest that was comfortable: it lies there or above, and
    /// nobody needs to look for it.
    RareUpTo(Q),
    /// Discomfort was not rare at the weakest that was used: it lies below.
    NotRareFrom(Q),
    /// Settings never varied: this can't be told, and a search can be offered.
    NeverVaried,
    /// So many sessions more, that say a setting and how it felt.
    CannotTellYet(Count),
}

/// A session in the picture.
#[derive(Debug, Clone, PartialEq)]
pub struct Dot<Q> {
    /// The session.
    pub session: String,
    /// How strong.
    pub setting: Q,
    /// Whether it was comfortable.
    pub comfortable: bool,
}

/// What is told in mmHg, or in the levels of one pump.
#[derive(Debug, Clone, PartialEq)]
pub struct Told<Q> {
    /// The ceiling as it is now.
    pub ceiling: Ceiling<Q>,
    /// How often there is discomfort at a setting: places in order.
    pub curve: Vec<(Q, Share)>,
    /// Each session.
    pub dots: Vec<Dot<Q>>,
    /// The ceiling of each four weeks that tell one, the earliest first, by their last instant.
    pub course: Vec<(Instant, Estimate<Q>)>,
}

/// Comfort of a side in a phase.
#[derive(Debug, Clone, PartialEq)]
pub struct Comfort {
    /// The side.
    pub side: Side,
    /// The phase.
    pub phase: Phase,
    /// Sessions it rests on.
    pub sessions: Count,
    /// In mmHg, where most of what was felt is known so.
    pub in_vacuum: Option<Told<Vacuum>>,
    /// Else in levels of the pump that was used last.
    pub in_levels: Option<Told<Level>>,
}

/// How far back it is looked for what is comfortable now.
pub const NOW: Span = Span::hours(56 * 24);
/// And a stretch of its course.
const STRETCH: Span = Span::hours(28 * 24);

/// Comfort of a side in a phase, from everything that was felt up to now, in order of time.
/// None where nothing was said.
pub fn comfort(felt: &[Felt], side: Side, phase: Phase, now: Instant, rules: &ComfortRules) -> Option<Comfort> {
    let own: Vec<&Felt> = felt.iter().filter(|f| f.side == side && f.phase == phase && f.at <= now).collect();
    let last = own.last()?;
    let recent = |f: &&Felt| now.since(f.at) <= NOW;
    let in_vacuum = own.iter().copied().filter(recent).filter(|f| f.strength.vacuum.is_some()).count();
    let of_pump = |f: &&Felt| f.pump == last.pump && f.strength.level.is_some();
    let in_levels = own.iter().copied().filter(recent).filter(of_pump).count();
    let by_vacuum = in_vacuum > 0 && in_vacuum * 2 >= in_levels;
    let levels = || -> Vec<&Felt> { own.iter().copied().filter(of_pump).collect() };
    Some(Comfort {
        side,
        phase,
        sessions: sessions(&own.iter().copied().filter(recent).collect::<Vec<_>>()),
        in_vacuum: by_vacuum.then(|| told(&own, now, rules)),
        in_levels: (!by_vacuum).then(|| told(&levels(), now, rules)),
    })
}

fn sessions(felt: &[&Felt]) -> Count {
    let mut names: Vec<&str> = felt.iter().map(|f| f.session.as_str()).collect();
    names.sort_unstable();
    names.dedup();
    Count::new(names.len() as u32)
}

fn told<Q: Axis>(felt: &[&Felt], now: Instant, rules: &ComfortRules) -> Told<Q> {
    let known: Vec<&Felt> = felt.iter().copied().filter(|f| Q::of(&f.strength).is_some()).collect();
    let recent: Vec<&Felt> = known.iter().copied().filter(|f| now.since(f.at) <= NOW).collect();
    let mut course = Vec::new();
    if let Some(first) = known.first() {
        let mut until = now;
        while until >= first.at {
            let from = until.minus(STRETCH);
            let then: Vec<&Felt> = known.iter().copied().filter(|f| f.at > from && f.at <= until).collect();
            if let Ceiling::At(found) = ceiling(&then, fitted::<Q>(&then, rules).as_ref(), rules) {
                course.push((until, found));
            }
            until = from;
        }
    }
    course.reverse();
    let fit = fitted::<Q>(&recent, rules);
    let dot =
        |f: &&Felt| Some(Dot { session: f.session.clone(), setting: Q::of(&f.strength)?, comfortable: f.comfortable });
    let place = |(at, chance): &(f64, f64)| (Q::down(*at), Share::of(*chance));
    Told {
        ceiling: ceiling(&recent, fit.as_ref(), rules),
        curve: fit.iter().flat_map(|fit| fit.curve.iter().map(place)).collect(),
        dots: recent.iter().filter_map(dot).collect(),
        course,
    }
}

fn fitted<Q: Axis>(felt: &[&Felt], rules: &ComfortRules) -> Option<RisingChance> {
    let answered: Vec<Answered> = felt
        .iter()
        .filter_map(|f| Some(Answered { at: Q::of(&f.strength)?.number(), yes: !f.comfortable, weight: 1.0 }))
        .collect();
    RisingChance::fit(&answered, 2.0 * Q::WIDTH, rules.rare.fraction())
}

fn ceiling<Q: Axis>(felt: &[&Felt], fit: Option<&RisingChance>, rules: &ComfortRules) -> Ceiling<Q> {
    let told = sessions(felt).get();
    let lacking = rules.sessions.get().saturating_sub(told);
    if lacking > 0 {
        return Ceiling::CannotTellYet(Count::new(lacking));
    }
    let settings = |comfortable: Option<bool>| {
        let some = felt.iter().filter(move |f| comfortable.is_none_or(|c| f.comfortable == c));
        some.filter_map(|f| Q::of(&f.strength)).map(Q::number)
    };
    let least = |some: Option<bool>| settings(some).fold(f64::INFINITY, f64::min);
    let most = |some: Option<bool>| settings(some).fold(f64::NEG_INFINITY, f64::max);
    if most(None) - least(None) < Q::WIDTH {
        return Ceiling::NeverVaried;
    }
    let (Some(fit), strongest) = (fit, most(Some(true))) else { return Ceiling::NeverVaried };
    if !strongest.is_finite() {
        return Ceiling::NotRareFrom(Q::up(least(None)));
    }
    let rare = rules.rare.fraction();
    let Some(met) = fit.meets(rare) else {
        return match fit.curve.first().is_some_and(|(_, chance)| *chance > rare) {
            true => Ceiling::NotRareFrom(Q::up(least(None))),
            false => Ceiling::RareUpTo(Q::down(strongest)),
        };
    };
    let tail = (1.0 - CONFIDENCE) / 2.0;
    let (Some(low), Some(middle), Some(high)) = (fit.met_by(tail), fit.met_by(0.5), fit.met_by(1.0 - tail)) else {
        return Ceiling::CannotTellYet(Count::new(1));
    };
    // Of two ways to say it the lower, and nobody is told a setting that was never comfortable.
    let value = met.min(middle).min(strongest).max(least(None));
    let error = error_near::<Q>(felt, value).hypot(Q::APART);
    let (low, high) = (value - (value - low).max(0.0).hypot(error), value + (high - value).max(0.0).hypot(error));
    let wide = high - low;
    if wide.is_nan() || wide > Q::WIDEST + 2.0 * error {
        let more = f64::from(told) * ((wide / Q::WIDEST).powi(2) - 1.0);
        return Ceiling::CannotTellYet(Count::new(more.clamp(1.0, f64::from(MOST_MORE)) as u32));
    }
    Ceiling::At(Estimate { value: Q::down(value), low: Q::down(low), high: Q::up(high) })
}

/// More sessions than this are not asked for at once.
const MOST_MORE: u32 = 60;

/// How far settings near a place may be off, all alike: a gauge's error.
fn error_near<Q: Axis>(felt: &[&Felt], place: f64) -> f64 {
    let nearest =
        felt.iter().filter_map(|f| Some(((Q::of(&f.strength)?.number() - place).abs(), Q::error(&f.strength))));
    nearest.min_by(|a, b| a.0.total_cmp(&b.0)).map_or(0.0, |(_, error)| error)
}
