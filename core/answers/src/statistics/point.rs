//! A series that may have gaps.

/// One value of a series, and where it stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// Where: the number of a day, as a rule. A series with gaps is points at
    /// increasing `at`, and a missing day is no point.
    pub at: f64,
    /// What was found there.
    pub value: f64,
}

/// Whether nothing in there is infinite or not a number.
pub(super) fn all_finite(values: &[f64]) -> bool {
    values.iter().all(|value| value.is_finite())
}
