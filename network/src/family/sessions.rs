//! Sessions as rows.

use std::collections::BTreeMap;

use drawwell_core::answer::pump::limits;
use drawwell_core::gather::levels::level_in_vacuum;
use drawwell_core::gather::Record;
use drawwell_core::quantity::{Entered, Level, Quantity, Vacuum, Volume};
use drawwell_core::record::mark::Phase;
use drawwell_core::record::{text, whole_number, Fields, Kind, Milk, Removal, Session, Sides};
use drawwell_core::time::{Instant, LocalDay, Moment, Span};
use drawwell_core::trouble::Trouble;

use super::figures::tenths;
use super::life::Life;
use super::names::grade_name;
use crate::table::Sessions;

/// What is longer is no session, and no gap that says anything.
const LONGEST: Span = Span::hours(24);
const LONGEST_GAP: Span = Span::hours(72);

/// A session that is over, with what days need of it.
#[derive(Debug, Clone)]
pub(super) struct Over {
    pub(super) session: Session,
    pub(super) fields: Fields,
    pub(super) began: Moment,
    pub(super) ended: Moment,
    /// What came, in tenths of mL, or why that is not known.
    pub(super) milk: Result<i64, &'static str>,
}

/// Every session that was over by the present, in order of time.
pub(super) fn over(record: &Record<'_>) -> Result<Vec<Over>, Trouble> {
    let mut all: Vec<Over> = record
        .journal
        .fields_of_kind(Kind::Session)?
        .into_iter()
        .filter_map(|(id, mut fields)| {
            fields.insert("kind".to_owned(), Kind::Session.name().into());
            let session = Session::read(&id, &fields);
            let removal = Removal::read(&id, &fields)?;
            let began = session.started.clone()?;
            let ended = session.ended.clone().unwrap_or_else(|| began.clone());
            let milk = milk_of(&session, &removal);
            (removal.at <= record.now).then_some(Over { session, fields, began, ended, milk })
        })
        .collect();
    all.sort_by(|one, other| {
        let order = |over: &Over| (over.ended.instant(), over.began.instant());
        order(one).cmp(&order(other)).then_with(|| one.session.id.cmp(&other.session.id))
    });
    Ok(all)
}

fn milk_of(session: &Session, removal: &Removal) -> Result<i64, &'static str> {
    let sum = |left: Option<Volume>, right: Option<Volume>| match (left, right, removal.sides) {
        (Some(left), Some(right), Sides::Both) => Ok(Volume::from_canonical(left.canonical() + right.canonical())),
        (Some(left), _, Sides::Left) => Ok(left),
        (_, Some(right), Sides::Right) => Ok(right),
        _ => Err("one_side_unknown"),
    };
    match removal.milk {
        Milk::Together(milk) => Ok(tenths(milk)),
        Milk::Sides { left, right } => sum(left, right).map(tenths),
        Milk::Unknown if !session.collects() => Err("at_breast"),
        Milk::Unknown => Err("unknown"),
    }
}

/// What a pump's levels pulled, by when its checks were made: many sessions share one curve.
struct Curves {
    checked: BTreeMap<String, Vec<Instant>>,
    known: BTreeMap<(String, &'static str, usize, Level), Option<i64>>,
}

impl Curves {
    fn of(record: &Record<'_>) -> Result<Self, Trouble> {
        let mut checked: BTreeMap<String, Vec<Instant>> = BTreeMap::new();
        for (_, fields) in record.journal.fields_of_kind(Kind::Check)? {
            let at = drawwell_core::record::moment(&fields, "at");
            if let (Some(pump), Some(at)) = (text(&fields, "pump"), at) {
                checked.entry(pump.to_owned()).or_default().push(at.instant());
            }
        }
        checked.values_mut().for_each(|all| all.sort());
        Ok(Self { checked, known: BTreeMap::new() })
    }

    /// What a level pulled in a session, in tenths of mmHg.
    fn pull(&mut self, record: &Record<'_>, over: &Over, level: Level) -> Result<Option<i64>, Trouble> {
        let Some(pump) = over.session.pump.as_deref() else { return Ok(None) };
        let Some(checked) = self.checked.get(pump) else { return Ok(None) };
        let at = over.began.instant();
        let before = checked.partition_point(|check| *check <= at);
        if before == 0 {
            return Ok(None);
        }
        let key = (pump.to_owned(), over.session.sides.name(), before, level);
        if let Some(known) = self.known.get(&key) {
            return Ok(*known);
        }
        let pull = level_in_vacuum(record, &over.session, at)?(level).map(|pull| tenths(pull.vacuum.value));
        self.known.insert(key, pull);
        Ok(pull)
    }
}

/// The strongest vacuum of expressing: as it was shown, else by its level.
fn vacuum_of(record: &Record<'_>, curves: &mut Curves, over: &Over) -> Result<Result<i64, &'static str>, Trouble> {
    let set = over.session.used_in(Phase::Expression);
    let written = || over.fields.get("vacuum_expression").and_then(Entered::<Vacuum>::from_json);
    if let Some(shown) = set.vacuum.or_else(written) {
        return Ok(Ok(tenths(shown.quantity())));
    }
    let level = set.level.or_else(|| whole_number(&over.fields, "level_expression").map(Level::new));
    Ok(match level {
        None => Err("not_said"),
        Some(level) => curves.pull(record, over, level)?.ok_or("no_check"),
    })
}

/// The rows of sessions.
pub(super) fn rows(record: &Record<'_>, life: &Life, family: &str, all: &[Over]) -> Result<Vec<Sessions>, Trouble> {
    let mut grades: BTreeMap<String, &'static str> = BTreeMap::new();
    for (id, fields) in record.journal.fields_of_kind(Kind::Pump)? {
        grades.insert(id, grade_name(limits::grade(&fields)));
    }
    let mut curves = Curves::of(record)?;
    let mut rows = Vec::with_capacity(all.len());
    let mut before: Option<Instant> = None;
    for (number, over) in (1..).zip(all) {
        let day = life.day(LocalDay::of(&over.began, record.settings.day_start));
        let ended = over.ended.instant();
        let lasted = match over.session.ended {
            None => Err("no_end"),
            Some(_) => Some(ended.since(over.began.instant())).filter(|span| *span <= LONGEST).ok_or("too_long"),
        };
        let since = match before {
            None => Err("first"),
            Some(before) => Some(ended.since(before)).filter(|gap| *gap <= LONGEST_GAP).ok_or("too_long"),
        };
        before = Some(ended);
        let vacuum = vacuum_of(record, &mut curves, over)?;
        let pain = over.session.highest_pain(&over.fields);
        let pump = over.session.pump.as_deref();
        rows.push(Sessions {
            family: family.to_owned(),
            number,
            day: day.day.ok(),
            day_why: day.day.err(),
            corrected_day: day.corrected.ok(),
            corrected_day_why: day.corrected.err(),
            minute: minute(&over.began),
            lasted_minutes: lasted.ok().map(Span::in_minutes),
            lasted_minutes_why: lasted.err(),
            since_minutes: since.ok().map(Span::in_minutes),
            since_minutes_why: since.err(),
            method: method(&over.session),
            sides: over.session.sides.name(),
            milk_tenths: over.milk.ok(),
            milk_tenths_why: over.milk.err(),
            grade: pump.and_then(|pump| grades.get(pump)).copied().unwrap_or("unsaid"),
            vacuum_tenths: vacuum.ok(),
            vacuum_tenths_why: vacuum.err(),
            pain: pain.map(|pain| i64::from(pain.get())),
            pain_why: if pain.is_none() { Some("not_said") } else { None },
        });
    }
    Ok(rows)
}

/// Only words of the record's own list leave.
fn method(session: &Session) -> &'static str {
    let said = session.method.as_deref();
    drawwell_core::record::choices::METHODS.iter().copied().find(|word| said == Some(word)).unwrap_or("unsaid")
}

/// Minutes since midnight by the clock on the wall.
pub(super) fn minute(at: &Moment) -> i64 {
    use chrono::Timelike;
    i64::from(at.on_the_wall().time().num_seconds_from_midnight() / 60)
}
