//! Events on fields: write down afterwards, correct, take out, bring back.

use super::fields::{NewValues, NEXT};
use chrono::{NaiveDate, NaiveDateTime, Timelike};
use serde_json::{json, Value};

use super::state::{buzz, App, Present};
use crate::gather::Record;
use crate::record::choices::SIDES;
use crate::record::{check, moment, typed, typed_unit, FieldType, Fields, Kind, Mark, DATE_OF, MARKS, READINGS};
use crate::screen::shapes::{Effect, Place, Tone};
use crate::time::{parse_clock_time, parse_date, resolve, Instant, Moment, Span, Surprise, Zone};
use crate::trouble::{Detail, Trouble};

impl App {
    pub(super) fn add(&mut self, kind: &str, days_back: u32, present: Present) -> Result<Vec<Effect>, Trouble> {
        let kind = Kind::named(kind).filter(|k| k.only().is_none()).ok_or_else(|| {
            Trouble::bad("kind", "bad-choice").with(
                "words",
                "session, feed, sign, weight, life_event, note, child, pump, part, flange, gauge, fit, fixed_point",
            )
        })?;
        let view = self.view(present)?;
        let day = view.today().earlier_by(days_back);
        let at = match (days_back, kind) {
            (0, _) => view.present(),
            (_, Kind::Session) => Moment::new(crate::gather::middle_of_longest_gap(&view, day)?, view.zone),
            _ => Moment::new(day.begins(view.zone, view.settings.day_start).plus(Span::hours(12)), view.zone),
        };
        self.add_at(kind, &at, present)
    }

    /// Adds a record of a kind at a moment, and opens it.
    pub(super) fn add_at(&mut self, kind: Kind, at: &Moment, present: Present) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let mut values: NewValues = vec![("kind".to_owned(), json!(kind.name()))];
        if let Some(field) = kind.time_field() {
            values.push((field.to_owned(), at.to_json()));
        }
        if kind == Kind::Session {
            let set_up = crate::gather::next_session::SetUp::next(&record)?;
            values.push(("method".to_owned(), json!(set_up.method)));
            values.push(("sides".to_owned(), json!(set_up.sides.name())));
            values.extend(set_up.pump.map(|pump| ("pump".to_owned(), json!(pump))));
            values.push(("afterwards".to_owned(), json!(true)));
        }
        let id = self.journal_mut()?.act("add", "", present.now, |w| {
            let id = w.new_id();
            for (field, value) in &values {
                w.set(&id, field, value)?;
            }
            Ok(id)
        })?;
        self.go(Place::Entry { id });
        Ok(vec![buzz("add")])
    }

    pub(super) fn enter(
        &mut self,
        id: &str,
        field: &str,
        typed: &str,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let record = self.read(present)?;
        let (kind, fields) = record.record(id)?;
        if typed.trim().is_empty() {
            return self.clear(id, field, present);
        }
        let (values, surprise) = match kind == Kind::Check && field.starts_with(READINGS) {
            true => (super::kit::read_reading(&record, id, &fields, field, typed)?, Surprise::None),
            false => read_entry(&record, kind, &fields, field, typed)?,
        };
        let name = if field == NEXT { "reading" } else { "enter" };
        self.set_fields(id, kind, fields, values, name, present)?;
        match surprise {
            Surprise::None => {}
            Surprise::Skipped => self.tell("time-skipped", Tone::Quiet),
            Surprise::Twice => self.tell("time-twice", Tone::Quiet),
        }
        Ok(vec![buzz("enter")])
    }

    pub(super) fn clear(&mut self, id: &str, field: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let (kind, fields) = self.read(present)?.record(id)?;
        let member = kind.members().is_some_and(|(prefix, _)| field.starts_with(prefix));
        let known = member || kind.field(field).is_some();
        if !known || Some(field) == kind.time_field() {
            return Err(Trouble::bad(field, "bad-clear"));
        }
        let mut values = vec![(field.to_owned(), Value::Null)];
        if kind == Kind::Session && field == "ended" {
            // A session without an end that was written down is not running again.
            values.push(("afterwards".to_owned(), json!(true)));
        }
        self.set_fields(id, kind, fields, values, "clear", present)?;
        Ok(vec![buzz("clear")])
    }

    pub(super) fn remove_record(&mut self, id: &str, out: bool, present: Present) -> Result<Vec<Effect>, Trouble> {
        let (kind, _) = self.read(present)?.record(id)?;
        if kind.only().is_some() {
            return Err(Trouble::bad("", "bad-field"));
        }
        let name = if out { "take-out" } else { "bring-back" };
        let value = if out { json!(true) } else { Value::Null };
        self.journal_mut()?.act(name, id, present.now, |w| w.set(id, "taken_out", &value))?;
        // Whatever was opened of it closes with it.
        let of_it = |place: &Place| match place {
            Place::Entry { id: own }
            | Place::Pump { id: own }
            | Place::Check { id: own }
            | Place::Trace { id: own }
            | Place::Container { id: own }
            | Place::Trial { id: own } => own == id,
            _ => false,
        };
        while out && self.places.len() > 1 && self.places.last().is_some_and(of_it) {
            self.places.pop();
        }
        let mut effects = self.session_effects(present)?;
        effects.push(buzz(name));
        Ok(effects)
    }
}

/// What was typed as new values of fields, and what was odd about a time.
fn read_entry(
    record: &Record<'_>,
    kind: Kind,
    fields: &Fields,
    field: &str,
    typed: &str,
) -> Result<(NewValues, Surprise), Trouble> {
    if let Some(rest) = field.strip_prefix(MARKS) {
        return read_mark(fields, field, rest, typed);
    }
    if let Some(base) = field.strip_suffix(DATE_OF) {
        let date = parse_date(typed).ok_or_else(|| Trouble::bad(base, "bad-date"))?;
        return move_to_date(record, kind, fields, base, date);
    }
    let spec = kind.field(field).ok_or_else(|| Trouble::bad(field, "bad-field"))?;
    if spec.field_type == FieldType::Moment {
        return read_moment(record, kind, fields, field, typed);
    }
    let value =
        typed::read(field, spec.field_type, typed, typed_unit(&record.settings, kind, fields, spec.field_type))?;
    Ok((vec![(field.to_owned(), value)], Surprise::None))
}

/// A mark's time or side.
fn read_mark(fields: &Fields, field: &str, rest: &str, typed: &str) -> Result<(NewValues, Surprise), Trouble> {
    let bad = || Trouble::bad(field, "bad-mark");
    if let Some((name, "side")) = rest.split_once('/') {
        let key = format!("{MARKS}{name}");
        let before = fields.get(&key).ok_or_else(bad)?;
        if !SIDES.contains(&typed) {
            return Err(Trouble::bad(&key, "bad-choice").with("words", Detail::choices(SIDES.iter().copied())));
        }
        let mark = Mark { side: Some(typed.to_owned()), ..Mark::from_json(&key, before)? };
        return Ok((vec![(key, mark.to_json(Some(before)))], Surprise::None));
    }
    let before = fields.get(field).ok_or_else(bad)?;
    let mark = Mark::from_json(field, before)?;
    let time = parse_clock_time(typed).ok_or_else(|| Trouble::bad(field, "bad-time"))?;
    let zone = mark.at.zone().unwrap_or(Zone::UTC);
    let resolved = resolve(mark.at.on_the_wall().date().and_time(time.0), zone);
    let moved = Mark { at: Moment::new(resolved.instant, zone), ..mark };
    Ok((vec![(field.to_owned(), moved.to_json(Some(before)))], resolved.surprise))
}

fn read_moment(
    record: &Record<'_>,
    kind: Kind,
    fields: &Fields,
    field: &str,
    typed: &str,
) -> Result<(NewValues, Surprise), Trouble> {
    let time = parse_clock_time(typed).ok_or_else(|| Trouble::bad(field, "bad-time"))?;
    let before = moment(fields, field);
    let started = moment(fields, "started").filter(|_| field == "ended");
    let near = started.as_ref().or(before.as_ref());
    let zone = before.as_ref().or(near).and_then(Moment::zone).unwrap_or(record.zone);
    let date = near
        .map_or_else(|| record.present().on_the_wall().date(), |m| Moment::new(m.instant(), zone).on_the_wall().date());
    let mut resolved = resolve(date.and_time(time.0), zone);
    if started.is_some_and(|s| resolved.instant < minute_of(s.instant())) {
        // It ended after midnight.
        resolved = resolve(next_day(date).and_time(time.0), zone);
    } else if field != "ended"
        && !matches!(kind, Kind::Visit | Kind::PlanPart)
        && resolved.instant > record.now.plus(check::LEEWAY)
    {
        // Just after midnight, `23:50` means the evening before.
        resolved = resolve(day_before(date).and_time(time.0), zone);
    }
    let at = Moment::new(resolved.instant, zone);
    Ok((moved(fields, field, at, false), resolved.surprise))
}

fn move_to_date(
    record: &Record<'_>,
    kind: Kind,
    fields: &Fields,
    field: &str,
    date: NaiveDate,
) -> Result<(NewValues, Surprise), Trouble> {
    let spec = kind.field(field).filter(|s| s.field_type == FieldType::Moment);
    spec.ok_or_else(|| Trouble::bad(field, "bad-field"))?;
    let before = moment(fields, field).ok_or_else(|| Trouble::bad(field, "bad-moment"))?;
    let zone = before.zone().unwrap_or(record.zone);
    let resolved = resolve(NaiveDateTime::new(date, before.on_the_wall().time()), zone);
    let at = Moment::new(resolved.instant, zone);
    Ok((moved(fields, field, at, field == "started"), resolved.surprise))
}

/// The new values when a moment moves. A session that moves as a whole, or
/// whose start would pass its end, takes its end and its marks with it.
pub(super) fn moved(fields: &Fields, field: &str, at: Moment, as_a_whole: bool) -> NewValues {
    let mut values = vec![(field.to_owned(), at.to_json())];
    if field != "started" {
        return values;
    }
    let (Some(before), ended) = (moment(fields, "started"), moment(fields, "ended")) else { return values };
    let passes = ended.as_ref().is_some_and(|e| at.instant() > e.instant());
    if !as_a_whole && !passes {
        return values;
    }
    let by = at.instant().since(before.instant());
    let shift = |m: &Moment| {
        let zone = m.zone().unwrap_or(Zone::UTC);
        Moment::new(m.instant().plus(by), zone)
    };
    values.extend(ended.as_ref().map(|e| ("ended".to_owned(), shift(e).to_json())));
    for (key, value) in fields.range(MARKS.to_owned()..).take_while(|(k, _)| k.starts_with(MARKS)) {
        if let Ok(mark) = Mark::from_json(key, value) {
            let mark = Mark { at: shift(&mark.at), ..mark };
            values.push((key.clone(), mark.to_json(Some(value))));
        }
    }
    values
}

/// The instant at which a minute began: typed times have no seconds.
fn minute_of(at: Instant) -> Instant {
    let seconds = chrono::DateTime::from_timestamp_millis(at.unix_milliseconds()).map_or(0, |d| d.second());
    let rest = Span::milliseconds(i64::from(seconds) * 1000 + at.unix_milliseconds().rem_euclid(1000));
    at.minus(rest)
}

fn next_day(date: NaiveDate) -> NaiveDate {
    date.succ_opt().unwrap_or(date)
}

fn day_before(date: NaiveDate) -> NaiveDate {
    date.pred_opt().unwrap_or(date)
}
