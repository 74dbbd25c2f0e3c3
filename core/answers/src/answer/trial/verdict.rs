//! What a trial says so far.

use super::design::{SetUp, Way};
use super::outcome::Apart;
use super::pairs::{Done, Pairs};
use crate::guidance::ComfortRules;
use crate::quantity::{Count, Share};
use crate::statistics::{
    bounds, nominal, non_overlap, paired_range, randomisation, standard_deviation, Assignments, RandomBlock,
};

/// Which way is better.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// This one, by the outcome that was chosen first.
    Better(Way),
    /// Neither by as much as matters.
    NoDifferenceThatMatters,
    /// It can't be told yet.
    CannotTellYet,
    /// All planned sessions are done, and it can't be told.
    CannotTell,
}

/// What a trial says so far.
#[derive(Debug, Clone, PartialEq)]
pub struct TrialAnswer {
    /// Which way is better. Once it is told, later sessions do not take it back.
    pub verdict: Verdict,
    /// After so many pairs it was told.
    pub told_after: Option<Count>,
    /// The first way less the second, with its range at this look; none where the sessions are
    /// too few for any range.
    pub apart: Option<Apart>,
    /// The same as shares of what is usual: value, low, high.
    pub share: Option<[Share; 3]>,
    /// Value alone, not set against what was to be expected.
    pub plain: Option<Apart>,
    /// The chance of a difference so large were there none, by drawing again. For one look.
    pub p: Option<Share>,
    /// Whether all draws were counted.
    pub assignments: Option<Assignments>,
    /// Of all pairs of a session of the first way and one of the second, how many have the first
    /// above (NAP), from nothing to all; and Tau, from less to more.
    pub non_overlap: Option<(Share, Share)>,
    /// Pairs that say something.
    pub pairs: Count,
    /// Sessions that were not done as drawn. They count as they were done.
    pub not_as_drawn: Count,
    /// Sessions of which nobody knows how they were done, or what they reached.
    pub not_known: Count,
    /// Whether amounts were set against what was to be expected after their gaps.
    pub adjusted: bool,
    /// Sessions more that would settle a difference that matters four times in five, by the
    /// spread seen so far.
    pub more: Option<Count>,
}

/// Power that sessions are reckoned for.
const POWER_SPREADS: f64 = 0.8416;
/// Pairs until a spread is held to be known.
const LEAST_FOR_SPREAD: usize = 4;
/// More are not asked for.
const MOST_MORE: f64 = 2000.0;

/// What a trial says, from its sessions as they were done.
///
/// Each pair is a look. The range at a look is that of Hodges and Lehmann over the pairs'
/// differences, exact for what was drawn, so sure that all looks together go wrong no more often
/// than the rules allow (Lan & DeMets's spending of O'Brien and Fleming's type, with repeated
/// confidence intervals after Jennison & Turnbull). A way is better once the range leaves out
/// nothing; there is no difference that matters once all of the range is smaller than that.
pub fn answer(done: &[Done], set_up: &SetUp, rules: &ComfortRules) -> TrialAnswer {
    let pairs = Pairs::of(done, set_up);
    let planned = set_up.planned.get().div_ceil(2).max(1) as usize;
    let looks: Vec<f64> = (1..=planned).map(|look| look as f64 / planned as f64).collect();
    let chance = rules.trial_false.fraction();
    let met = bounds(chance, &looks);
    let by_itself = nominal(&met);
    let apart: Vec<f64> = pairs.pairs.iter().map(|pair| pair.apart).collect();
    let matters = set_up.outcome.matters(pairs.usual, rules);
    let range_at = |look: usize| {
        let alpha = by_itself.get(look.checked_sub(1)?).copied().flatten()?;
        paired_range(apart.get(..look)?, 1.0 - alpha)
    };
    let told = (1..=apart.len()).find_map(|look| {
        let range = range_at(look)?;
        let higher = if set_up.outcome.more_is_better() { Way::A } else { Way::B };
        let says = if range.low > 0.0 {
            Verdict::Better(higher)
        } else if range.high < 0.0 {
            Verdict::Better(higher.other())
        } else if range.low > -matters && range.high < matters {
            Verdict::NoDifferenceThatMatters
        } else {
            return None;
        };
        Some((says, look))
    });
    let verdict = told.map(|(says, _)| says).unwrap_or(match done.len() >= 2 * planned {
        true => Verdict::CannotTell,
        false => Verdict::CannotTellYet,
    });
    let range = range_at(apart.len());
    let blocks: Vec<RandomBlock> = pairs.pairs.iter().map(|pair| pair.block.clone()).collect();
    let drawn = randomisation(&blocks, u64::from(set_up.seed));
    let plain: Vec<f64> = pairs.pairs.iter().map(|pair| pair.plain).collect();
    let as_share = |value: f64| Share::of(if pairs.usual > 0.0 { value / pairs.usual } else { 0.0 });
    let last = met.last().copied().flatten();
    TrialAnswer {
        verdict,
        told_after: told.map(|(_, look)| Count::new(look as u32)),
        apart: range.map(|r| set_up.outcome.apart(r.found.shift, r.low, r.high)),
        share: range.map(|r| [r.found.shift, r.low, r.high].map(as_share)),
        plain: crate::statistics::paired_shift(&plain).map(|p| set_up.outcome.apart(p.shift, p.shift, p.shift)),
        p: drawn.map(|drawn| Share::of(drawn.p)),
        assignments: drawn.map(|drawn| drawn.assignments),
        non_overlap: non_overlap(&pairs.of_b, &pairs.of_a).map(|n| (Share::of(n.nap), Share::of(n.tau))),
        pairs: Count::new(apart.len() as u32),
        not_as_drawn: count(done, |d| d.done.is_some_and(|way| way != d.drawn)),
        not_known: count(done, |d| d.done.is_none()),
        adjusted: pairs.adjusted,
        more: last.and_then(|last| more(&apart, last, matters)),
    }
}

fn count(done: &[Done], which: impl Fn(&Done) -> bool) -> Count {
    Count::new(done.iter().filter(|d| which(d)).count() as u32)
}

/// Sessions more: n = ((z + z₀.₈) s / d)² pairs in all.
fn more(apart: &[f64], last: f64, matters: f64) -> Option<Count> {
    let spread = standard_deviation(apart).filter(|_| apart.len() >= LEAST_FOR_SPREAD && matters > 0.0)?;
    let pairs = ((last + POWER_SPREADS) * spread / matters).powi(2).ceil();
    let more = 2.0 * (pairs - apart.len() as f64).max(0.0);
    Some(Count::new(more.min(MOST_MORE) as u32))
}
