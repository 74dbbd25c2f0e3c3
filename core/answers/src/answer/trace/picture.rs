//! The trace, small enough to be kept and drawn.

use super::AsRead;

/// The most columns a picture has.
pub const MOST_COLUMNS: usize = 600;
/// Figures kept of a value: a picture is no finer.
const FIGURES: f64 = 2_000.0;

/// The lowest and the highest value of a column of time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Column {
    /// Lowest vacuum.
    pub low: AsRead,
    /// Highest vacuum.
    pub high: AsRead,
}

/// Columns of equal length from the first sample to the last; None in a dropout.
pub(super) fn picture(values: &[f32]) -> Vec<Option<Column>> {
    let columns = values.len().min(MOST_COLUMNS);
    let largest = values.iter().filter(|value| value.is_finite()).fold(0.0_f64, |most, v| most.max(f64::from(v.abs())));
    // A power of ten, so that what is kept is short when written.
    let fine = 10_f64.powf((FIGURES / largest.max(f64::MIN_POSITIVE)).log10().ceil().clamp(-12.0, 12.0));
    let kept = |value: f64| AsRead::new((value * fine).round() / fine);
    (0..columns)
        .map(|column| {
            let [from, to] = [column, column + 1].map(|at| at * values.len() / columns);
            let there = values.get(from..to)?.iter().filter(|value| value.is_finite()).map(|value| f64::from(*value));
            let (low, high) =
                there.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), v| (low.min(v), high.max(v)));
            low.is_finite().then(|| Column { low: kept(low), high: kept(high) })
        })
        .collect()
}
