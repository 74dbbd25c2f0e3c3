//! Where a session's pattern changes. A session with two patterns has no one rate.

use super::collapse::Fall;
use super::cycle::Cycle;
use super::typical::{usual_amplitude, usual_period, SAME_PERIOD};
use crate::record::mark::Phase;
use crate::statistics::{median, pelt, robust_spread};

/// A pattern lasts so many cycles at least: fewer are some weak or missed ones together.
const LEAST_CYCLES: usize = 12;
/// A fall of so many is a segment of its own.
const LEAST_OF_A_FALL: usize = 3;
/// So many cycles on either side say what is usual at one.
const NEIGHBOURS: usize = 4;
/// Amplitudes that differ by less than this share are one strength.
const SAME_AMPLITUDE: f64 = 0.20;
/// What counts as noise of log period and log amplitude at least; less is told apart, but of no matter.
const LEAST_NOISE: [f64; 2] = [0.04, 0.06];
/// The penalty of a change, in units of ln n: twice the usual 2, for neighbours are alike.
const PENALTY: f64 = 4.0;
/// More cycles than this are looked at in groups, so that a day's trace takes no longer.
const MOST_GROUPS: usize = 3_000;
/// More changes than this are told as the most different ones.
pub(super) const MOST_SEGMENTS: usize = 20;

/// So many cycles on either side of an edge say whether anything changes there, or goes on as it did.
const AT_THE_EDGE: usize = 6;

/// First cycle and the cycle after the last of each segment, in order; a pull before and after its fall
/// is never one segment.
pub(super) fn segments(cycles: &[Cycle], falls: &[Fall]) -> Vec<(usize, usize)> {
    let group = cycles.len().div_ceil(MOST_GROUPS).max(1);
    let mut edges: Vec<usize> = vec![0, cycles.len()];
    let usual = usual_period(cycles);
    let periods: Vec<f64> =
        cycles.iter().map(|cycle| cycle.period.or(usual).map_or(0.0, |period| period.max(1e-6).ln())).collect();
    let amplitudes: Vec<f64> = cycles.iter().map(|cycle| cycle.amplitude().max(f64::MIN_POSITIVE).ln()).collect();
    for (series, least) in [periods, amplitudes].iter().zip(LEAST_NOISE) {
        edges.extend(changes(series, least, group).into_iter().map(|at| at * group));
    }
    let kept: Vec<usize> = falls.iter().flat_map(|fall| around(*fall, cycles.len())).collect();
    edges.retain(|edge| *edge == 0 || *edge == cycles.len() || !falls.iter().any(|fall| is_within(*fall, *edge)));
    edges.extend(&kept);
    edges.sort_unstable();
    edges.dedup();
    let parts = edges.iter().zip(edges.iter().skip(1)).map(|(from, to)| Part::of(cycles, *from, *to)).collect();
    let joined = joined(cycles, parts, &kept);
    joined.iter().map(|part| (part.from, part.to)).collect()
}

/// The edges of a fall. A sudden one is no segment of its own and goes with its longer side.
fn around(fall: Fall, cycles: usize) -> Vec<usize> {
    let (from, to) = (fall.last + 1, fall.first);
    match to.saturating_sub(from) {
        length if length >= LEAST_OF_A_FALL => vec![from, to],
        _ if from >= cycles - to => vec![to],
        _ => vec![from],
    }
}

fn is_within(fall: Fall, edge: usize) -> bool {
    (fall.last.saturating_sub(NEIGHBOURS)..=fall.first + NEIGHBOURS).contains(&edge)
}

/// Segments that are one pattern are joined, but not over an edge that is kept.
fn joined(cycles: &[Cycle], mut parts: Vec<Part>, kept: &[usize]) -> Vec<Part> {
    while let Some(join) = to_join(&parts, kept) {
        let after = parts.remove(join + 1);
        if let Some(part) = parts.get_mut(join) {
            *part = Part::of(cycles, part.from, after.to);
        }
    }
    parts
}

/// A segment while it is being found: its cycles, and what is usual among them.
struct Part {
    from: usize,
    to: usize,
    period: Option<f64>,
    amplitude: Option<f64>,
    /// Amplitudes of its first cycles and of its last.
    begins: Option<f64>,
    ends: Option<f64>,
}

impl Part {
    fn of(cycles: &[Cycle], from: usize, to: usize) -> Self {
        let there = cycles.get(from..to).unwrap_or_default();
        let edge = AT_THE_EDGE.min(there.len());
        Self {
            from,
            to,
            period: usual_period(there),
            amplitude: usual_amplitude(there),
            begins: there.get(..edge).and_then(usual_amplitude),
            ends: there.get(there.len() - edge..).and_then(usual_amplitude),
        }
    }

    /// How different two are; from 1 on they are two patterns.
    fn difference(&self, other: &Self) -> f64 {
        let apart = |x: Option<f64>, y: Option<f64>, same: f64| match (x, y) {
            (Some(x), Some(y)) if x > 0.0 && y > 0.0 => (x / y).ln().abs() / (1.0 + same).ln(),
            _ => 0.0,
        };
        let periods = apart(self.period, other.period, SAME_PERIOD);
        // A pull that sinks or rises all along is one pattern: nothing changes from one cycle to the next.
        let amplitudes = apart(self.amplitude, other.amplitude, SAME_AMPLITUDE);
        periods.max(amplitudes.min(apart(self.ends, other.begins, SAME_AMPLITUDE)))
    }
}

/// Changes of one series, in groups: what a few cycles do is not a change.
fn changes(series: &[f64], least_noise: f64, group: usize) -> Vec<usize> {
    let grouped: Vec<f64> = series.chunks(group).filter_map(median).collect();
    let smooth: Vec<f64> = (0..grouped.len())
        .filter_map(|at| median(grouped.get(at.saturating_sub(NEIGHBOURS)..(at + NEIGHBOURS + 1).min(grouped.len()))?))
        .collect();
    let steps: Vec<f64> = grouped.iter().zip(grouped.iter().skip(1)).map(|(a, b)| (b - a) / 2_f64.sqrt()).collect();
    let noise = robust_spread(&steps).unwrap_or(0.0).max(least_noise);
    let scaled: Vec<f64> = smooth.iter().map(|value| value / noise).collect();
    pelt(&scaled, PENALTY * (scaled.len().max(2) as f64).ln(), LEAST_CYCLES.div_ceil(group))
}

/// The segment that is to be joined with the one after it.
fn to_join(parts: &[Part], kept: &[usize]) -> Option<usize> {
    let apart: Vec<f64> = parts
        .iter()
        .zip(parts.iter().skip(1))
        .map(|(a, b)| if kept.contains(&a.to) { f64::INFINITY } else { a.difference(b) })
        .collect();
    // The shortest goes first where it is none by itself, to whichever neighbour it is more like.
    let mut short: Vec<(usize, usize)> =
        parts.iter().map(|part| part.to - part.from).enumerate().filter(|(_, length)| *length < LEAST_CYCLES).collect();
    short.sort_by_key(|(_, length)| *length);
    let joins = short.iter().find_map(|(at, _)| {
        let sides = [at.checked_sub(1), Some(*at)];
        let open = sides.into_iter().flatten().filter_map(|at| apart.get(at).map(|apart| (at, *apart)));
        open.filter(|(_, apart)| apart.is_finite()).min_by(|a, b| a.1.total_cmp(&b.1))
    });
    if let Some((at, _)) = joins {
        return Some(at);
    }
    let (at, least) = apart.iter().copied().enumerate().min_by(|a, b| a.1.total_cmp(&b.1))?;
    (least < 1.0 || (parts.len() > MOST_SEGMENTS && least.is_finite())).then_some(at)
}

/// Whether two segments are one pattern.
pub(super) fn are_one(cycles: &[Cycle], one: (usize, usize), other: (usize, usize)) -> bool {
    let [one, other] = [one, other].map(|(from, to)| Part::of(cycles, from, to));
    one.difference(&other) < 1.0
}

/// What a session's segments are together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pattern {
    /// One pattern all along.
    One,
    /// A fast and light one and a slow and strong one: letdown and expression.
    LetdownAndExpression,
    /// It changes, but the faster one is not the lighter.
    Changing,
}

/// Whether a segment begins where the pull is lost, and not where the pattern changes.
pub(super) fn is_of_a_fall(falls: &[Fall], begins: usize) -> bool {
    falls.iter().any(|fall| (fall.last + 1..=fall.first + 1).contains(&begins))
}

/// The pattern, and each segment's phase where it has one.
pub(super) fn phases(cycles: &[Cycle], segments: &[(usize, usize)], falls: &[Fall]) -> (Pattern, Vec<Option<Phase>>) {
    let nothing = vec![None; segments.len()];
    if segments.iter().skip(1).all(|(begins, _)| is_of_a_fall(falls, *begins)) {
        return (Pattern::One, nothing);
    }
    let of = |(from, to): &(usize, usize)| {
        let part = cycles.get(*from..*to).unwrap_or_default();
        Some((usual_period(part)?, usual_amplitude(part)?))
    };
    let Some(usual) = segments.iter().map(of).collect::<Option<Vec<(f64, f64)>>>() else {
        return (Pattern::Changing, nothing);
    };
    // Fast and slow are parted where periods lie furthest apart.
    let mut periods: Vec<f64> = usual.iter().map(|(period, _)| *period).collect();
    periods.sort_unstable_by(f64::total_cmp);
    let widest = periods
        .iter()
        .zip(periods.iter().skip(1))
        .map(|(low, high)| (high / low, (low * high).sqrt()))
        .max_by(|a, b| a.0.total_cmp(&b.0));
    let Some((_, middle)) = widest.filter(|(ratio, _)| *ratio >= 1.0 + SAME_PERIOD) else {
        return (Pattern::Changing, nothing);
    };
    let strength = |fast: bool| {
        // What is left of a pull after it was lost is not how strong it is.
        usual.iter().filter(|(period, _)| (*period < middle) == fast).map(|(_, a)| *a).fold(0.0, f64::max)
    };
    if strength(true) * (1.0 + SAME_AMPLITUDE) > strength(false) {
        return (Pattern::Changing, nothing);
    }
    let phase = |period: f64| if period < middle { Phase::Letdown } else { Phase::Expression };
    (Pattern::LetdownAndExpression, usual.iter().map(|(period, _)| Some(phase(*period))).collect())
}
