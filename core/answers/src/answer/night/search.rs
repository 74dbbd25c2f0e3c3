//! The exact search: of all ways to lay sessions on a grid of quarter hours, the one that
//! costs least.
//!
//! Costs are compared in the order of [`Cost`]: a cost further down never outweighs one
//! further up. A way is a chain of sessions; what a chain costs is the sum of what each
//! pair of neighbours costs, so that the best end of a chain does not depend on how it
//! began: a plan followed stays the plan (Bellman, Dynamic Programming, 1957). The whole
//! table is walked once: points × sessions of the day so far × whether the night has its
//! one long sleep × sessions in that night.

pub use super::task::{Begun, Minute, PlanDay, Sleep, Task, Wanted, Window, STEP_MINUTES};

/// A session that begins where it is to be avoided weighs as so many minutes under the
/// shortest interval.
pub const AVOIDED: u32 = 240;

/// What a plan costs, the weightiest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub struct Cost {
    /// Wanted sessions that cannot be.
    pub missed: u32,
    /// Minutes beyond the longest interval.
    pub over_longest: u32,
    /// Minutes under the shortest.
    pub under_shortest: u32,
    /// Night sessions that lack.
    pub night_lacks: u32,
    /// Minutes the one long sleep lacks.
    pub stretch_lacks: u32,
    /// Minutes of the nights that are not slept.
    pub awake: u32,
    /// Sessions more or fewer than wished for.
    pub off_wish: u32,
    /// Milk lost to slower refilling, in hundredths of a millilitre, and unevenness.
    pub soft: u64,
}

/// What an uneven interval weighs: hundredths of a millilitre a squared quarter hour.
pub const UNEVEN: u64 = 5;

/// Every cost in one number that adds and compares as they do, field by field.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Packed(u128);

impl Packed {
    const NOT_REACHED: Self = Self(u128::MAX);

    fn of(cost: &Cost) -> Self {
        let mut packed = u128::from(cost.missed.min(0xff));
        let mut put = |value: u64, bits: u32| packed = packed << bits | u128::from(value.min((1 << bits) - 1));
        put(cost.over_longest.into(), 16);
        put(cost.under_shortest.into(), 16);
        put(cost.night_lacks.into(), 8);
        put(cost.stretch_lacks.into(), 16);
        put(cost.awake.into(), 16);
        put(cost.off_wish.into(), 12);
        put(cost.soft, 36);
        Self(packed)
    }

    fn plus(self, more: Self) -> Self {
        Self(self.0.saturating_add(more.0))
    }
}

/// The points of the grid at which sessions begin.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Found {
    /// In order.
    pub starts: Vec<usize>,
}

/// How a night stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
struct Night {
    /// It has its one long sleep.
    slept: bool,
    /// Sessions so far, no more than are asked for.
    sessions: u32,
}

/// Where a chain may stand after a session: the night, and the sessions of the day so far.
#[derive(Debug, Clone, Copy)]
struct Layout {
    /// Sessions of a day are counted up to here.
    most: usize,
    /// Ways a night may stand.
    nights: usize,
}

impl Layout {
    fn of(task: &Task) -> Self {
        let wish = task.days.iter().filter_map(|d| d.wish).max().unwrap_or(0);
        let done = task.days.first().map_or(0, |d| d.done);
        Self { most: (wish.max(done) + 8) as usize, nights: 2 * (task.night_sessions as usize + 1) }
    }
    fn size(self) -> usize {
        (self.most + 1) * self.nights
    }
    fn of_night(night: Night) -> usize {
        night.sessions as usize * 2 + usize::from(night.slept)
    }
    fn index(self, count: usize, night: usize) -> usize {
        count * self.nights + night
    }
    fn night(index: usize) -> Night {
        Night { slept: index % 2 == 1, sessions: (index / 2) as u32 }
    }
}

/// One neighbour to the next: what it costs whatever the state, and what it does to it.
struct Pass<'t> {
    task: &'t Task,
    layout: Layout,
    /// When the session before ended, and began; none before the first.
    ended: Option<Minute>,
    began: Minute,
    /// From when it counts who is awake: the time to set up a first session may lie before
    /// the search begins, and costs as much as that of any other.
    awake_from: Minute,
    /// When the next begins; none where the search ends before.
    begins: Option<Minute>,
    /// Its end, or that of the search.
    next_ends: Minute,
}

impl Pass<'_> {
    fn until(&self) -> Minute {
        self.begins.unwrap_or(self.task.ends())
    }

    /// What does not depend on the state. `lost` is milk lost in hundredths of a millilitre.
    fn base(&self, missed: u32, paced_since: Option<Minute>, lost: u64) -> Cost {
        let task = self.task;
        let mut cost = Cost { missed, soft: lost, ..Cost::default() };
        if let Some(ended) = self.ended {
            let gap = self.next_ends - ended;
            cost.over_longest = (gap - task.longest).max(0) as u32;
            let steps = (gap.max(0) / STEP_MINUTES).unsigned_abs();
            cost.soft += UNEVEN * u64::from(steps) * u64::from(steps);
        }
        if let (Some(paced), true) = (paced_since.or(self.ended), self.begins.is_some()) {
            cost.under_shortest = (task.shortest - (self.next_ends - paced)).max(0) as u32;
        }
        if self.begins.is_some_and(|begins| task.is_avoided((begins / STEP_MINUTES) as usize)) {
            cost.under_shortest += AVOIDED;
        }
        for window in &task.windows {
            let from = window.from.max(self.awake_from);
            let inside = window.until.min(self.until()) - from;
            if inside > 0 {
                let slept = task.sleep(*window, self.ended, self.begins).map_or(0, |s| s.until - s.from.max(from));
                cost.awake += (inside - slept.max(0)).max(0) as u32;
            }
        }
        cost
    }

    /// How the night may stand after this, each with what getting there costs: at most two
    /// ways, since a sleep may be taken as the one long sleep or not.
    fn night(&self, from: Night) -> [Option<(Night, Packed)>; 2] {
        let task = self.task;
        let mut plain = (from, Cost::default());
        let mut taken = None;
        for window in &task.windows {
            let touches = window.until > self.began
                && (window.from < self.until() || self.begins.is_some_and(|b| b >= window.from && b < window.until));
            if !touches {
                continue;
            }
            let lacks = (task.asked(*window) - task.slept(*window, self.ended, self.begins)).max(0) as u32;
            if window.until <= self.until() {
                for way in [Some(&mut plain), taken.as_mut()].into_iter().flatten() {
                    let (night, cost) = *way;
                    *way = (Night::default(), self.closed(night, cost, lacks));
                }
                continue;
            }
            if !plain.0.slept && task.stretch.is_some() {
                let cost = Cost { stretch_lacks: plain.1.stretch_lacks + lacks, ..plain.1 };
                taken = Some((Night { slept: true, ..plain.0 }, cost));
            }
            if self.begins.is_some_and(|begins| begins >= window.from) {
                for (night, _) in std::iter::once(&mut plain).chain(taken.as_mut()) {
                    night.sessions = (night.sessions + 1).min(task.night_sessions);
                }
            }
        }
        [Some(plain), taken].map(|way| way.map(|(night, cost)| (night, Packed::of(&cost))))
    }

    /// A night that is over: what it lacked counts.
    fn closed(&self, night: Night, mut cost: Cost, lacks: u32) -> Cost {
        cost.stretch_lacks += if night.slept { 0 } else { lacks };
        cost.night_lacks += self.task.night_sessions - night.sessions;
        cost
    }

    /// How many sessions the day then has, and what the days that ended on the way cost.
    fn count(&self, from: usize) -> (usize, Packed) {
        let (mut count, mut cost) = (from, Cost::default());
        for day in &self.task.days {
            if day.until > self.began && day.until <= self.until() {
                if let Some(wish) = day.wish {
                    cost.off_wish += wish.abs_diff(count as u32);
                }
                count = 0;
            }
        }
        if self.begins.is_some() {
            count = (count + 1).min(self.layout.most);
        }
        (count, Packed::of(&cost))
    }
}

impl Task {
    fn between(&self, layout: Layout, before: Option<usize>, next: Option<usize>) -> Pass<'_> {
        Pass {
            task: self,
            layout,
            ended: before.map(|p| Self::minute(p) + self.lasts_at(p)).or(self.since),
            began: before.map_or(0, Self::minute),
            awake_from: before.map_or(self.awake_from(), Self::minute),
            begins: next.map(Self::minute),
            next_ends: next.map_or(self.ends(), |p| Self::minute(p) + self.lasts_at(p)),
        }
    }

    /// Where the next session may begin. Beyond the longest interval only where nothing is
    /// open within it: one more in between makes no gap longer.
    fn next_points(&self, before: Option<usize>, open: &[bool]) -> Vec<usize> {
        let ended = before.map(|p| Self::minute(p) + self.lasts_at(p));
        let first = ((ended.unwrap_or(0) + STEP_MINUTES - 1) / STEP_MINUTES) as usize;
        let mut found: Vec<usize> = Vec::new();
        // One that begins while the first would still run may serve as well.
        let mut last = ended.or(self.since).map(|ended| ended + self.longest);
        for point in (first..self.points).filter(|p| open.get(*p).copied().unwrap_or(false)) {
            if last.is_some_and(|last| Self::minute(point) > last) && !found.is_empty() {
                break;
            }
            if found.is_empty() {
                last = last.map(|last| last.max(Self::minute(point) + self.lasts_at(point)));
            }
            found.push(point);
        }
        found
    }

    /// Wanted sessions that a chain leaves out between two neighbours.
    fn missed(&self, before: Option<usize>, next: Option<usize>) -> u32 {
        let left_out =
            |w: &&Wanted| before.is_none_or(|b| w.starts.start > b) && next.is_none_or(|n| w.starts.end <= n);
        self.wanted.iter().filter(left_out).count() as u32
    }
}

/// Finds the plan that costs least. `lost` tells the milk lost, in hundredths of a
/// millilitre, between the end of one emptying and the end of the next.
pub fn search(task: &Task, lost: &dyn Fn(Minute, Minute) -> u64) -> Found {
    let mut table = Table::new(task, lost);
    table.pass(None);
    for point in 0..task.points {
        table.pass(Some(point));
    }
    table.best_chain()
}

/// Came from nowhere: a chain begins.
const BEGINS: u32 = u32::MAX;

/// What the cheapest chain to each point and state costs, and from where it came.
struct Table<'t> {
    task: &'t Task,
    lost: &'t dyn Fn(Minute, Minute) -> u64,
    layout: Layout,
    open: Vec<bool>,
    best: Vec<Packed>,
    came: Vec<u32>,
    end: (Packed, u32),
}

impl<'t> Table<'t> {
    fn new(task: &'t Task, lost: &'t dyn Fn(Minute, Minute) -> u64) -> Self {
        let layout = Layout::of(task);
        let all = task.points * layout.size();
        Self {
            task,
            lost,
            layout,
            open: (0..task.points).map(|p| task.may_begin(p)).collect(),
            best: vec![Packed::NOT_REACHED; all],
            came: vec![BEGINS; all],
            end: (Packed::NOT_REACHED, BEGINS),
        }
    }

    /// The states that were reached at a point, each with its cost and place in the table.
    fn reached(&self, point: Option<usize>) -> Vec<(usize, Packed, u32)> {
        let Some(point) = point else {
            let done = self.task.days.first().map_or(0, |d| (d.done as usize).min(self.layout.most));
            let begun = self.task.begun;
            let sessions = begun.sessions.min(self.task.night_sessions);
            let mut first =
                vec![(self.layout.index(done, Layout::of_night(Night { slept: false, sessions })), Packed(0), BEGINS)];
            if let (true, Some(night)) = (begun.slept > 0, self.task.windows.first()) {
                let stretch_lacks = (self.task.asked(*night) - begun.slept).max(0) as u32;
                let state = self.layout.index(done, Layout::of_night(Night { slept: true, sessions }));
                first.push((state, Packed::of(&Cost { stretch_lacks, ..Cost::default() }), BEGINS));
            }
            return first;
        };
        let size = self.layout.size();
        let states = self.best.get(point * size..(point + 1) * size).unwrap_or_default();
        let reached = states.iter().enumerate().filter(|(_, cost)| **cost != Packed::NOT_REACHED);
        reached.map(|(state, cost)| (state, *cost, (point * size + state) as u32)).collect()
    }

    /// From one point, or from the beginning, to every next one and to the end.
    fn pass(&mut self, before: Option<usize>) {
        let reached = self.reached(before);
        if reached.is_empty() {
            return;
        }
        let task = self.task;
        for next in task.next_points(before, &self.open).into_iter().map(Some).chain([None]) {
            let pass = task.between(self.layout, before, next);
            let lost = pass.ended.map_or(0, |ended| (self.lost)(ended, pass.next_ends));
            let paced = before.map_or(task.paced_since, |_| None);
            let base = Packed::of(&pass.base(task.missed(before, next), paced, lost));
            let nights: Vec<_> = (0..self.layout.nights).map(|n| pass.night(Layout::night(n))).collect();
            let counts: Vec<_> = (0..=self.layout.most).map(|c| pass.count(c)).collect();
            for (state, so_far, came) in &reached {
                let (count, night) = (state / self.layout.nights, state % self.layout.nights);
                let (Some((count, of_days)), Some(ways)) = (counts.get(count), nights.get(night)) else { continue };
                let so_far = so_far.plus(base).plus(*of_days);
                for (night, of_night) in ways.iter().flatten() {
                    let cost = so_far.plus(*of_night);
                    match next {
                        Some(next) => self.take(next, self.layout.index(*count, Layout::of_night(*night)), cost, *came),
                        // Of plans that cost the same the one first reached, as everywhere in
                        // the table: the plan stays the same one when some of it is done.
                        None if cost < self.end.0 => self.end = (cost, *came),
                        None => {}
                    }
                }
            }
        }
    }

    fn take(&mut self, point: usize, state: usize, cost: Packed, came: u32) {
        let at = point * self.layout.size() + state;
        if let (Some(best), Some(from)) = (self.best.get_mut(at), self.came.get_mut(at)) {
            if cost < *best {
                (*best, *from) = (cost, came);
            }
        }
    }

    fn best_chain(&self) -> Found {
        let mut starts = Vec::new();
        let mut at = self.end.1;
        while let Some(came) = self.came.get(at as usize) {
            starts.push(at as usize / self.layout.size());
            at = *came;
        }
        starts.reverse();
        Found { starts }
    }
}
