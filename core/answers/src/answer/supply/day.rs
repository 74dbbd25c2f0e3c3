//! A day's production: intervals spread over local days.

use super::intervals::{intervals, judge, Interval, IntervalStatus, Side, LONGEST_WHOLE};
use super::ordinary::Ordinary;
use crate::quantity::{Count, Production, Quantity, Share, Volume};
use crate::record::Removal;
use crate::time::{DayStart, Instant, LocalDay, Span, Zone};

/// What ordinarily comes is learnt from so many days up to the one in question.
pub const LEARNS_FROM_DAYS: u32 = 14;

/// The four parts of a day, by the clock on the wall.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PartOfDay {
    /// 0 to 6.
    Night,
    /// 6 to 12.
    Morning,
    /// 12 to 18.
    Afternoon,
    /// 18 to 24.
    Evening,
}

impl PartOfDay {
    /// As the clock has them.
    pub const ALL: [Self; 4] = [Self::Night, Self::Morning, Self::Afternoon, Self::Evening];

    fn of_hour(hour: u32) -> Self {
        match hour % 24 {
            0..6 => Self::Night,
            6..12 => Self::Morning,
            12..18 => Self::Afternoon,
            _ => Self::Evening,
        }
    }
}

/// Milk that was made over time that was observed.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Observed {
    /// Milk, in mL.
    milk: f64,
    /// Time, in hours.
    hours: f64,
}

impl Observed {
    pub(crate) fn from_parts(milliliters: f64, hours: f64) -> Self {
        Self { milk: milliliters, hours }
    }
    pub(crate) fn parts(self) -> (f64, f64) {
        (self.milk, self.hours)
    }
    fn add(&mut self, milk: f64, hours: f64) {
        self.milk += milk;
        self.hours += hours;
    }
    /// Milk made while it was observed.
    pub fn milk(self) -> Volume {
        Volume::from_canonical(self.milk)
    }
    /// How much of a length of time was observed.
    pub fn share_of(self, hours: f64) -> Share {
        Share::of(if hours > 0.0 { (self.hours / hours).clamp(0.0, 1.0) } else { 0.0 })
    }
    /// The rate, scaled to a day of 24 hours; none where nothing was observed.
    pub fn production(self) -> Option<Production> {
        (self.hours > 0.0).then(|| Production::from_canonical(self.milk / self.hours * 24.0))
    }
}

/// One side over one day.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SideOfDay {
    /// Whether the side gives milk in these days at all.
    pub takes_part: bool,
    /// All that counts, half of what was measured together with the other side.
    pub shared: Observed,
    /// What was measured from this side alone.
    pub alone: Observed,
    /// `shared` by part of day, as in [`PartOfDay::ALL`].
    pub by_part: [Observed; 4],
}

/// What one local day made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayProduction {
    /// The day.
    pub day: LocalDay,
    /// How long it was: 23, 24 or 25 hours, or more or less for a traveller.
    pub lasted: Span,
    /// Left and right.
    pub sides: [SideOfDay; 2],
    /// Emptyings of either side that ended in it.
    pub emptyings: Count,
    /// Intervals of either side that ended in it with an amount.
    pub intervals: Count,
    /// The longest gap that ended in it, unless it is in doubt.
    pub longest_gap: Option<Span>,
    /// Intervals that may hide a session.
    pub sessions_missing: Count,
    /// Intervals that may or may not hide one.
    pub unclear: Count,
    /// Amounts that may be mistyped.
    pub amounts_in_doubt: Count,
}

impl DayProduction {
    /// A day of which nothing is known.
    pub fn unobserved(day: LocalDay, lasted: Span) -> Self {
        Self {
            day,
            lasted,
            sides: [SideOfDay::default(); 2],
            emptyings: Count::new(0),
            intervals: Count::new(0),
            longest_gap: None,
            sessions_missing: Count::new(0),
            unclear: Count::new(0),
            amounts_in_doubt: Count::new(0),
        }
    }

    fn hours(&self) -> f64 {
        self.lasted.in_milliseconds() as f64 / 3_600_000.0
    }

    fn taking_part(&self) -> impl Iterator<Item = &SideOfDay> {
        self.sides.iter().filter(|s| s.takes_part)
    }

    /// How much of the day was observed: the mean of the sides that take part.
    pub fn observed(&self) -> Share {
        let hours = self.hours();
        let (sum, sides) = self
            .taking_part()
            .fold((0.0, 0.0), |(sum, sides), s| (sum + s.shared.share_of(hours).fraction(), sides + 1.0));
        if sides == 0.0 {
            return Share::NONE;
        }
        Share::of(sum / sides)
    }

    /// The day's production, both sides, scaled to 24 h; none where a side
    /// that takes part was not observed at all.
    pub fn production(&self) -> Option<Production> {
        let rates = self
            .taking_part()
            .try_fold((0.0, false), |(sum, _), side| Some((sum + side.shared.production()?.canonical(), true)));
        rates.filter(|(_, any)| *any).map(|(sum, _)| Production::from_canonical(sum))
    }

    /// The production of one side, from what was measured of it alone, and how
    /// much of the day that is.
    pub fn of_side(&self, side: Side) -> (Option<Production>, Share) {
        let [left, right] = &self.sides;
        let side = if side == Side::Left { left } else { right };
        (side.alone.production(), side.alone.share_of(self.hours()))
    }

    /// The production in a part of the day as if it were like that for 24 h,
    /// and how much of six hours was observed.
    pub fn of_part(&self, part: PartOfDay) -> (Option<Production>, Share) {
        let at = part as usize;
        let (mut rate, mut share, mut sides) = (Some(0.0), 0.0, 0.0);
        for side in self.taking_part() {
            let seen = side.by_part.get(at).copied().unwrap_or_default();
            rate = rate.zip(seen.production()).map(|(sum, p)| sum + p.canonical());
            share += seen.share_of(6.0).fraction();
            sides += 1.0;
        }
        if sides == 0.0 {
            return (None, Share::NONE);
        }
        (rate.map(Production::from_canonical), Share::of(share / sides))
    }
}

/// Where days begin: the zone of the last removal up to a day says how the
/// clock on the wall then stood.
#[derive(Debug, Clone, Copy)]
pub struct Calendar {
    /// The hour at which days begin.
    pub start: DayStart,
    /// The zone before anything was recorded.
    pub zone: Zone,
}

/// Removals over some days, judged, ready to be spread over any of them.
pub struct Spread<'a> {
    removals: &'a [Removal],
    calendar: Calendar,
    sides: [Vec<Interval>; 2],
    judged_until: [usize; 2],
}

impl<'a> Spread<'a> {
    /// From removals by time. For the day `d` they reach back
    /// [`LEARNS_FROM_DAYS`] and one [`LONGEST_INTERVAL`](super::intervals::LONGEST_INTERVAL)
    /// more, and forward to the first emptying of each side after it.
    pub fn new(removals: &'a [Removal], calendar: Calendar) -> Self {
        let sides = Side::BOTH.map(|side| intervals(removals, side));
        Self { removals, calendar, sides, judged_until: [0; 2] }
    }

    fn zone_of(&self, day: LocalDay) -> Zone {
        // Some zone is needed to know the day's end; a day either way is no harm.
        let rough = LocalDay::from_number(day.number() + 1).unwrap_or(day).begins(Zone::UTC, self.calendar.start);
        let before = self.removals.partition_point(|r| r.at <= rough);
        self.removals.get(before.saturating_sub(1)).filter(|_| before > 0).map_or(self.calendar.zone, |r| r.zone)
    }

    fn begins(&self, day: LocalDay) -> Instant {
        day.begins(self.zone_of(day), self.calendar.start)
    }

    /// When a day begins and ends.
    pub fn bounds(&self, day: LocalDay) -> (Instant, Instant) {
        let from = self.begins(day);
        let next = LocalDay::from_number(day.number() + 1).unwrap_or(day);
        (from, self.begins(next).max(from))
    }

    /// Judges intervals that ended before an instant and were not judged yet,
    /// each by what was ordinary up to the end of its own day.
    fn judge_until(&mut self, until: Instant) {
        for (side, done) in self.sides.iter_mut().zip(&mut self.judged_until) {
            let upto = side.partition_point(|i| i.until < until);
            while *done < upto {
                let Some(at) = side.get(*done).map(|i| i.until) else { break };
                let zone = zone_at(self.removals, at, self.calendar.zone);
                let day = LocalDay::of(&crate::time::Moment::new(at, zone), self.calendar.start);
                let next = LocalDay::from_number(day.number() + 1).unwrap_or(day);
                let day_ends = next.begins(zone, self.calendar.start);
                let first = day.earlier_by(LEARNS_FROM_DAYS - 1).begins(zone, self.calendar.start);
                let from = side.partition_point(|i| i.until < first);
                let to = side.partition_point(|i| i.until < day_ends).max(*done + 1);
                // What stands in doubt still teaches: it is known, and weighed by its fit.
                let teaches = side.get(from..to).unwrap_or_default();
                let ordinary = Ordinary::learn(teaches);
                for interval in side.get_mut(*done..to).unwrap_or_default() {
                    judge(interval, &ordinary);
                }
                *done = to;
            }
        }
    }

    /// The intervals of a side that ended between two instants, each judged as
    /// in [`Self::day`].
    pub fn judged(&mut self, side: Side, from: Instant, until: Instant) -> &[Interval] {
        // Those before need no judgement: none rests on another's.
        for (intervals, done) in self.sides.iter().zip(&mut self.judged_until) {
            *done = (*done).max(intervals.partition_point(|i| i.until < from));
        }
        self.judge_until(until);
        let [left, right] = &self.sides;
        let all = if side == Side::Left { left } else { right };
        let at = |instant: Instant| all.partition_point(|i| i.until < instant);
        all.get(at(from)..at(until)).unwrap_or_default()
    }

    /// All intervals of a side, judged once by what is ordinary among them all.
    pub fn judged_together(&self, side: Side) -> Vec<Interval> {
        self.judged_by(side).0
    }

    /// The same, and what is ordinary among them.
    pub(crate) fn judged_by(&self, side: Side) -> (Vec<Interval>, Ordinary) {
        let [left, right] = &self.sides;
        let mut all = if side == Side::Left { left.clone() } else { right.clone() };
        let ordinary = Ordinary::learn(&all);
        all.iter_mut().for_each(|interval| judge(interval, &ordinary));
        (all, ordinary)
    }

    /// What a day made.
    pub fn day(&mut self, day: LocalDay) -> DayProduction {
        let (begin, end) = self.bounds(day);
        // An interval that crosses the day's end is judged by the day it ends in.
        self.judge_until(end.plus(Span::hours(48)));
        let mut made = DayProduction::unobserved(day, end.since(begin));
        let marks = self.part_marks(day, begin, end);
        let week_before = begin.minus(Span::hours(7 * 24));
        let mut ends = std::collections::BTreeSet::new();
        for (intervals, side) in self.sides.iter().zip(&mut made.sides) {
            let recent = intervals.partition_point(|i| i.until < week_before);
            for interval in intervals.get(recent..).unwrap_or_default() {
                if interval.from >= end {
                    break;
                }
                // Longer than this a side rests: it takes no part in between, and
                // a day is the same whether or not its next emptying is looked at.
                if interval.lasted() > LONGEST_WHOLE {
                    continue;
                }
                side.takes_part = true;
                if (begin..end).contains(&interval.until) {
                    ends.insert(interval.until);
                    made.intervals = Count::new(made.intervals.get() + u32::from(interval.milk.is_some()));
                    match interval.status {
                        IntervalStatus::SessionMissing => {
                            made.sessions_missing = Count::new(made.sessions_missing.get() + 1);
                        }
                        IntervalStatus::AmountInDoubt => {
                            made.amounts_in_doubt = Count::new(made.amounts_in_doubt.get() + 1);
                        }
                        IntervalStatus::Counts | IntervalStatus::Unknown => {
                            made.longest_gap = made.longest_gap.max(Some(interval.lasted()));
                        }
                        IntervalStatus::Unclear => made.unclear = Count::new(made.unclear.get() + 1),
                        IntervalStatus::TooLong => {}
                    }
                }
                spread(interval, side, begin, end, &marks);
            }
        }
        made.emptyings = Count::new(ends.len() as u32);
        made
    }

    /// Where the parts of a day change: from each instant on, this part.
    fn part_marks(&self, day: LocalDay, begin: Instant, end: Instant) -> Vec<(Instant, PartOfDay)> {
        let zone = self.zone_of(day);
        let mut marks = vec![(begin, PartOfDay::of_hour(self.calendar.start.hour()))];
        for date in [Some(day.date()), day.date().succ_opt()].into_iter().flatten() {
            for hour in [0, 6, 12, 18] {
                let Some(wall) = date.and_hms_opt(hour, 0, 0) else { continue };
                let at = crate::time::resolve(wall, zone).instant;
                if at > begin && at < end {
                    marks.push((at, PartOfDay::of_hour(hour)));
                }
            }
        }
        marks
    }
}

/// The zone of the last removal up to an instant.
fn zone_at(removals: &[Removal], at: Instant, otherwise: Zone) -> Zone {
    let before = removals.partition_point(|r| r.at <= at);
    before.checked_sub(1).and_then(|i| removals.get(i)).map_or(otherwise, |r| r.zone)
}

/// Spreads an interval evenly over its time, and takes what falls into a day.
fn spread(interval: &Interval, side: &mut SideOfDay, begin: Instant, end: Instant, marks: &[(Instant, PartOfDay)]) {
    let (IntervalStatus::Counts, Some(milk)) = (interval.status, interval.milk) else { return };
    let whole = interval.lasted().in_milliseconds() as f64;
    let mut take = |from: Instant, until: Instant, part: PartOfDay| {
        let inside = until.min(interval.until).since(from.max(interval.from)).in_milliseconds();
        if inside <= 0 || whole <= 0.0 {
            return;
        }
        let (volume, hours) = (milk.canonical() * inside as f64 / whole, inside as f64 / 3_600_000.0);
        side.shared.add(volume, hours);
        if interval.of_this_side {
            side.alone.add(volume, hours);
        }
        if let Some(seen) = side.by_part.get_mut(part as usize) {
            seen.add(volume, hours);
        }
    };
    for (i, (from, part)) in marks.iter().enumerate() {
        let until = marks.get(i + 1).map_or(end, |(next, _)| *next);
        take((*from).max(begin), until.min(end), *part);
    }
}
