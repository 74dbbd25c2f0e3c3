//! A gauge, and a check of a pump with it, read from their records.

use super::reading::Reading;
use super::READINGS;
use super::{date, flag, moment, text, Fields};
use crate::quantity::{AirPressure, Altitude, Entered, Unit, Vacuum, VacuumUnit};
use crate::time::Moment;
use chrono::NaiveDate;

/// A gauge as it is described.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gauge {
    /// From nothing to here.
    pub span: Option<Vacuum>,
    /// The unit on its face.
    pub reads_in: Option<VacuumUnit>,
    /// Its accuracy class after EN 837-1: per cent of the span.
    pub class: Option<f64>,
    /// The greatest error as its maker states it, where there is no class.
    pub error: Option<Vacuum>,
    /// The smallest step that can be told apart.
    pub resolution: Option<Vacuum>,
    /// The last day on which its calibration is good.
    pub calibration_due: Option<NaiveDate>,
}

impl Gauge {
    /// Reads a gauge's fields.
    pub fn read(fields: &Fields) -> Self {
        let vacuum = |key: &str| fields.get(key).and_then(Entered::<Vacuum>::from_json).map(|e| e.quantity());
        Self {
            span: vacuum("span"),
            reads_in: text(fields, "reads_in").and_then(VacuumUnit::from_ucum),
            class: text(fields, "accuracy_class").and_then(|class| class.parse().ok()),
            error: vacuum("greatest_error"),
            resolution: vacuum("resolution"),
            calibration_due: date(fields, "calibration_due"),
        }
    }
}

/// How the gauge was connected.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Connected {
    /// On the gauge alone, closed: it reads higher than at the breast.
    DeadHeaded,
    /// With a flange in use.
    WithFlange,
}

/// What the pump ran on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Power {
    /// From the wall.
    Mains,
    /// From its battery.
    Battery,
}

/// Whether one side was drawn at a time, or both at once.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum AtOnce {
    /// One side.
    One,
    /// Both.
    Both,
}

/// What has to be alike before two checks can be held against each other; what
/// was not said is its own kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct SetUp {
    /// How the gauge was connected.
    pub connected: Option<Connected>,
    /// What the pump ran on.
    pub power: Option<Power>,
    /// One side or both.
    pub at_once: Option<AtOnce>,
}

/// A check of a pump with a gauge.
#[derive(Debug, Clone, PartialEq)]
pub struct GaugeCheck {
    /// Its id.
    pub id: String,
    /// When.
    pub at: Option<Moment>,
    /// The pump.
    pub pump: Option<String>,
    /// The gauge.
    pub gauge: Option<String>,
    /// How it was done.
    pub set_up: SetUp,
    /// How high above the sea.
    pub altitude: Option<Altitude>,
    /// The pressure of the air.
    pub air: Option<AirPressure>,
    /// What the pump was set to, where it says a vacuum.
    pub set: Option<Entered<Vacuum>>,
    /// The person said that the readings are right as they stand.
    pub are_right: bool,
    /// Its readings, in the order they were written down.
    pub readings: Vec<(String, Reading)>,
}

impl GaugeCheck {
    /// Reads a check. Readings that cannot be read are passed over.
    pub fn read(id: &str, fields: &Fields) -> Self {
        let mut readings: Vec<(String, Reading)> = fields
            .range(READINGS.to_owned()..)
            .take_while(|(key, _)| key.starts_with(READINGS))
            .filter_map(|(key, value)| Some((key.clone(), Reading::from_json(key, value).ok()?)))
            .collect();
        readings.sort_by(|a, b| (a.1.at.instant(), &a.0).cmp(&(b.1.at.instant(), &b.0)));
        let quantity = fields.get("set_vacuum").and_then(Entered::<Vacuum>::from_json);
        Self {
            id: id.to_owned(),
            at: moment(fields, "at"),
            pump: text(fields, "pump").map(str::to_owned),
            gauge: text(fields, "gauge").map(str::to_owned),
            set_up: SetUp {
                connected: match text(fields, "connected") {
                    Some("dead_headed") => Some(Connected::DeadHeaded),
                    Some("with_flange") => Some(Connected::WithFlange),
                    _ => None,
                },
                power: match text(fields, "ran_on") {
                    Some("mains") => Some(Power::Mains),
                    Some("battery") => Some(Power::Battery),
                    _ => None,
                },
                at_once: match text(fields, "sides_at_once") {
                    Some("one") => Some(AtOnce::One),
                    Some("both") => Some(AtOnce::Both),
                    _ => None,
                },
            },
            altitude: fields.get("altitude").and_then(Entered::<Altitude>::from_json).map(|e| e.quantity()),
            air: fields.get("air_pressure").and_then(Entered::<AirPressure>::from_json).map(|e| e.quantity()),
            set: quantity,
            are_right: flag(fields, "readings_are_right"),
            readings,
        }
    }
}
