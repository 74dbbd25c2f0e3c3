//! Fields of a plan from the consultant.

use super::comfort::{TRIAL_SESSIONS, WAY};
use super::field_spec::{span, spec, FieldSpec, KEY, LEVEL, NAME, NOTE, SPEED, VACUUM};
use crate::record::choices::{
    PLAN_ANSWERS, PLAN_CHECKS, PLAN_PARTS, PLAN_PHASES, TRIAL_DESIGNS, TRIAL_DIFFERS, TRIAL_OUTCOMES, USE_OR_TRY,
};
use crate::record::{FieldType, Kind};

pub(super) const PLAN: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("good_until", FieldType::Date, "when"),
    spec("plan_words", NOTE, "plan-words"),
    spec("plan_for", FieldType::Text { most: 128 }, ""),
    spec("plan_from", NAME, ""),
    spec("signing_key", KEY, ""),
    spec("revision", FieldType::Whole { least: 1, most: 10_000 }, ""),
    spec("sent", FieldType::Moment, ""),
    spec("came", FieldType::Moment, ""),
];

pub(super) const PLAN_PART: &[FieldSpec] = &[
    spec("plan", FieldType::Refers(Kind::Plan), ""),
    spec("plan_part", FieldType::Choice(PLAN_PARTS), "plan-part"),
    spec("use_or_try", FieldType::Choice(USE_OR_TRY), "setting"),
    spec("pump_name", NAME, "setting"),
    spec("plan_phase", FieldType::Choice(PLAN_PHASES), "setting"),
    spec("level", LEVEL, "setting"),
    spec("vacuum", VACUUM, "setting"),
    spec("cycles", SPEED, "setting"),
    span("lasts", 1, 60, "setting"),
    spec("way_a", WAY, "plan-trial"),
    spec("way_b", WAY, "plan-trial"),
    spec("differs", FieldType::Choice(TRIAL_DIFFERS), "plan-trial"),
    spec("trial_design", FieldType::Choice(TRIAL_DESIGNS), "plan-trial"),
    spec("outcome", FieldType::Choice(TRIAL_OUTCOMES), "plan-trial"),
    spec("trial_sessions", TRIAL_SESSIONS, "plan-trial"),
    spec("sessions_a_day", FieldType::Whole { least: 1, most: 24 }, "rhythm"),
    span("longest_interval", 60, 1440, "rhythm"),
    span("shortest_interval", 30, 720, "rhythm"),
    span("sleep_stretch", 60, 720, "rhythm"),
    spec("night_sessions", FieldType::Whole { least: 0, most: 8 }, "rhythm"),
    spec("aim", FieldType::Volume { least: 10.0, most: 5000.0 }, "aims"),
    spec("plan_check", FieldType::Choice(PLAN_CHECKS), "plan-check"),
    spec("check_by", FieldType::Date, "plan-check"),
    spec("visit_at", FieldType::Moment, "plan-visit"),
    spec("rule", FieldType::Text { most: 80 }, "plan-rule"),
    spec("rule_value", FieldType::Number { least: -1000.0, most: 100_000.0 }, "plan-rule"),
    spec("words", NOTE, "plan-words"),
    spec("answer", FieldType::Choice(PLAN_ANSWERS), ""),
    spec("answered", FieldType::Moment, ""),
];
