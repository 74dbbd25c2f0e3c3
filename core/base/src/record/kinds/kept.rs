//! Fields of milk that is kept, of what happens to it, of the rules it is kept by, and of parts that
//! were cleaned.

use super::field_spec::{span, spec, FieldSpec, NAME, NOTE};
use crate::record::choices::{CLEANED, KEEPING_RULES, KEPT_IN, MILK_EVENTS, THROWN_OUT};
use crate::record::field_type::MOST_AMOUNT_MILLILITERS;
use crate::record::{FieldType, Kind};

/// How warm a room may be.
const ROOM: FieldType = FieldType::Temperature { least: -10.0, most: 50.0 };

const TAKEN: FieldType = FieldType::Volume { least: 0.0, most: MOST_AMOUNT_MILLILITERS };

pub(super) const CONTAINER: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("amount", FieldType::Amount, "amount"),
    spec("kept_in", FieldType::Choice(KEPT_IN), "kept"),
    spec("room_temperature", ROOM, "kept"),
    spec("label", FieldType::Text { most: 12 }, "kept"),
    spec("note", NOTE, "note"),
    spec("sessions", FieldType::Text { most: 1000 }, ""),
];

pub(super) const MILK_EVENT: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("container", FieldType::Refers(Kind::Container), "kept"),
    spec("happened", FieldType::Choice(MILK_EVENTS), "kept"),
    spec("kept_in", FieldType::Choice(KEPT_IN), "kept"),
    spec("taken", TAKEN, "kept"),
    spec("thrown_out", FieldType::Choice(THROWN_OUT), "kept"),
    spec("note", NOTE, "note"),
    spec("feed", FieldType::Refers(Kind::Feed), ""),
];

/// A day, as the longest time that is given in minutes.
const WEEK: u32 = 7 * 24 * 60;

pub(super) const KEEPING: &[FieldSpec] = &[
    spec("keeping_rules", FieldType::Choice(KEEPING_RULES), "keeping"),
    spec("remind_of_milk", FieldType::Flag, "keeping"),
    spec("unit_name", NAME, "unit-keeping"),
    spec("unit_year", FieldType::Whole { least: 1990, most: 2100 }, "unit-keeping"),
    span("unit_room", 0, WEEK, "unit-keeping"),
    span("unit_cooler", 0, WEEK, "unit-keeping"),
    span("unit_fridge", 60, 2 * WEEK, "unit-keeping"),
    spec("unit_freezer", FieldType::Whole { least: 1, most: 24 }, "unit-keeping"),
    spec("unit_deep_freezer", FieldType::Whole { least: 1, most: 24 }, "unit-keeping"),
    span("unit_thawed", 0, WEEK, "unit-keeping"),
    span("unit_warmed", 0, WEEK, "unit-keeping"),
    span("unit_after_feed", 0, WEEK, "unit-keeping"),
];

pub(super) const CLEANING: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("cleaned", FieldType::Choice(CLEANED), "what"),
    spec("note", NOTE, "note"),
];
