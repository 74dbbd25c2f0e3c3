//! Control charts: whether a series has left where it stood.

use super::{mean, point::all_finite};

/// Expected range of two normal values in standard deviations (d₂ for n = 2).
const RANGE_OF_TWO: f64 = 1.128;
/// Upper limit of a range of two in mean ranges (D₄ for n = 2).
const RANGE_LIMIT: f64 = 3.267;

/// An exponentially weighted moving average with its limits.
#[derive(Debug, Clone, PartialEq)]
pub struct EwmaChart {
    /// The average after each value.
    pub values: Vec<f64>,
    /// The lower limit.
    pub low: f64,
    /// The upper limit.
    pub high: f64,
}

/// zₜ = λyₜ + (1 - λ)zₜ₋₁ from z₀ = target, between target ± L σ √(λ / (2 - λ)),
/// the limits it tends to (Roberts 1959; NIST/SEMATECH e-Handbook 6.3.2.4).
pub fn ewma_chart(values: &[f64], target: f64, sigma: f64, lambda: f64, limit: f64) -> Option<EwmaChart> {
    let sound = all_finite(values) && all_finite(&[target, sigma, limit]) && sigma >= 0.0 && limit >= 0.0;
    if !(sound && lambda > 0.0 && lambda <= 1.0) {
        return None;
    }
    let mut last = target;
    let values = values
        .iter()
        .map(|value| {
            last += lambda * (value - last);
            last
        })
        .collect::<Vec<_>>();
    let reach = limit * sigma * (lambda / (2.0 - lambda)).sqrt();
    let chart = EwmaChart { values, low: target - reach, high: target + reach };
    (all_finite(&chart.values) && all_finite(&[chart.low, chart.high])).then_some(chart)
}

/// Limits for single values, from how much neighbours differ.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct IndividualsChart {
    /// Mean of the values.
    pub centre: f64,
    /// Lower limit of a value.
    pub low: f64,
    /// Upper limit of a value.
    pub high: f64,
    /// Mean distance of neighbours.
    pub moving_range: f64,
    /// Upper limit of such a distance.
    pub moving_range_high: f64,
}

/// Mean ± 3 MR̄ / d₂ for values, D₄ MR̄ for moving ranges (NIST/SEMATECH e-Handbook
/// 6.3.2.2). At least two values.
pub fn individuals_chart(values: &[f64]) -> Option<IndividualsChart> {
    let centre = mean(values)?;
    let ranges: Vec<f64> = values.iter().zip(values.iter().skip(1)).map(|(a, b)| (b - a).abs()).collect();
    let moving_range = mean(&ranges)?;
    let reach = 3.0 * moving_range / RANGE_OF_TWO;
    let chart = IndividualsChart {
        centre,
        low: centre - reach,
        high: centre + reach,
        moving_range,
        moving_range_high: RANGE_LIMIT * moving_range,
    };
    all_finite(&[chart.low, chart.high, chart.moving_range_high]).then_some(chart)
}

/// A cumulative sum that looks for a fall and for nothing else.
///
/// Sₜ = max(0, Sₜ₋₁ - zₜ - k), and a signal where S > h; z, k and h in standard
/// deviations (Page 1954; Montgomery, Introduction to Statistical Quality Control,
/// chapter on cumulative sums). k is half of the fall that should be noticed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cusum {
    reference: f64,
    decision: f64,
    sum: f64,
}

impl Cusum {
    /// With its reference value k and its decision interval h, both from zero up.
    pub fn lower(reference: f64, decision: f64) -> Option<Self> {
        let sound = all_finite(&[reference, decision]) && reference >= 0.0 && decision >= 0.0;
        sound.then_some(Self { reference, decision, sum: 0.0 })
    }

    /// Takes a standardised value, and says whether the sum is over its limit now.
    /// A day without a value leaves it where it was.
    pub fn step(&mut self, standardised: Option<f64>) -> bool {
        if let Some(value) = standardised.filter(|value| value.is_finite()) {
            self.sum = (self.sum - value - self.reference).clamp(0.0, f64::MAX);
        }
        self.signals()
    }

    /// How much has gathered.
    pub fn sum(&self) -> f64 {
        self.sum
    }

    /// Whether that is over the limit.
    pub fn signals(&self) -> bool {
        self.sum > self.decision
    }

    /// Begins anew, as after a signal was looked into.
    pub fn reset(&mut self) {
        self.sum = 0.0;
    }
}
