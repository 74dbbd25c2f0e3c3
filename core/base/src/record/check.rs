//! What must hold within one record, beyond each field by itself.

use serde_json::Value;

use super::rhythm::{lasts_by_the_clock, LONGEST_SLEEP_WINDOW};
use super::{
    ambient, date, kinds, moment, text, whole_number, Fields, GaugeCheck, Kind, Mark, Reading, Rhythm, MARKS, READINGS,
};
use crate::quantity::{Entered, Quantity, Rounding, Speed, Vacuum};
use crate::time::{Instant, Span};
use crate::trouble::{Detail, Trouble};

/// Longest session that can be written down: beyond it a date is likelier wrong.
pub const LONGEST_SESSION: Span = Span::hours(24);
/// How far a fact may lie ahead of the present: clocks differ a little.
pub const LEEWAY: Span = Span::minutes(10);

/// Checks one field's stored value. Fields that are not known here are kept as
/// they are; so is null, which says nothing.
///
/// # Errors
/// Where the field takes no such value.
pub fn field(kind: Kind, key: &str, value: &Value) -> Result<(), Trouble> {
    if value.is_null() {
        return Ok(());
    }
    if kind == Kind::Session && key.starts_with(MARKS) {
        return Mark::from_json(key, value).map(drop);
    }
    if kind == Kind::Check && key.starts_with(READINGS) {
        return Reading::from_json(key, value).map(drop);
    }
    match kind.field(key) {
        Some(spec) => spec.field_type.check(key, value),
        None => Ok(()),
    }
}

/// Checks a record as a whole. `now` is None where facts from another time may
/// come in; `levels` is the number of levels of the pump that was used.
///
/// # Errors
/// Where fields contradict each other, or say what can't be yet.
pub fn whole_record(kind: Kind, fields: &Fields, now: Option<Instant>, levels: Option<u32>) -> Result<(), Trouble> {
    // A visit may be to come.
    if let (Some(key), Some(now), true) = (kind.time_field(), now, kind != Kind::Visit) {
        not_ahead(fields, key, now)?;
    }
    match kind {
        Kind::Session => session(fields, now, levels),
        Kind::Pump => of_its_maker(fields),
        Kind::OfferedPump => of_its_maker(fields).and_then(|()| currency(fields)),
        Kind::Gauge => calibration(fields),
        Kind::Check => gauge_check(fields, levels),
        Kind::Rhythm => rhythm(fields),
        Kind::PlanPart => rule_set_anew(fields),
        _ => Ok(()),
    }
}

fn not_ahead(fields: &Fields, key: &str, now: Instant) -> Result<(), Trouble> {
    match moment(fields, key) {
        Some(at) if at.instant() > now.plus(LEEWAY) => Err(Trouble::bad(key, "bad-future")),
        _ => Ok(()),
    }
}

fn session(fields: &Fields, now: Option<Instant>, levels: Option<u32>) -> Result<(), Trouble> {
    if let (Some(started), Some(ended)) = (moment(fields, "started"), moment(fields, "ended")) {
        let lasted = ended.instant().since(started.instant());
        if lasted < Span::milliseconds(0) {
            return Err(Trouble::bad("ended", "bad-ends-before"));
        }
        if lasted > LONGEST_SESSION {
            return Err(too_long());
        }
    }
    if let Some(now) = now {
        not_ahead(fields, "ended", now)?;
    }
    if let Some(levels) = levels {
        let beyond = |key: &str, level: Option<u32>| match level {
            Some(level) if level > levels => Err(Trouble::bad(key, "bad-level").with("most", levels)),
            _ => Ok(()),
        };
        beyond("level_letdown", whole_number(fields, "level_letdown"))?;
        beyond("level_expression", whole_number(fields, "level_expression"))?;
        for (key, value) in fields.range(MARKS.to_owned()..).take_while(|(k, _)| k.starts_with(MARKS)) {
            let level = value.get("level").and_then(Value::as_u64).and_then(|n| u32::try_from(n).ok());
            beyond(key, level)?;
        }
    }
    Ok(())
}

/// A session is no longer than [`LONGEST_SESSION`].
pub fn too_long() -> Trouble {
    Trouble::bad("ended", "bad-too-long").with("hours", whole_hours(LONGEST_SESSION))
}

fn whole_hours(span: Span) -> u64 {
    u64::try_from(span.in_minutes() / 60).unwrap_or_default()
}

/// A rule that a part of a plan sets is one of a family's record, within its bounds.
fn rule_set_anew(part: &Fields) -> Result<(), Trouble> {
    let Some(key) = text(part, "rule") else { return Ok(()) };
    let rule = kinds::rule_of_a_family(key).ok_or_else(|| Trouble::bad("rule", "bad-rule"))?;
    match part.get("rule_value") {
        Some(value) => rule.field_type.check("rule_value", value),
        None => Ok(()),
    }
}

/// A sleep window leaves a day to express in, and the shortest interval fits the longest.
fn rhythm(fields: &Fields) -> Result<(), Trouble> {
    let rhythm = Rhythm::read(fields);
    if let Some((from, until)) = rhythm.sleep {
        let lasts = lasts_by_the_clock(from, until);
        if lasts > LONGEST_SLEEP_WINDOW {
            return Err(Trouble::bad("sleep_until", "bad-sleep-window")
                .with("hours", whole_hours(lasts))
                .with("most", whole_hours(LONGEST_SLEEP_WINDOW)));
        }
    }
    match (rhythm.shortest, rhythm.longest) {
        (Some(shortest), Some(longest)) if shortest > longest => Err(Trouble::bad("longest_interval", "bad-order")),
        _ => Ok(()),
    }
}

/// What a maker states of a pump has ends that rise.
fn of_its_maker(fields: &Fields) -> Result<(), Trouble> {
    rising::<Vacuum>(fields, "maximum_vacuum_low", "maximum_vacuum_high")?;
    rising::<Speed>(fields, "cycles_low", "cycles_high")
}

/// A currency is three letters (ISO 4217).
fn currency(fields: &Fields) -> Result<(), Trouble> {
    match text(fields, "currency") {
        Some(code) if code.len() != 3 || !code.bytes().all(|b| b.is_ascii_alphabetic()) => {
            Err(Trouble::bad("currency", "bad-currency"))
        }
        _ => Ok(()),
    }
}

/// No gauge is due before it was calibrated.
fn calibration(fields: &Fields) -> Result<(), Trouble> {
    match (date(fields, "calibrated_on"), date(fields, "calibration_due")) {
        (Some(on), Some(due)) if due < on => Err(Trouble::bad("calibration_due", "bad-due-before")),
        _ => Ok(()),
    }
}

/// No reading beyond what the air presses with there, nor above the pump's levels.
fn gauge_check(fields: &Fields, levels: Option<u32>) -> Result<(), Trouble> {
    let check = GaugeCheck::read("", fields);
    let ambient = ambient::known(check.air, check.altitude);
    for (key, reading) in &check.readings {
        if let Some(ambient) = ambient.filter(|ambient| reading.vacuum.quantity() > *ambient) {
            let unit = reading.vacuum.unit();
            return Err(Trouble::bad(key, "bad-beyond-air")
                .with("most", Detail::figure(ambient, unit, Rounding::Down))
                .with("unit", Detail::unit(unit)));
        }
        match (reading.place.level, levels) {
            (Some(level), Some(most)) if level.get() > most => {
                return Err(Trouble::bad(key, "bad-level").with("most", most));
            }
            _ => {}
        }
    }
    Ok(())
}

/// A range whose ends rise, each in whatever unit it was written in.
fn rising<Q: Quantity>(fields: &Fields, low: &str, high: &str) -> Result<(), Trouble> {
    let value = |key: &str| fields.get(key).and_then(Entered::<Q>::from_json).map(|e| e.quantity().canonical());
    match (value(low), value(high)) {
        (Some(low), Some(top)) if low > top => Err(Trouble::bad(high, "bad-order")),
        _ => Ok(()),
    }
}
