//! What the record says that a plan is made from.

use super::facts::{Emptying, Facts};
use super::frame::{Frame, Habit};
use super::plan::{plan, Plan};
use crate::answer::supply::intervals::ONE_EMPTYING;
use crate::guidance::NightRules;
use crate::quantity::{Count, Volume};
use crate::record::{FixedPoint, PlanChange, Rhythm, Row};
use crate::time::{DayStart, Instant, LocalDay, Moment, Span, Zone};

/// Sessions of so many days say how it is usually done.
const HABIT_DAYS: u32 = 7;
/// Fewer days than this with sessions say nothing.
const LEAST_DAYS: usize = 3;
/// Sessions of so long ago still move the plan.
const MOVES_THE_PLAN: Span = Span::hours(60);
/// Changes by hand of so long ago may still hold.
pub const CHANGES_HOLD: Span = Span::hours(72);

/// What the record says.
#[derive(Debug, Clone, PartialEq)]
pub struct Gathered {
    /// The present.
    pub now: Instant,
    /// The zone the person is in.
    pub zone: Zone,
    /// What was set.
    pub rhythm: Rhythm,
    /// What is kept to.
    pub frame: Frame,
    /// Emptyings of the last two days and a half, in order.
    pub emptyings: Vec<Emptying>,
    /// The session that runs.
    pub running: Option<Instant>,
    /// Fixed points.
    pub points: Vec<FixedPoint>,
    /// Changes by hand, in the order they were made.
    pub changes: Vec<PlanChange>,
}

/// What is read of the record for it.
#[derive(Debug)]
pub struct NightInputs<'a> {
    /// The present.
    pub now: Instant,
    /// The zone the person is in.
    pub zone: Zone,
    /// The hour at which days begin.
    pub start: DayStart,
    /// What was set.
    pub rhythm: Rhythm,
    /// The rules as they hold.
    pub rules: NightRules,
    /// Sessions since [`sessions_since`], by time.
    pub sessions: &'a [Row],
    /// The session that runs.
    pub running: Option<Instant>,
    /// Fixed points.
    pub points: Vec<FixedPoint>,
    /// Changes by hand since [`CHANGES_HOLD`] ago, in the order they were made.
    pub changes: Vec<PlanChange>,
    /// The children's days of birth, where they are known.
    pub births: &'a [LocalDay],
}

/// Since when sessions are read for it.
pub fn sessions_since(now: Instant, zone: Zone, start: DayStart) -> Instant {
    let today = LocalDay::of(&Moment::new(now, zone), start);
    today.earlier_by(HABIT_DAYS).begins(zone, start).min(now.minus(MOVES_THE_PLAN))
}

impl Gathered {
    /// Puts together what was read.
    pub fn of(kept: NightInputs<'_>) -> Self {
        let NightInputs { now, zone, start, rhythm, rules, sessions, running, points, changes, births } = kept;
        let emptyings = emptyings(sessions);
        let today = LocalDay::of(&Moment::new(now, zone), start);
        let habit = habit(sessions, &emptyings, today, zone, start);
        let age = births.iter().map(|birth| now.since(birth.begins(zone, start))).min();
        let frame = Frame::of(&rhythm, habit, rules, age.filter(|age| *age >= Span::milliseconds(0)));
        Self {
            now,
            zone,
            rhythm,
            frame,
            emptyings: emptyings.into_iter().filter(|e| e.at >= now.minus(MOVES_THE_PLAN)).collect(),
            running,
            points,
            changes,
        }
    }

    /// The plan, with what is known of milk lost to slower refilling.
    pub fn plan(&self, lost: &dyn Fn(Instant, Instant) -> Volume) -> Option<Plan> {
        self.plan_in(&self.frame, lost)
    }

    /// The plan in another frame.
    pub fn plan_in(&self, frame: &Frame, lost: &dyn Fn(Instant, Instant) -> Volume) -> Option<Plan> {
        plan(&Facts {
            now: self.now,
            zone: self.zone,
            frame,
            emptyings: &self.emptyings,
            running: self.running,
            points: &self.points,
            changes: &self.changes,
            lost,
        })
    }
}

/// Sessions that ended, close ones as one; by time.
fn emptyings(rows: &[Row]) -> Vec<Emptying> {
    let mut found: Vec<Emptying> = Vec::new();
    let ended = rows.iter().filter(|row| !row.running).filter_map(|row| row.at.map(|at| (at, row.until.unwrap_or(at))));
    for (from, at) in ended {
        match found.last_mut() {
            Some(last) if at.since(last.at) <= ONE_EMPTYING => last.at = last.at.max(at),
            _ => found.push(Emptying { from, at }),
        }
    }
    found
}

/// How it was usually done: the middle of the days, and of the sessions, that say so.
fn habit(rows: &[Row], emptyings: &[Emptying], today: LocalDay, zone: Zone, start: DayStart) -> Habit {
    let day = |at: Instant| LocalDay::of(&Moment::new(at, zone), start);
    let mut a_day = std::collections::BTreeMap::<LocalDay, u32>::new();
    for emptying in emptyings.iter().filter(|e| day(e.at) < today) {
        *a_day.entry(day(emptying.at)).or_default() += 1;
    }
    // A gap of two usual ones at an hour that on other days has a session hides one.
    for at in likely_missed(emptyings, zone).into_iter().filter(|at| day(*at) < today) {
        *a_day.entry(day(at)).or_default() += 1;
    }
    let mut counts: Vec<u32> = a_day.into_values().collect();
    let mut lengths: Vec<i64> = rows
        .iter()
        .filter_map(|row| Some(row.until?.since(row.at?).in_minutes()))
        .filter(|minutes| (5..=90).contains(minutes))
        .collect();
    Habit {
        sessions_a_day: (counts.len() >= LEAST_DAYS).then(|| middle(&mut counts)).flatten().map(Count::new),
        // Whole steps of five: a plan is no stopwatch.
        lasts: (lengths.len() >= LEAST_DAYS)
            .then(|| middle(&mut lengths))
            .flatten()
            .map(|minutes| Span::minutes(((minutes + 2) / 5 * 5).max(5))),
    }
}

/// A gap so many times the usual one may hide a session.
const HIDES: f64 = 1.6;
/// And does where there is one at that hour, an hour either way, on so many of ten other days.
const AT_THAT_HOUR: usize = 6;

/// Where sessions were likely done and not written down.
fn likely_missed(emptyings: &[Emptying], zone: Zone) -> Vec<Instant> {
    use chrono::Timelike;
    let mut gaps: Vec<i64> =
        emptyings.windows(2).filter_map(|pair| Some(pair.last()?.at.since(pair.first()?.at).in_minutes())).collect();
    let Some(usual) = middle(&mut gaps) else { return Vec::new() };
    let minutes = |at: Instant| i64::from(Moment::new(at, zone).on_the_wall().num_seconds_from_midnight()) / 60;
    let days: std::collections::BTreeSet<_> =
        emptyings.iter().map(|e| Moment::new(e.at, zone).on_the_wall().date()).collect();
    let is_usual_at = |at: Instant| {
        let near = |e: &&Emptying| {
            let apart = (minutes(e.at) - minutes(at)).abs();
            apart.min(24 * 60 - apart) <= 60
        };
        emptyings.iter().filter(near).count() * 10 >= AT_THAT_HOUR * days.len()
    };
    emptyings
        .windows(2)
        .filter_map(|pair| {
            let (from, until) = (pair.first()?.at, pair.last()?.at);
            let gap = until.since(from);
            let middle = from.plus(Span::minutes(gap.in_minutes() / 2));
            // One at most: more than that is a day that is not known.
            let is_one = (HIDES..2.6).contains(&(gap.in_minutes() as f64 / usual.max(1) as f64));
            (is_one && is_usual_at(middle)).then_some(middle)
        })
        .collect()
}

fn middle<T: Ord + Copy>(values: &mut [T]) -> Option<T> {
    values.sort_unstable();
    values.get(values.len() / 2).copied()
}
