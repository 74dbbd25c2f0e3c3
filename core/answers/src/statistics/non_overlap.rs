//! How much two samples overlap, as single-case research counts it.

use super::point::all_finite;

/// How two samples lie to each other, pair by pair.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NonOverlap {
    /// NAP: the share of pairs in which the second is above the first, ties as a half.
    pub nap: f64,
    /// Tau: pairs above less pairs below, of all pairs.
    pub tau: f64,
    /// Pairs in which the second is above the first, ties as a half.
    pub above: f64,
    /// All pairs.
    pub pairs: u64,
}

/// Non-overlap of all pairs, and Tau, of a second sample above a first (Parker & Vannest,
/// Behavior Therapy 2009;40:357-367; Parker, Vannest & Davis, Behavior Modification
/// 2011;35:303-322). Tau is 2 NAP - 1.
///
/// ```
/// use drawwell_answers::statistics::non_overlap;
/// let found = non_overlap(&[1.0, 2.0], &[2.0, 3.0]).unwrap();
/// assert_eq!((found.above, found.pairs), (3.5, 4));
/// ```
pub fn non_overlap(first: &[f64], second: &[f64]) -> Option<NonOverlap> {
    if first.is_empty() || second.is_empty() || !all_finite(first) || !all_finite(second) {
        return None;
    }
    let mut ordered = first.to_vec();
    ordered.sort_unstable_by(f64::total_cmp);
    let halves: u64 = second
        .iter()
        .map(|value| {
            let below = ordered.partition_point(|other| other < value);
            let up_to = ordered.partition_point(|other| other <= value);
            (below + up_to) as u64
        })
        .sum();
    let pairs = first.len() as u64 * second.len() as u64;
    let above = halves as f64 / 2.0;
    let nap = above / pairs as f64;
    Some(NonOverlap { nap, tau: 2.0 * nap - 1.0, above, pairs })
}
