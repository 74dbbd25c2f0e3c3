//! The hours of a day in which nothing is ever written down: a session that is left out at the
//! same hour every night can't be told from sleep.

use chrono::Timelike;

use crate::record::{Answered, Removal};
use crate::time::{Instant, Moment, Span, Zone};

/// From an hour of the clock to another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct QuietHours {
    /// They begin at this hour.
    pub from: u32,
    /// They end at this one.
    pub until: u32,
}

impl QuietHours {
    /// Whether a gap began not long before the hours, and went on to their end.
    pub fn lie_between(self, from: Instant, until: Instant, zone: Zone) -> bool {
        let day = HOURS as u32;
        let lasts = (self.until + day - self.from) % day;
        let wall = Moment::new(from, zone).on_the_wall().hour();
        let ahead = (self.from + day - wall) % day;
        until.since(from) >= Span::hours(i64::from(lasts)) && ahead <= LEAST_HOURS as u32
    }
}

const HOURS: usize = 24;
/// Days that say so, and days without a session at all that it may be.
const DAYS: i64 = 14;
const LEAST_DAYS: usize = 8;
/// An hour is quiet with no more than one session in so many days.
const ONE_IN: usize = 8;
/// So many hours are a gap worth a word.
const LEAST_HOURS: usize = 4;
/// And so many times the usual gap.
const LONGER: f64 = 1.5;

/// What was last said of such hours.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LastAnswer {
    /// Nothing yet.
    Nothing,
    /// No session is missed in them.
    NoneIsMissed,
    /// One is done and not written down.
    OneIsMissed,
}

/// The session that last ended such hours, and what was last said of one that did.
pub fn ended_by(hours: QuietHours, removals: &[Removal]) -> Option<(&Removal, LastAnswer)> {
    let ends = |pair: &[Removal]| -> bool {
        let [before, after] = pair else { return false };
        hours.lie_between(before.at, after.at, before.zone)
    };
    let last = removals.windows(2).rev().find(|pair| ends(pair)).and_then(|pair| pair.last())?;
    let ended = removals.windows(2).rev().filter(|pair| ends(pair)).filter_map(|pair| pair.last());
    let said = |removal: &Removal| match removal.answered {
        Answered { gap_is_whole: true, .. } => Some(LastAnswer::NoneIsMissed),
        Answered { gap_hides_one: true, .. } => Some(LastAnswer::OneIsMissed),
        Answered { .. } => None,
    };
    Some((last, ended.into_iter().find_map(said).unwrap_or(LastAnswer::Nothing)))
}

/// The longest stretch of such hours over the last two weeks of removals by time; none where
/// there is none that is much longer than the usual gap.
pub fn quiet_hours(removals: &[Removal]) -> Option<QuietHours> {
    let last = removals.last()?.at;
    let since = last.minus(Span::hours(24 * DAYS));
    let recent = removals.get(removals.partition_point(|r| r.at < since)..)?;
    let mut seen = [0_usize; HOURS];
    let mut days = Vec::new();
    for removal in recent {
        let wall = Moment::new(removal.at, removal.zone).on_the_wall();
        if let Some(count) = seen.get_mut(wall.hour() as usize) {
            *count += 1;
        }
        days.push(wall.date());
    }
    days.dedup();
    if days.len() < LEAST_DAYS {
        return None;
    }
    let is_quiet = |hour: usize| seen.get(hour % HOURS).is_some_and(|count| count * ONE_IN <= days.len());
    let length = |from: usize| (0..HOURS).take_while(|more| is_quiet(from + more)).count();
    let (from, hours) = (0..HOURS).map(|from| (from, length(from))).max_by_key(|(_, hours)| *hours)?;
    let mut gaps: Vec<i64> =
        recent.windows(2).filter_map(|w| Some(w.get(1)?.at.since(w.first()?.at).in_minutes())).collect();
    gaps.retain(|minutes| *minutes > 60);
    gaps.sort_unstable();
    let usual = *gaps.get(gaps.len() / 2)? as f64 / 60.0;
    // All day long quiet is no gap in a day.
    let is_one = (LEAST_HOURS..HOURS / 2).contains(&hours) && hours as f64 >= LONGER * usual - 1.0;
    is_one.then(|| QuietHours { from: (from % HOURS) as u32, until: ((from + hours) % HOURS) as u32 })
}
