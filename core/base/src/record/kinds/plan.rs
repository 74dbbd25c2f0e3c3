//! Fields of a plan from the consultant.

use super::spec::{span, spec, Spec, KEY, LEVEL, NAME, NOTE, SPEED, VACUUM};
use crate::record::choices::{PLAN_ANSWERS, PLAN_CHECKS, PLAN_PARTS, PLAN_PHASES, USE_OR_TRY};
use crate::record::{Kind, Takes};

pub(super) const PLAN: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("good_until", Takes::Date, "when"),
    spec("plan_words", NOTE, "plan-words"),
    spec("plan_for", Takes::Text { most: 128 }, ""),
    spec("plan_from", NAME, ""),
    spec("signing_key", KEY, ""),
    spec("revision", Takes::Whole { least: 1, most: 10_000 }, ""),
    spec("sent", Takes::Moment, ""),
    spec("came", Takes::Moment, ""),
];

pub(super) const PLAN_PART: &[Spec] = &[
    spec("plan", Takes::Refers(Kind::Plan), ""),
    spec("plan_part", Takes::Choice(PLAN_PARTS), "plan-part"),
    spec("use_or_try", Takes::Choice(USE_OR_TRY), "setting"),
    spec("pump_name", NAME, "setting"),
    spec("plan_phase", Takes::Choice(PLAN_PHASES), "setting"),
    spec("level", LEVEL, "setting"),
    spec("vacuum", VACUUM, "setting"),
    spec("cycles", SPEED, "setting"),
    span("lasts", 1, 60, "setting"),
    spec("sessions_a_day", Takes::Whole { least: 1, most: 24 }, "rhythm"),
    span("longest_interval", 60, 1440, "rhythm"),
    span("shortest_interval", 30, 720, "rhythm"),
    span("sleep_stretch", 60, 720, "rhythm"),
    spec("night_sessions", Takes::Whole { least: 0, most: 8 }, "rhythm"),
    spec("aim", Takes::Volume { least: 10.0, most: 5000.0 }, "aims"),
    spec("plan_check", Takes::Choice(PLAN_CHECKS), "plan-check"),
    spec("check_by", Takes::Date, "plan-check"),
    spec("visit_at", Takes::Moment, "plan-visit"),
    spec("rule", Takes::Text { most: 80 }, "plan-rule"),
    spec("rule_value", Takes::Number { least: -1000.0, most: 100_000.0 }, "plan-rule"),
    spec("words", NOTE, "plan-words"),
    spec("answer", Takes::Choice(PLAN_ANSWERS), ""),
    spec("answered", Takes::Moment, ""),
];
