//! What may be wrong with the trace itself. It is said, and nothing is corrected.

use super::cycle::Cycle;
use super::file::Samples;
use super::rounding::rounded;
use super::turns::{amplitude as moves, stretches};
use super::typical::usual_period;
use super::AsRead;
use crate::quantity::Share;
use crate::statistics::{median, robust_spread};

/// A still stretch before the first cycle lasts so many seconds at least.
const STILL_SECONDS: f64 = 1.0;
/// In a still stretch nothing moves by more than this share of the amplitude, or of the noise.
const STILL_MOVES: f64 = 0.03;
const STILL_NOISE: f64 = 7.0;
/// A baseline is off by this share of the amplitude at least, or by so much of the noise: the
/// error of a gauge of class 2 where the cycles reach its end.
const OFF_BY: f64 = 0.02;
const OFF_BY_NOISE: f64 = 3.0;
/// How long a trace is above ambient before it is said: one sample in a hundred.
const ABOVE_SHARE: f64 = 0.01;
/// A gauge at its end shows one value exactly, for so many samples in a row,
const CLIPPED_RUN: usize = 3;
/// or for so many where they lie further apart than this: fewer fall on a tip,
const COARSE_RUN: usize = 2;
const COARSE_SECONDS: f64 = 0.03;
/// in this share of the cycles that come to it, and in so many at least.
const CLIPPED_CYCLES: f64 = 0.5;
const LEAST_CLIPPED: usize = 6;
/// A cycle reaches it where it is close below: so much of the noise, or of the amplitude.
const CLOSE_NOISE: f64 = 2.0;
const CLOSE: f64 = 0.0025;
/// A gauge that shows steps of this share of the amplitude shows what is held as flat,
const COARSE: f64 = 0.006;
/// and so does a pump whose periods differ by less than this share.
const EXACT: f64 = 0.001;
/// Pieces in which a movement without a cycle is looked for: one cycle of the slowest pattern.
const PIECE_SECONDS: f64 = 2.5;
/// A cycle accounts for so many usual periods before and after its rise.
const READ_PERIODS: f64 = 1.5;
/// What moves by less than this share of the amplitude would not have been a cycle.
const UNREAD_MOVES: f64 = 0.25;
/// Two values this share of the amplitude apart are the same one.
const SAME: f64 = 1e-6;

/// Zero is not where the air is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Offset {
    /// Before the first cycle the trace stands still, so far from zero.
    Still(AsRead),
    /// It goes above ambient by so much.
    AboveAmbient(AsRead),
}

/// How long the pressure moved and no cycle was told, in seconds: where a gauge reads too slowly for
/// a fast pattern, say. Looked at in pieces of [`PIECE_SECONDS`], and only from two of them on.
pub(super) fn unread(values: &[f32], step: f64, amplitude: f64, cycles: &[Cycle]) -> f64 {
    let piece = ((PIECE_SECONDS / step).round() as usize).max(1);
    // The valley before a cycle may lie far before its rise, and that after it far behind.
    let reach = READ_PERIODS * usual_period(cycles).unwrap_or(PIECE_SECONDS);
    let reaches = |cycle: &Cycle| match cycle.rises {
        Some(at) => (cycle.from.max(at - reach), cycle.to.min(at + reach)),
        None => (cycle.from, cycle.to),
    };
    let mut next = cycles.iter().map(reaches).peekable();
    let mut pieces = 0_u32;
    for (number, part) in values.chunks_exact(piece).enumerate() {
        let [from, to] = [number, number + 1].map(|at| (at * piece) as f64 * step);
        while next.peek().is_some_and(|(_, end)| *end <= from) {
            next.next();
        }
        let read = next.peek().is_some_and(|(begin, _)| *begin < to);
        pieces += u32::from(!read && moves(part) >= UNREAD_MOVES * amplitude);
    }
    if pieces < 2 {
        return 0.0;
    }
    f64::from(pieces) * piece as f64 * step
}

/// The gauge seems to end below what the pump pulls.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Clipped {
    /// The value it ends at.
    pub at: AsRead,
    /// How many of all samples stand there.
    pub share: Share,
}

/// Whether zero is where the air is.
pub(super) fn offset(values: &[f32], step: f64, noise: f64, amplitude: f64, cycles: &[Cycle]) -> Option<Offset> {
    let least = (OFF_BY * amplitude).max(OFF_BY_NOISE * noise);
    if let Some(level) = still(values, step, noise, amplitude, cycles) {
        return (level.abs() >= least).then(|| Offset::Still(AsRead::new(rounded(level))));
    }
    let lowest = values.iter().copied().fold(f32::INFINITY, f32::min);
    let above = values.iter().filter(|value| f64::from(**value) <= -least).count() as f64;
    (above >= ABOVE_SHARE * values.len() as f64).then(|| Offset::AboveAmbient(AsRead::new(rounded(-f64::from(lowest)))))
}

/// The level of the still stretch that the trace begins with.
fn still(values: &[f32], step: f64, noise: f64, amplitude: f64, cycles: &[Cycle]) -> Option<f64> {
    let (from, to) = *stretches(values).first()?;
    let most = (STILL_MOVES * amplitude).max(STILL_NOISE * noise);
    let first = cycles.first().and_then(|cycle| cycle.rises).map_or(to, |at| (at / step).ceil() as usize);
    let (mut low, mut high, mut sum, mut count) = (f64::INFINITY, f64::NEG_INFINITY, 0.0, 0_u32);
    for value in values.get(from..to.min(first))?.iter().map(|value| f64::from(*value)) {
        let wider = (low.min(value), high.max(value));
        if wider.1 - wider.0 > most {
            break;
        }
        (low, high) = wider;
        sum += value;
        count += 1;
    }
    (f64::from(count) * step >= STILL_SECONDS).then(|| sum / f64::from(count))
}

/// Whether cycles reach the gauge's end.
pub(super) fn reaches(clipped: &Clipped, cycles: &[Cycle], amplitude: f64) -> bool {
    let peaks: Vec<f64> = cycles.iter().map(|cycle| cycle.peak).collect();
    median(&peaks).is_some_and(|peak| peak >= clipped.at.get() - CLOSE * amplitude)
}

/// Whether the gauge ends below what the pump pulls: cycle after cycle ends at the same value exactly. A
/// pump that holds its vacuum ends a little higher or lower each time, or its rest is as flat.
pub(super) fn clipped(
    samples: &Samples,
    noise: f64,
    amplitude: f64,
    of_rows: Share,
    cycles: &[Cycle],
) -> Option<Clipped> {
    let same = SAME * amplitude;
    let (all, _) = samples.as_read();
    let there = || all.iter().map(|value| f64::from(*value)).filter(|value| value.is_finite());
    let top = there().fold(f64::NEG_INFINITY, f64::max);
    let next = there().filter(|value| *value < top - same).fold(f64::NEG_INFINITY, f64::max);
    let close = (CLOSE_NOISE * noise).max(CLOSE * amplitude);
    let run = if samples.step().get() > COARSE_SECONDS { COARSE_RUN } else { CLIPPED_RUN };
    let part = |cycle: &Cycle| -> Vec<f64> {
        samples.between(cycle.from, cycle.to).into_iter().map(|(_, value)| value).collect()
    };
    let is_flat =
        |part: &Vec<f64>, at: f64| part.windows(run).any(|run| run.iter().all(|value| (value - at).abs() <= same));
    let reaching: Vec<(&Cycle, Vec<f64>)> = cycles
        .iter()
        .map(|cycle| (cycle, part(cycle)))
        .filter(|(_, part)| part.iter().any(|value| *value >= top - close))
        .collect();
    let flat = |at: f64| {
        let flat = reaching.iter().filter(|(_, part)| is_flat(part, at)).count();
        flat >= LEAST_CLIPPED && flat as f64 >= CLIPPED_CYCLES * reaching.len() as f64
    };
    if !flat(top) {
        return None;
    }
    let rests: Vec<f64> = reaching.iter().map(|(_, part)| part.iter().copied().fold(f64::INFINITY, f64::min)).collect();
    let periods: Vec<f64> = reaching.iter().filter_map(|(cycle, _)| cycle.period).collect();
    let wander = robust_spread(&periods).zip(median(&periods)).map_or(0.0, |(spread, usual)| spread / usual);
    if median(&rests).is_some_and(flat) && (top - next >= COARSE * amplitude || wander < EXACT) {
        return None;
    }
    let (count, at_top) = there().fold((0.0, 0.0), |(n, at), v| (n + 1.0, at + f64::from(u8::from(v >= top - same))));
    let share = f64::max(at_top / count, of_rows.fraction());
    Some(Clipped { at: AsRead::new(rounded(top)), share: Share::of(rounded(share)) })
}
