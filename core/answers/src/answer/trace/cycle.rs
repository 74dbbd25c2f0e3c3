//! One cycle, measured.

use super::top::{height, Top};
use super::turns::Turn;
use crate::statistics::{least_squares_line, Point};

/// Reference levels of a transition (IEEE Std 181-2011, 5.3): 10, 50 and 90 % of the way
/// from the resting to the highest vacuum.
const LOW: f64 = 0.1;
const MIDDLE: f64 = 0.5;
const HIGH: f64 = 0.9;
/// The top of a cycle for its height: within a tenth of the amplitude.
const TOP: f64 = 0.1;
/// And so many standard deviations of the noise.
const TOP_NOISE: f64 = 3.0;
/// For the leak a fifth of each end is left out, where a valve still moves.
const LEAK_ENDS: f64 = 0.2;
/// The fewest samples a leak is told from.
const LEAST_LEAK_SAMPLES: usize = 4;

/// What one cycle shows. Times are in seconds from the first sample.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Cycle {
    /// When its valley before and its valley after are.
    pub(super) from: f64,
    pub(super) to: f64,
    /// When it rises through the middle, the instant its period counts from.
    pub(super) rises: Option<f64>,
    /// From there to the next cycle's, where no dropout lies between.
    pub(super) period: Option<f64>,
    /// As the gauge shows them.
    pub(super) peak: f64,
    pub(super) rest: f64,
    /// By how much the gauge's zero had moved.
    pub(super) zero: f64,
    pub(super) rise: Option<f64>,
    pub(super) release: Option<f64>,
    /// How long it stays above 90 %.
    pub(super) held: Option<f64>,
    /// How fast vacuum sinks in that time.
    pub(super) leak: Option<f64>,
}

impl Cycle {
    pub(super) fn amplitude(&self) -> f64 {
        self.peak - self.rest
    }

    /// The highest vacuum, reckoned from where the zero stood.
    pub(super) fn peak(&self) -> f64 {
        self.peak - self.zero
    }

    /// The resting vacuum, likewise.
    pub(super) fn rest(&self) -> f64 {
        self.rest - self.zero
    }
}

/// The cycles of a stretch without a gap.
pub(super) fn measured(values: &[f32], step: f64, noise: f64, turns: &[Turn]) -> Vec<Cycle> {
    let (Some(first), Some(last)) = (turns.first(), turns.last()) else { return Vec::new() };
    // A valley is shared by two cycles, and reaches from peak to peak.
    let mut rests = Vec::with_capacity(turns.len() + 1);
    let swings = |turn: &Turn| swing(values, turn.peak, turn.before).max(swing(values, turn.peak, turn.after));
    rests.push(rest(values, noise, (first.before, first.before, first.peak), swings(first)));
    for pair in turns.windows(2) {
        if let [one, other] = pair {
            let amplitude = swings(one).min(swings(other));
            rests.push(rest(values, noise, (one.peak, other.before, other.peak), amplitude));
        }
    }
    rests.push(rest(values, noise, (last.peak, last.after, last.after), swings(last)));
    let mut cycles: Vec<Cycle> = turns
        .iter()
        .zip(rests.iter().zip(rests.iter().skip(1)))
        .filter_map(|(turn, (before, after))| cycle(values, step, noise, turn, *before, *after))
        .collect();
    let next: Vec<Option<f64>> = cycles.iter().skip(1).map(|cycle| cycle.rises).collect();
    for (cycle, next) in cycles.iter_mut().zip(next) {
        cycle.period = cycle.rises.zip(next).map(|(from, to)| to - from).filter(|period| *period > 0.0);
    }
    cycles
}

fn at(values: &[f32], place: usize) -> f64 {
    values.get(place).copied().map_or(f64::NAN, f64::from)
}

fn swing(values: &[f32], peak: usize, valley: usize) -> f64 {
    at(values, peak) - at(values, valley)
}

/// The resting vacuum of a valley at its lowest sample, between two places.
fn rest(values: &[f32], noise: f64, (from, lowest, to): (usize, usize, usize), amplitude: f64) -> f64 {
    let depth = depth(noise, amplitude);
    let level = at(values, lowest) + depth;
    let above = |place: &usize| at(values, *place) > level;
    let start = (from..lowest).rev().find(above).map_or(from, |place| place + 1);
    let end = (lowest..=to).find(above).map_or(to + 1, |place| place);
    let turned: Vec<f64> = values.get(start..end).unwrap_or_default().iter().map(|value| -f64::from(*value)).collect();
    -height(&Top { samples: &turned, depth, cycle: to - from }, noise, amplitude)
}

/// How deep below its highest sample a top goes: that sample is too high by some of the noise,
/// and noise does not end a top.
pub(super) fn depth(noise: f64, amplitude: f64) -> f64 {
    (TOP * amplitude + TOP_NOISE * noise).min(MIDDLE * amplitude)
}

fn cycle(values: &[f32], step: f64, noise: f64, turn: &Turn, before: f64, after: f64) -> Option<Cycle> {
    let rough = at(values, turn.peak) - before.min(after);
    let depth = depth(noise, rough);
    let level = at(values, turn.peak) - depth;
    let below = |place: &usize| at(values, *place) < level;
    let start = (turn.before..turn.peak).rev().find(below).map_or(turn.before, |place| place + 1);
    let end = (turn.peak..=turn.after).find(below).unwrap_or(turn.after + 1);
    let there: Vec<f64> = values.get(start..end)?.iter().copied().map(f64::from).collect();
    let peak = height(&Top { samples: &there, depth, cycle: turn.after - turn.before }, noise, rough);
    // Where a trace begins or ends half-way, the other side tells the resting vacuum.
    let rest = match (peak - before, peak - after) {
        (up, down) if up < MIDDLE * down => after,
        (up, down) if down < MIDDLE * up => before,
        _ => (before + after) / 2.0,
    };
    let (up, down) = (values.get(turn.before..=turn.peak)?, values.get(turn.peak..=turn.after)?);
    let rising = edge(up.iter().rev(), before, peak).map(|edge| edge.placed(|at| turn.peak as f64 - at));
    let falling = edge(down.iter(), after, peak).map(|edge| edge.placed(|at| turn.peak as f64 + at));
    let held = rising.as_ref().zip(falling.as_ref()).map(|(rising, falling)| (rising.high, falling.high));
    let [from, to] = [turn.before, turn.after].map(|place| place as f64 * step);
    let found = Cycle {
        from,
        to,
        rises: rising.as_ref().map(|edge| edge.middle * step),
        period: None,
        peak,
        rest,
        zero: 0.0,
        rise: rising.as_ref().and_then(|edge| Some((edge.high - edge.low?) * step)),
        release: falling.as_ref().and_then(|edge| Some((edge.low? - edge.high) * step)),
        held: held.map(|(from, to)| (to - from) * step),
        leak: held.and_then(|(from, to)| leak(values, step, from, to)),
    };
    (peak.is_finite() && rest.is_finite() && peak > rest).then_some(found)
}

/// Where an edge crosses its reference levels, in places counted from its peak.
struct Edge {
    /// None where noise keeps the lowest sample a hair above.
    low: Option<f64>,
    middle: f64,
    high: f64,
}

impl Edge {
    /// Counted from the first sample instead.
    fn placed(self, place: impl Fn(f64) -> f64) -> Self {
        Self { low: self.low.map(&place), middle: place(self.middle), high: place(self.high) }
    }
}

/// Walks from the peak down to the rest: through the middle first, the last sample above
/// 90 % before that, the first below 10 % after it. So noise on the top or in the valley
/// does not count as the edge. None where the trace does not come half-way down.
fn edge<'v>(samples: impl Iterator<Item = &'v f32>, rest: f64, peak: f64) -> Option<Edge> {
    let amplitude = peak - rest;
    let [low, middle, high] = [LOW, MIDDLE, HIGH].map(|level| rest + level * amplitude);
    let (mut last, mut left_high, mut crossed): (Option<f64>, Option<f64>, Option<f64>) = (None, None, None);
    for (place, value) in samples.enumerate() {
        let value = f64::from(*value);
        let crossing = |level: f64| match last {
            Some(before) if before > value => place as f64 - ((level - value) / (before - value)).clamp(0.0, 1.0),
            _ => place as f64,
        };
        if crossed.is_none() {
            if value >= high {
                left_high = None;
            } else if left_high.is_none() {
                left_high = Some(crossing(high));
            }
            if value < middle {
                crossed = Some(crossing(middle));
            }
        }
        if let (Some(middle), Some(high), true) = (crossed, left_high, value <= low) {
            return Some(Edge { low: Some(crossing(low)), middle, high });
        }
        last = Some(value);
    }
    crossed.zip(left_high).map(|(middle, high)| Edge { low: None, middle, high })
}

/// How fast vacuum sinks while it is held.
fn leak(values: &[f32], step: f64, from: f64, to: f64) -> Option<f64> {
    let off = LEAK_ENDS * (to - from);
    let (first, last) = ((from + off).ceil(), (to - off).floor());
    if !(first >= 0.0 && last > first) {
        return None;
    }
    let points: Vec<Point> = (first as usize..=last as usize)
        .map(|place| Point { at: place as f64 * step, value: at(values, place) })
        .collect();
    if points.len() < LEAST_LEAK_SAMPLES {
        return None;
    }
    // A top without any movement has no line, and does not leak.
    let level = points.first()?.value;
    if points.iter().all(|point| point.value == level) {
        return Some(0.0);
    }
    least_squares_line(&points).map(|line| -line.slope)
}
