//! Checks as a consultant would have written them down, for tests.

use drawwell_core::quantity::{Entered, Level, Quantity, Vacuum, VacuumUnit};
use drawwell_core::record::{Fields, Gauge, GaugeCheck, Reading, ReadingPlace, Sides, READINGS};
use drawwell_core::time::{Instant, Moment, Zone};
use serde_json::json;

/// A vacuum in mmHg.
pub fn mercury(value: f64) -> Vacuum {
    Vacuum::from_canonical(value)
}

/// A gauge from nothing to a span in mmHg, of a class, read to a step.
pub fn gauge(span: f64, class: f64, resolution: f64) -> Gauge {
    Gauge {
        span: Some(mercury(span)),
        reads_in: Some(VacuumUnit::MillimeterOfMercury),
        class: Some(class),
        error: None,
        resolution: (resolution > 0.0).then(|| mercury(resolution)),
        calibration_due: None,
    }
}

/// A place: the highest level where none is said.
pub fn place(side: Sides, level: Option<u32>) -> ReadingPlace {
    ReadingPlace { level: level.map(Level::new), side }
}

/// A check at an instant with readings in mmHg, each at its place.
pub fn check_at(at: Instant, readings: &[(ReadingPlace, f64)]) -> GaugeCheck {
    check_with(at, readings, &[])
}

/// As [`check_at`], with more fields.
pub fn check_with(at: Instant, readings: &[(ReadingPlace, f64)], more: &[(&str, serde_json::Value)]) -> GaugeCheck {
    let moment = Moment::new(at, Zone::UTC);
    let mut fields = Fields::new();
    fields.insert("at".to_owned(), moment.to_json());
    fields.insert("pump".to_owned(), json!("pump"));
    fields.insert("gauge".to_owned(), json!("gauge"));
    for (number, (place, value)) in readings.iter().enumerate() {
        let reading = Reading {
            at: moment.clone(),
            place: *place,
            vacuum: Entered::of(*value, VacuumUnit::MillimeterOfMercury),
            set: None,
        };
        fields.insert(format!("{READINGS}{number:03}"), reading.to_json(None));
    }
    fields.extend(more.iter().map(|(key, value)| ((*key).to_owned(), value.clone())));
    GaugeCheck::read("check", &fields)
}
