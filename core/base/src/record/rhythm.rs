//! How sessions are to fall over a day, and sleep with them, as it was set.

use chrono::NaiveDate;

use super::{clock_time, date, span, text, whole_number, Fields};
use crate::quantity::Count;
use crate::time::{ClockTime, Span};

/// How a reminder comes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reminding {
    /// With a sound.
    Sound,
    /// Without one.
    Quiet,
    /// Not at all.
    None,
}

impl Reminding {
    fn named(name: &str) -> Option<Self> {
        match name {
            "sound" => Some(Self::Sound),
            "quiet" => Some(Self::Quiet),
            "none" => Some(Self::None),
            _ => None,
        }
    }
}

/// A block of repeated short sessions at the same time each day.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Block {
    /// When it begins.
    pub at: ClockTime,
    /// How many sessions.
    pub sessions: Count,
    /// How long each takes.
    pub express: Span,
    /// How long the rests between them are.
    pub rest: Span,
}

impl Block {
    /// From the first minute to the last.
    pub fn lasts(self) -> Span {
        let sessions = i64::from(self.sessions.get());
        let all = self.express.in_minutes() * sessions + self.rest.in_minutes() * (sessions - 1).max(0);
        Span::minutes(all)
    }
}

/// Sessions that fall away slowly, when expressing is to end.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ending {
    /// The first day with one session fewer.
    pub from: NaiveDate,
    /// One more falls away after so many days.
    pub every: Count,
    /// So many stay.
    pub until: Count,
}

impl Ending {
    /// How many of a wish are left on a day.
    pub fn left_of(self, wish: Count, on: NaiveDate) -> Count {
        let days = (on - self.from).num_days();
        if days < 0 {
            return wish;
        }
        let fewer = u32::try_from(days / i64::from(self.every.get().max(1))).unwrap_or(u32::MAX).saturating_add(1);
        Count::new(wish.get().saturating_sub(fewer).max(self.until.get().min(wish.get())))
    }
}

/// What was set; nothing where nothing was.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Rhythm {
    /// Sessions a day that are wished for.
    pub sessions_a_day: Option<Count>,
    /// The longest gap.
    pub longest: Option<Span>,
    /// The shortest.
    pub shortest: Option<Span>,
    /// When sleep may begin, and when it is over.
    pub sleep: Option<(ClockTime, ClockTime)>,
    /// The longest stretch of sleep that is wished for.
    pub stretch: Option<Span>,
    /// At least so many sessions in the sleep window.
    pub night_sessions: Option<Count>,
    /// How reminders come by day.
    pub reminders: Option<Reminding>,
    /// How they come in the sleep window.
    pub night_reminders: Option<Reminding>,
    /// Time to set up before a session.
    pub lead: Option<Span>,
    /// A block of repeated short sessions.
    pub block: Option<Block>,
    /// Fewer and fewer sessions.
    pub ending: Option<Ending>,
}

/// A block without its own figures: common practice, no source.
const BLOCK: (u32, Span) = (3, Span::minutes(10));
/// An ending without its own figures: ours, a starting value.
const ONE_FEWER_EVERY: u32 = 3;

impl Rhythm {
    /// Reads the record of it.
    pub fn read(fields: &Fields) -> Self {
        let count = |key: &str| whole_number(fields, key).map(Count::new);
        let reminding = |key: &str| text(fields, key).and_then(Reminding::named);
        Self {
            sessions_a_day: count("sessions_a_day"),
            longest: span(fields, "longest_interval"),
            shortest: span(fields, "shortest_interval"),
            sleep: clock_time(fields, "sleep_from").zip(clock_time(fields, "sleep_until")),
            stretch: span(fields, "sleep_stretch"),
            night_sessions: count("night_sessions"),
            reminders: reminding("reminders"),
            night_reminders: reminding("night_reminders"),
            lead: span(fields, "lead_time"),
            block: clock_time(fields, "block_at").map(|at| Block {
                at,
                sessions: count("block_sessions").unwrap_or(Count::new(BLOCK.0)),
                express: span(fields, "block_express").unwrap_or(BLOCK.1),
                rest: span(fields, "block_rest").unwrap_or(BLOCK.1),
            }),
            ending: date(fields, "fewer_from").map(|from| Ending {
                from,
                every: count("fewer_every").unwrap_or(Count::new(ONE_FEWER_EVERY)),
                until: count("fewer_until").unwrap_or(Count::new(0)),
            }),
        }
    }
}

/// A sleep window longer than this leaves no day to express in: likelier a slip.
pub const LONGEST_SLEEP_WINDOW: Span = Span::hours(14);

/// How long a sleep window lasts by the clock on the wall; one that ends as it begins is a
/// whole day.
pub fn lasts_by_the_clock(from: ClockTime, until: ClockTime) -> Span {
    let minutes = (i64::from(until.minutes()) - i64::from(from.minutes())).rem_euclid(24 * 60);
    Span::minutes(if minutes == 0 { 24 * 60 } else { minutes })
}
