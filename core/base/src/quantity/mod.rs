//! What is measured: volume, vacuum, speed, mass, temperature, length, the
//! pressure of the air, and the pump's own levels.
//!
//! In: a number with its unit, or what a person typed. Out: one newtype per
//! dimension, canonical inside (mL, mmHg below ambient, cycles per minute, g,
//! °C, mm), and [`Entered`], which remembers the figures as they were typed.
//! Factors are UCUM's (ucum-essence.xml v2.2, 2024-06-17). Read [`unit`] first.

mod entered;
mod number;
mod plain;
pub mod unit;

pub use entered::Entered;
pub use number::{parse_decimal, say_decimal, NotANumber, Rounding};
pub use plain::{Count, Level, Points, Score, Share};
pub use unit::{
    AirPressure, AirPressureUnit, Altitude, AltitudeUnit, Drift, DriftUnit, Leak, LeakUnit, Length, LengthUnit, Mass,
    MassUnit, Production, ProductionUnit, Quantity, Speed, SpeedUnit, Temperature, TemperatureUnit, Unit, Vacuum,
    VacuumUnit, Volume, VolumeUnit, Wear, WearUnit,
};
