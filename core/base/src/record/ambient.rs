//! What the air presses with: no vacuum can be greater.

use crate::quantity::{AirPressure, AirPressureUnit, Altitude, Quantity, Share, Vacuum};

/// Pressure at sea level in the standard atmosphere, in hPa.
const AT_SEA_LEVEL: f64 = 1013.25;
/// Temperature there, in K, and how it falls, in K/m.
const TEMPERATURE: f64 = 288.15;
const LAPSE: f64 = 0.0065;
/// g M / (R L) of the standard atmosphere.
const EXPONENT: f64 = 5.255_88;

/// The standard atmosphere's pressure at a geopotential height below 11 km:
/// p = 1013.25 hPa (1 - 0.0065 H / 288.15)^5.25588 (ICAO Doc 7488; ISO 2533:1975).
pub fn standard(altitude: Altitude) -> AirPressure {
    let share = (1.0 - LAPSE * altitude.canonical() / TEMPERATURE).max(0.0).powf(EXPONENT);
    AirPressure::from_canonical(AT_SEA_LEVEL * share)
}

/// How much of the pressure at sea level there is.
pub fn share_of_sea_level(air: AirPressure) -> Share {
    Share::of(air.canonical() / AT_SEA_LEVEL)
}

/// The greatest vacuum there can be, where the air or the height is known: as
/// measured before what a height stands for.
pub fn known(air: Option<AirPressure>, altitude: Option<Altitude>) -> Option<Vacuum> {
    air.or_else(|| altitude.map(standard))
        .map(|air| Vacuum::from_canonical(air.in_unit(AirPressureUnit::MillimeterOfMercury)))
}
