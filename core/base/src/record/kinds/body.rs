//! Fields of temperature and signs, and of a caution that was dealt with.

use super::spec::{spec, Spec, NOTE, PAIN};
use crate::record::choices::{DEALT_HOW, SINCE_BEFORE, WHERE_ON_BODY};
use crate::record::Takes;

pub(super) const SIGN: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("temperature", Takes::Temperature { least: 30.0, most: 45.0 }, "body"),
    spec("redness", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("heat", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("lump", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("swelling", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("nipple_damage", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("shivering", Takes::Flag, "body"),
    spec("painful_place", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("breast_pain", PAIN, "breast"),
    spec("pus", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("blood", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("spreading_redness", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("dark_skin", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("pain_beyond_what_is_seen", Takes::Flag, "body"),
    spec("fainting", Takes::Flag, "body"),
    spec("confusion", Takes::Flag, "body"),
    spec("severe_weakness", Takes::Flag, "body"),
    spec("short_of_breath", Takes::Flag, "body"),
    spec("keeps_vomiting", Takes::Flag, "body"),
    spec("chest_pain", Takes::Flag, "body"),
    spec("seizure", Takes::Flag, "body"),
    spec("lasting_headache", Takes::Flag, "body"),
    spec("trouble_seeing", Takes::Flag, "body"),
    spec("heavy_bleeding", Takes::Flag, "body"),
    spec("severe_belly_pain", Takes::Flag, "body"),
    spec("swollen_leg", Takes::Flag, "body"),
    spec("swollen_face_or_hands", Takes::Flag, "body"),
    spec("thoughts_of_harm", Takes::Flag, "body"),
    spec("since_before", Takes::Choice(SINCE_BEFORE), "body"),
    spec("note", NOTE, "note"),
];

pub(super) const CAUTION_DEALT: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("dealt_how", Takes::Choice(DEALT_HOW), "what"),
    spec("note", NOTE, "note"),
    spec("caution", Takes::Text { most: 80 }, ""),
    spec("seen", Takes::Moment, ""),
];
