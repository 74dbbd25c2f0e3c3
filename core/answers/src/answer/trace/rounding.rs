//! How exactly findings are kept.

/// To six figures: more are not known, and what a journal keeps is then what was found.
pub(super) fn rounded(value: f64) -> f64 {
    format!("{value:.5e}").parse().unwrap_or(value)
}
