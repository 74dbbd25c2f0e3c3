//! Fields of what else stands in a day: milk given, weights, events, notes.

use super::field_spec::{spec, FieldSpec, CHILD_MASS, NOTE};
use crate::record::choices::{LIFE_EVENTS, MILKS, WAYS};
use crate::record::{FieldType, Kind};

pub(super) const FEED: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("amount", FieldType::Amount, "amount"),
    spec("way", FieldType::Choice(WAYS), "how"),
    spec("milk", FieldType::Choice(MILKS), "how"),
    spec("child", FieldType::Refers(Kind::Child), "how"),
    spec("note", NOTE, "note"),
];

pub(super) const WEIGHT: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("weight", CHILD_MASS, "weighing"),
    spec("child", FieldType::Refers(Kind::Child), "weighing"),
    spec("note", NOTE, "note"),
];

pub(super) const LIFE_EVENT: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("what", FieldType::Choice(LIFE_EVENTS), "what"),
    spec("note", NOTE, "note"),
];

pub(super) const NOTES: &[FieldSpec] = &[spec("at", FieldType::Moment, "when"), spec("text", NOTE, "note")];
