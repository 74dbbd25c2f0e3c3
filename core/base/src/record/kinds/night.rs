//! Fields of how sessions are to fall over a day.

use super::field_spec::{span, spec, FieldSpec, NAME, NOTE};
use crate::record::choices::{DAYS, FIXED_POINTS, PLAN_CHANGES, REMINDERS, SESSION_IN};
use crate::record::FieldType;

pub(super) const RHYTHM: &[FieldSpec] = &[
    spec("sessions_a_day", FieldType::Whole { least: 1, most: 24 }, "rhythm"),
    span("longest_interval", 60, 1440, "rhythm"),
    span("shortest_interval", 30, 720, "rhythm"),
    spec("sleep_from", FieldType::ClockTime, "sleep"),
    spec("sleep_until", FieldType::ClockTime, "sleep"),
    span("sleep_stretch", 60, 720, "sleep"),
    spec("night_sessions", FieldType::Whole { least: 0, most: 8 }, "sleep"),
    spec("reminders", FieldType::Choice(REMINDERS), "reminders"),
    spec("night_reminders", FieldType::Choice(REMINDERS), "reminders"),
    span("lead_time", 0, 60, "reminders"),
    spec("block_at", FieldType::ClockTime, "block"),
    spec("block_sessions", FieldType::Whole { least: 2, most: 6 }, "block"),
    span("block_express", 5, 30, "block"),
    span("block_rest", 5, 30, "block"),
    spec("fewer_from", FieldType::Date, "ending"),
    spec("fewer_every", FieldType::Whole { least: 1, most: 30 }, "ending"),
    spec("fewer_until", FieldType::Whole { least: 0, most: 12 }, "ending"),
    spec("note", NOTE, "note"),
    spec("calendar", FieldType::Findings, ""),
];

pub(super) const FIXED_POINT: &[FieldSpec] = &[
    spec("what", FieldType::Choice(FIXED_POINTS), "what"),
    spec("name", NAME, "what"),
    spec("from", FieldType::ClockTime, "time-of-day"),
    spec("until", FieldType::ClockTime, "time-of-day"),
    spec("days", FieldType::Choice(DAYS), "time-of-day"),
    spec("on", FieldType::Date, "time-of-day"),
    spec("session_in", FieldType::Choice(SESSION_IN), "what"),
    spec("note", NOTE, "note"),
];

pub(super) const PLAN_CHANGE: &[FieldSpec] = &[
    spec("at", FieldType::Moment, ""),
    spec("change", FieldType::Choice(PLAN_CHANGES), ""),
    spec("of", FieldType::Moment, ""),
    spec("to", FieldType::Moment, ""),
];
