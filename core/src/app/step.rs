//! The fine steps beside a field.

use super::fields::NewValues;
use serde_json::{json, Value};

use super::enter::moved;
use super::session::FIRST_SPEED;
use super::state::{buzz, App, Present};
use crate::gather::Record;
use crate::quantity::{
    AirPressure, Altitude, AltitudeUnit, Entered, Length, Mass, MassUnit, Quantity, Speed, Temperature,
    TemperatureUnit, Unit, Vacuum, VacuumUnit, Volume, VolumeUnit,
};
use crate::record::{moment, typed_unit, Amount, FieldType, Fields, Kind, Mark, DATE_OF, MARKS, READINGS};
use crate::screen::shapes::Effect;
use crate::time::{Moment, Span, Zone};
use crate::trouble::Trouble;

/// A session's or a note's time moves by this.
const MOMENT_STEP: Span = Span::minutes(5);
/// A mark within a session moves by this.
const MARK_STEP: Span = Span::minutes(1);

impl App {
    pub(super) fn step(&mut self, id: &str, field: &str, steps: i32, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let (kind, fields) = record.record(id)?;
        let values = stepped(&record, kind, &fields, field, steps)?;
        self.set_fields(id, kind, fields, values, "enter", present)?;
        Ok(vec![buzz("step")])
    }
}

fn stepped(record: &Record<'_>, kind: Kind, fields: &Fields, field: &str, steps: i32) -> Result<NewValues, Trouble> {
    if field.starts_with(MARKS) {
        let before = fields.get(field).ok_or_else(|| Trouble::bad(field, "bad-mark"))?;
        let mark = Mark::from_json(field, before)?;
        let moved = Mark { at: later(&mark.at, MARK_STEP, steps, record.zone), ..mark };
        return Ok(vec![(field.to_owned(), moved.to_json(Some(before)))]);
    }
    if field.starts_with(READINGS) {
        return super::kit::step_reading(record, fields, field, steps, |unit| step_of(unit.ucum()));
    }
    if let Some(base) = field.strip_suffix(DATE_OF) {
        let before = moment(fields, base).ok_or_else(|| Trouble::bad(base, "bad-moment"))?;
        let zone = before.zone().unwrap_or(record.zone);
        let date = before.on_the_wall() + chrono::Duration::days(i64::from(steps));
        let at = Moment::new(crate::time::resolve(date, zone).instant, zone);
        return Ok(moved(fields, base, at, base == "started"));
    }
    let spec = kind.field(field).ok_or_else(|| Trouble::bad(field, "bad-field"))?;
    let before = fields.get(field);
    let unit = typed_unit(&record.settings, kind, fields, spec.field_type).unwrap_or_default();
    let value = match spec.field_type {
        FieldType::Moment => {
            let at = match (moment(fields, field), moment(fields, "started")) {
                (Some(at), _) => later(&at, MOMENT_STEP, steps, record.zone),
                (None, Some(started)) => later(&started, MOMENT_STEP, steps, record.zone),
                (None, None) => record.present(),
            };
            return Ok(moved(fields, field, at, false));
        }
        FieldType::Date => {
            let date =
                before.and_then(Value::as_str).and_then(|d| chrono::NaiveDate::parse_from_str(d, "%Y-%m-%d").ok());
            let date = match date {
                Some(date) => date + chrono::Duration::days(i64::from(steps)),
                None => record.today().date(),
            };
            json!(date.format("%Y-%m-%d").to_string())
        }
        FieldType::Whole { least, most } => {
            let next = match before.and_then(Value::as_i64) {
                Some(now) => now.saturating_add(i64::from(steps)),
                None => i64::from(first_whole(field, least)),
            };
            json!(next.clamp(i64::from(least), i64::from(most)))
        }
        FieldType::Span { least_minutes, most_minutes } => {
            let step = if most_minutes <= 60 { 5 } else { 15 };
            let next = match before.and_then(Value::as_i64) {
                Some(now) => (now / step + i64::from(steps)) * step,
                None => first_minutes(field, least_minutes),
            };
            json!(next.clamp(i64::from(least_minutes), i64::from(most_minutes)))
        }
        FieldType::ClockTime => {
            let minutes = crate::record::clock_time(fields, field).map(|t| i64::from(t.minutes()));
            let next = match minutes {
                Some(now) => (now.div_euclid(15) + i64::from(steps)) * 15,
                None => first_clock(field),
            };
            let next = next.rem_euclid(24 * 60);
            json!(format!("{:02}:{:02}", next / 60, next % 60))
        }
        FieldType::Number { least, most } => {
            let step = if most <= 50.0 { 0.1 } else { 1.0 };
            let from = before.and_then(Value::as_f64).or_else(|| crate::guidance::Rules::shipped_value(field));
            let next = ((from.unwrap_or(least) / step).round() + f64::from(steps)) * step;
            json!(((next * 1000.0).round() / 1000.0).clamp(least, most))
        }
        FieldType::Amount => {
            let known = before.and_then(Amount::from_json).and_then(|a| a.known());
            quantity::<Volume>(known, unit, 0.0, steps)
        }
        FieldType::Volume { .. } => quantity::<Volume>(entered(before), unit, 0.0, steps),
        FieldType::Vacuum { .. } => quantity::<Vacuum>(entered(before), unit, 0.0, steps),
        FieldType::Speed { .. } => quantity::<Speed>(entered(before), unit, FIRST_SPEED, steps),
        FieldType::Length { .. } => quantity::<Length>(entered(before), unit, FIRST_FLANGE, steps),
        FieldType::Mass { .. } => quantity::<Mass>(entered(before), unit, 0.0, steps),
        FieldType::AirPressure { .. } => quantity::<AirPressure>(entered(before), unit, FIRST_AIR, steps),
        FieldType::Altitude { .. } => quantity::<Altitude>(entered(before), unit, 0.0, steps),
        FieldType::Temperature { .. } => quantity::<Temperature>(entered(before), unit, FIRST_TEMPERATURE, steps),
        _ => return Err(Trouble::bad(field, "bad-field")),
    };
    Ok(vec![(field.to_owned(), value)])
}

/// Where stepping begins when nothing was said (common practice, no source;
/// only where the thumb starts from, never an advice).
const FIRST_FLANGE: f64 = 24.0;
const FIRST_TEMPERATURE: f64 = 37.0;
/// The standard atmosphere at sea level, in hPa, rounded.
const FIRST_AIR: f64 = 1013.0;

/// Where the thumb starts from, in minutes; no advice.
fn first_minutes(field: &str, least: u32) -> i64 {
    match field {
        "longest_interval" => 420,
        "shortest_interval" => 90,
        "sleep_stretch" => 240,
        "session_length" => 15,
        "lead_time" | "block_express" | "block_rest" => 10,
        _ => i64::from(least),
    }
}

/// As [`first_minutes`], in minutes since midnight.
fn first_clock(field: &str) -> i64 {
    match field {
        "sleep_from" => 22 * 60 + 30,
        "sleep_until" => 6 * 60 + 30,
        "block_at" => 20 * 60,
        _ => 9 * 60,
    }
}

fn first_whole(field: &str, least: u32) -> u32 {
    match field {
        "gestation_weeks" => 40,
        "sessions_a_day" => 8,
        "block_sessions" => 3,
        "fewer_every" => 3,
        _ => least,
    }
}

fn later(at: &Moment, step: Span, steps: i32, otherwise: Zone) -> Moment {
    let zone = at.zone().unwrap_or(otherwise);
    Moment::new(at.instant().plus(Span::milliseconds(step.in_milliseconds() * i64::from(steps))), zone)
}

fn entered<Q: Quantity>(value: Option<&Value>) -> Option<Q> {
    value.and_then(Entered::<Q>::from_json).map(|e| e.quantity())
}

/// One step of a unit.
fn step_of(ucum: &str) -> f64 {
    let is = |u: &str| u == ucum;
    if is(VolumeUnit::FluidOunce.ucum())
        || is(TemperatureUnit::Celsius.ucum())
        || is(TemperatureUnit::Fahrenheit.ucum())
    {
        0.1
    } else if is(VacuumUnit::MillimeterOfMercury.ucum()) {
        5.0
    } else if is(VacuumUnit::Kilopascal.ucum()) {
        0.5
    } else if is(AltitudeUnit::Meter.ucum()) {
        50.0
    } else if is(MassUnit::Gram.ucum()) {
        2.0
    } else if is(MassUnit::Kilogram.ucum()) {
        0.01
    } else if is(MassUnit::Pound.ucum()) {
        0.05
    } else {
        1.0
    }
}

/// The next value on the grid of steps; the first press shows where it begins.
fn quantity<Q: Quantity>(before: Option<Q>, ucum: &str, first: f64, steps: i32) -> Value {
    let Some(unit) = Q::Unit::from_ucum(ucum) else { return Value::Null };
    let step = step_of(ucum);
    let next = match before {
        Some(before) => ((before.in_unit(unit) / step).round() + f64::from(steps)) * step,
        None if first > 0.0 => Q::from_canonical(first).in_unit(unit),
        None => step * f64::from(steps),
    };
    let next = (next * 1000.0).round() / 1000.0;
    Entered::<Q>::of(next, unit).to_json()
}
