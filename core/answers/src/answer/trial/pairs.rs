//! Sessions of a trial as they were done, two by two.

use super::design::{Design, SetUp, Way};
use super::outcome::{Reached, Value};
use crate::statistics::{mean, RandomBlock};
use crate::time::Instant;

/// A session of a trial.
#[derive(Debug, Clone, PartialEq)]
pub struct Done {
    /// The session.
    pub session: String,
    /// When it began.
    pub at: Instant,
    /// Its place in the order, from nothing up.
    pub place: usize,
    /// The way that was drawn for it, or for its left side.
    pub drawn: Way,
    /// The way it was done; none where it was neither, or nobody said.
    pub done: Option<Way>,
    /// The pump.
    pub pump: Option<String>,
    /// What it reached.
    pub reached: Reached,
}

/// What two sessions of a pair say.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Pair {
    /// The first way less the second.
    pub(super) apart: f64,
    /// The same, not set against what was to be expected.
    pub(super) plain: f64,
    pub(super) block: RandomBlock,
}

/// Values of both ways, pair by pair, with what they are usually.
#[derive(Debug, Clone, PartialEq, Default)]
pub(super) struct Pairs {
    pub(super) pairs: Vec<Pair>,
    pub(super) of_a: Vec<f64>,
    pub(super) of_b: Vec<f64>,
    /// What is usual.
    pub(super) usual: f64,
    /// Whether all were set against what was to be expected.
    pub(super) adjusted: bool,
}

/// The mean of what was to be expected, of each side and of the whole, where it is known of all.
struct Expected([Option<f64>; 3]);

impl Expected {
    fn of(done: &[&Done]) -> Self {
        let of = |pick: &dyn Fn(&Reached) -> Option<Value>| {
            let values: Vec<Value> = done.iter().filter_map(|d| pick(&d.reached)).collect();
            let expected: Option<Vec<f64>> = values.iter().map(|value| value.expected).collect();
            expected.and_then(|all| mean(&all))
        };
        Self([of(&|r| r.left), of(&|r| r.right), of(&|r| r.whole)])
    }
}

/// As much as it would have been after the usual gap.
fn adjusted(value: Value, usual: Option<f64>) -> f64 {
    match (value.expected, usual) {
        (Some(expected), Some(usual)) if expected > 0.0 => value.value * usual / expected,
        _ => value.value,
    }
}

impl Pairs {
    /// Pairs whose two sessions were done in both ways, as they were done. The others say
    /// nothing: a session that nobody knows of, a way done twice, a pair on two pumps.
    pub(super) fn of(done: &[Done], set_up: &SetUp) -> Self {
        let planned = set_up.planned.get().div_ceil(2) as usize;
        let mut told: Vec<&Done> = done.iter().filter(|d| d.place / 2 < planned && d.done.is_some()).collect();
        told.sort_by_key(|d| (d.place, d.at));
        // Two phones may have given out one place twice: the first that took it has it.
        told.dedup_by_key(|d| d.place);
        let Expected([left, right, whole]) = Expected::of(&told);
        let mut all = Self { adjusted: !told.is_empty(), ..Self::default() };
        for pair in told.chunk_by(|a, b| a.place / 2 == b.place / 2) {
            let [one, other] = pair else { continue };
            let (Some(first), Some(second)) = (one.done, other.done) else { continue };
            if first == second || (one.pump != other.pump && !set_up.about_the_pump) {
                continue;
            }
            let values = |d: &Done, plain: bool| -> Option<Vec<f64>> {
                let of = |value: Value, usual: Option<f64>| if plain { value.value } else { adjusted(value, usual) };
                match set_up.design {
                    Design::Sides => Some(vec![of(d.reached.left?, left), of(d.reached.right?, right)]),
                    Design::Sessions => Some(vec![of(d.reached.whole?, whole)]),
                }
            };
            let each = |plain: bool| Some((values(one, plain)?, values(other, plain)?));
            let (Some(set), Some(plain)) = (each(false), each(true)) else { continue };
            let known = |d: &Done| match set_up.design {
                Design::Sides => d
                    .reached
                    .left
                    .zip(d.reached.right)
                    .is_some_and(|(l, r)| l.expected.is_some() && r.expected.is_some()),
                Design::Sessions => d.reached.whole.is_some_and(|whole| whole.expected.is_some()),
            };
            all.adjusted &= known(one) && known(other);
            let (of_a, of_b) = by_way(first, &set);
            let (plain_a, plain_b) = by_way(first, &plain);
            let apart = |a: &[f64], b: &[f64]| mean(a).unwrap_or(0.0) - mean(b).unwrap_or(0.0);
            // A draw turns the whole pair: what one session is less than the other.
            let block = match set_up.design {
                Design::Sessions => RandomBlock { first: of_a.clone(), second: of_b.clone() },
                Design::Sides => {
                    let half = apart(&of_a, &of_b);
                    RandomBlock { first: vec![half], second: vec![-half] }
                }
            };
            all.pairs.push(Pair { apart: apart(&of_a, &of_b), plain: apart(&plain_a, &plain_b), block });
            all.of_a.extend(of_a);
            all.of_b.extend(of_b);
        }
        all.adjusted &= !all.pairs.is_empty();
        let both: Vec<f64> = all.of_a.iter().chain(&all.of_b).copied().collect();
        all.usual = mean(&both).unwrap_or(0.0);
        all
    }
}

/// The values of each way. Of a side each the first of two is the left one, and the other session
/// of the pair has the ways the other way round.
fn by_way(first: Way, (one, other): &(Vec<f64>, Vec<f64>)) -> (Vec<f64>, Vec<f64>) {
    let (of_first, of_second) = match (one.as_slice(), other.as_slice()) {
        ([left, right], [other_left, other_right]) => (vec![*left, *other_right], vec![*right, *other_left]),
        _ => (one.clone(), other.clone()),
    };
    match first {
        Way::A => (of_first, of_second),
        Way::B => (of_second, of_first),
    }
}
