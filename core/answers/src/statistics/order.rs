//! What comes from putting values in order: median, quantiles, spread.

use super::point::all_finite;

/// What turns a median absolute deviation into a standard deviation where values
/// are normal: 1 / Φ⁻¹(3/4), rounded as R's `mad` has it.
pub const TO_SIGMA: f64 = 1.4826;

fn in_order(values: &[f64]) -> Option<Vec<f64>> {
    let mut sorted = values.to_vec();
    sorted.sort_unstable_by(f64::total_cmp);
    (!sorted.is_empty() && all_finite(values)).then_some(sorted)
}

/// The middle value, or the mean of the two middle ones.
pub fn median(values: &[f64]) -> Option<f64> {
    median_of_sorted(&in_order(values)?)
}

/// The same where the order is known.
pub(super) fn median_of_sorted(sorted: &[f64]) -> Option<f64> {
    let half = sorted.len() / 2;
    let upper = *sorted.get(half)?;
    match sorted.len() % 2 {
        1 => Some(upper),
        _ => Some(midway(*sorted.get(half.checked_sub(1)?)?, upper)),
    }
}

/// The mean of two, which does not overflow where both are large.
pub(super) fn midway(low: f64, high: f64) -> f64 {
    let sum = low + high;
    if sum.is_finite() {
        sum / 2.0
    } else {
        low / 2.0 + high / 2.0
    }
}

/// The quantile of type 7, which is R's and NumPy's default: with the values in
/// order it stands at place (n - 1)p, counted from 0, straight between neighbours
/// (Hyndman & Fan, "Sample quantiles in statistical packages", American
/// Statistician 1996;50:361-365).
///
/// ```
/// use drawwell_answers::statistics::quantile;
/// assert_eq!(quantile(&[1.0, 2.0, 3.0, 4.0], 0.25), Some(1.75));
/// ```
pub fn quantile(values: &[f64], p: f64) -> Option<f64> {
    if !(0.0..=1.0).contains(&p) {
        return None;
    }
    let sorted = in_order(values)?;
    let place = (sorted.len() - 1) as f64 * p;
    let low = *sorted.get(place.floor() as usize)?;
    let high = *sorted.get(place.ceil() as usize)?;
    let share = place.fract();
    Some(low * (1.0 - share) + high * share)
}

/// The median distance from the median, not scaled.
pub fn median_absolute_deviation(values: &[f64]) -> Option<f64> {
    let middle = median(values)?;
    median(&values.iter().map(|value| (value - middle).abs()).collect::<Vec<_>>())
}

/// A standard deviation that half of the values may be wrong without moving far:
/// 1.4826 times the median absolute deviation.
pub fn robust_spread(values: &[f64]) -> Option<f64> {
    median_absolute_deviation(values).map(|deviation| TO_SIGMA * deviation)
}

/// Twice the rank of each value, counted from 1; equal values share the mean of
/// their ranks, which twice over is whole.
pub(super) fn twice_midranks(values: &[f64]) -> Vec<i64> {
    let mut order: Vec<(f64, usize)> = values.iter().copied().zip(0..).collect();
    order.sort_unstable_by(|a, b| a.0.total_cmp(&b.0));
    let mut ranks = vec![0; values.len()];
    let mut before = 0;
    for equal in order.chunk_by(|a, b| a.0 == b.0) {
        let first_and_last = before + 1 + before + equal.len() as i64;
        for (_, place) in equal {
            if let Some(rank) = ranks.get_mut(*place) {
                *rank = first_and_last;
            }
        }
        before += equal.len() as i64;
    }
    ranks
}

/// How many values are equal to each other, a group at a time.
pub(super) fn tie_sizes(values: &[f64]) -> impl Iterator<Item = u64> {
    let mut sorted = values.to_vec();
    sorted.sort_unstable_by(f64::total_cmp);
    let sizes: Vec<u64> = sorted.chunk_by(|a, b| a == b).map(|equal| equal.len() as u64).collect();
    sizes.into_iter().filter(|size| *size > 1)
}

/// k(k - 1)(2k + 5): eighteen times the variance of Kendall's S over k values.
pub(super) fn rank_steps(k: u64) -> f64 {
    let k = k as f64;
    k * (k - 1.0) * (2.0 * k + 5.0)
}

/// The sum of that over the groups of equal values, which ties take from it.
pub(super) fn tie_steps(values: &[f64]) -> f64 {
    tie_sizes(values).map(rank_steps).sum()
}
