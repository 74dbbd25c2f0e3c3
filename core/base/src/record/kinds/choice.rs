//! Fields of choosing a pump: what is wanted of one, and what is offered. The figures are those of its
//! technical sheet, as typed.

use super::field_spec::{spec, FieldSpec, NAME, NOTE, SPEED, VACUUM};
use super::kit::STEPS;
use crate::record::choices::{
    AT_ONCE, DECIDED, GRADES, HOW_OFTEN, MADE_FOR, MILK_PATHS, MUST_RUN, OFFERED_HOW, POWERS, PRICE_FOR, SETTINGS_APART,
};
use crate::record::FieldType;

/// A code of ISO 4217, such as `EUR`.
const CURRENCY: FieldType = FieldType::Text { most: 3 };

pub(super) const WANTED: &[FieldSpec] = &[
    spec("how_often", FieldType::Choice(HOW_OFTEN), "wanted"),
    spec("weeks_wanted", FieldType::Whole { least: 1, most: 260 }, "wanted"),
    spec("both_at_once", FieldType::Flag, "wanted"),
    spec("must_run", FieldType::Choice(MUST_RUN), "wanted"),
    spec("sensitive_nipples", FieldType::Flag, "wanted"),
    spec("letdown_needs_more", FieldType::Flag, "wanted"),
    spec("note", NOTE, "note"),
];

pub(super) const OFFERED_PUMP: &[FieldSpec] = &[
    spec("name", NAME, "what"),
    spec("grade", FieldType::Choice(GRADES), "what"),
    spec("offered_how", FieldType::Choice(OFFERED_HOW), "what"),
    spec("maximum_vacuum_low", VACUUM, "maker"),
    spec("maximum_vacuum_high", VACUUM, "maker"),
    spec("cycles_low", SPEED, "maker"),
    spec("cycles_high", SPEED, "maker"),
    spec("settings_apart", FieldType::Choice(SETTINGS_APART), "maker"),
    spec("levels", STEPS, "maker"),
    spec("speed_steps", STEPS, "maker"),
    spec("stimulation_phase", FieldType::Flag, "maker"),
    spec("sides_at_once", FieldType::Choice(AT_ONCE), "maker"),
    spec("power", FieldType::Choice(POWERS), "maker"),
    spec("in_clothes", FieldType::Flag, "maker"),
    spec("made_for", FieldType::Choice(MADE_FOR), "maker"),
    spec("milk_path", FieldType::Choice(MILK_PATHS), "maker"),
    spec("motor_warranty", FieldType::Whole { least: 0, most: 240 }, "maker"),
    spec("pump_weight", FieldType::Mass { least: 20.0, most: 20_000.0 }, "maker"),
    spec("price", FieldType::Number { least: 0.0, most: 1_000_000.0 }, "price"),
    spec("currency", CURRENCY, "price"),
    spec("price_for", FieldType::Choice(PRICE_FOR), "price"),
    spec("decided", FieldType::Choice(DECIDED), "decided"),
    spec("note", NOTE, "note"),
    spec("figures_are_right", FieldType::Flag, ""),
];
