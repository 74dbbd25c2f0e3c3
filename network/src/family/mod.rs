//! What core answers of one family, as rows.
//!
//! In: its record as of when it was shared last. Out: rows of every table, under its pseudonym.
//! No name, note, date, zone or serial gets into one: [`life`] makes days of life of dates, and
//! the columns have no room for text but words of the record's own lists.

mod checks;
mod comfort;
mod days;
mod figures;
mod life;
mod names;
mod refills;
mod sessions;

use std::collections::BTreeMap;

use drawwell_core::gather::Record;
use drawwell_core::record::{ConsentScope, Kind, Rhythm, RHYTHM};
use drawwell_core::time::{LocalDay, Moment};
use drawwell_core::trouble::Trouble;

use crate::table::{Families, FollowUp, IntoRow, Row};
use life::Life;
use sessions::Over;

/// Rows by table.
pub type Rows = BTreeMap<&'static str, Vec<Row>>;

/// How a family is known in a network.
#[derive(Debug, Clone, Copy)]
pub struct KnownAs<'a> {
    /// Its pseudonym.
    pub pseudonym: &'a str,
    /// The unit that brought it in.
    pub site: &'a str,
    /// What it said yes to.
    pub scope: ConsentScope,
}

/// The rows of a family.
///
/// # Errors
/// Where its record can't be read.
pub fn rows(record: &Record<'_>, known_as: KnownAs<'_>) -> Result<Rows, Trouble> {
    let family = known_as.pseudonym;
    let life = Life::of(record)?;
    let over = sessions::over(record)?;
    let worked_out = days::worked_out(record)?;
    let mut rows = Rows::new();
    put(&mut rows, [about(record, &life, known_as, &over)?]);
    put(&mut rows, sessions::rows(record, &life, family, &over)?);
    put(&mut rows, days::rows(record, &life, family, &worked_out, &over)?);
    put(&mut rows, [days::trend(record, family, &worked_out)?]);
    put(&mut rows, checks::rows(record, &life, family)?);
    put(&mut rows, refills::rows(record, &life, family)?);
    put(&mut rows, comfort::rows(record, &life, family, &over)?);
    put(&mut rows, [follow_up(record, &life, family, &over)?]);
    Ok(rows)
}

fn put<R: IntoRow>(rows: &mut Rows, of: impl IntoIterator<Item = R>) {
    rows.entry(R::TABLE.name).or_default().extend(of.into_iter().map(IntoRow::into_row));
}

/// The day of life of a session.
fn day_of(record: &Record<'_>, life: &Life, over: Option<&Over>) -> Result<i64, &'static str> {
    let over = over.ok_or("no_session")?;
    // What was before a birth is of no day of life.
    life.day(LocalDay::of(&over.began, record.settings.day_start)).day.map_err(|_| "no_birth")
}

fn about(record: &Record<'_>, life: &Life, known_as: KnownAs<'_>, over: &[Over]) -> Result<Families, Trouble> {
    let (first, last) = (day_of(record, life, over.first()), day_of(record, life, over.last()));
    Ok(Families {
        family: known_as.pseudonym.to_owned(),
        site: known_as.site.to_owned(),
        scope: known_as.scope.name(),
        gestation_days: life.gestation.ok(),
        gestation_days_why: life.gestation.err(),
        children: life.children,
        first_day: first.ok(),
        first_day_why: first.err(),
        last_day: last.ok(),
        last_day_why: last.err(),
        sessions: over.len() as i64,
        pumps: record.journal.of_kind(Kind::Pump)?.len() as i64,
    })
}

fn follow_up(record: &Record<'_>, life: &Life, family: &str, over: &[Over]) -> Result<FollowUp, Trouble> {
    let last = day_of(record, life, over.last());
    let silent = over.last().map(|over| {
        let day = LocalDay::of(&Moment::new(over.ended.instant(), record.zone), record.settings.day_start);
        record.today().days_since(day).max(0)
    });
    let (_, rhythm) = record.record(RHYTHM)?;
    let ending = Rhythm::read(&rhythm).ending.is_some_and(|ending| ending.from <= record.today().date());
    Ok(FollowUp {
        family: family.to_owned(),
        last_day: last.ok(),
        last_day_why: last.err(),
        silent_days: silent,
        silent_days_why: if silent.is_none() { Some("no_session") } else { None },
        ends_by_plan: i64::from(ending),
    })
}
