//! Axes of a picture over vacuum.

use crate::quantity::{say_decimal, Quantity, Unit, Vacuum, VacuumUnit};
use crate::screen::shapes::{PlotPicture, Tick};
use crate::screen::View;

const STEPS: [f64; 11] = [0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 25.0, 50.0, 100.0, 200.0, 500.0];
const MOST_LABELS: f64 = 5.0;

/// A height that stands for vacuum, from a floor to a top.
#[derive(Clone, Copy)]
pub(super) struct Height {
    floor: f64,
    top: f64,
    step: f64,
    unit: VacuumUnit,
}

impl Height {
    /// Just wide enough for what is shown, on round figures; from nothing where that
    /// was asked for.
    pub(super) fn over(view: &View<'_>, shown: impl Iterator<Item = Vacuum>, from_nothing: bool) -> Self {
        let unit = view.settings.vacuum;
        let (low, high) = shown
            .map(|v| v.in_unit(unit))
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| (low.min(value), high.max(value)));
        let (low, high) = if low.is_finite() { (low, high) } else { (0.0, 1.0) };
        let low = if from_nothing { 0.0 } else { low };
        let room = ((high - low) * 0.08).max(unit.places() as f64 * 0.1).max(0.5);
        let wanted = (high - low + 2.0 * room) / MOST_LABELS;
        let step = STEPS.into_iter().find(|step| *step >= wanted).unwrap_or(wanted);
        let floor = if from_nothing { 0.0 } else { (((low - room) / step).floor() * step).max(0.0) };
        let top = ((high + room) / step).ceil() * step;
        Self { floor, top: top.max(floor + step), step, unit }
    }

    pub(super) fn at(self, vacuum: Vacuum) -> f32 {
        (((vacuum.in_unit(self.unit) - self.floor) / (self.top - self.floor)) as f32).clamp(0.0, 1.0)
    }

    pub(super) fn labels(self, view: &View<'_>) -> Vec<Tick> {
        let words = view.words();
        let count = ((self.top - self.floor) / self.step).round() as u32;
        (0..=count)
            .map(|n| {
                let value = self.floor + f64::from(n) * self.step;
                let figure = say_decimal(value, 1);
                let label = if n == count { words.with_unit(figure, self.unit) } else { figure };
                Tick { at: (f64::from(n) / f64::from(count.max(1))) as f32, label }
            })
            .collect()
    }
}

/// A picture with nothing in it.
pub(super) fn empty() -> PlotPicture {
    PlotPicture {
        bands: Vec::new(),
        stretches: Vec::new(),
        columns: Vec::new(),
        courses: Vec::new(),
        points: Vec::new(),
        marks: Vec::new(),
        ticks: Vec::new(),
        scale: Vec::new(),
        legend: String::new(),
        spoken: String::new(),
    }
}
