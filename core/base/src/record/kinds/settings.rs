//! Fields of the settings.

use super::field_spec::{spec, FieldSpec};
use crate::record::choices::{METHODS, PAPERS, SIDES, WHERE};
use crate::record::{FieldType, Kind};

pub(super) const SETTINGS: &[FieldSpec] = &[
    spec("hand", FieldType::Choice(&["right", "left"]), "look"),
    spec("palette", FieldType::Choice(&["as_device", "light", "night"]), "look"),
    spec("hour_clock", FieldType::Choice(&["24", "12"]), "look"),
    spec("volume_unit", FieldType::Choice(&["mL", "[foz_us]"]), "units"),
    spec("vacuum_unit", FieldType::Choice(&["mm[Hg]", "kPa"]), "units"),
    spec("temperature_unit", FieldType::Choice(&["Cel", "[degF]"]), "units"),
    spec("mass_unit", FieldType::Choice(&["g", "kg", "[lb_av]"]), "units"),
    spec("day_start", FieldType::Whole { least: 0, most: 12 }, "time"),
    spec("zone", FieldType::Zone, "time"),
    spec("session_length", FieldType::Span { least_minutes: 5, most_minutes: 60 }, "time"),
    spec("flange_sizes", FieldType::Sizes { least: 8.0, most: 45.0 }, "kit"),
    spec("aim", FieldType::Volume { least: 10.0, most: 5000.0 }, "aims"),
    spec("emergency_call", FieldType::Phone, "calls"),
    spec("today_call", FieldType::Phone, "calls"),
    spec("out_of_hours_call", FieldType::Phone, "calls"),
    spec("sheet_name", FieldType::Text { most: 300 }, "sharing"),
    spec("paper", FieldType::Choice(PAPERS), "sharing"),
    spec("left_out", FieldType::Text { most: 400 }, ""),
    spec("family", FieldType::Text { most: 128 }, ""),
    spec("next_method", FieldType::Choice(METHODS), ""),
    spec("next_sides", FieldType::Choice(SIDES), ""),
    spec("next_pump", FieldType::Refers(Kind::Pump), ""),
    spec("next_where", FieldType::Choice(WHERE), ""),
    spec("welcomed", FieldType::Flag, ""),
];
