//! What the plan keeps to: what was set, else what was done, else a rule.

use crate::guidance::NightRules;
use crate::quantity::Count;
use crate::record::{Block, Ending, Rhythm};
use crate::time::{ClockTime, Span};

/// Where a value of the frame comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Origin {
    /// It was set.
    Set,
    /// It is as it was done lately.
    AsDone,
    /// A rule of this key.
    Rule(&'static str),
    /// A starting value of ours.
    Start,
}

/// A value and where it comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Sourced<T> {
    /// The value.
    pub value: T,
    /// Where it comes from.
    pub origin: Origin,
}

fn set<T>(value: T) -> Sourced<T> {
    Sourced { value, origin: Origin::Set }
}

/// How it was done lately.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Habit {
    /// Sessions a day.
    pub sessions_a_day: Option<Count>,
    /// How long one takes.
    pub lasts: Option<Span>,
}

/// What the plan keeps to.
#[derive(Debug, Clone, PartialEq)]
pub struct Frame {
    /// Sessions a day; none where nothing was set or done.
    pub sessions: Option<Sourced<Count>>,
    /// Fewer and fewer of them.
    pub ending: Option<Ending>,
    /// Whether these are the first days after a birth; none where no birth date says so.
    pub first_days: Option<bool>,
    /// The longest gap from one session's end to the next's.
    pub longest: Sourced<Span>,
    /// The shortest that was set.
    pub shortest: Option<Span>,
    /// When sleep may begin, and when it is over.
    pub sleep: Sourced<(ClockTime, ClockTime)>,
    /// The longest stretch of sleep that is wished for.
    pub stretch: Option<Span>,
    /// At least so many sessions in the sleep window.
    pub night_sessions: Count,
    /// Time to set up before a session.
    pub lead: Span,
    /// How long a session takes.
    pub lasts: Sourced<Span>,
    /// A block of repeated short sessions.
    pub block: Option<Block>,
    /// The rules behind it.
    pub rules: NightRules,
}

/// Where sleep may be when nothing was set: a starting value of ours.
const SLEEP: [(u32, u32); 2] = [(22, 30), (6, 30)];
/// Time to set up when nothing was set: a starting value of ours.
const LEAD: Span = Span::minutes(10);
/// Where sessions fall away their gaps grow: the longest follows, by so much more than an
/// even day's, in hundredths.
const GROWS: i64 = 125;

fn start_of_sleep() -> (ClockTime, ClockTime) {
    let [from, until] =
        SLEEP.map(|(h, m)| ClockTime(chrono::NaiveTime::from_hms_opt(h, m, 0).unwrap_or(chrono::NaiveTime::MIN)));
    (from, until)
}

impl Frame {
    /// The frame of a family. `age` is that of the youngest child, where it is known.
    pub fn of(rhythm: &Rhythm, habit: Habit, rules: NightRules, age: Option<Span>) -> Self {
        let first_days = age.map(|age| age < rules.early);
        let longest = match (rhythm.longest, first_days) {
            (Some(longest), _) => set(longest),
            (None, Some(false)) => Sourced { value: rules.longest, origin: Origin::Rule("longest_gap") },
            // An age that is not known may be one of the first days: the shorter gap.
            (None, Some(true) | None) => {
                Sourced { value: rules.longest_early, origin: Origin::Rule("longest_gap_early") }
            }
        };
        Self {
            sessions: rhythm
                .sessions_a_day
                .map(set)
                .or(habit.sessions_a_day.map(|value| Sourced { value, origin: Origin::AsDone })),
            ending: rhythm.ending,
            first_days,
            longest,
            shortest: rhythm.shortest,
            sleep: rhythm.sleep.map_or(Sourced { value: start_of_sleep(), origin: Origin::Start }, set),
            stretch: rhythm.stretch,
            night_sessions: rhythm.night_sessions.unwrap_or(Count::new(0)),
            lead: rhythm.lead.unwrap_or(LEAD),
            lasts: match habit.lasts {
                Some(value) => Sourced { value, origin: Origin::AsDone },
                None => Sourced { value: rules.usual_length, origin: Origin::Rule("usual_length") },
            },
            block: rhythm.block,
            rules,
        }
    }

    /// Sessions wished for on a day.
    pub fn wish_on(&self, date: chrono::NaiveDate) -> Option<Count> {
        let wish = self.sessions?.value;
        Some(self.ending.map_or(wish, |ending| ending.left_of(wish, date)))
    }

    /// The longest gap on a day: where sessions fall away, longer with them. None where
    /// none are left.
    pub fn longest_on(&self, date: chrono::NaiveDate) -> Option<Span> {
        let Some(ending) = self.ending.filter(|e| e.from <= date) else { return Some(self.longest.value) };
        let wish = self.sessions?.value;
        match ending.left_of(wish, date).get() {
            0 => None,
            left => Some(self.longest.value.max(Span::minutes(24 * 60 * GROWS / 100 / i64::from(left)))),
        }
    }

    /// The shortest gap the plan makes by itself: what was set, and no closer than the pace
    /// a late session may be caught up with.
    pub fn closest(&self) -> Span {
        let pace = self
            .sessions
            .map_or(0.0, |n| 24.0 * 60.0 / f64::from(n.value.get().max(1)) * self.rules.catches_up.fraction());
        self.shortest.unwrap_or(Span::minutes(0)).max(Span::minutes(pace as i64))
    }

    /// An even day's gap; a day's length where no number of sessions is known.
    pub fn even_gap(&self) -> Span {
        Span::minutes(24 * 60 / i64::from(self.sessions.map_or(1, |n| n.value.get().max(1))))
    }
}
