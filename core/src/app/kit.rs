//! Events of checks with a gauge.

use super::fields::{NewValues, NEXT};
use serde_json::{json, Value};

use super::state::{buzz, App, Present};
use crate::answer::pump::next_place::next_place;
use crate::gather::Record;
use crate::quantity::{Entered, Quantity, Rounding, Unit, Vacuum, VacuumUnit};
use crate::record::{check, text, Fields, Gauge, GaugeCheck, Kind, Reading};
use crate::screen::shapes::{Effect, Place};
use crate::time::Span;
use crate::trouble::{Detail, Trouble};

/// A check that was begun this long ago and holds nothing is gone on with.
const STILL_THE_SAME: Span = Span::hours(12);
/// What a check takes over from the one before.
const KEPT: [&str; 4] = ["gauge", "connected", "ran_on", "sides_at_once"];

impl App {
    /// Begins a check as the last one was done, or goes on with one that holds nothing yet.
    pub(super) fn begin_check(&mut self, pump: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        of_kind(&record, pump, Kind::Pump)?;
        let mut before = None;
        for row in record.journal.of_kind(Kind::Check)? {
            let (_, fields) = record.record(&row.subject)?;
            let own = text(&fields, "pump") == Some(pump);
            let empty = GaugeCheck::read(&row.subject, &fields).readings.is_empty();
            if own && empty && row.at.is_some_and(|at| present.now.since(at) < STILL_THE_SAME) {
                self.go(Place::Check { id: row.subject });
                return Ok(Vec::new());
            }
            before = Some(fields);
        }
        let before = before.unwrap_or_default();
        let mut values = vec![
            ("kind".to_owned(), json!(Kind::Check.name())),
            ("at".to_owned(), record.present().to_json()),
            ("pump".to_owned(), json!(pump)),
        ];
        let only_gauge = match record.journal.of_kind(Kind::Gauge)?.as_slice() {
            [gauge] => Some(gauge.subject.clone()),
            _ => None,
        };
        for field in KEPT {
            let kept = before.get(field).cloned();
            let kept = kept.or_else(|| only_gauge.as_ref().filter(|_| field == "gauge").map(|gauge| json!(gauge)));
            values.extend(kept.map(|value| (field.to_owned(), value)));
        }
        let id = self.journal_mut()?.act("check", "", present.now, |w| {
            let id = w.new_id();
            for (field, value) in &values {
                w.set(&id, field, value)?;
            }
            Ok(id)
        })?;
        self.go(Place::Check { id });
        Ok(vec![buzz("check")])
    }

    /// Chooses where the gauge is read next.
    pub(super) fn read_at(
        &mut self,
        check: &str,
        level: Option<u32>,
        side: &str,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        of_kind(&self.read(present)?, check, Kind::Check)?;
        let values = [("next_level", level.map_or(Value::Null, |level| json!(level))), ("next_side", json!(side))];
        for (field, value) in &values {
            check::field(Kind::Check, field, value)?;
        }
        self.journal_mut()?
            .quiet_act(present.now, |w| values.iter().try_for_each(|(field, value)| w.set(check, field, value)))?;
        Ok(Vec::new())
    }

    /// The person looked: the readings are right.
    pub(super) fn readings_are_right(&mut self, check: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let fields = of_kind(&self.read(present)?, check, Kind::Check)?;
        let values = vec![("readings_are_right".to_owned(), json!(true))];
        self.set_fields(check, Kind::Check, fields, values, "readings-right", present)?;
        Ok(vec![buzz("readings-right")])
    }

    /// The figures as typed were meant in another unit.
    pub(super) fn meant_in(&mut self, id: &str, unit: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let (kind, fields) = self.read(present)?.record(id)?;
        let values: NewValues = match kind {
            Kind::Check => {
                let unit = VacuumUnit::from_ucum(unit).ok_or_else(|| Trouble::bad("unit", "bad-unit"))?;
                let readings = GaugeCheck::read(id, &fields).readings;
                readings
                    .into_iter()
                    .map(|(key, reading)| {
                        let vacuum = Entered::parse(reading.vacuum.typed(), unit)
                            .map_err(|_| Trouble::bad(&key, "bad-quantity"))?;
                        let before = fields.get(&key);
                        Ok((key, Reading { vacuum, ..reading }.to_json(before)))
                    })
                    .collect::<Result<_, Trouble>>()?
            }
            Kind::Trace => vec![("unit".to_owned(), json!(unit)), ("unit_is_right".to_owned(), json!(true))],
            Kind::OfferedPump | Kind::Pump => stated_in(&fields, unit)?,
            _ => return Err(Trouble::bad("id", "bad-field")),
        };
        self.set_fields(id, kind, fields, values, "meant-in", present)?;
        Ok(vec![buzz("meant-in")])
    }
}

/// What a technical sheet states of vacuum, the same figures in another unit.
fn stated_in(fields: &Fields, unit: &str) -> Result<NewValues, Trouble> {
    let unit = VacuumUnit::from_ucum(unit).ok_or_else(|| Trouble::bad("unit", "bad-unit"))?;
    let ends = ["maximum_vacuum_low", "maximum_vacuum_high"];
    let stated = ends.into_iter().filter_map(|key| Some((key, Entered::<Vacuum>::from_json(fields.get(key)?)?)));
    let meant = |(key, entered): (&str, Entered<Vacuum>)| {
        let meant = Entered::<Vacuum>::parse(entered.typed(), unit).map_err(|_| Trouble::bad(key, "bad-quantity"))?;
        Ok((key.to_owned(), meant.to_json()))
    };
    stated.map(meant).collect()
}

/// The fields of a record that has to be of a kind.
pub(super) fn of_kind(record: &Record<'_>, id: &str, wanted: Kind) -> Result<Fields, Trouble> {
    match record.record(id)? {
        (kind, fields) if kind == wanted => Ok(fields),
        _ => Err(Trouble::bad("id", "bad-field")),
    }
}

/// The gauge of a check, where it is known.
fn gauge_of(record: &Record<'_>, fields: &Fields) -> Result<Option<Gauge>, Trouble> {
    let Some(id) = text(fields, "gauge") else { return Ok(None) };
    Ok(record.journal.record(id)?.map(|(_, fields)| Gauge::read(&fields)))
}

/// The unit that a check's readings are typed in: that on the gauge's face.
pub(super) fn reading_unit(record: &Record<'_>, fields: &Fields) -> Result<VacuumUnit, Trouble> {
    Ok(gauge_of(record, fields)?.and_then(|gauge| gauge.reads_in).unwrap_or(record.settings.vacuum))
}

/// What was typed into a check's reading: a new one, or another figure for one there is.
pub(super) fn read_reading(
    record: &Record<'_>,
    id: &str,
    fields: &Fields,
    field: &str,
    typed: &str,
) -> Result<NewValues, Trouble> {
    // Below ambient is what is meant, with the sign or without.
    let figures = typed.trim().trim_start_matches(['-', '\u{2212}']);
    let unit = reading_unit(record, fields)?;
    let value = crate::record::typed::read(
        field,
        crate::record::FieldType::Vacuum { least: 0.0, most: crate::record::reading::MOST_VACUUM },
        figures,
        Some(unit.ucum()),
    )?;
    let vacuum = Entered::<Vacuum>::from_json(&value).ok_or_else(|| Trouble::bad(field, "bad-quantity"))?;
    within_span(record, fields, field, &vacuum)?;
    if field != NEXT {
        let before = fields.get(field).ok_or_else(|| Trouble::bad(field, "bad-reading"))?;
        let reading = Reading { vacuum, ..Reading::from_json(field, before)? };
        return Ok(vec![(field.to_owned(), reading.to_json(Some(before)))]);
    }
    let check = GaugeCheck::read(id, fields);
    let (place, _) = next_place(&check, fields);
    let reading = Reading { at: record.present(), place, vacuum, set: check.set };
    // What was said of the readings before was not said of this one.
    Ok(vec![(field.to_owned(), reading.to_json(None)), ("readings_are_right".to_owned(), Value::Null)])
}

/// One step of a reading.
pub(super) fn step_reading(
    record: &Record<'_>,
    fields: &Fields,
    field: &str,
    steps: i32,
    step: impl Fn(VacuumUnit) -> f64,
) -> Result<NewValues, Trouble> {
    let before = fields.get(field).ok_or_else(|| Trouble::bad(field, "bad-reading"))?;
    let reading = Reading::from_json(field, before)?;
    let unit = reading.vacuum.unit();
    let by = match gauge_of(record, fields)?.and_then(|gauge| gauge.resolution) {
        Some(resolution) => resolution.in_unit(unit),
        None => step(unit),
    };
    let next = reading.vacuum.quantity().in_unit(unit) + by * f64::from(steps);
    let vacuum = Entered::of((next.max(0.0) * 1000.0).round() / 1000.0, unit);
    within_span(record, fields, field, &vacuum)?;
    Ok(vec![(field.to_owned(), Reading { vacuum, ..reading }.to_json(Some(before)))])
}

fn within_span(record: &Record<'_>, fields: &Fields, field: &str, vacuum: &Entered<Vacuum>) -> Result<(), Trouble> {
    let span = gauge_of(record, fields)?.and_then(|gauge| gauge.span);
    match span.filter(|span| vacuum.quantity().canonical() > span.canonical() + 1e-6) {
        Some(span) => Err(Trouble::bad(field, "bad-beyond-span")
            .with("most", Detail::figure(span, vacuum.unit(), Rounding::Down))
            .with("unit", Detail::unit(vacuum.unit()))),
        None => Ok(()),
    }
}
