//! Days as the journal keeps them, so that a new session works out its own
//! days and not the history. What is not kept is worked out and told to the [`Record`]; who
//! writes anyway keeps it.

use std::collections::BTreeMap;

use super::Record;
use crate::answer::supply::day::{Calendar, DayProduction, Observed, SideOfDay, Spread, LEARNS_FROM_DAYS};
use crate::journal::KeptDay;
use crate::quantity::{Count, Production, Share};
use crate::time::{LocalDay, Span};
use crate::trouble::Trouble;

/// Changes with every change to how a day is worked out.
const VERSION: u8 = 3;
/// Removals looked at before the days that are learnt from, and after a day.
const ROOM: Span = Span::hours(72);

/// What each day of a stretch made, both sides, where it was complete enough;
/// read from less than [`days`] needs.
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
            *slot = read(day, bytes);
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
            let bytes = write(&whole);
            if let Some(slot) = found.get_mut(usize::try_from(day.number() - from.number()).unwrap_or(usize::MAX)) {
                *slot = read(day, &bytes);
            }
            let kept = KeptDay { day, production: whole.production(), observed: whole.observed(), made: bytes };
            worked_out.insert(day, kept);
        }
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

/// Values of a day, in the order of [`write`].
const VALUES: usize = 33;

fn read(day: LocalDay, bytes: &[u8]) -> Option<DayProduction> {
    let (version, rest) = bytes.split_first()?;
    if *version != VERSION || rest.len() != VALUES * 4 {
        return None;
    }
    let mut values = [0.0_f64; VALUES];
    for (value, four) in values.iter_mut().zip(rest.chunks_exact(4)) {
        let &[a, b, c, d] = four else { return None };
        *value = f64::from(f32::from_le_bytes([a, b, c, d]));
    }
    if values.iter().any(|value| !value.is_finite()) {
        return None;
    }
    let [lasted, gap, emptyings, intervals, missing, unclear, in_doubt, sides @ ..] = values;
    let count = |value: f64| Count::new(value as u32);
    let mut made = DayProduction::unobserved(day, Span::minutes(lasted as i64));
    made.longest_gap = (gap >= 0.0).then(|| Span::minutes(gap as i64));
    made.emptyings = count(emptyings);
    made.intervals = count(intervals);
    made.sessions_missing = count(missing);
    made.unclear = count(unclear);
    made.amounts_in_doubt = count(in_doubt);
    for (side, of_side) in made.sides.iter_mut().zip(sides.chunks_exact(13)) {
        let (takes_part, seen) = of_side.split_first()?;
        let mut pairs = seen.chunks_exact(2).map(|pair| match pair {
            &[milk, hours] => Observed::from_parts(milk, hours),
            _ => Observed::default(),
        });
        let mut next = || pairs.next().unwrap_or_default();
        *side = SideOfDay {
            takes_part: *takes_part != 0.0,
            shared: next(),
            alone: next(),
            by_part: [next(), next(), next(), next()],
        };
    }
    Some(made)
}
