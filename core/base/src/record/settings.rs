//! How the person wants things, read from the settings record.

use super::{text, whole_number, Fields, HostDefaults, Sides};
use crate::quantity::{Entered, MassUnit, TemperatureUnit, Unit, VacuumUnit, Volume, VolumeUnit};
use crate::time::{DayStart, Span, Zone};

/// The settings, with what holds where nothing was chosen.
#[derive(Debug, Clone, PartialEq)]
pub struct Settings {
    /// `right` or `left`.
    pub hand: String,
    /// `as_device`, `light` or `night`.
    pub palette: String,
    /// Hours as 1 to 12 with am and pm.
    pub twelve_hours: bool,
    /// Volumes are read and typed in this.
    pub volume: VolumeUnit,
    /// Vacuums are read and typed in this.
    pub vacuum: VacuumUnit,
    /// Temperatures are read and typed in this.
    pub temperature: TemperatureUnit,
    /// Masses are read and typed in this.
    pub mass: MassUnit,
    /// The hour at which days begin.
    pub day_start: DayStart,
    /// A zone that was chosen; the device's own where none was.
    pub zone: Option<Zone>,
    /// How the next session is set up.
    pub next_method: Option<String>,
    /// Its sides.
    pub next_sides: Option<Sides>,
    /// Its pump.
    pub next_pump: Option<String>,
    /// How long a session is to be, where somebody wishes to see that.
    pub session_length: Option<Span>,
    /// The volume a day that is aimed for.
    pub aim: Option<Volume>,
    /// The first screen has been passed.
    pub welcomed: bool,
}

impl Settings {
    /// The same, said in the units and hours of another's.
    #[must_use]
    pub fn shown_as(self, other: &Self) -> Self {
        Self {
            twelve_hours: other.twelve_hours,
            volume: other.volume,
            vacuum: other.vacuum,
            temperature: other.temperature,
            mass: other.mass,
            ..self
        }
    }

    /// What holds for a choice that nobody made, by the field's name and as its option is written.
    pub fn default_of(&self, field: &str) -> Option<&'static str> {
        match field {
            "hour_clock" => Some(if self.twelve_hours { "12" } else { "24" }),
            "volume_unit" => Some(self.volume.ucum()),
            "temperature_unit" => Some(self.temperature.ucum()),
            "mass_unit" => Some(self.mass.ucum()),
            _ => None,
        }
    }

    /// Reads the settings record.
    pub fn read(fields: &Fields) -> Self {
        Self::read_on(fields, &HostDefaults::METRIC)
    }

    /// The same, with what is usual where the host is.
    pub fn read_on(fields: &Fields, host: &HostDefaults) -> Self {
        fn unit<U: Unit>(fields: &Fields, key: &str, otherwise: U) -> U {
            text(fields, key).and_then(U::from_ucum).unwrap_or(otherwise)
        }
        let word = |key: &str, otherwise: &str| text(fields, key).unwrap_or(otherwise).to_owned();
        Self {
            hand: word("hand", "right"),
            palette: word("palette", "as_device"),
            twelve_hours: text(fields, "hour_clock").map_or(host.twelve_hours, |hours| hours == "12"),
            volume: unit(fields, "volume_unit", host.volume),
            vacuum: unit(fields, "vacuum_unit", VacuumUnit::MillimeterOfMercury),
            temperature: unit(fields, "temperature_unit", host.temperature),
            mass: unit(fields, "mass_unit", host.mass),
            day_start: whole_number(fields, "day_start").and_then(DayStart::at_hour).unwrap_or(DayStart::MIDNIGHT),
            zone: text(fields, "zone").and_then(|name| Zone::named(name).ok()),
            next_method: text(fields, "next_method").map(str::to_owned),
            next_sides: text(fields, "next_sides").map(|name| Sides::named(Some(name))),
            next_pump: text(fields, "next_pump").map(str::to_owned),
            session_length: whole_number(fields, "session_length").map(|minutes| Span::minutes(i64::from(minutes))),
            aim: fields.get("aim").and_then(Entered::<Volume>::from_json).map(|e| e.quantity()),
            welcomed: super::flag(fields, "welcomed"),
        }
    }
}
