//! Fields of what lies in the bag: pumps, parts, flanges, gauges, and what is found out about them.

use super::spec::{spec, Spec, LEVEL, NAME, NOTE, SPEED, VACUUM};
use crate::record::choices::{
    AT_ONCE, CLASSES, CONNECTED, GRADES, PARTS, POWERS, RUNS_ON, SIDES, VACUUM_UNITS, WHERE_ON_BODY,
};
use crate::record::{Kind, Takes};

/// A gauge's span may reach beyond full vacuum.
pub(super) const SPAN: Takes = Takes::Vacuum { least: 10.0, most: 1600.0 };

pub(super) const RESOLUTION: Takes = Takes::Vacuum { least: 0.01, most: 100.0 };

pub(super) const NIPPLE: Takes = Takes::Length { least: 5.0, most: 35.0 };

pub(super) const FLANGE: Takes = Takes::Length { least: 8.0, most: 45.0 };

pub(super) const GAUGE: &[Spec] = &[
    spec("name", NAME, "what"),
    spec("span", SPAN, "gauge"),
    spec("reads_in", Takes::Choice(VACUUM_UNITS), "gauge"),
    spec("accuracy_class", Takes::Choice(CLASSES), "gauge"),
    spec("greatest_error", RESOLUTION, "gauge"),
    spec("resolution", RESOLUTION, "gauge"),
    spec("note", NOTE, "note"),
];

pub(super) const CHECK: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("pump", Takes::Refers(Kind::Pump), "how"),
    spec("gauge", Takes::Refers(Kind::Gauge), "how"),
    spec("connected", Takes::Choice(CONNECTED), "how"),
    spec("flange", Takes::Refers(Kind::Flange), "how"),
    spec("ran_on", Takes::Choice(RUNS_ON), "how"),
    spec("sides_at_once", Takes::Choice(AT_ONCE), "how"),
    spec("set_vacuum", Takes::Vacuum { least: 0.0, most: 760.0 }, "how"),
    spec("altitude", Takes::Altitude { least: -500.0, most: 9000.0 }, "air"),
    spec("air_pressure", Takes::AirPressure { least: 300.0, most: 1100.0 }, "air"),
    spec("note", NOTE, "note"),
    spec("next_level", LEVEL, ""),
    spec("next_side", Takes::Choice(SIDES), ""),
    spec("readings_are_right", Takes::Flag, ""),
];

pub(super) const TRACE: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("pump", Takes::Refers(Kind::Pump), "how"),
    spec("side", Takes::Choice(SIDES), "how"),
    spec("level", LEVEL, "how"),
    spec("connected", Takes::Choice(CONNECTED), "how"),
    spec("ran_on", Takes::Choice(RUNS_ON), "how"),
    spec("unit", Takes::Choice(VACUUM_UNITS), "file"),
    spec("note", NOTE, "note"),
    spec("findings", Takes::Findings, ""),
    spec("unit_is_right", Takes::Flag, ""),
];

pub(super) const FIT: &[Spec] = &[
    spec("at", Takes::Moment, "when"),
    spec("nipple_left_before", NIPPLE, "nipple"),
    spec("nipple_left_after", NIPPLE, "nipple"),
    spec("nipple_right_before", NIPPLE, "nipple"),
    spec("nipple_right_after", NIPPLE, "nipple"),
    spec("areola_drawn_in", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("rubbing", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("marked_nipple", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("only_at_highest", Takes::Choice(WHERE_ON_BODY), "breast"),
    spec("note", NOTE, "note"),
];

pub(super) const PUMP: &[Spec] = &[
    spec("name", NAME, "what"),
    spec("grade", Takes::Choice(GRADES), "what"),
    spec("power", Takes::Choice(POWERS), "what"),
    spec("levels", Takes::Whole { least: 1, most: 99 }, "what"),
    spec("in_use_since", Takes::Date, "what"),
    spec("maximum_vacuum_low", VACUUM, "maker"),
    spec("maximum_vacuum_high", VACUUM, "maker"),
    spec("cycles_low", SPEED, "maker"),
    spec("cycles_high", SPEED, "maker"),
    spec("warranty_until", Takes::Date, "maker"),
    spec("note", NOTE, "note"),
];

pub(super) const PART: &[Spec] = &[
    spec("part", Takes::Choice(PARTS), "what"),
    spec("pump", Takes::Refers(Kind::Pump), "what"),
    spec("side", Takes::Choice(SIDES), "what"),
    spec("in_use_since", Takes::Date, "what"),
    spec("until", Takes::Date, "what"),
    spec("note", NOTE, "note"),
];

pub(super) const FLANGES: &[Spec] = &[
    spec("size", FLANGE, "what"),
    spec("side", Takes::Choice(SIDES), "what"),
    spec("name", NAME, "what"),
    spec("in_use_since", Takes::Date, "what"),
    spec("note", NOTE, "note"),
];
