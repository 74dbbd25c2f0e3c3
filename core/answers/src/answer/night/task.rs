//! What a plan is searched for: a grid of quarter hours, and what stands on it.

use std::ops::Range;

/// Minutes between two points of the grid.
pub const STEP_MINUTES: i32 = 15;

/// Minutes from the beginning of the search, which is a point of the grid.
pub type Minute = i32;

/// A stretch that a session is to begin in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Wanted {
    /// It may begin at these points of the grid.
    pub starts: Range<usize>,
    /// How long the session takes where it is not the usual length.
    pub lasts: Option<Minute>,
}

/// A night.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Window {
    /// Sleep may begin.
    pub from: Minute,
    /// It is over.
    pub until: Minute,
}

/// What a night already had.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Begun {
    /// Sessions in it.
    pub sessions: u32,
    /// The longest sleep in it.
    pub slept: Minute,
}

/// A day from one waking to the next, and how many sessions are wished for in it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PlanDay {
    /// It ends here; the next begins.
    pub until: Minute,
    /// Sessions wished for in all of it.
    pub wish: Option<u32>,
    /// Those that were, before the search begins.
    pub done: u32,
}

/// What the search keeps to.
#[derive(Debug, Clone, PartialEq)]
pub struct Task {
    /// Points of the grid; the first is minute 0.
    pub points: usize,
    /// When the last emptying was over, 0 or before; none where none is known.
    pub since: Option<Minute>,
    /// From when the first interval's pace counts; later than `since` where one was left out.
    pub paced_since: Option<Minute>,
    /// A session takes this long.
    pub lasts: Minute,
    /// Nothing is longer than this from one emptying's end to the next.
    pub longest: Minute,
    /// Nor shorter than this.
    pub shortest: Minute,
    /// No session overlaps these.
    pub busy: Vec<Range<Minute>>,
    /// In each of these is one, in order of time.
    pub wanted: Vec<Wanted>,
    /// No session begins at these points.
    pub closed: Vec<Range<usize>>,
    /// A session begins at these points only where a gap would else be over the longest.
    pub avoided: Vec<Range<usize>>,
    /// The nights, in order.
    pub windows: Vec<Window>,
    /// Sessions and the longest sleep in the first of them, where it began before the search.
    pub begun: Begun,
    /// One sleep this long is wished for in each.
    pub stretch: Option<Minute>,
    /// At least so many sessions in each.
    pub night_sessions: u32,
    /// The days, in order; the last ends with the search.
    pub days: Vec<PlanDay>,
    /// Time to set up before a session.
    pub lead: Minute,
    /// Time to be asleep again after one.
    pub asleep_again: Minute,
}

/// A sleep between two sessions.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sleep {
    /// Asleep.
    pub from: Minute,
    /// Up again.
    pub until: Minute,
}

impl Sleep {
    /// How long.
    pub fn lasts(self) -> Minute {
        self.until - self.from
    }
}

impl Task {
    pub(super) fn minute(point: usize) -> Minute {
        point as Minute * STEP_MINUTES
    }

    /// Where the search ends.
    pub fn ends(&self) -> Minute {
        Self::minute(self.points)
    }

    /// How long a session that begins at a point takes.
    pub fn lasts_at(&self, point: usize) -> Minute {
        let own = self.wanted.iter().find(|w| w.lasts.is_some() && w.starts.contains(&point));
        own.and_then(|w| w.lasts).unwrap_or(self.lasts)
    }

    pub(super) fn awake_from(&self) -> Minute {
        self.since.unwrap_or(0).min(0)
    }

    pub(super) fn is_avoided(&self, point: usize) -> bool {
        self.avoided.iter().any(|a| a.contains(&point)) && !self.wanted.iter().any(|w| w.starts.contains(&point))
    }

    /// Whether a session may begin at a point. What was set by hand or stands goes before
    /// what is busy.
    pub(super) fn may_begin(&self, point: usize) -> bool {
        if self.wanted.iter().any(|w| w.starts.contains(&point)) {
            return true;
        }
        let (from, until) = (Self::minute(point), Self::minute(point) + self.lasts_at(point));
        !self.closed.iter().any(|c| c.contains(&point)) && !self.busy.iter().any(|b| from < b.end && b.start < until)
    }

    /// The sleep within a window between an emptying that ended and a session that begins;
    /// who was awake in it needs time to be asleep again.
    pub(super) fn sleep(&self, window: Window, ended: Option<Minute>, begins: Option<Minute>) -> Option<Sleep> {
        let from = match ended {
            Some(ended) if ended >= window.from => ended + self.asleep_again,
            _ => window.from,
        };
        let until = begins.map_or(window.until, |begins| (begins - self.lead).min(window.until));
        (until > from).then_some(Sleep { from, until })
    }

    pub(super) fn slept(&self, window: Window, ended: Option<Minute>, begins: Option<Minute>) -> Minute {
        self.sleep(window, ended, begins).map_or(0, Sleep::lasts)
    }

    /// The long sleep that is asked of a window.
    pub(super) fn asked(&self, window: Window) -> Minute {
        self.stretch.unwrap_or(0).min(window.until - window.from)
    }

    /// The sleeps that a plan leaves of a window, in order.
    pub fn sleeps(&self, window: Window, starts: &[usize]) -> Vec<Sleep> {
        let ends = starts.iter().map(|s| Self::minute(*s) + self.lasts_at(*s));
        let ended = std::iter::once(self.since).chain(ends.map(Some));
        let begins = starts.iter().map(|s| Some(Self::minute(*s))).chain([None]);
        ended.zip(begins).filter_map(|(ended, begins)| self.sleep(window, ended, begins)).collect()
    }
}
