//! Fields of a guided search, and of a trial of two ways. A search's steps are the marks of its
//! session: what was set by hand, and whether it was comfortable.

use super::field_spec::{spec, FieldSpec, NOTE};
use crate::record::choices::{
    PLAN_PHASES, SEARCHED, SEARCH_ENDED, SIDES, TRIAL_DESIGNS, TRIAL_DIFFERS, TRIAL_ENDED, TRIAL_OUTCOMES,
};
use crate::record::{FieldType, Kind};

pub(super) const SEARCH: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("ended", FieldType::Moment, "when"),
    spec("searched", FieldType::Choice(SEARCHED), "search"),
    spec("search_side", FieldType::Choice(SIDES), "search"),
    spec("search_phase", FieldType::Choice(PLAN_PHASES), "search"),
    spec("beyond", FieldType::Flag, "search"),
    spec("search_ended", FieldType::Choice(SEARCH_ENDED), "search"),
    spec("note", NOTE, "note"),
    spec("session", FieldType::Refers(Kind::Session), ""),
];

/// What a way is called.
pub(super) const WAY: FieldType = FieldType::Text { most: 200 };

/// How many sessions are planned: a pair of pairs at least.
pub(super) const TRIAL_SESSIONS: FieldType = FieldType::Whole { least: 4, most: 200 };

pub(super) const TRIAL: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("ended", FieldType::Moment, "when"),
    spec("way_a", WAY, "trial"),
    spec("way_b", WAY, "trial"),
    spec("differs", FieldType::Choice(TRIAL_DIFFERS), "trial"),
    spec("trial_design", FieldType::Choice(TRIAL_DESIGNS), "trial"),
    spec("outcome", FieldType::Choice(TRIAL_OUTCOMES), "trial"),
    spec("trial_sessions", TRIAL_SESSIONS, "trial"),
    spec("trial_ended", FieldType::Choice(TRIAL_ENDED), "trial"),
    spec("note", NOTE, "note"),
    spec("seed", FieldType::Whole { least: 0, most: u32::MAX }, ""),
    spec("drawn", FieldType::Text { most: 200 }, ""),
];
