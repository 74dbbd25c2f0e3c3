//! Where a series changes its level.

use super::{
    order::{median_absolute_deviation, twice_midranks, TO_SIGMA},
    point::all_finite,
};

/// How many standard deviations a value may be off before it counts no more.
pub const BIWEIGHT_BOUND: f64 = 3.0;

/// Running sums, so that the cost of any segment takes one step.
struct Costs {
    sums: Vec<f64>,
    squares: Vec<f64>,
}

impl Costs {
    /// About the mean, so that large values with small differences lose nothing.
    fn of(values: &[f64]) -> Option<Self> {
        let middle = super::mean(values)?;
        let (mut sums, mut squares) = (vec![0.0], vec![0.0]);
        let (mut sum, mut square) = (0.0, 0.0);
        for value in values {
            sum += value - middle;
            square += (value - middle).powi(2);
            sums.push(sum);
            squares.push(square);
        }
        Some(Self { sums, squares })
    }

    /// Σ (y - ȳ)² from one index to before another.
    fn cost(&self, from: usize, to: usize) -> Option<f64> {
        let sum = self.sums.get(to)? - self.sums.get(from)?;
        let square = self.squares.get(to)? - self.squares.get(from)?;
        Some((square - sum * sum / (to - from) as f64).max(0.0))
    }
}

/// Changes of the mean: first indices of the new segments.
pub fn pelt(values: &[f64], penalty: f64, min_segment: usize) -> Vec<usize> {
    let least = min_segment.max(1);
    let n = values.len();
    let Some(costs) = Costs::of(values) else { return Vec::new() };
    if n < 2 * least || !(penalty.is_finite() && penalty >= 0.0) {
        return Vec::new();
    }
    let mut best: Vec<Option<(f64, usize)>> = vec![None; n + 1];
    if let Some(start) = best.first_mut() {
        *start = Some((0.0, 0));
    }
    for end in least..=n {
        let found = (0..=end - least)
            .filter_map(|from| Some((best.get(from).copied()??.0 + costs.cost(from, end)? + penalty, from)))
            .min_by(|a, b| a.0.total_cmp(&b.0));
        if let Some(slot) = best.get_mut(end) {
            *slot = found;
        }
    }
    let mut changes = Vec::new();
    let mut at = n;
    while let Some((_, from)) = best.get(at).copied().flatten().filter(|(_, from)| *from > 0) {
        changes.push(from);
        at = from;
    }
    changes.reverse();
    changes
}

/// The same, not minding outliers.
pub fn robust_pelt(values: &[f64], penalty: f64, min_segment: usize) -> Vec<usize> {
    let steps: Vec<f64> = values.iter().zip(values.iter().skip(1)).map(|(a, b)| b - a).collect();
    let noise = median_absolute_deviation(&steps).map_or(0.0, |mad| TO_SIGMA * mad / std::f64::consts::SQRT_2);
    if noise <= 0.0 {
        return Vec::new();
    }
    let scaled: Vec<f64> = values.iter().map(|value| value / noise).collect();
    pelt(&scaled, penalty, min_segment)
}

/// The first and last index at which the change at `index` may well have been,
/// between its neighbours `start` and `end`.
pub fn segment_range(
    values: &[f64],
    start: usize,
    index: usize,
    end: usize,
    confidence: f64,
    variance_inflation: f64,
) -> Option<(usize, usize)> {
    let part = values.get(start..end)?;
    if !(start < index && index < end && confidence > 0.0 && confidence < 1.0 && part.len() > 3) {
        return None;
    }
    let costs = Costs::of(part)?;
    let apart = |at: usize| Some(costs.cost(0, at)? + costs.cost(at, part.len())?);
    let least = apart(index - start)?;
    let bound = -2.0 * (1.0 - confidence.sqrt()).ln() * variance_inflation * least / (part.len() - 2) as f64;
    let inside = |at: &usize| apart(*at).is_some_and(|cost| cost <= least + bound);
    let low = (1..part.len()).find(inside)?;
    let high = (1..part.len()).rev().find(inside)?;
    Some((start + low, start + high))
}

/// The outcome of Pettitt's test.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pettitt {
    /// The greatest distance of the running rank sum from what chance expects.
    pub k: i64,
    /// The first index after the change.
    pub index: usize,
    /// The chance of such a K where nothing changed, nearly.
    pub p: f64,
}

/// Pettitt's test for one change.
pub fn pettitt(values: &[f64]) -> Option<Pettitt> {
    if values.len() < 2 || !all_finite(values) {
        return None;
    }
    let n = values.len() as i64;
    let (mut sum, mut k, mut index) = (0, -1, 0);
    for (place, rank) in (1..n).zip(twice_midranks(values)) {
        sum += rank - (n + 1);
        if sum.abs() > k {
            (k, index) = (sum.abs(), place as usize);
        }
    }
    let (n, distance) = (n as f64, k as f64);
    let p = 2.0 * (-6.0 * distance * distance / (n * n * n + n * n)).exp();
    Some(Pettitt { k, index, p: p.min(1.0) })
}
