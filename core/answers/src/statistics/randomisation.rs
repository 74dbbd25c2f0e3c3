//! The randomisation test within a design: what was drawn is drawn again, every way it could
//! have come out.

use super::draws::Draws;
use super::point::all_finite;

/// Some values, of which so many were drawn to be done the first way: all choices of that many
/// were as likely.
#[derive(Debug, Clone, PartialEq)]
pub struct RandomBlock {
    /// Those done the first way.
    pub first: Vec<f64>,
    /// Those done the second way.
    pub second: Vec<f64>,
}

/// How the other draws were looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Assignments {
    /// Every one of them.
    All,
    /// So many, drawn.
    Drawn(u32),
}

/// What a randomisation test says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Randomised {
    /// Twice the share of draws with a sum at least so far to the side where it lies.
    pub p: f64,
    /// How they were looked at.
    pub assignments: Assignments,
}

/// Half of the blocks may come out in so many ways to be counted.
const MOST_HALF: f64 = 550_000.0;
/// Beyond that, so many draws.
const DRAWS: u32 = 20_000;
/// Sums closer than this share of all values are one.
const SAME: f64 = 1e-11;

/// Fisher's randomisation test over blocks (Fisher, The Design of Experiments, 1935, chapter 3;
/// Edgington & Onghena, Randomization Tests, 4th edition, 2007). The statistic is the sum of the
/// values done the first way; blocks that hold one way alone say nothing and stay as they are.
///
/// All draws are counted by halves: the sums of one half of the blocks in order against those of
/// the other (Horowitz & Sahni, Journal of the ACM 1974;21:277-292), so that 38 pairs cost a
/// million steps. Where a half has more ways than that, 20,000 draws from the seed stand for all,
/// and the one that was done is counted among them (Phipson & Smyth, Statistical Applications in
/// Genetics and Molecular Biology 2010;9:39).
pub fn randomisation(blocks: &[RandomBlock], seed: u64) -> Option<Randomised> {
    let telling: Vec<&RandomBlock> = blocks.iter().filter(|b| !b.first.is_empty() && !b.second.is_empty()).collect();
    let values = || telling.iter().flat_map(|block| block.first.iter().chain(&block.second));
    if telling.is_empty() || !values().all(|value| value.is_finite()) {
        return None;
    }
    let done: f64 = telling.iter().flat_map(|block| &block.first).sum();
    // Never nothing at all: where every value is zero, every sum is the one that was done.
    let same = (SAME * values().map(|value| value.abs()).sum::<f64>()).max(f64::MIN_POSITIVE);
    let Some((left, right)) = halves(&telling) else { return Some(drawn(&telling, done, same, seed)) };
    let sums =
        |half: &[&RandomBlock]| half.iter().fold(vec![(0.0, 1.0)], |sums, block| widened(&sums, &choices(block)));
    let (left, right) = (sums(&left), sums(&right));
    let all: f64 = ways(&left) * ways(&right);
    let up_to = sums_up_to(&left, &right, done + same);
    let below = sums_up_to(&left, &right, done - same);
    let tail = up_to.min(all - below);
    let p = (2.0 * tail / all).min(1.0);
    all_finite(&[p]).then_some(Randomised { p, assignments: Assignments::All })
}

/// Blocks in two halves of about as many ways each; none where there are too many.
fn halves<'b>(blocks: &[&'b RandomBlock]) -> Option<(Vec<&'b RandomBlock>, Vec<&'b RandomBlock>)> {
    let (mut left, mut right) = ((Vec::new(), 1.0), (Vec::new(), 1.0));
    for block in blocks {
        let half = if left.1 <= right.1 { &mut left } else { &mut right };
        half.0.push(*block);
        half.1 *= number_of_choices(block);
    }
    (left.1.max(right.1) <= MOST_HALF).then_some((left.0, right.0))
}

/// n over k.
fn number_of_choices(block: &RandomBlock) -> f64 {
    let (n, k) = (block.first.len() + block.second.len(), block.first.len().min(block.second.len()));
    (0..k).map(|i| (n - i) as f64 / (i + 1) as f64).product::<f64>().round()
}

/// The sum of every choice, in order, with how many make it.
fn choices(block: &RandomBlock) -> Vec<(f64, f64)> {
    // By how many were chosen so far.
    let mut by_number: Vec<Vec<(f64, f64)>> = vec![Vec::new(); block.first.len() + 1];
    if let Some(none) = by_number.first_mut() {
        none.push((0.0, 1.0));
    }
    for value in block.first.iter().chain(&block.second) {
        let before = by_number.clone();
        for (with, fewer) in by_number.iter_mut().skip(1).zip(before) {
            let more: Vec<(f64, f64)> = fewer.into_iter().map(|(sum, ways)| (sum + value, ways)).collect();
            *with = merged(with.iter().copied(), more.into_iter());
        }
    }
    by_number.pop().unwrap_or_default()
}

/// Two lists in order as one; equal sums are one sum.
fn merged(one: impl Iterator<Item = (f64, f64)>, other: impl Iterator<Item = (f64, f64)>) -> Vec<(f64, f64)> {
    let (mut one, mut other) = (one.peekable(), other.peekable());
    let mut all: Vec<(f64, f64)> = Vec::with_capacity(one.size_hint().0 + other.size_hint().0);
    loop {
        let next = match (one.peek(), other.peek()) {
            (Some(a), Some(b)) if a.0 <= b.0 => one.next(),
            (_, Some(_)) => other.next(),
            (Some(_), None) => one.next(),
            (None, None) => return all,
        };
        let Some(next) = next else { return all };
        match all.last_mut().filter(|last| last.0 == next.0) {
            Some(last) => last.1 += next.1,
            None => all.push(next),
        }
    }
}

/// Every sum with every choice of one more block.
fn widened(sums: &[(f64, f64)], choices: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let with = |(by, as_often): (f64, f64)| sums.iter().map(move |(sum, ways)| (sum + by, ways * as_often));
    choices.chunks(2).fold(Vec::new(), |all, pair| {
        let of_pair = match pair {
            [one, other] => merged(with(*one), with(*other)),
            rest => rest.iter().copied().flat_map(with).collect(),
        };
        if all.is_empty() {
            of_pair
        } else {
            merged(all.into_iter(), of_pair.into_iter())
        }
    })
}

fn ways(sums: &[(f64, f64)]) -> f64 {
    sums.iter().map(|(_, ways)| ways).sum()
}

/// How many sums of one from each are at most so large.
fn sums_up_to(left: &[(f64, f64)], right: &[(f64, f64)], most: f64) -> f64 {
    let mut rest = right;
    let mut of_rest = ways(right);
    let mut found = 0.0;
    for (sum, as_often) in left {
        while let Some((largest, smaller)) = rest.split_last().filter(|(largest, _)| sum + largest.0 > most) {
            of_rest -= largest.1;
            rest = smaller;
        }
        found += as_often * of_rest;
    }
    found
}

fn drawn(blocks: &[&RandomBlock], done: f64, same: f64, seed: u64) -> Randomised {
    let mut draws = Draws::of(seed);
    let (mut up_to, mut at_least) = (1.0, 1.0);
    for _ in 0..DRAWS {
        let mut sum = 0.0;
        for block in blocks {
            // So many of so many, one after the other (Knuth, The Art of Computer Programming 2, 3.4.2, S).
            let (mut open, mut left) = (block.first.len() + block.second.len(), block.first.len());
            for value in block.first.iter().chain(&block.second) {
                if draws.below(open) < left {
                    sum += value;
                    left -= 1;
                }
                open -= 1;
            }
        }
        up_to += f64::from(u8::from(sum <= done + same));
        at_least += f64::from(u8::from(sum >= done - same));
    }
    let p = (2.0 * f64::min(up_to, at_least) / (f64::from(DRAWS) + 1.0)).min(1.0);
    Randomised { p, assignments: Assignments::Drawn(DRAWS) }
}
