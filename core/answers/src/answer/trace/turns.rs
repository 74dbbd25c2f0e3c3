//! Where a trace turns: its peaks, and the valley on either side of each.

use crate::statistics::{median, quantile};

/// A cycle stands out of its surroundings by this share of what the pressure moves
/// there; a ripple on top of one does not.
const LEAST_OF_AMPLITUDE: f64 = 0.25;
/// And by so many standard deviations of the noise, which chance does not make: two
/// samples in a row would have to be 2.5 off, one up and one down, on every rise.
const LEAST_OF_NOISE: f64 = 5.0;
/// Where samples lie further apart than this, a cycle's own course looks like noise: then by no more than
/// this share of what the whole trace moves.
const COARSE_SECONDS: f64 = 0.06;
const MOST_OF_NOISE: f64 = 0.1;
/// And by this share of what the whole trace moves: a still pump has no cycles, however
/// little it moves.
const LEAST_OF_TRACE: f64 = 0.05;
/// What the pressure moves is looked at over this long: two cycles of the slowest
/// pattern in use (about 24 a minute), and no more than a few of the fastest.
const WINDOW_SECONDS: f64 = 5.0;
/// Quantiles between which the pressure moves; a lone spike is outside.
const MOVES: [f64; 2] = [0.02, 0.98];
/// A cycle is as wide as this share of what one takes around it, half-way up; so is the rest before
/// the next. What is narrower was no pump.
const LEAST_WIDTH: f64 = 0.12;
/// So many cycles on either side say how long one takes.
const NEIGHBOURS: usize = 5;
/// More values than this say nothing new about a quantile.
const MOST_IN_A_WINDOW: usize = 2_000;

/// A peak and the valley on either side, as places among the samples.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Turn {
    pub(super) before: usize,
    pub(super) peak: usize,
    pub(super) after: usize,
}

/// How far the pressure moves.
pub(super) fn amplitude(values: &[f32]) -> f64 {
    let every = (values.len() / MOST_IN_A_WINDOW).max(1);
    let there: Vec<f64> =
        values.iter().step_by(every).map(|value| f64::from(*value)).filter(|v| v.is_finite()).collect();
    let [low, high] = MOVES.map(|share| quantile(&there, share).unwrap_or(0.0));
    high - low
}

/// Stretches without a gap, each with its turns in order.
///
/// A zigzag: a peak counts when the trace has risen to it and falls from it by the
/// threshold, which is prominence as `scipy.signal.find_peaks` has it, with a threshold
/// of each place's own: where a light pattern meets a strong one, the lesser
/// movement on either side counts.
pub(super) fn turns(values: &[f32], step: f64, noise: f64) -> Vec<Vec<Turn>> {
    let half = ((WINDOW_SECONDS / step / 2.0).round() as usize).max(2);
    let whole = amplitude(values);
    let of_noise = LEAST_OF_NOISE * noise;
    let of_noise = if step > COARSE_SECONDS { of_noise.min(MOST_OF_NOISE * whole) } else { of_noise };
    let least = (LEAST_OF_TRACE * whole).max(of_noise);
    // Each window of two halves overlaps the next by one.
    let halves = values.len().div_ceil(half);
    let moves: Vec<f64> = (0..halves)
        .map(|at| values.get(at * half..((at + 2) * half).min(values.len())).map_or(0.0, amplitude))
        .collect();
    let threshold = |at: usize| {
        let half_at = at / half;
        let windows = [half_at.checked_sub(1), Some(half_at)];
        // The last window is half a one, and says too little by itself.
        let usable = windows.into_iter().flatten().filter(|at| *at + 1 < halves.max(2));
        let moves = usable.filter_map(|at| moves.get(at)).fold(f64::INFINITY, |least, found| least.min(*found));
        if moves.is_finite() {
            (LEAST_OF_AMPLITUDE * moves).max(least)
        } else {
            least
        }
    };
    stretches(values).into_iter().map(|(from, to)| zigzag(values, from, to, &threshold)).collect()
}

/// First place and the place after the last of every stretch without a gap.
pub(super) fn stretches(values: &[f32]) -> Vec<(usize, usize)> {
    let mut found = Vec::new();
    let mut from = None;
    for (at, value) in values.iter().enumerate() {
        match (value.is_nan(), from) {
            (false, None) => from = Some(at),
            (true, Some(start)) => {
                found.push((start, at));
                from = None;
            }
            _ => {}
        }
    }
    found.extend(from.map(|start| (start, values.len())));
    found
}

enum Going {
    Unknown,
    Up { valley: usize },
    Down,
}

fn zigzag(values: &[f32], from: usize, to: usize, threshold: &impl Fn(usize) -> f64) -> Vec<Turn> {
    let mut found: Vec<Turn> = Vec::new();
    let (mut high, mut low) = ((from, f64::NEG_INFINITY), (from, f64::INFINITY));
    let mut going = Going::Unknown;
    for (at, value) in values.iter().enumerate().take(to).skip(from) {
        let (value, least) = (f64::from(*value), threshold(at));
        if value > high.1 {
            high = (at, value);
        }
        if value < low.1 {
            low = (at, value);
        }
        let (rose, fell) = (value > low.1 && value - low.1 >= least, value < high.1 && high.1 - value >= least);
        match going {
            Going::Unknown | Going::Down if rose => {
                if let Some(last) = found.last_mut() {
                    last.after = low.0;
                }
                going = Going::Up { valley: low.0 };
                high = (at, value);
            }
            // A trace that begins high and falls has not shown its peak.
            Going::Unknown if fell => {
                going = Going::Down;
                low = (at, value);
            }
            Going::Up { valley } if fell => {
                found.push(Turn { before: valley, peak: high.0, after: at });
                going = Going::Down;
                low = (at, value);
            }
            _ => {}
        }
    }
    if let (Going::Down, Some(last)) = (going, found.last_mut()) {
        last.after = low.0;
    }
    found
}

/// The turns that are wide enough for a cycle, and how many movements were not.
pub(super) fn wide(values: &[f32], turns: Vec<Turn>) -> (Vec<Turn>, u32) {
    let spacing: Vec<f64> =
        turns.iter().zip(turns.iter().skip(1)).map(|(a, b)| b.peak.saturating_sub(a.peak) as f64).collect();
    let usual = |from: usize, to: usize| spacing.get(from.min(spacing.len())..to.min(spacing.len())).and_then(median);
    let least: Vec<f64> = (0..turns.len())
        .map(|at| {
            let sides = [usual(at.saturating_sub(NEIGHBOURS), at), usual(at, at + NEIGHBOURS)];
            LEAST_WIDTH * sides.into_iter().flatten().fold(f64::INFINITY, f64::min)
        })
        .map(|width| if width.is_finite() { width } else { 0.0 })
        .collect();
    let mut narrow = 0;
    let mut kept: Vec<Turn> = Vec::with_capacity(turns.len());
    for (turn, least) in turns.into_iter().zip(least) {
        let Some(last) = kept.last_mut() else {
            kept.push(turn);
            continue;
        };
        let valley = last.after;
        if width(values, turn, true) < least {
            // No cycle: the valley goes on behind it.
            narrow += 1;
            let is_rest = width(values, Turn { before: last.peak, peak: valley, after: turn.peak }, false) >= least;
            last.after = if is_rest { lower(values, valley, turn.after) } else { turn.after };
        } else if width(values, Turn { before: last.peak, peak: valley, after: turn.peak }, false) < least {
            // No rest: the cycle goes on behind it.
            narrow += 1;
            let peak = if at(values, turn.peak) > at(values, last.peak) { turn.peak } else { last.peak };
            *last = Turn { before: last.before, peak, after: turn.after };
        } else {
            kept.push(Turn { before: valley, ..turn });
        }
    }
    (kept, narrow)
}

fn at(values: &[f32], place: usize) -> f64 {
    values.get(place).copied().map_or(f64::NAN, f64::from)
}

fn lower(values: &[f32], one: usize, other: usize) -> usize {
    if at(values, other) < at(values, one) {
        other
    } else {
        one
    }
}

/// How many samples a peak (or a valley) lasts half-way to the nearer of its ends.
fn width(values: &[f32], turn: Turn, up: bool) -> f64 {
    let sign = if up { 1.0 } else { -1.0 };
    let height = |place: usize| sign * at(values, place);
    let top = height(turn.peak);
    let half = top - (top - height(turn.before)).min(top - height(turn.after)) / 2.0;
    let part = |places: &mut dyn Iterator<Item = usize>| {
        let (mut length, mut last) = (0.0, top);
        for place in places {
            let value = height(place);
            if value.is_nan() || value < half {
                // The edge crosses somewhere between the two.
                return length + if last > value { (last - half) / (last - value) } else { 0.0 };
            }
            (length, last) = (length + 1.0, value);
        }
        length
    };
    part(&mut (turn.before..turn.peak).rev()) + part(&mut (turn.peak + 1..=turn.after))
}
