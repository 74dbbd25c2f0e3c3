//! How far a gauge may be wrong.

use crate::quantity::{Quantity, Unit, Vacuum};
use crate::record::{Gauge, Reading};

/// The errors of a gauge; each lies anywhere within its bounds, and is the same
/// for every reading of a check.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GaugeError {
    /// The greatest error, up or down.
    pub greatest: Vacuum,
    /// The smallest step that can be told apart.
    pub resolution: Vacuum,
}

/// The greatest error of an accuracy class: so many per cent of the span, anywhere
/// along it (EN 837-1:1996, table 11).
pub fn of_class(class: f64, span: Vacuum) -> Vacuum {
    Vacuum::from_canonical(class / 100.0 * span.canonical())
}

impl GaugeError {
    /// The errors of a gauge, by its class or as its maker states them. Where its
    /// resolution was not said it is one in the last figure that was written down.
    /// None where neither class nor error is known.
    pub fn of<'r>(gauge: &Gauge, readings: impl Iterator<Item = &'r Reading>) -> Option<Self> {
        let by_class = gauge.class.zip(gauge.span).map(|(class, span)| of_class(class, span));
        let resolution = gauge.resolution.or_else(|| finest_figure(readings));
        Some(Self {
            greatest: gauge.error.or(by_class)?,
            resolution: resolution.unwrap_or(Vacuum::from_canonical(0.0)),
        })
    }

    /// The half widths of its two rectangular laws, in mmHg.
    pub(super) fn half_widths(&self) -> [f64; 2] {
        [self.greatest.canonical(), self.resolution.canonical() / 2.0]
    }
}

/// One in the last figure of the finest reading.
fn finest_figure<'r>(readings: impl Iterator<Item = &'r Reading>) -> Option<Vacuum> {
    let finest = readings.map(|reading| {
        let typed = reading.vacuum.typed();
        let places = typed.split_once(['.', ',']).map_or(0, |(_, behind)| behind.len());
        let (factor, _) = reading.vacuum.unit().factor_and_zero();
        factor * 10f64.powi(-i32::try_from(places).unwrap_or(0))
    });
    finest.reduce(f64::min).map(Vacuum::from_canonical)
}
