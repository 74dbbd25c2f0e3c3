//! Fields of temperature and signs, and of a caution that was dealt with.

use super::field_spec::{spec, FieldSpec, NOTE, PAIN};
use crate::record::choices::{DEALT_HOW, SINCE_BEFORE, WHERE_ON_BODY};
use crate::record::FieldType;

pub(super) const SIGN: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("temperature", FieldType::Temperature { least: 30.0, most: 45.0 }, "body"),
    spec("redness", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("heat", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("lump", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("swelling", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("nipple_damage", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("shivering", FieldType::Flag, "body"),
    spec("painful_place", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("breast_pain", PAIN, "breast"),
    spec("pus", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("blood", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("spreading_redness", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("dark_skin", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("pain_beyond_what_is_seen", FieldType::Flag, "body"),
    spec("fainting", FieldType::Flag, "body"),
    spec("confusion", FieldType::Flag, "body"),
    spec("severe_weakness", FieldType::Flag, "body"),
    spec("short_of_breath", FieldType::Flag, "body"),
    spec("keeps_vomiting", FieldType::Flag, "body"),
    spec("chest_pain", FieldType::Flag, "body"),
    spec("seizure", FieldType::Flag, "body"),
    spec("lasting_headache", FieldType::Flag, "body"),
    spec("trouble_seeing", FieldType::Flag, "body"),
    spec("heavy_bleeding", FieldType::Flag, "body"),
    spec("severe_belly_pain", FieldType::Flag, "body"),
    spec("swollen_leg", FieldType::Flag, "body"),
    spec("swollen_face_or_hands", FieldType::Flag, "body"),
    spec("thoughts_of_harm", FieldType::Flag, "body"),
    spec("since_before", FieldType::Choice(SINCE_BEFORE), "body"),
    spec("note", NOTE, "note"),
];

pub(super) const CAUTION_DEALT: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("dealt_how", FieldType::Choice(DEALT_HOW), "what"),
    spec("note", NOTE, "note"),
    spec("caution", FieldType::Text { most: 80 }, ""),
    spec("seen", FieldType::Moment, ""),
];
