//! The unit that a bare number is typed in, and how a moment's date is named.

use super::{FieldType, Fields, Gauge, Kind, Settings};
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
pub fn typed_unit(settings: &Settings, kind: Kind, fields: &Fields, field_type: FieldType) -> Option<&'static str> {
    Some(match field_type {
        FieldType::Amount | FieldType::Volume { .. } => settings.volume.ucum(),
        FieldType::Vacuum { .. } => vacuum_unit(settings, kind, fields).ucum(),
        FieldType::AirPressure { .. } => AirPressureUnit::Hectopascal.ucum(),
        FieldType::Altitude { .. } => AltitudeUnit::Meter.ucum(),
        FieldType::Mass { .. } => settings.mass.ucum(),
        FieldType::Temperature { .. } => settings.temperature.ucum(),
        FieldType::Speed { .. } => SpeedUnit::PerMinute.ucum(),
        FieldType::Length { .. } => LengthUnit::Millimeter.ucum(),
        _ => return None,
    })
}
