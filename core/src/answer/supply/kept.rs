//! Days as the journal keeps them, so that a new session works out its own
//! days and not the history.

use super::day::{Calendar, DayProduction, Observed, SideOfDay, Spread, LEARNS_FROM_DAYS};
use crate::journal::Journal;
use crate::quantity::Count;
use crate::time::{LocalDay, Span};
use crate::trouble::Trouble;

/// Changes with every change to how a day is worked out.
const VERSION: u8 = 1;
/// Removals looked at before the days that are learnt from, and after a day.
const ROOM: Span = Span::hours(72);

/// What each day of a stretch made; worked out where it is not kept.
pub fn days(
    journal: &Journal,
    from: LocalDay,
    to: LocalDay,
    calendar: Calendar,
) -> Result<Vec<DayProduction>, Trouble> {
    let count = to.number() - from.number() + 1;
    let mut found: Vec<Option<DayProduction>> = vec![None; usize::try_from(count).unwrap_or(0)];
    for (day, bytes) in journal.kept_days(from, to)? {
        if let Some(slot) = found.get_mut(usize::try_from(day.number() - from.number()).unwrap_or(usize::MAX)) {
            *slot = read(day, &bytes);
        }
    }
    let lacks: Vec<LocalDay> = found
        .iter()
        .enumerate()
        .filter(|(_, day)| day.is_none())
        .filter_map(|(at, _)| LocalDay::from_number(from.number() + at as i32))
        .collect();
    if let (Some(first), Some(last)) = (lacks.first(), lacks.last()) {
        let begins = first.earlier_by(LEARNS_FROM_DAYS).begins(calendar.zone, calendar.start).minus(ROOM);
        let ends = last.begins(calendar.zone, calendar.start).plus(Span::hours(24)).plus(ROOM);
        let removals = journal.removals(begins, ends)?;
        let mut spread = Spread::new(&removals, calendar);
        let mut made = Vec::with_capacity(lacks.len());
        for day in lacks {
            let bytes = write(&spread.day(day));
            if let Some(slot) = found.get_mut(usize::try_from(day.number() - from.number()).unwrap_or(usize::MAX)) {
                *slot = read(day, &bytes);
            }
            made.push((day, bytes));
        }
        journal.keep_days(&made);
    }
    Ok(found.into_iter().flatten().collect())
}

fn write(made: &DayProduction) -> Vec<u8> {
    let mut bytes = vec![VERSION];
    let mut put = |value: f64| bytes.extend((value as f32).to_le_bytes());
    put(made.lasted.in_minutes() as f64);
    put(made.longest_gap.map_or(-1.0, |g| g.in_minutes() as f64));
    for count in [made.emptyings, made.intervals, made.sessions_missing, made.unclear, made.amounts_in_doubt] {
        put(f64::from(count.get()));
    }
    for side in &made.sides {
        put(f64::from(u8::from(side.takes_part)));
        for seen in [side.shared, side.alone].into_iter().chain(side.by_part) {
            let (milk, hours) = seen.parts();
            put(milk);
            put(hours);
        }
    }
    bytes
}

fn read(day: LocalDay, bytes: &[u8]) -> Option<DayProduction> {
    let (version, rest) = bytes.split_first()?;
    let mut values = rest.chunks_exact(4).map(|c| c.try_into().map(f32::from_le_bytes).unwrap_or(f32::NAN));
    let mut next = || values.next().map(f64::from).filter(|v| v.is_finite());
    if *version != VERSION {
        return None;
    }
    let lasted = Span::minutes(next()? as i64);
    let gap = next()?;
    let mut made = DayProduction::unobserved(day, lasted);
    made.longest_gap = (gap >= 0.0).then(|| Span::minutes(gap as i64));
    let mut count = || next().map(|n| Count::new(n as u32));
    made.emptyings = count()?;
    made.intervals = count()?;
    made.sessions_missing = count()?;
    made.unclear = count()?;
    made.amounts_in_doubt = count()?;
    for side in &mut made.sides {
        let takes_part = next()? != 0.0;
        let mut seen = [Observed::default(); 6];
        for slot in &mut seen {
            *slot = Observed::from_parts(next()?, next()?);
        }
        let [shared, alone, by_part @ ..] = seen;
        *side = SideOfDay { takes_part, shared, alone, by_part };
    }
    Some(made)
}
