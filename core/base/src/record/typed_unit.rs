//! The unit that a bare number is typed in, and how a moment's date is named.

use super::{Fields, Gauge, Kind, Settings, Takes};
use crate::quantity::{AirPressureUnit, AltitudeUnit, LengthUnit, SpeedUnit, Unit, VacuumUnit};

/// Name of the second row of a moment: its date.
pub const DATE_OF: &str = "/date";

/// The unit that vacuums of a record are read and typed in: a gauge's own, else
/// the one that was chosen.
pub fn vacuum_unit(settings: &Settings, kind: Kind, fields: &Fields) -> VacuumUnit {
    let own = (kind == Kind::Gauge).then(|| Gauge::read(fields).reads_in).flatten();
    own.unwrap_or(settings.vacuum)
}

/// The unit a field's bare numbers are typed in, by its UCUM code.
pub fn typed_unit(settings: &Settings, kind: Kind, fields: &Fields, takes: Takes) -> Option<&'static str> {
    Some(match takes {
        Takes::Amount | Takes::Volume { .. } => settings.volume.ucum(),
        Takes::Vacuum { .. } => vacuum_unit(settings, kind, fields).ucum(),
        Takes::AirPressure { .. } => AirPressureUnit::Hectopascal.ucum(),
        Takes::Altitude { .. } => AltitudeUnit::Meter.ucum(),
        Takes::Mass { .. } => settings.mass.ucum(),
        Takes::Temperature { .. } => settings.temperature.ucum(),
        Takes::Speed { .. } => SpeedUnit::PerMinute.ucum(),
        Takes::Length { .. } => LengthUnit::Millimeter.ucum(),
        _ => return None,
    })
}
