//! Fields of what else stands in a day: milk given, weights, events, notes.

use super::spec::{spec, Spec, CHILD_MASS, NOTE};
use crate::record::choices::{LIFE_EVENTS, MILKS, WAYS};
use crate::record::{Kind, Takes};

pub(super) const FEED: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("amount", Takes::Amount, "amount"),
    spec("way", Takes::Choice(WAYS), "how"),
    spec("milk", Takes::Choice(MILKS), "how"),
    spec("child", Takes::Refers(Kind::Child), "how"),
    spec("note", NOTE, "note"),
];

pub(super) const WEIGHT: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("weight", CHILD_MASS, "weighing"),
    spec("child", Takes::Refers(Kind::Child), "weighing"),
    spec("note", NOTE, "note"),
];

pub(super) const LIFE_EVENT: &[Spec] =
    &[spec("at", Takes::Moment, "when"), spec("what", Takes::Choice(LIFE_EVENTS), "what"), spec("note", NOTE, "note")];

pub(super) const NOTES: &[Spec] = &[spec("at", Takes::Moment, "when"), spec("text", NOTE, "note")];
