//! What a setting is reckoned in: mmHg, or the levels of one pump.

use super::used::Strength;
use crate::quantity::{Level, Quantity, Vacuum};

/// A setting, in mmHg or in levels.
pub trait Axis: Copy + PartialEq + std::fmt::Debug {
    /// What two settings must differ by to be told apart.
    const WIDTH: f64;
    /// A range this wide or wider tells nothing.
    const WIDEST: f64;
    /// What a range reaches further to either side: two settings of one session are not two
    /// days. Measured with families of known truth.
    const APART: f64;
    /// As a number.
    fn number(self) -> f64;
    /// From a number; rounded to what there is, and never upward.
    fn down(number: f64) -> Self;
    /// The same, and never downward.
    fn up(number: f64) -> Self;
    /// The setting, where it is known so.
    fn of(strength: &Strength) -> Option<Self>;
    /// How far it may be off, to either side.
    fn error(strength: &Strength) -> f64;
}

impl Axis for Vacuum {
    const WIDTH: f64 = 5.0;
    const WIDEST: f64 = 70.0;
    const APART: f64 = 3.0;
    fn number(self) -> f64 {
        self.canonical()
    }
    fn down(number: f64) -> Self {
        Self::from_canonical(number.max(0.0))
    }
    fn up(number: f64) -> Self {
        Self::from_canonical(number.max(0.0))
    }
    fn of(strength: &Strength) -> Option<Self> {
        strength.vacuum.map(|vacuum| vacuum.value)
    }
    fn error(strength: &Strength) -> f64 {
        strength.vacuum.map_or(0.0, |v| (v.high.canonical() - v.low.canonical()) / 2.0)
    }
}

impl Axis for Level {
    const WIDTH: f64 = 0.5;
    const WIDEST: f64 = 4.0;
    // Rounding to whole levels is wide enough.
    const APART: f64 = 0.0;
    fn number(self) -> f64 {
        f64::from(self.get())
    }
    fn down(number: f64) -> Self {
        // A figure that is off in its last bit is the level it is meant to be.
        Self::new((number + 1e-9).max(0.0).floor() as u32)
    }
    fn up(number: f64) -> Self {
        Self::new((number - 1e-9).max(0.0).ceil() as u32)
    }
    fn of(strength: &Strength) -> Option<Self> {
        strength.level
    }
    fn error(_: &Strength) -> f64 {
        0.0
    }
}
