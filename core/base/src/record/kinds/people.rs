//! Fields of children, of the consultant and her visits, and of a family on her desk.

use super::field_spec::{spec, FieldSpec, CHILD_MASS, KEY, NAME, NOTE};
use crate::record::choices::{CONSENT_SCOPES, SEXES};
use crate::record::FieldType;

pub(super) const VISIT: &[FieldSpec] = &[spec("at", FieldType::Moment, "when"), spec("note", NOTE, "note")];

pub(super) const QUESTION: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("question", NOTE, "question"),
    spec("answered", FieldType::Flag, "question"),
];

pub(super) const CONSULTANT: &[FieldSpec] = &[
    spec("name", NAME, "who"),
    spec("taken_in", FieldType::Date, "who"),
    spec("note", NOTE, "note"),
    spec("sealing_key", KEY, ""),
    spec("signing_key", KEY, ""),
    spec("compared", FieldType::Text { most: 64 }, ""),
];

pub(super) const CONSENT: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("consent_scope", FieldType::Choice(CONSENT_SCOPES), "consent"),
    spec("consent_until", FieldType::Date, "consent"),
    spec("withdrawn", FieldType::Moment, ""),
];

pub(super) const CASE_FAMILY: &[FieldSpec] = &[
    spec("name", NAME, "who"),
    spec("next_visit", FieldType::Date, "when"),
    spec("note", NOTE, "note"),
    spec("family", FieldType::Text { most: 128 }, ""),
    spec("sealing_key", KEY, ""),
    spec("signing_keys", FieldType::Text { most: 2000 }, ""),
    spec("sealing_keys", FieldType::Text { most: 2000 }, ""),
    spec("shared", FieldType::Moment, ""),
];

pub(super) const CHILD: &[FieldSpec] = &[
    spec("name", NAME, "who"),
    spec("birth", FieldType::Date, "who"),
    spec("gestation_weeks", FieldType::Whole { least: 20, most: 44 }, "who"),
    spec("gestation_days", FieldType::Whole { least: 0, most: 6 }, "who"),
    spec("sex", FieldType::Choice(SEXES), "who"),
    spec("birth_weight", CHILD_MASS, "who"),
    spec("in_hospital", FieldType::Flag, "care"),
    spec("weak_defences", FieldType::Flag, "care"),
];
