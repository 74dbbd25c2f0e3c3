//! Fields of children, of the consultant and her visits, and of a family on her desk.

use super::spec::{spec, Spec, CHILD_MASS, KEY, NAME, NOTE};
use crate::record::choices::SEXES;
use crate::record::Takes;

pub(super) const VISIT: &[Spec] = &[spec("at", Takes::Moment, "when"), spec("note", NOTE, "note")];

pub(super) const QUESTION: &[Spec] =
    &[spec("at", Takes::Moment, "when"), spec("question", NOTE, "question"), spec("answered", Takes::Flag, "question")];

pub(super) const CONSULTANT: &[Spec] = &[
    spec("name", NAME, "who"),
    spec("taken_in", Takes::Date, "who"),
    spec("note", NOTE, "note"),
    spec("sealing_key", KEY, ""),
    spec("signing_key", KEY, ""),
    spec("compared", Takes::Text { most: 64 }, ""),
];

pub(super) const CASE_FAMILY: &[Spec] = &[
    spec("name", NAME, "who"),
    spec("next_visit", Takes::Date, "when"),
    spec("note", NOTE, "note"),
    spec("family", Takes::Text { most: 128 }, ""),
    spec("sealing_key", KEY, ""),
    spec("signing_keys", Takes::Text { most: 2000 }, ""),
    spec("sealing_keys", Takes::Text { most: 2000 }, ""),
    spec("shared", Takes::Moment, ""),
];

pub(super) const CHILD: &[Spec] = &[
    spec("name", NAME, "who"),
    spec("birth", Takes::Date, "who"),
    spec("gestation_weeks", Takes::Whole { least: 20, most: 44 }, "who"),
    spec("gestation_days", Takes::Whole { least: 0, most: 6 }, "who"),
    spec("sex", Takes::Choice(SEXES), "who"),
    spec("birth_weight", CHILD_MASS, "who"),
];
