//! The plan as iCalendar (RFC 5545), with alarms.
//!
//! Each session is an event at an explicit instant, so that no reader has to agree on what
//! three hours are across a clock change. Its UID says the day and which of its sessions it
//! is, and stays; what changed carries a higher SEQUENCE, what fell away is cancelled. So a
//! calendar that takes the file in again shows nothing twice.

use icalendar::{Alarm, Calendar, Component, Event, EventLike, EventStatus, Property, Trigger};
use serde_json::{json, Value};

use crate::answer::night::Plan;
use crate::time::{Instant, Span};

/// Its media type.
pub const CONTENT_TYPE: &str = "text/calendar";

/// Written sessions are remembered this long after they are past.
const REMEMBERED: Span = Span::hours(48);
/// A session that was written before is the same one if it moved by less than this.
const SAME: Span = Span::hours(3);

/// A session that was written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Written {
    /// Its UID.
    pub uid: String,
    /// How often it changed.
    pub sequence: u32,
    /// It begins.
    pub at: Instant,
    /// It is over.
    pub until: Instant,
    /// It fell away.
    pub cancelled: bool,
}

/// What was written to a calendar.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Exported {
    /// Sessions, by time.
    pub sessions: Vec<Written>,
    /// How many UIDs were given so far.
    given: u64,
}

impl Exported {
    /// Reads what was kept of it; what cannot be read is passed over.
    pub fn read(kept: Option<&Value>) -> Self {
        let Some(kept) = kept else { return Self::default() };
        let session = |value: &Value| {
            let instant = |key: &str| value.get(key).and_then(Value::as_i64).map(Instant::from_unix_milliseconds);
            Some(Written {
                // A line break in it would begin a line of the calendar's own.
                uid: value.get("uid")?.as_str().filter(|uid| !uid.chars().any(char::is_control))?.to_owned(),
                sequence: u32::try_from(value.get("sequence")?.as_u64()?).ok()?,
                at: instant("at")?,
                until: instant("until")?,
                cancelled: value.get("cancelled").and_then(Value::as_bool).unwrap_or(false),
            })
        };
        let sessions = kept.get("sessions").and_then(Value::as_array);
        Self {
            sessions: sessions.map(|all| all.iter().filter_map(session).collect()).unwrap_or_default(),
            given: kept.get("given").and_then(Value::as_u64).unwrap_or(0),
        }
    }

    /// To be kept.
    pub fn to_json(&self) -> Value {
        let session = |w: &Written| {
            json!({
                "uid": w.uid,
                "sequence": w.sequence,
                "at": w.at.unix_milliseconds(),
                "until": w.until.unix_milliseconds(),
                "cancelled": w.cancelled,
            })
        };
        json!({ "sessions": self.sessions.iter().map(session).collect::<Vec<_>>(), "given": self.given })
    }

    /// What is to be written now: each planned session as the one it was before where there
    /// was one near, those that fell away cancelled. `record` names the record in UIDs.
    pub fn after(mut self, plan: &Plan, now: Instant, record: &str) -> Self {
        let mut before: Vec<Written> = std::mem::take(&mut self.sessions);
        before.retain(|w| w.until > now.minus(REMEMBERED));
        let mut after = Vec::new();
        // Those that stand as they were are found first, then the nearest.
        let mut planned: Vec<_> = plan.sessions.iter().filter(|s| s.until > now && !s.feed).collect();
        let mut keep = |exact: bool, planned: &mut Vec<&crate::answer::night::Planned>, before: &mut Vec<Written>| {
            planned.retain(|session| {
                let near = |w: &Written| {
                    let by = w.at.since(session.at).in_milliseconds().abs();
                    !w.cancelled
                        && if exact { by == 0 && w.until == session.until } else { by < SAME.in_milliseconds() }
                };
                let nearest = before
                    .iter()
                    .enumerate()
                    .filter(|(_, w)| near(w) && (exact || w.until > now))
                    .min_by_key(|(_, w)| w.at.since(session.at).in_milliseconds().abs())
                    .map(|(i, _)| i);
                let Some(place) = nearest else { return true };
                let was = before.remove(place);
                let changed = u32::from(was.at != session.at || was.until != session.until);
                after.push(Written { sequence: was.sequence + changed, at: session.at, until: session.until, ..was });
                false
            });
        };
        keep(true, &mut planned, &mut before);
        keep(false, &mut planned, &mut before);
        for session in planned {
            self.given += 1;
            let uid = format!("session-{}-{record}@drawwell.invalid", self.given);
            after.push(Written { uid, sequence: 0, at: session.at, until: session.until, cancelled: false });
        }
        for was in before {
            let falls_away = was.until > now && !was.cancelled;
            let sequence = was.sequence + u32::from(falls_away);
            after.push(Written { sequence, cancelled: was.cancelled || falls_away, ..was });
        }
        after.sort_by(|a, b| (a.at, &a.uid).cmp(&(b.at, &b.uid)));
        self.sessions = after;
        self
    }
}

/// The sentences of a calendar.
pub struct Sentences {
    /// Its name.
    pub calendar: String,
    /// What a session is called.
    pub session: String,
    /// What an alarm says.
    pub alarm: String,
    /// Said in each event.
    pub note: String,
}

fn utc(at: Instant) -> chrono::DateTime<chrono::Utc> {
    chrono::DateTime::from_timestamp_millis(at.unix_milliseconds()).unwrap_or_default()
}

/// The file. `lead` before each session, and when it begins, is an alarm.
pub fn write(exported: &Exported, lead: Span, sentences: &Sentences, now: Instant) -> String {
    let mut calendar = Calendar::empty();
    for (name, value) in [("VERSION", "2.0"), ("PRODID", "-//Drawwell//Plan//EN"), ("CALSCALE", "GREGORIAN")] {
        calendar.append_property(Property::new(name, value));
    }
    calendar.name(&sentences.calendar);
    calendar.append_property(Property::new("METHOD", "PUBLISH"));
    for written in &exported.sessions {
        let mut event = Event::new();
        event
            .uid(&written.uid)
            .sequence(written.sequence)
            .timestamp(utc(now))
            .starts(utc(written.at))
            .ends(utc(written.until))
            .summary(&sentences.session)
            .description(&sentences.note);
        if written.cancelled {
            event.status(EventStatus::Cancelled);
        } else {
            event.status(EventStatus::Confirmed);
            let mut call = |name: &str, before: Span| {
                let trigger = Trigger::before_start(chrono::Duration::minutes(before.in_minutes()));
                let mut alarm = Alarm::display(&sentences.alarm, trigger);
                // Left to itself the library would ask a clock and throw dice.
                alarm.uid(&format!("{name}-{}", written.uid)).timestamp(utc(now));
                event.alarm(alarm);
            };
            if lead > Span::minutes(0) {
                call("set-up", lead);
            }
            call("due", Span::minutes(0));
        }
        calendar.push(event.done());
    }
    calendar.done().to_string()
}
