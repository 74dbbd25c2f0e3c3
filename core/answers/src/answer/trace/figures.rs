//! What a run of cycles shows together.

use super::cycle::Cycle;
use super::rounding::rounded;
use super::top::HELD;
use super::typical::{is_one_rate, usual_amplitude, usual_period};
use super::typical::{MISSED_FROM, STOPPED_FROM};
use super::{AsRead, AsReadPerMinute, AsReadPerSecond, Seconds};
use crate::answer::{Estimate, CONFIDENCE};
use crate::quantity::{Count, Quantity, Share, Speed, SpeedUnit};
use crate::statistics::{autocorrelation, median, quantile, robust_slope, Point};

/// A cycle under this share of its segment's usual amplitude is weak: a leak at the flange or
/// a valve that does not close takes half of it; the wander of a sound pump takes a tenth.
pub const WEAK_BELOW: f64 = 0.6;
/// A drift is told from so many cycles on.
const LEAST_FOR_DRIFT: usize = 8;
/// Neighbours resemble each other by so much at most, or nothing would be left to tell a drift from;
const MOST_LIKENESS: f64 = 0.9;
/// and what they resemble each other by is no chance from so many of its standard deviations on.
const LEAST_LIKENESS: f64 = 1.96;
/// And a leak from so many cycles that are held.
const LEAST_FOR_LEAK: usize = 3;

/// What is usual, and what one cycle in ten stays below or lies above.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread<Q> {
    /// The median.
    pub usual: Q,
    /// One in ten is lower.
    pub low: Q,
    /// One in ten is higher.
    pub high: Q,
}

/// What a run of cycles shows together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cycles {
    /// Cycles found.
    pub count: Count,
    /// Cycles that should lie in gaps of two to five usual periods.
    pub missed: Count,
    /// Longer gaps, in which the pump stood still.
    pub stops: Count,
    /// Missed, of those found and missed.
    pub missed_share: Share,
    /// Cycles under [`WEAK_BELOW`] of the usual amplitude, of those found.
    pub weak_share: Share,
    /// Cycles per minute, from the median period. None where rates differ: there is no one rate.
    pub rate: Option<Estimate<Speed>>,
    /// Highest vacuum of a cycle.
    pub peak: Spread<AsRead>,
    /// Highest vacuum of all.
    pub highest: AsRead,
    /// Resting vacuum of a cycle.
    pub rest: Spread<AsRead>,
    /// How much of a cycle lies within a tenth of its amplitude from its peak.
    pub at_vacuum: Option<Share>,
    /// From 10 to 90 % of the amplitude.
    pub rise: Option<Seconds>,
    /// From 90 to 10 %.
    pub release: Option<Seconds>,
    /// By how much peaks rise. None where patterns differ or cycles are few.
    pub peak_drift: Option<Estimate<AsReadPerMinute>>,
    /// By how much the resting vacuum rises.
    pub rest_drift: Option<Estimate<AsReadPerMinute>>,
    /// How fast vacuum sinks while it is held. None where it is not held.
    pub leak: Option<Estimate<AsReadPerSecond>>,
}

/// What is counted against what is usual in a segment.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Tally {
    missed: u32,
    stops: u32,
    weak: u32,
    /// The usual share of a cycle at vacuum.
    at_vacuum: Option<f64>,
}

/// Of one segment, or of all with each counted against its own segment.
pub(super) fn figures(cycles: &[Cycle], segments: &[(usize, usize)]) -> Option<Cycles> {
    let parts: Vec<&[Cycle]> = segments.iter().filter_map(|(from, to)| cycles.get(*from..*to)).collect();
    let tallies: Vec<Tally> = parts.iter().filter_map(|part| tally(part)).collect();
    let sum = |of: fn(&Tally) -> u32| tallies.iter().map(of).fold(0_u32, u32::saturating_add);
    let (missed, stops, weak) = (sum(|t| t.missed), sum(|t| t.stops), sum(|t| t.weak));
    let count = u32::try_from(cycles.len()).unwrap_or(u32::MAX);
    let one = parts.len() == 1;
    let peaks: Vec<f64> = cycles.iter().map(Cycle::peak).collect();
    let rests: Vec<f64> = cycles.iter().map(Cycle::rest).collect();
    let times = |of: fn(&Cycle) -> Option<f64>| {
        median(&cycles.iter().filter_map(of).collect::<Vec<_>>()).map(|time| Seconds::new(rounded(time)))
    };
    let leaks: Vec<f64> = parts.iter().flat_map(|part| leaks(part)).collect();
    let highest = peaks.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let share_at_vacuum: Vec<f64> = tallies.iter().filter_map(|tally| tally.at_vacuum).collect();
    Some(Cycles {
        count: Count::new(count),
        missed: Count::new(missed),
        stops: Count::new(stops),
        missed_share: share(f64::from(missed), f64::from(missed) + f64::from(count)),
        weak_share: share(f64::from(weak), f64::from(count)),
        rate: if is_one_rate(cycles, segments) { rate(cycles) } else { None },
        peak: spread(&peaks)?,
        highest: AsRead::new(rounded(highest)),
        rest: spread(&rests)?,
        at_vacuum: median(&share_at_vacuum).filter(|_| one).map(|share| Share::of(rounded(share))),
        rise: times(|cycle| cycle.rise),
        release: times(|cycle| cycle.release),
        peak_drift: if one { drift(cycles, &peaks) } else { None },
        rest_drift: if one { drift(cycles, &rests) } else { None },
        leak: (leaks.len() >= LEAST_FOR_LEAK)
            .then(|| middle(&leaks))
            .flatten()
            .map(|found| each(found, AsReadPerSecond::new)),
    })
}

fn share(part: f64, whole: f64) -> Share {
    Share::of(rounded(part / whole))
}

fn each<Q>([value, low, high]: [f64; 3], of: impl Fn(f64) -> Q) -> Estimate<Q> {
    let of = |figure: f64| of(rounded(figure));
    Estimate { value: of(value), low: of(low), high: of(high) }
}

fn spread(values: &[f64]) -> Option<Spread<AsRead>> {
    let of = |share: f64| quantile(values, share).map(|value| AsRead::new(rounded(value)));
    Some(Spread { usual: of(0.5)?, low: of(0.1)?, high: of(0.9)? })
}

fn tally(cycles: &[Cycle]) -> Option<Tally> {
    let amplitude = usual_amplitude(cycles)?;
    let weak = cycles.iter().filter(|cycle| cycle.amplitude() < WEAK_BELOW * amplitude).count() as u32;
    let mut found = Tally { weak, ..Tally::default() };
    let Some(usual) = usual_period(cycles) else { return Some(found) };
    for period in cycles.iter().filter_map(|cycle| cycle.period) {
        let periods = period / usual;
        if periods >= STOPPED_FROM {
            found.stops += 1;
        } else if periods >= MISSED_FROM {
            found.missed += (periods.round() as u32).saturating_sub(1);
        }
    }
    let held: Vec<f64> = cycles.iter().filter_map(|cycle| cycle.held).map(|held| held / usual).collect();
    found.at_vacuum = median(&held);
    Some(found)
}

fn leaks(cycles: &[Cycle]) -> Vec<f64> {
    let Some(usual) = usual_period(cycles) else { return Vec::new() };
    let held = |cycle: &&Cycle| cycle.held.is_some_and(|held| held >= HELD * usual);
    cycles.iter().filter(held).filter_map(|cycle| cycle.leak).collect()
}

fn rate(cycles: &[Cycle]) -> Option<Estimate<Speed>> {
    let usual = usual_period(cycles)?;
    let single: Vec<f64> =
        cycles.iter().filter_map(|cycle| cycle.period).filter(|period| *period < MISSED_FROM * usual).collect();
    let [value, low, high] = middle(&single)?;
    let a_minute = |period: f64| 60.0 / period;
    Some(each([a_minute(value), a_minute(high), a_minute(low)], |rate| Speed::of(rate, SpeedUnit::PerMinute)))
}

fn drift(cycles: &[Cycle], values: &[f64]) -> Option<Estimate<AsReadPerMinute>> {
    if cycles.len() < LEAST_FOR_DRIFT {
        return None;
    }
    let minutes = |cycle: &Cycle| (cycle.from + cycle.to) / 2.0 / 60.0;
    let points: Vec<Point> =
        cycles.iter().zip(values).map(|(cycle, value)| Point { at: minutes(cycle), value: *value }).collect();
    let rough = robust_slope(&points, CONFIDENCE, 1.0)?;
    let left_over: Vec<f64> = points.iter().map(|point| point.value - rough.slope * point.at).collect();
    let found = robust_slope(&points, CONFIDENCE, shared(&left_over))?;
    Some(each([found.slope, found.low, found.high], AsReadPerMinute::new))
}

/// How many times as wide the variance of a slope is for what neighbours share. A pump's pull wanders, so
/// that cycles near each other err together; what is measured of each adds noise of its own. Together that
/// is a series of order (1, 1), whose variances add up to 1 + 2 r₁ / (1 - φ) with φ = r₂ / r₁
/// (Box, Jenkins & Reinsel, Time Series Analysis, 3.4).
fn shared(left_over: &[f64]) -> f64 {
    let n = left_over.len() as f64;
    let alone: Vec<Point> =
        left_over.iter().zip(0..).map(|(value, at)| Point { at: f64::from(at), value: *value }).collect();
    let [_, first, second] = autocorrelation(&alone, 2)[..] else { return 1.0 };
    // A series whose line was taken away shows less likeness than there is (Kendall, Biometrika
    // 1954;41:403-404, and as much again for the line).
    let [one, other] = [first, second].map(|lag| (lag.value + (2.0 + 4.0 * lag.value) / n).clamp(0.0, MOST_LIKENESS));
    let by_one = (1.0 + one) / (1.0 - one);
    if one < LEAST_LIKENESS / n.sqrt() {
        return by_one;
    }
    by_one.max(1.0 + 2.0 * one / (1.0 - (other / one).min(MOST_LIKENESS)))
}

/// The median and the range that holds the true one: the values of rank (n ± z √n) / 2
/// (sign test; Hollander & Wolfe, Nonparametric Statistical Methods, 3.6).
fn middle(values: &[f64]) -> Option<[f64; 3]> {
    /// The normal quantile of 95 %, for a range of [`CONFIDENCE`] on both sides.
    const Z: f64 = 1.644_854;
    let value = median(values)?;
    let mut sorted = values.to_vec();
    sorted.sort_unstable_by(f64::total_cmp);
    let n = sorted.len() as f64;
    let low = (((n - Z * n.sqrt()) / 2.0).floor() - 1.0).max(0.0) as usize;
    let high = sorted.len().saturating_sub(low + 1);
    Some([value, *sorted.get(low)?, *sorted.get(high)?])
}
