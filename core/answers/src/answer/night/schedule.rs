//! Sessions laid on the grid of the search: what is known, in its minutes, and what was found.

use super::facts::{Basis, Facts};
use super::frame::Frame;
use super::occurrences::{nights, points, PointOccurrence, Stretch};
use super::search::{search, Found};
use super::task::{Begun, Minute, PlanDay, Sleep, Task, Wanted, Window, STEP_MINUTES};
use crate::quantity::Quantity;
use crate::record::{PlanDone, PointKind, SessionIn};
use crate::time::{Instant, Moment, Span, Zone};

/// Within this of a session that was left out there is none in any case.
const LEFT_OUT: Span = Span::minutes(30);

/// A task, where it lies in time, and what was found.
pub(super) struct Schedule {
    pub(super) task: Task,
    pub(super) origin: Instant,
    pub(super) found: Found,
    pub(super) occurrences: Vec<PointOccurrence>,
    pub(super) pins: Vec<Instant>,
    pub(super) nights: Vec<Stretch>,
    pub(super) basis: Basis,
}

pub(super) fn grid(at: Instant) -> Instant {
    let step = Span::minutes(STEP_MINUTES.into()).in_milliseconds();
    Instant::from_unix_milliseconds((at.unix_milliseconds() + step - 1).div_euclid(step) * step)
}

impl Schedule {
    pub(super) fn minute(&self, at: Instant) -> Minute {
        minutes(at.since(self.origin))
    }

    /// The instant of a point of the grid.
    pub(super) fn at(&self, point: usize) -> Instant {
        self.origin.plus(Span::minutes(Task::minute(point).into()))
    }

    pub(super) fn instant(&self, minute: Minute) -> Instant {
        self.origin.plus(Span::minutes(minute.into()))
    }

    /// Lays sessions from an instant on. `late` is the time of one that did not come: the
    /// next is then as soon as can be.
    pub(super) fn build(facts: &Facts<'_>, basis: Basis, from: Instant, late: Option<Instant>) -> Self {
        let frame = facts.frame;
        let origin = grid(from);
        let coming: Vec<Stretch> =
            nights(frame, facts.now, facts.now.plus(Span::hours(80)), facts.zone).into_iter().take(2).collect();
        let ends = coming.last().map_or(facts.now.plus(Span::hours(40)), |n| n.until);
        let minute = |at: Instant| minutes(at.since(origin));
        let points_count = ((minute(ends) + STEP_MINUTES - 1) / STEP_MINUTES).max(1) as usize;
        let nights = nights(frame, origin, ends, facts.zone);
        let even = frame.even_gap();
        let since = match basis {
            Basis::Emptying(at) => at,
            // What was is unknown; one may be due.
            Basis::FrameAlone | Basis::Silence { .. } => origin.minus(even),
        };
        let occurrences = points(frame, facts.points, origin.minus(Span::hours(24)), ends, facts.zone);
        let changes = Changes::read(facts, since);
        let busy = occurrences.iter().filter(|s| s.session == SessionIn::Not);
        let mut wanted: Vec<Wanted> = Vec::new();
        for stands in occurrences.iter().filter(|s| s.session == SessionIn::Wanted) {
            let was = facts.emptyings.iter().any(|e| stands.stretch.holds(e.at) || stands.stretch.holds(e.from));
            let skipped = changes.skipped.iter().any(|at| stands.stretch.holds(*at));
            if !was && !skipped {
                wanted.extend(wanted_in(frame, stands, minute(stands.stretch.from), minute(stands.stretch.until)));
            }
        }
        for pin in &changes.pins {
            let point = (minute(*pin).max(0) / STEP_MINUTES) as usize;
            wanted.push(Wanted { starts: point..point + 1, lasts: None });
        }
        wanted.retain(|w| w.starts.start < points_count);
        wanted.sort_by_key(|w| (w.starts.start, w.starts.end));
        // What was left out is not made up for near its time, unless a gap would be too long.
        let around = |half: Span| -> Vec<std::ops::Range<usize>> {
            let minutes =
                changes.skipped.iter().map(|at| (minute(at.minus(half)).max(0), minute(at.plus(half)).max(0)));
            let points = minutes.map(|(from, until)| {
                (from / STEP_MINUTES) as usize..((until + STEP_MINUTES - 1) / STEP_MINUTES) as usize
            });
            points.filter(|points| !points.is_empty()).collect()
        };
        let half = Span::minutes(frame.closest().in_minutes().max(even.in_minutes() / 2));
        let mut task = Task {
            points: points_count,
            since: Some(minute(since)),
            paced_since: changes.skipped.iter().map(|at| minute(*at)).filter(|m| *m > minute(since) && *m <= 0).max(),
            lasts: minutes(frame.lasts.value).max(1),
            longest: longest(frame, &nights, origin, facts.zone, ends),
            shortest: minutes(frame.closest()),
            busy: busy.map(|s| minute(s.stretch.from)..minute(s.stretch.until)).collect(),
            wanted,
            closed: around(LEFT_OUT),
            avoided: around(half),
            windows: nights.iter().map(|n| Window { from: minute(n.from), until: minute(n.until) }).collect(),
            begun: Begun::default(),
            stretch: frame.stretch.map(minutes),
            night_sessions: frame.night_sessions.get(),
            days: Vec::new(),
            lead: minutes(frame.lead),
            asleep_again: minutes(frame.rules.asleep_again),
        };
        task.begun = begun(facts, &task, nights.first(), origin, since);
        task.days = days(facts, &changes, &nights, origin, task.ends());
        if late.is_some() {
            as_soon_as_can_be(&mut task);
        }
        let lost = |from: Minute, until: Minute| {
            let at = |m: Minute| origin.plus(Span::minutes(m.into()));
            (((facts.lost)(at(from), at(until)).canonical() * 100.0).max(0.0)) as u64
        };
        let found = search(&task, &lost);
        Self { task, origin, found, occurrences, pins: changes.pins, nights, basis }
    }

    /// The fixed point or block that a session is for.
    pub(super) fn stands_for(&self, point: usize) -> Option<&PointOccurrence> {
        let at = self.at(point);
        self.occurrences
            .iter()
            .find(|s| s.session == SessionIn::Wanted && (s.stretch.holds(at) || grid(s.stretch.from) == at))
    }

    /// What of a window is slept: what was, by the emptyings, and what is to come.
    pub(super) fn sleeps(&self, facts: &Facts<'_>, window: Stretch) -> Vec<Stretch> {
        let window_minutes = Window { from: self.minute(window.from), until: self.minute(window.until) };
        let stretch = |s: Sleep| Stretch { from: self.instant(s.from), until: self.instant(s.until) };
        let mut sleeps = past_sleeps(facts, &self.task, self.origin, window);
        sleeps.extend(self.task.sleeps(window_minutes, &self.found.starts).into_iter().map(stretch));
        sleeps
    }

    pub(super) fn occurrences(&self) -> &[PointOccurrence] {
        &self.occurrences
    }

    pub(super) fn starts_until(&self, until: Instant) -> Vec<usize> {
        self.found.starts.iter().copied().filter(|p| self.at(*p) <= until).collect()
    }

    pub(super) fn nights(&self) -> &[Stretch] {
        &self.nights
    }
}

pub(super) fn minutes(span: Span) -> Minute {
    i32::try_from(span.in_minutes()).unwrap_or(if span < Span::milliseconds(0) { i32::MIN / 4 } else { i32::MAX / 4 })
}

/// Where the session of a wanted stretch may begin: so that it ends within, if it can.
fn wanted_in(frame: &Frame, stands: &PointOccurrence, from: Minute, until: Minute) -> Option<Wanted> {
    let own = matches!(stands.kind, None | Some(PointKind::Feed));
    let lasts = if own { until - from } else { minutes(frame.lasts.value) };
    let first = from.max(0).div_euclid(STEP_MINUTES) + i32::from(from.max(0).rem_euclid(STEP_MINUTES) > 0);
    let last = if own { first } else { ((until - lasts).div_euclid(STEP_MINUTES)).max(first) };
    // One that began before the plan does can still be kept while it lasts.
    (first * STEP_MINUTES < until)
        .then(|| Wanted { starts: first as usize..last as usize + 1, lasts: own.then_some(lasts.max(1)) })
}

/// Late: nothing is set by hand or stands before the first point that is open, and the
/// session is to be there.
fn as_soon_as_can_be(task: &mut Task) {
    if let Some(first) = (0..task.points).find(|p| task.may_begin(*p)) {
        if !task.wanted.iter().any(|w| w.starts.contains(&first)) {
            task.wanted.push(Wanted { starts: first..first + 1, lasts: None });
            task.wanted.sort_by_key(|w| (w.starts.start, w.starts.end));
        }
    }
}

fn longest(frame: &Frame, nights: &[Stretch], origin: Instant, zone: Zone, ends: Instant) -> Minute {
    let dates = std::iter::once(origin).chain(nights.iter().map(|n| n.from));
    let all: Option<Vec<Span>> = dates.map(|at| frame.longest_on(Moment::new(at, zone).on_the_wall().date())).collect();
    match all.and_then(|all| all.into_iter().max()) {
        Some(longest) => minutes(longest),
        // None is left: nothing is too long.
        None => minutes(ends.since(origin)) + 24 * 60 * 7,
    }
}

/// The sleeps of a window that emptyings end before the plan begins.
fn past_sleeps(facts: &Facts<'_>, task: &Task, origin: Instant, window: Stretch) -> Vec<Stretch> {
    let minute = |at: Instant| minutes(at.since(origin));
    let inside = Window { from: minute(window.from), until: minute(window.until) };
    let mut ended: Option<Minute> = None;
    let mut sleeps = Vec::new();
    for emptying in facts.emptyings.iter().filter(|e| e.at <= facts.now) {
        if ended.is_some() {
            sleeps.extend(task.sleep(inside, ended, Some(minute(emptying.from))));
        }
        ended = Some(minute(emptying.at));
    }
    let instant = |m: Minute| origin.plus(Span::minutes(m.into()));
    sleeps.into_iter().map(|s| Stretch { from: instant(s.from), until: instant(s.until) }).collect()
}

/// What the night that has begun already had.
fn begun(facts: &Facts<'_>, task: &Task, night: Option<&Stretch>, origin: Instant, since: Instant) -> Begun {
    let Some(night) = night.filter(|n| n.from < origin) else { return Begun::default() };
    let sessions = facts.emptyings.iter().filter(|e| e.from >= night.from && e.at <= since).count() as u32;
    let slept = past_sleeps(facts, task, origin, *night).iter().map(|s| minutes(s.lasts())).max().unwrap_or(0);
    Begun { sessions, slept }
}

/// The days from waking to waking, with what was wished for and done.
fn days(facts: &Facts<'_>, changes: &Changes, nights: &[Stretch], origin: Instant, ends: Minute) -> Vec<PlanDay> {
    let frame = facts.frame;
    let wish = |from: Instant| frame.wish_on(Moment::new(from, facts.zone).on_the_wall().date()).map(|n| n.get());
    // The day that is began when the last night before the plan was over.
    let before = super::occurrences::nights(frame, origin.minus(Span::hours(60)), origin, facts.zone);
    let began = before.iter().map(|n| n.until).filter(|u| *u <= origin).max().unwrap_or(origin);
    let emptied = facts.emptyings.iter().filter(|e| e.at > began && e.at <= origin.max(facts.now)).count() as u32;
    let skipped = changes.skipped.iter().filter(|at| **at > began).count() as u32;
    let mut days = Vec::new();
    let mut from = began;
    for night in nights {
        let until = minutes(night.until.since(origin)).min(ends);
        let done = if days.is_empty() { emptied + skipped } else { 0 };
        days.push(PlanDay { until, wish: wish(from), done });
        from = night.until;
    }
    if let Some(last) = days.last_mut() {
        last.until = ends;
    }
    days
}

/// Changes by hand that still hold.
struct Changes {
    /// Sessions are to be at these times.
    pins: Vec<Instant>,
    /// Sessions near these times are left out.
    skipped: Vec<Instant>,
}

impl Changes {
    /// A change holds until an emptying takes its place.
    fn read(facts: &Facts<'_>, last: Instant) -> Self {
        let near = facts.frame.closest();
        let mut all = Self { pins: Vec::new(), skipped: Vec::new() };
        for change in facts.changes {
            all.pins.retain(|pin| *pin != change.of);
            match change.done {
                PlanDone::Moved { to } => {
                    all.skipped.retain(|at| *at != to);
                    all.pins.push(to);
                }
                PlanDone::Skipped => all.skipped.push(change.of),
                PlanDone::Snoozed { .. } => {}
            }
        }
        all.pins.retain(|pin| pin.since(last) >= near || pin.since(last) > Span::hours(1));
        all.skipped.retain(|at| *at > last);
        all.pins.sort();
        all.pins.dedup();
        all
    }
}
