//! Days as rows, and how the family's milk goes.

use std::collections::BTreeMap;

use drawwell_core::answer::supply::course::Heading;
use drawwell_core::answer::supply::level::Level;
use drawwell_core::answer::supply::now::LOOKS_BACK;
use drawwell_core::answer::supply::summary::summarise;
use drawwell_core::answer::supply::{Calendar, DayProduction};
use drawwell_core::gather::{days, Record};
use drawwell_core::guidance::SupplyRules;
use drawwell_core::time::{LocalDay, Moment, Span};
use drawwell_core::trouble::Trouble;

use super::figures::{tenths, Tenths};
use super::life::Life;
use super::sessions::{minute, Over};
use crate::table::{Days, Trends};

/// The night, in minutes after midnight.
const NIGHT_ENDS: i64 = 6 * 60;
/// The days that the course of a family is looked for in, as Supply opens.
const TREND_DAYS: usize = 28;

/// Whole days from the first session to yesterday.
pub(super) fn worked_out(record: &Record<'_>) -> Result<Vec<DayProduction>, Trouble> {
    let Some(first) = record.journal.first_removal(record.now.plus(Span::milliseconds(1)))? else {
        return Ok(Vec::new());
    };
    let calendar = Calendar { start: record.settings.day_start, zone: first.zone };
    let from = LocalDay::of(&Moment::new(first.at, first.zone), calendar.start);
    days::days(record, from, record.today().earlier_by(1), calendar)
}

/// What came by the clock in one day.
#[derive(Debug, Clone, Copy, Default)]
struct ByClock {
    tenths: i64,
    sessions: i64,
    night: i64,
    unknown: i64,
}

/// The rows of days.
pub(super) fn rows(
    record: &Record<'_>,
    life: &Life,
    family: &str,
    days: &[DayProduction],
    sessions: &[Over],
) -> Result<Vec<Days>, Trouble> {
    let rules = SupplyRules::read(record.rules()?);
    let mut by_clock: BTreeMap<LocalDay, ByClock> = BTreeMap::new();
    for over in sessions {
        let of_day = by_clock.entry(LocalDay::of(&over.ended, record.settings.day_start)).or_default();
        of_day.sessions += 1;
        of_day.night += i64::from(minute(&over.ended) < NIGHT_ENDS);
        match over.milk {
            Ok(tenths) => of_day.tenths += tenths,
            // A feed at the breast is no amount that was missed.
            Err("at_breast") => {}
            Err(_) => of_day.unknown += 1,
        }
    }
    let row = |(number, day): (i64, &DayProduction)| {
        let at = life.day(day.day);
        let complete = day.observed() >= rules.complete_day;
        let made = match day.production() {
            None => Err("not_observed"),
            Some(_) if !complete => Err("incomplete"),
            Some(made) => Ok(tenths(made)),
        };
        let clock = by_clock.get(&day.day).copied().unwrap_or_default();
        let collected = match clock {
            ByClock { sessions: 0, .. } => Err("no_session"),
            ByClock { unknown: 0, tenths, .. } => Ok(tenths),
            _ => Err("amount_unknown"),
        };
        Days {
            family: family.to_owned(),
            number,
            day: at.day.ok(),
            day_why: at.day.err(),
            corrected_day: at.corrected.ok(),
            corrected_day_why: at.corrected.err(),
            made_tenths: made.ok(),
            made_tenths_why: made.err(),
            observed_percent: day.observed().per_cent(),
            collected_tenths: collected.ok(),
            collected_tenths_why: collected.err(),
            sessions: clock.sessions,
            night_sessions: clock.night,
            amounts_unknown: clock.unknown,
        }
    };
    Ok((1..).zip(days).map(row).collect())
}

/// How a family's milk goes, as Supply says it.
pub(super) fn trend(record: &Record<'_>, family: &str, days: &[DayProduction]) -> Result<Trends, Trouble> {
    let rules = SupplyRules::read(record.rules()?);
    let last = |count: usize| days.get(days.len().saturating_sub(count)..).unwrap_or_default();
    let span = last(TREND_DAYS);
    let lately = last(usize::try_from(LOOKS_BACK).unwrap_or(0) + 1);
    let why = |level: Level| match level {
        _ if days.is_empty() => "no_session",
        Level::TooMuchMissing => "too_much_missing",
        Level::Known(_) | Level::NeedsDays(_) => "needs_days",
    };
    let found = summarise(span, lately, &rules);
    let level = found.level.known().map(Tenths::from).ok_or_else(|| why(found.level));
    let (drift, heading) = match &found.course {
        Ok(course) => (Ok(Tenths::from(course.drift)), course.heading),
        Err(level) => (Err(why(*level)), None),
    };
    Ok(Trends {
        family: family.to_owned(),
        level_tenths: level.ok().map(|level| level.value),
        level_low: level.ok().map(|level| level.low),
        level_high: level.ok().map(|level| level.high),
        level_tenths_why: level.err(),
        week_tenths: drift.ok().map(|drift| drift.value),
        week_low: drift.ok().map(|drift| drift.low),
        week_high: drift.ok().map(|drift| drift.high),
        week_tenths_why: drift.err(),
        heading: match heading {
            Some(Heading::Holding) => "holding",
            Some(Heading::Rising) => "rising",
            Some(Heading::Falling) => "falling",
            None => "cannot_tell",
        },
        days: i64::from(found.along.rests_on.days.get()),
        complete_days: i64::from(found.along.rests_on.complete.get()),
    })
}
