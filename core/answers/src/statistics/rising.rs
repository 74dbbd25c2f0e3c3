//! A curve that never falls.

/// The rising values that lie nearest to those given, by weighted least squares:
/// neighbours that fall are drawn together to their weighted mean until none does
/// (pool adjacent violators: Ayer et al., Annals of Mathematical Statistics
/// 1955;26:641-647; Barlow et al., Statistical Inference under Order Restrictions,
/// 1972). Pairs of value and weight, in order; empty where a number is not finite or
/// a weight is not above nothing.
///
/// ```
/// use drawwell_answers::statistics::rising;
/// assert_eq!(rising(&[(1.0, 1.0), (3.0, 1.0), (2.0, 1.0), (4.0, 1.0)]), [1.0, 2.5, 2.5, 4.0]);
/// ```
pub fn rising(values: &[(f64, f64)]) -> Vec<f64> {
    if !values.iter().all(|(value, weight)| value.is_finite() && weight.is_finite() && *weight > 0.0) {
        return Vec::new();
    }
    let mut pools: Vec<(f64, f64, usize)> = Vec::with_capacity(values.len());
    for (value, weight) in values {
        let mut pool = (*value, *weight, 1);
        while let Some(before) = pools.pop_if(|before| before.0 >= pool.0) {
            let whole = before.1 + pool.1;
            pool = ((before.0 * before.1 + pool.0 * pool.1) / whole, whole, before.2 + pool.2);
        }
        pools.push(pool);
    }
    pools.into_iter().flat_map(|(value, _, count)| std::iter::repeat_n(value, count)).collect()
}
