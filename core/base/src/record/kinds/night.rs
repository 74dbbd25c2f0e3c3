//! Fields of how sessions are to fall over a day.

use super::spec::{span, spec, Spec, NAME, NOTE};
use crate::record::choices::{DAYS, FIXED_POINTS, PLAN_CHANGES, REMINDERS, SESSION_IN};
use crate::record::Takes;

pub(super) const RHYTHM: &[Spec] = &[
    spec("sessions_a_day", Takes::Whole { least: 1, most: 24 }, "rhythm"),
    span("longest_interval", 60, 1440, "rhythm"),
    span("shortest_interval", 30, 720, "rhythm"),
    spec("sleep_from", Takes::ClockTime, "sleep"),
    spec("sleep_until", Takes::ClockTime, "sleep"),
    span("sleep_stretch", 60, 720, "sleep"),
    spec("night_sessions", Takes::Whole { least: 0, most: 8 }, "sleep"),
    spec("reminders", Takes::Choice(REMINDERS), "reminders"),
    spec("night_reminders", Takes::Choice(REMINDERS), "reminders"),
    span("lead_time", 0, 60, "reminders"),
    spec("block_at", Takes::ClockTime, "block"),
    spec("block_sessions", Takes::Whole { least: 2, most: 6 }, "block"),
    span("block_express", 5, 30, "block"),
    span("block_rest", 5, 30, "block"),
    spec("fewer_from", Takes::Date, "ending"),
    spec("fewer_every", Takes::Whole { least: 1, most: 30 }, "ending"),
    spec("fewer_until", Takes::Whole { least: 0, most: 12 }, "ending"),
    spec("note", NOTE, "note"),
    spec("calendar", Takes::Findings, ""),
];

pub(super) const FIXED_POINT: &[Spec] = &[
    spec("what", Takes::Choice(FIXED_POINTS), "what"),
    spec("name", NAME, "what"),
    spec("from", Takes::ClockTime, "time-of-day"),
    spec("until", Takes::ClockTime, "time-of-day"),
    spec("days", Takes::Choice(DAYS), "time-of-day"),
    spec("on", Takes::Date, "time-of-day"),
    spec("session_in", Takes::Choice(SESSION_IN), "what"),
    spec("note", NOTE, "note"),
];

pub(super) const PLAN_CHANGE: &[Spec] = &[
    spec("at", Takes::Moment, ""),
    spec("change", Takes::Choice(PLAN_CHANGES), ""),
    spec("of", Takes::Moment, ""),
    spec("to", Takes::Moment, ""),
];
