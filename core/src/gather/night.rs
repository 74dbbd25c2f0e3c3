//! What a plan is made from.

use super::Record;
use crate::answer::night::gathered::{sessions_since, CHANGES_HOLD};
use crate::answer::night::{nights_that_were, Frame, Gathered, NightInputs, NightThatWas};
use crate::guidance::NightRules;
use crate::record::{date, FixedPoint, Kind, PlanChange, Rhythm, RHYTHM};
use crate::time::{LocalDay, Span};
use crate::trouble::Trouble;

/// Reads what a plan is made from.
///
/// # Errors
/// Where the store can't be read.
pub fn gathered(record: &Record<'_>) -> Result<Gathered, Trouble> {
    let Record { journal, now, zone, .. } = *record;
    let start = record.settings.day_start;
    let fields = |id: &str| journal.record(id).map(|r| r.map(|(_, f)| f).unwrap_or_default());
    let mut points = Vec::new();
    for row in journal.of_kind(Kind::FixedPoint)? {
        points.extend(FixedPoint::read(&row.subject, &fields(&row.subject)?));
    }
    let mut changes = Vec::new();
    for row in journal.of_kind_since(Kind::PlanChange, now.minus(CHANGES_HOLD))? {
        changes.extend(PlanChange::read(&fields(&row.subject)?));
    }
    let children = journal.fields_of_kind(Kind::Child)?;
    let births: Vec<LocalDay> =
        children.iter().filter_map(|(_, fields)| date(fields, "birth")).map(LocalDay::on).collect();
    Ok(Gathered::of(NightInputs {
        now,
        zone,
        start,
        rhythm: Rhythm::read(&fields(RHYTHM)?),
        rules: NightRules::read(record.rules()?),
        sessions: &journal.of_kind_since(Kind::Session, sessions_since(now, zone, start))?,
        running: journal.running()?.and_then(|row| row.at),
        points,
        changes,
        births: &births,
    }))
}

/// What so many nights back were.
pub(crate) fn nights_back(record: &Record<'_>, frame: &Frame, back: u32) -> Result<Vec<NightThatWas>, Trouble> {
    let since = record.now.minus(Span::hours(24 * i64::from(back)));
    let rows = record.journal.of_kind_since(Kind::Session, since.minus(Span::hours(24)))?;
    Ok(nights_that_were(&rows, frame, since, record.now, record.zone))
}
