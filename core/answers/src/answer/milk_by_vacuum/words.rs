//! What milk against vacuum says.

use super::adjusted::{Adjusted, MilkAt};
use crate::answer::comfort::Axis;
use crate::answer::estimate::CONFIDENCE;
use crate::guidance::ComfortRules;
use crate::quantity::{Count, Share};
use crate::statistics::two_sided_t;

/// What is said.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Says {
    /// More came at the higher settings: so much more, as a share, with its range.
    Rises([Share; 3]),
    /// No sign that more vacuum brings more, to within what matters.
    NoSignOfMore([Share; 3]),
    /// Less came at the highest settings than in the middle: so much less.
    LessAtHigher([Share; 3]),
    /// Settings never varied: this can't be told.
    NeverVaried,
    /// It can't be told yet: about so many sessions more.
    CannotTellYet(Count),
}

/// How far what is said rests on choices of the person.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ByChoice {
    /// A trial drew the settings.
    Drawn,
    /// The person chose them: it may be the other way round, and a trial is the way to know.
    Chosen,
    /// And there is a sign of it: the pump was set stronger after less had come.
    StrongerAfterLess,
}

/// A place of the curve: so much more or less than in the middle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place<Q> {
    /// The setting.
    pub at: Q,
    /// Against the middle, as a share: value, low, high.
    pub against_middle: [Share; 3],
}

/// Milk against vacuum.
#[derive(Debug, Clone, PartialEq)]
pub struct MilkByVacuum<Q> {
    /// What is said.
    pub says: Says,
    /// What it rests on.
    pub by_choice: ByChoice,
    /// The curve, where there is one.
    pub curve: Vec<Place<Q>>,
    /// Sessions within what is comfortable.
    pub sessions: Count,
    /// Sessions left out, since they lay above it.
    pub above_ceiling: Count,
}

/// A word is said at this, surer than a range: of many who look, few are to be told what is not so.
const WORDS: f64 = 0.96;
/// Places that a curve is drawn through.
const DRAWN: u32 = 8;
/// A sign that it was turned up after less came is held real at this chance.
const SURE: f64 = 0.95;

/// Milk against vacuum within what is comfortable: nothing above the ceiling counts. None where
/// no session tells of it.
pub fn milk_by_vacuum<Q: Axis>(
    milk: &[MilkAt<Q>],
    ceiling: Option<Q>,
    rules: &ComfortRules,
) -> Option<MilkByVacuum<Q>> {
    let within = |m: &&MilkAt<Q>| ceiling.is_none_or(|ceiling| m.setting.number() <= ceiling.number() + 1e-9);
    let (kept, above): (Vec<&MilkAt<Q>>, Vec<&MilkAt<Q>>) = milk.iter().partition(within);
    let sessions = named(&kept);
    if milk.is_empty() {
        return None;
    }
    let mut told = MilkByVacuum {
        says: Says::CannotTellYet(Count::new(rules.milk_sessions.get().saturating_sub(sessions))),
        by_choice: if kept.iter().all(|m| m.drawn) { ByChoice::Drawn } else { ByChoice::Chosen },
        curve: Vec::new(),
        sessions: Count::new(sessions),
        above_ceiling: Count::new(named(&above)),
    };
    if sessions < rules.milk_sessions.get() {
        return Some(told);
    }
    let settings = || kept.iter().map(|m| m.setting.number());
    let apart = settings().fold(f64::NEG_INFINITY, f64::max) - settings().fold(f64::INFINITY, f64::min);
    let Some(fit) = Adjusted::of(&kept).filter(|_| apart >= Q::WIDTH) else {
        told.says = Says::NeverVaried;
        return Some(told);
    };
    told.says = says(&fit, sessions, rules)?;
    if told.by_choice == ByChoice::Chosen && stronger_after_less(&fit.sessions) {
        told.by_choice = ByChoice::StrongerAfterLess;
    }
    told.curve = curve(&fit);
    Some(told)
}

fn named<Q: Axis>(milk: &[&MilkAt<Q>]) -> u32 {
    let mut names: Vec<&str> = milk.iter().map(|m| m.session.as_str()).collect();
    names.sort_unstable();
    names.dedup();
    names.len() as u32
}

/// From the log scale: nothing more is nothing, twice as much is one.
fn shares((value, low, high): (f64, f64, f64)) -> [Share; 3] {
    [value, low, high].map(|log| Share::of(log.exp_m1()))
}

fn says(fit: &Adjusted, sessions: u32, rules: &ComfortRules) -> Option<Says> {
    let bend = fit.apart(fit.middle, fit.high, WORDS)?;
    if bend.2 < 0.0 {
        return Some(Says::LessAtHigher(shares(bend)));
    }
    let all = fit.apart(fit.low, fit.high, WORDS)?;
    if all.1 > 0.0 {
        return Some(Says::Rises(shares(all)));
    }
    if all.2 < 0.0 {
        return Some(Says::LessAtHigher(shares(all)));
    }
    let matters = rules.milk_matters.fraction().ln_1p();
    if all.2 < matters {
        return Some(Says::NoSignOfMore(shares(all)));
    }
    let wide = (all.2 - all.1) / (2.0 * matters);
    let more = f64::from(sessions) * (wide * wide - 1.0);
    Some(Says::CannotTellYet(Count::new(more.clamp(1.0, MOST_MORE) as u32)))
}

/// More sessions than this are not asked for at once.
const MOST_MORE: f64 = 500.0;

/// Whether the next setting was the stronger the less had come: the correlation of steps with
/// what was left of the session before, by Student's t.
fn stronger_after_less(sessions: &[(f64, f64)]) -> bool {
    let steps: Vec<(f64, f64)> = sessions
        .iter()
        .zip(sessions.iter().skip(1))
        .map(|((setting, left), (next, _))| (next - setting, *left))
        .collect();
    let n = steps.len() as f64;
    if n < 10.0 {
        return false;
    }
    let mean = |of: &dyn Fn(&(f64, f64)) -> f64| steps.iter().map(of).sum::<f64>() / n;
    let (x, y) = (mean(&|s| s.0), mean(&|s| s.1));
    let sum = |of: &dyn Fn(&(f64, f64)) -> f64| steps.iter().map(of).sum::<f64>();
    let (both, of_x, of_y) =
        (sum(&|s| (s.0 - x) * (s.1 - y)), sum(&|s| (s.0 - x).powi(2)), sum(&|s| (s.1 - y).powi(2)));
    if of_x <= 0.0 || of_y <= 0.0 {
        return false;
    }
    let r = (both / (of_x * of_y).sqrt()).clamp(-0.999_999, 0.999_999);
    let t = r * ((n - 2.0) / (1.0 - r * r)).sqrt();
    two_sided_t(SURE, n - 2.0).is_some_and(|bound| t < -bound)
}

fn curve<Q: Axis>(fit: &Adjusted) -> Vec<Place<Q>> {
    let step = (fit.high - fit.low) / f64::from(DRAWN);
    (0..=DRAWN)
        .filter_map(|place| {
            let at = step.mul_add(f64::from(place), fit.low);
            Some(Place { at: Q::down(at), against_middle: shares(fit.apart(fit.middle, at, CONFIDENCE)?) })
        })
        .collect()
}
