//! Where a series changes its level, and how well that is known.

use super::mean;

/// Running sums about the mean, so that the cost of any segment takes one step and
/// large values with small differences lose nothing.
struct Costs {
    sums: Vec<(f64, f64)>,
}

impl Costs {
    fn of(values: &[f64]) -> Option<Self> {
        let middle = mean(values)?;
        let mut running = (0.0, 0.0);
        let sums = std::iter::once(running).chain(values.iter().map(|value| {
            let apart = value - middle;
            running = (running.0 + apart, running.1 + apart * apart);
            running
        }));
        let sums: Vec<_> = sums.collect();
        sums.last().is_some_and(|(_, squares)| squares.is_finite()).then_some(Self { sums })
    }

    fn up_to(&self, end: usize) -> Option<Sums> {
        let (sum, squares) = *self.sums.get(end)?;
        Some(Sums { end, sum, squares })
    }

    /// Σ (y - ȳ)² from one index to before another.
    fn cost(&self, start: usize, end: usize) -> Option<f64> {
        Some(self.up_to(start)?.cost_to(self.up_to(end)?))
    }
}

/// The running sums at one index.
#[derive(Debug, Clone, Copy)]
struct Sums {
    end: usize,
    sum: f64,
    squares: f64,
}

impl Sums {
    fn cost_to(self, later: Self) -> f64 {
        let sum = later.sum - self.sum;
        (later.squares - self.squares - sum * sum / (later.end - self.end) as f64).max(0.0)
    }
}

/// A place where the last segment may begin.
struct Start {
    sums: Sums,
    best: f64,
    /// From this end on it can't be the best any more.
    over_at: usize,
}

/// Changes of the mean: first indices of the new segments.
///
/// The segments are those that make Σ over segments of Σ (y - ȳ)² + `penalty` least,
/// none shorter than `min_segment` (Killick, Fearnhead & Eckley, "Optimal detection of
/// changepoints with a linear computational cost", JASA 2012;107:1590-1598). This is
/// `Pelt(model="l2", min_size=min_segment, jump=1)` of ruptures, and never worse: there
/// a start is dropped as soon as it is beaten, though for `min_segment` - 1 steps what
/// beat it can't be used yet; here it is dropped then.
///
/// A penalty of 2 σ² ln n is usual where neighbours do not resemble each other.
pub fn pelt(values: &[f64], penalty: f64, min_segment: usize) -> Vec<usize> {
    changes(values, penalty, min_segment).unwrap_or_default()
}

fn changes(values: &[f64], penalty: f64, min_segment: usize) -> Option<Vec<usize>> {
    let (n, least) = (values.len(), min_segment.max(1));
    if n / 2 < least || !(penalty.is_finite() && penalty >= 0.0) {
        return None;
    }
    let costs = Costs::of(values)?;
    // The least cost up to each end, and where its last segment begins.
    let mut best: Vec<Option<(f64, usize)>> = vec![None; n + 1];
    *best.first_mut()? = Some((0.0, 0));
    let mut starts: Vec<Start> = Vec::new();
    for end in least..=n {
        let newest = end - least;
        if let Some((best, _)) = best.get(newest).copied().flatten() {
            starts.push(Start { sums: costs.up_to(newest)?, best, over_at: usize::MAX });
        }
        starts.retain(|start| start.over_at > end);
        let here = costs.up_to(end)?;
        let total = |start: &Start| start.best + start.sums.cost_to(here) + penalty;
        let mut found = (f64::INFINITY, 0);
        for start in &starts {
            let cost = total(start);
            if cost < found.0 {
                found = (cost, start.sums.end);
            }
        }
        for start in &mut starts {
            if start.over_at == usize::MAX && total(start) > found.0 + penalty {
                start.over_at = end + least;
            }
        }
        *best.get_mut(end)? = Some(found);
    }
    Some(trace_back(n, |end| best.get(end).copied().flatten().map(|(_, start)| start)))
}

/// From the end to the first segment, which begins at 0.
pub(super) fn trace_back(end: usize, last_start: impl Fn(usize) -> Option<usize>) -> Vec<usize> {
    let mut changes: Vec<usize> =
        std::iter::successors(last_start(end), |start| last_start(*start)).take_while(|start| *start > 0).collect();
    changes.reverse();
    changes
}

/// The first and last index at which the change at `index` may well have been, between
/// the changes before and after it: `start` is the first index of the segment before,
/// `end` the first after the segment that it began.
///
/// It holds every τ for which the cost of the two segments, in units of what they leave
/// over for each degree of freedom, is within -2 ln(1 - √confidence) of the least: 5.94
/// for 90 %, 7.35 for 95 % (Hansen, "Sample splitting and threshold estimation",
/// Econometrica 2000;68:575-603, eq. 12 and table I; the limit for shifts that are small
/// beside the noise, and too wide rather than too narrow for large ones). Where neighbours
/// resemble each other the bound is multiplied by `variance_inflation`, the ratio of
/// the long-run variance to the variance, as Hansen's η² is.
pub fn segment_range(
    values: &[f64],
    start: usize,
    index: usize,
    end: usize,
    confidence: f64,
    variance_inflation: f64,
) -> Option<(usize, usize)> {
    let inside = start < index && index < end && confidence > 0.0 && confidence < 1.0;
    let part = values.get(start..end).filter(|part| inside && part.len() > 3)?;
    let costs = Costs::of(part)?;
    let whole = part.len();
    let apart = |at: usize| Some(costs.cost(0, at)? + costs.cost(at, whole)?);
    let here = apart(index - start)?;
    let bound = -2.0 * (1.0 - confidence.sqrt()).ln() * variance_inflation;
    if !(bound.is_finite() && bound >= 0.0) {
        return None;
    }
    let limit = here + bound * here / (whole - 2) as f64;
    let may_be = |at: &usize| apart(*at).is_some_and(|cost| cost <= limit);
    let (low, high) = ((1..whole).find(may_be)?, (1..whole).rev().find(may_be)?);
    Some((start + low, start + high))
}
