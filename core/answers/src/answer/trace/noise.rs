//! How much of a trace is noise.

use super::file::Samples;
use crate::statistics::quantile;

/// The noise is told from so many samples at a time, and from so many stretches at most.
const STRETCH: usize = 250;
const MOST_STRETCHES: usize = 400;
/// The share of stretches that are to have less.
const CALM: f64 = 0.25;

/// Which differences tell the noise.
#[derive(Clone, Copy)]
struct Places {
    /// By size: this share of them is smaller.
    share: f64,
    /// How large that one is where noise is normal with spread 1: Φ⁻¹((1 + share) / 2).
    normal: f64,
    /// From one sample to the next that is taken.
    lag: usize,
}

/// A sample laid onto the grid between two others resembles its neighbours, so every other is taken.
const PLACES: Places = Places { share: 0.5, normal: 0.674_490, lag: 2 };
/// Where samples lie further apart than this, half of the differences reach over an edge.
const COARSE_SECONDS: f64 = 0.03;
const COARSE_PLACES: Places = Places { share: 0.25, normal: 0.318_639, lag: 1 };

/// Differences of second, fourth and sixth order, and the sum of their squares: the
/// variance of such a difference is that of the noise, times so much.
const DIFFERENCES: [(&[f64], f64); 3] = [
    (&[1.0, -2.0, 1.0], 6.0),
    (&[1.0, -4.0, 6.0, -4.0, 1.0], 70.0),
    (&[1.0, -6.0, 15.0, -20.0, 15.0, -6.0, 1.0], 924.0),
];

/// The standard deviation of the noise, in the trace's own unit.
///
/// The median size of the p-th difference over 0.6745 √(Σ c²): a difference takes
/// away what runs smoothly and leaves noise (Rice, "Bandwidth choice for nonparametric
/// regression", Ann Stat 1984;12:1215-1230; Hall, Kay & Titterington, Biometrika
/// 1990;77:521-528). What it leaves of the signal only adds, so the least of the
/// second, fourth and sixth order is taken, and a calm stretch before one of fast cycles: at
/// 10 samples a second those are not smooth to any difference.
pub(super) fn noise(samples: &Samples) -> f64 {
    let (values, are_rows) = samples.as_read();
    let places = match samples.step().get() > COARSE_SECONDS {
        true => COARSE_PLACES,
        false if are_rows => Places { lag: 1, ..PLACES },
        false => PLACES,
    };
    let every = values.len().div_ceil(STRETCH * MOST_STRETCHES).max(1);
    let stretches: Vec<f64> =
        values.chunks_exact(STRETCH).step_by(every).filter_map(|stretch| of_stretch(stretch, places)).collect();
    quantile(&stretches, CALM).or_else(|| of_stretch(values, places)).unwrap_or(0.0)
}

fn of_stretch(values: &[f32], places: Places) -> Option<f64> {
    let each = DIFFERENCES.iter().filter_map(|(weights, squares)| {
        let sizes: Vec<f64> = values
            .windows((weights.len() - 1) * places.lag + 1)
            .map(|window| {
                window
                    .iter()
                    .step_by(places.lag)
                    .zip(*weights)
                    .map(|(value, weight)| f64::from(*value) * weight)
                    .sum::<f64>()
                    .abs()
            })
            .filter(|size| size.is_finite())
            .collect();
        quantile(&sizes, places.share).map(|size| size / places.normal / squares.sqrt())
    });
    Some(each.fold(f64::INFINITY, f64::min)).filter(|least| least.is_finite())
}
