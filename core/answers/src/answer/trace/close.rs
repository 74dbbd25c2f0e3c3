//! A few cycles close up, since a whole session is no more than a band.

use super::rounding::rounded;
use super::{AsRead, Samples, Seconds};

/// So many usual cycles are shown,
const CYCLES: f64 = 8.0;
/// in at most so many samples.
pub(super) const MOST_SAMPLES: usize = 480;

/// Samples from the middle of a segment.
#[derive(Debug, Clone, PartialEq)]
pub struct CloseUp {
    /// When the first of them was taken.
    pub from: Seconds,
    /// From one to the next.
    pub step: Seconds,
    /// The values; None in a dropout.
    pub values: Vec<Option<AsRead>>,
}

/// How many windows to either side are looked at for one without a dropout.
const LOOKS_ASIDE: usize = 8;

/// A few cycles of a period from around a moment, or from nearby where samples are
/// missing there.
pub(super) fn close_up(samples: &Samples, around: Seconds, period: Seconds) -> CloseUp {
    let step = samples.step().get();
    let all = samples.values();
    let count = ((CYCLES * period.get() / step).ceil() as usize).clamp(2, all.len().max(2));
    let last = all.len().saturating_sub(count);
    let middle = ((around.get() / step).round() as usize).saturating_sub(count / 2);
    let aside = (0..=LOOKS_ASIDE).flat_map(|n| {
        let by = n * count;
        [middle.saturating_add(by), middle.saturating_sub(by)]
    });
    let missing = |first: &usize| all.iter().skip(*first).take(count).filter(|value| !value.is_finite()).count();
    let first = aside.map(|first| first.min(last)).min_by_key(missing).unwrap_or(0);
    let stride = count.div_ceil(MOST_SAMPLES).max(1);
    let taken = all.get(first..).unwrap_or_default().iter().take(count).step_by(stride);
    CloseUp {
        from: Seconds::new(rounded(first as f64 * step)),
        step: Seconds::new(rounded(stride as f64 * step)),
        values: taken.map(|value| value.is_finite().then(|| AsRead::new(rounded(f64::from(*value))))).collect(),
    }
}
