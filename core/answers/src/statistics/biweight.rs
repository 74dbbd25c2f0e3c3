//! Changes of level where single values may be wrong by any amount.

use super::{change_points::trace_back, median, robust_spread, standard_deviation};

/// How many standard deviations a value may be off before more of it counts no more.
pub const BIWEIGHT_BOUND: f64 = 3.0;

/// The cost of the last segment as a function of its level, on one stretch of levels.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Piece {
    /// Where the stretch ends; it begins where the one before ends.
    to: f64,
    square: f64,
    linear: f64,
    constant: f64,
    /// Where the last segment begins.
    start: usize,
}

impl Piece {
    fn at(&self, level: f64) -> f64 {
        (self.square * level + self.linear) * level + self.constant
    }

    /// Where the cost is least between two levels.
    fn least(&self, from: f64, to: f64) -> f64 {
        let lowest = if self.square > 0.0 { -self.linear / (2.0 * self.square) } else { from };
        self.at(lowest.clamp(from, to)).min(self.at(from)).min(self.at(to))
    }

    /// With the loss of one value: its squared distance, or the bound.
    fn with(self, to: f64, near: Option<f64>) -> Self {
        match near {
            Some(value) => Self {
                to,
                square: self.square + 1.0,
                linear: self.linear - 2.0 * value,
                constant: self.constant + value * value,
                ..self
            },
            None => Self { to, constant: self.constant + BIWEIGHT_BOUND * BIWEIGHT_BOUND, ..self },
        }
    }

    /// The levels strictly between two others at which two pieces cost the same.
    fn crossings(&self, other: &Self, from: f64, to: f64) -> impl Iterator<Item = f64> {
        let (a, b, c) = (self.square - other.square, self.linear - other.linear, self.constant - other.constant);
        let roots = if a == 0.0 {
            [-c / b, f64::NAN]
        } else {
            // The one that does not lose figures, and the other from it.
            let half = -(b + b.signum() * (b * b - 4.0 * a * c).sqrt()) / 2.0;
            let (one, other) = (half / a, c / half);
            if one < other {
                [one, other]
            } else {
                [other, one]
            }
        };
        roots.into_iter().filter(move |level| *level > from && *level < to)
    }
}

/// Pieces from the lowest level to the highest.
struct Cost {
    lowest: f64,
    pieces: Vec<Piece>,
}

impl Cost {
    fn flat(lowest: f64, highest: f64, constant: f64, start: usize) -> Self {
        Self { lowest, pieces: vec![Piece { to: highest, square: 0.0, linear: 0.0, constant, start }] }
    }

    fn with(&self, value: f64) -> Self {
        let mut from = self.lowest;
        let mut pieces = Vec::with_capacity(self.pieces.len() + 2);
        for piece in &self.pieces {
            for edge in [value - BIWEIGHT_BOUND, value + BIWEIGHT_BOUND, f64::INFINITY] {
                let to = edge.min(piece.to);
                if to > from {
                    let near = (from + to) / 2.0 - value;
                    put(&mut pieces, piece.with(to, (near.abs() < BIWEIGHT_BOUND).then_some(value)));
                    from = to;
                }
            }
        }
        Self { lowest: self.lowest, pieces }
    }

    /// The lower of two at every level.
    fn or(&self, other: &Self) -> Self {
        let mut pieces = Vec::with_capacity(self.pieces.len() + other.pieces.len());
        let (mut mine, mut theirs) = (self.pieces.iter().peekable(), other.pieces.iter().peekable());
        let mut from = self.lowest;
        while let (Some(a), Some(b)) = (mine.peek(), theirs.peek()) {
            let to = a.to.min(b.to);
            for edge in a.crossings(b, from, to).chain([to]) {
                let middle = (from + edge) / 2.0;
                let lower = if b.at(middle) < a.at(middle) { b } else { a };
                put(&mut pieces, Piece { to: edge, ..**lower });
                from = edge;
            }
            mine.next_if(|piece| piece.to <= to);
            theirs.next_if(|piece| piece.to <= to);
        }
        Self { lowest: self.lowest, pieces }
    }

    /// The least cost, and where the last segment then begins.
    fn least(&self) -> Option<(f64, usize)> {
        let starts = std::iter::once(self.lowest).chain(self.pieces.iter().map(|piece| piece.to));
        let all = starts.zip(&self.pieces).map(|(from, piece)| (piece.least(from, piece.to), piece.start));
        all.min_by(|a, b| a.0.total_cmp(&b.0))
    }
}

/// Adds a piece, to the one before where it goes on.
fn put(pieces: &mut Vec<Piece>, piece: Piece) {
    match pieces.last_mut() {
        Some(last) if *last == (Piece { to: last.to, ..piece }) => last.to = piece.to,
        _ => pieces.push(piece),
    }
}

/// Changes of the level: first indices of the new segments, with one mistyped value
/// never a segment.
///
/// As [`pelt`](super::pelt), but a value's loss is min((y - level)², 3²) with values in
/// units of their noise, so no value costs more than one that is 3 standard deviations
/// off (Fearnhead & Rigaill, "Changepoint detection in the presence of outliers", JASA
/// 2019;114:169-183: the biweight loss and its exact minimum by functional pruning, to which
/// `min_segment` is added here). The noise is told from the differences of neighbours,
/// which a change of level hardly touches: their 1.4826 MAD / √2; where more than half
/// of them are equal, their standard deviation / √2.
///
/// `penalty` is in units of that noise squared; 2 ln n is usual, more where neighbours
/// resemble each other.
pub fn robust_pelt(values: &[f64], penalty: f64, min_segment: usize) -> Vec<usize> {
    changes(values, penalty, min_segment).unwrap_or_default()
}

fn changes(values: &[f64], penalty: f64, min_segment: usize) -> Option<Vec<usize>> {
    let (n, least) = (values.len(), min_segment.max(1));
    if n / 2 < least || !(penalty.is_finite() && penalty >= 0.0) {
        return None;
    }
    let (middle, noise) = (median(values)?, noise(values)?);
    let scaled: Vec<f64> = values.iter().map(|value| (value - middle) / noise).collect();
    let lowest = scaled.iter().copied().fold(f64::INFINITY, f64::min);
    let highest = scaled.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    if !(lowest < highest && (highest - lowest).is_finite()) {
        return None;
    }
    // The least cost up to each end, and where its last segment begins. The first
    // segment pays no penalty.
    let mut best: Vec<Option<(f64, usize)>> = vec![None; n + 1];
    *best.first_mut()? = Some((-penalty, 0));
    let mut cost: Option<Cost> = None;
    for end in least..=n {
        let start = end - least;
        let so_far = match (cost, end.checked_sub(1).and_then(|last| scaled.get(last))) {
            (Some(cost), Some(value)) => Some(cost.with(*value)),
            _ => None,
        };
        let begun = best.get(start).copied().flatten().map(|(before, _)| {
            let fresh = Cost::flat(lowest, highest, before + penalty, start);
            scaled.iter().take(end).skip(start).fold(fresh, |cost, value| cost.with(*value))
        });
        cost = match (so_far, begun) {
            (Some(so_far), Some(begun)) => Some(so_far.or(&begun)),
            (so_far, begun) => so_far.or(begun),
        };
        *best.get_mut(end)? = cost.as_ref().and_then(Cost::least);
    }
    Some(trace_back(n, |end| best.get(end).copied().flatten().map(|(_, start)| start)))
}

/// The standard deviation of what neighbours do not share.
fn noise(values: &[f64]) -> Option<f64> {
    let steps: Vec<f64> = values.iter().zip(values.iter().skip(1)).map(|(a, b)| b - a).collect();
    let of_steps = robust_spread(&steps).filter(|spread| *spread > 0.0).or_else(|| standard_deviation(&steps))?;
    Some(of_steps / std::f64::consts::SQRT_2).filter(|noise| *noise > 0.0)
}

#[cfg(test)]
mod tests {
    use super::{changes, BIWEIGHT_BOUND};

    fn loss(values: &[f64], level: f64) -> f64 {
        values.iter().map(|value| (value - level).powi(2).min(BIWEIGHT_BOUND * BIWEIGHT_BOUND)).sum()
    }

    /// The least cost over all levels: the least lies where the derivative is nothing,
    /// the mean of some run of the values in order.
    fn cost(values: &[f64]) -> f64 {
        let mut sorted = values.to_vec();
        sorted.sort_by(f64::total_cmp);
        let runs = (0..sorted.len()).flat_map(|from| (from + 1..=sorted.len()).map(move |to| (from, to)));
        let levels = runs.map(|(from, to)| sorted[from..to].iter().sum::<f64>() / (to - from) as f64);
        levels.map(|level| loss(values, level)).fold(f64::INFINITY, f64::min)
    }

    #[test]
    fn it_is_the_least_of_all_segmentations() {
        let mut state = 7_u64;
        let mut chance = move || {
            state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (state >> 33) as f64 / f64::from(1_u32 << 31)
        };
        for round in 0..60_usize {
            let (n, least) = (8 + round % 14, 1 + round % 3);
            let jump = 12.0 * chance();
            let values: Vec<f64> = (0..n)
                .map(|place| {
                    let level = if place > n / 2 { jump } else { 0.0 };
                    let wrong = if chance() < 0.1 { 60.0 } else { 0.0 };
                    level + wrong + 2.0 * (chance() + chance() + chance() - 1.5)
                })
                .collect();
            let penalty = 2.0 + 10.0 * chance();
            let noise = super::noise(&values).unwrap();
            let scaled: Vec<f64> = values.iter().map(|value| value / noise).collect();
            let mut best = vec![f64::INFINITY; n + 1];
            best[0] = -penalty;
            for end in least..=n {
                for start in 0..=end - least {
                    best[end] = best[end].min(best[start] + penalty + cost(&scaled[start..end]));
                }
            }
            let found = changes(&values, penalty, least).unwrap();
            let edges: Vec<usize> = [0].into_iter().chain(found.iter().copied()).chain([n]).collect();
            assert!(edges.windows(2).all(|pair| pair[1] - pair[0] >= least));
            let total: f64 = edges.windows(2).map(|pair| cost(&scaled[pair[0]..pair[1]])).sum();
            let total = total + penalty * found.len() as f64;
            assert!((total - best[n]).abs() < 1e-9, "{total} and {} with {found:?}", best[n]);
        }
    }
}
