//! Fields of what lies in the bag: pumps, parts, flanges, gauges, and what is found out about them.

use super::field_spec::{spec, FieldSpec, LEVEL, NAME, NOTE, SPEED, VACUUM};
use crate::record::choices::{
    AT_ONCE, CLASSES, CONNECTED, GRADES, PARTS, PLAN_PHASES, POWERS, RUNS_ON, SETTINGS_APART, SIDES, VACUUM_UNITS,
    WHERE_ON_BODY,
};
use crate::record::{FieldType, Kind};

/// A gauge's span may reach beyond full vacuum.
pub(super) const SPAN: FieldType = FieldType::Vacuum { least: 10.0, most: 1600.0 };

pub(super) const RESOLUTION: FieldType = FieldType::Vacuum { least: 0.01, most: 100.0 };

pub(super) const NIPPLE: FieldType = FieldType::Length { least: 5.0, most: 35.0 };

pub(super) const FLANGE: FieldType = FieldType::Length { least: 8.0, most: 45.0 };

/// Steps of a dial.
pub(super) const STEPS: FieldType = FieldType::Whole { least: 1, most: 99 };

pub(super) const GAUGE: &[FieldSpec] = &[
    spec("name", NAME, "what"),
    spec("span", SPAN, "gauge"),
    spec("reads_in", FieldType::Choice(VACUUM_UNITS), "gauge"),
    spec("accuracy_class", FieldType::Choice(CLASSES), "gauge"),
    spec("greatest_error", RESOLUTION, "gauge"),
    spec("resolution", RESOLUTION, "gauge"),
    spec("serial", NAME, "calibration"),
    spec("calibrated_on", FieldType::Date, "calibration"),
    spec("calibration_due", FieldType::Date, "calibration"),
    spec("certificate", FieldType::Text { most: 200 }, "calibration"),
    spec("note", NOTE, "note"),
];

pub(super) const CHECK: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("pump", FieldType::Refers(Kind::Pump), "how"),
    spec("gauge", FieldType::Refers(Kind::Gauge), "how"),
    spec("connected", FieldType::Choice(CONNECTED), "how"),
    spec("flange", FieldType::Refers(Kind::Flange), "how"),
    spec("ran_on", FieldType::Choice(RUNS_ON), "how"),
    spec("sides_at_once", FieldType::Choice(AT_ONCE), "how"),
    spec("set_vacuum", FieldType::Vacuum { least: 0.0, most: 760.0 }, "how"),
    spec("altitude", FieldType::Altitude { least: -500.0, most: 9000.0 }, "air"),
    spec("air_pressure", FieldType::AirPressure { least: 300.0, most: 1100.0 }, "air"),
    spec("note", NOTE, "note"),
    spec("next_level", LEVEL, ""),
    spec("next_side", FieldType::Choice(SIDES), ""),
    spec("readings_are_right", FieldType::Flag, ""),
];

pub(super) const TRACE: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("pump", FieldType::Refers(Kind::Pump), "how"),
    spec("side", FieldType::Choice(SIDES), "how"),
    spec("level", LEVEL, "how"),
    spec("speed_step", LEVEL, "how"),
    spec("trace_phase", FieldType::Choice(PLAN_PHASES), "how"),
    spec("connected", FieldType::Choice(CONNECTED), "how"),
    spec("ran_on", FieldType::Choice(RUNS_ON), "how"),
    spec("unit", FieldType::Choice(VACUUM_UNITS), "file"),
    spec("note", NOTE, "note"),
    spec("findings", FieldType::Findings, ""),
    spec("unit_is_right", FieldType::Flag, ""),
];

pub(super) const FIT: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("nipple_left_before", NIPPLE, "nipple"),
    spec("nipple_left_after", NIPPLE, "nipple"),
    spec("nipple_right_before", NIPPLE, "nipple"),
    spec("nipple_right_after", NIPPLE, "nipple"),
    spec("areola_drawn_in", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("rubbing", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("marked_nipple", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("only_at_highest", FieldType::Choice(WHERE_ON_BODY), "breast"),
    spec("note", NOTE, "note"),
];

pub(super) const PUMP: &[FieldSpec] = &[
    spec("name", NAME, "what"),
    spec("grade", FieldType::Choice(GRADES), "what"),
    spec("power", FieldType::Choice(POWERS), "what"),
    spec("levels", STEPS, "what"),
    spec("speed_steps", STEPS, "what"),
    spec("settings_apart", FieldType::Choice(SETTINGS_APART), "what"),
    spec("in_use_since", FieldType::Date, "what"),
    spec("maximum_vacuum_low", VACUUM, "maker"),
    spec("maximum_vacuum_high", VACUUM, "maker"),
    spec("cycles_low", SPEED, "maker"),
    spec("cycles_high", SPEED, "maker"),
    spec("warranty_until", FieldType::Date, "maker"),
    spec("note", NOTE, "note"),
    spec("figures_are_right", FieldType::Flag, ""),
];

/// A pump's cycles counted by tapping along with it.
pub(super) const SPEED_COUNT: &[FieldSpec] = &[
    spec("at", FieldType::Moment, "when"),
    spec("pump", FieldType::Refers(Kind::Pump), "how"),
    spec("speed_step", LEVEL, "how"),
    spec("note", NOTE, "note"),
    spec("taps", FieldType::Findings, ""),
];

pub(super) const PART: &[FieldSpec] = &[
    spec("part", FieldType::Choice(PARTS), "what"),
    spec("pump", FieldType::Refers(Kind::Pump), "what"),
    spec("side", FieldType::Choice(SIDES), "what"),
    spec("in_use_since", FieldType::Date, "what"),
    spec("until", FieldType::Date, "what"),
    spec("note", NOTE, "note"),
];

pub(super) const FLANGES: &[FieldSpec] = &[
    spec("size", FLANGE, "what"),
    spec("side", FieldType::Choice(SIDES), "what"),
    spec("name", NAME, "what"),
    spec("in_use_since", FieldType::Date, "what"),
    spec("note", NOTE, "note"),
];
