//! Days as the journal keeps them, so that a new session works out its own
//! days and not the history. What is not kept is worked out and told to the [`Record`]; who
//! writes anyway keeps it.

use crate::answer::supply::packed::{pack, unpack, VERSION};
use std::collections::BTreeMap;

use super::Record;
use crate::answer::supply::day::{Calendar, DayProduction, Spread, LEARNS_FROM_DAYS};
use crate::journal::KeptDay;
use crate::quantity::{Production, Share};
use crate::time::{LocalDay, Span};
use crate::trouble::Trouble;

/// Removals looked at before the days that are learnt from, and after a day.
const ROOM: Span = Span::hours(72);

/// What each day of a stretch made, both sides, where it was complete enough;
/// read from less than [`days`] needs.
///
/// # Errors
/// Where the store can't be read.
pub fn productions(
    record: &Record<'_>,
    from: LocalDay,
    to: LocalDay,
    calendar: Calendar,
    least: Share,
) -> Result<Vec<(LocalDay, Production)>, Trouble> {
    let mut kept = of_both(record, from, to)?;
    if kept.len() as i64 != to.days_since(from) + 1 {
        days(record, from, to, calendar)?;
        kept = of_both(record, from, to)?;
    }
    let complete = kept.into_iter().filter(|(_, (_, observed))| *observed >= least);
    Ok(complete.filter_map(|(day, (production, _))| Some((day, production?))).collect())
}

type OfBoth = BTreeMap<LocalDay, (Option<Production>, Share)>;

/// Days that are kept, or were worked out in this call.
fn of_both(record: &Record<'_>, from: LocalDay, to: LocalDay) -> Result<OfBoth, Trouble> {
    let worked_out = record.worked_out.borrow();
    let kept = record.journal.kept_productions(from, to, VERSION)?;
    let all = worked_out.range(from..=to).map(|(_, kept)| kept).chain(&kept);
    Ok(all.map(|kept| (kept.day, (kept.production, kept.observed))).collect())
}

/// What each day of a stretch made; worked out where it is not kept.
///
/// # Errors
/// Where the store can't be read.
pub fn days(
    record: &Record<'_>,
    from: LocalDay,
    to: LocalDay,
    calendar: Calendar,
) -> Result<Vec<DayProduction>, Trouble> {
    let mut worked_out = record.worked_out.borrow_mut();
    let count = to.number() - from.number() + 1;
    let mut found: Vec<Option<DayProduction>> = vec![None; usize::try_from(count).unwrap_or(0)];
    let mut take = |day: LocalDay, bytes: &[u8]| {
        if let Some(slot) = found.get_mut(usize::try_from(day.number() - from.number()).unwrap_or(usize::MAX)) {
            *slot = unpack(day, bytes);
        }
    };
    record.journal.read_kept_days(from, to, &mut take)?;
    worked_out.range(from..=to).for_each(|(day, kept)| take(*day, &kept.made));
    let lacks: Vec<LocalDay> = found
        .iter()
        .enumerate()
        .filter(|(_, day)| day.is_none())
        .filter_map(|(at, _)| LocalDay::from_number(from.number() + at as i32))
        .collect();
    if let (Some(first), Some(last)) = (lacks.first(), lacks.last()) {
        let begins = first.earlier_by(LEARNS_FROM_DAYS).begins(calendar.zone, calendar.start).minus(ROOM);
        let ends = last.begins(calendar.zone, calendar.start).plus(Span::hours(24)).plus(ROOM);
        let removals = record.journal.removals(begins, ends)?;
        let mut spread = Spread::new(&removals, calendar);
        for day in lacks {
            let whole = spread.day(day);
            let bytes = pack(&whole);
            if let Some(slot) = found.get_mut(usize::try_from(day.number() - from.number()).unwrap_or(usize::MAX)) {
                *slot = unpack(day, &bytes);
            }
            let kept = KeptDay { day, production: whole.production(), observed: whole.observed(), made: bytes };
            worked_out.insert(day, kept);
        }
    }
    Ok(found.into_iter().flatten().collect())
}
