//! Fields of the settings.

use super::spec::{spec, Spec};
use crate::record::choices::{METHODS, PAPERS, SIDES, WHERE};
use crate::record::{Kind, Takes};

pub(super) const SETTINGS: &[Spec] = &[
    spec("hand", Takes::Choice(&["right", "left"]), "look"),
    spec("palette", Takes::Choice(&["as_device", "light", "night"]), "look"),
    spec("hour_clock", Takes::Choice(&["24", "12"]), "look"),
    spec("volume_unit", Takes::Choice(&["mL", "[foz_us]"]), "units"),
    spec("vacuum_unit", Takes::Choice(&["mm[Hg]", "kPa"]), "units"),
    spec("temperature_unit", Takes::Choice(&["Cel", "[degF]"]), "units"),
    spec("mass_unit", Takes::Choice(&["g", "kg", "[lb_av]"]), "units"),
    spec("day_start", Takes::Whole { least: 0, most: 12 }, "time"),
    spec("zone", Takes::Zone, "time"),
    spec("flange_sizes", Takes::Sizes { least: 8.0, most: 45.0 }, "kit"),
    spec("aim", Takes::Volume { least: 10.0, most: 5000.0 }, "aims"),
    spec("emergency_call", Takes::Phone, "calls"),
    spec("today_call", Takes::Phone, "calls"),
    spec("out_of_hours_call", Takes::Phone, "calls"),
    spec("sheet_name", Takes::Text { most: 300 }, "sharing"),
    spec("paper", Takes::Choice(PAPERS), "sharing"),
    spec("left_out", Takes::Text { most: 400 }, ""),
    spec("family", Takes::Text { most: 128 }, ""),
    spec("next_method", Takes::Choice(METHODS), ""),
    spec("next_sides", Takes::Choice(SIDES), ""),
    spec("next_pump", Takes::Refers(Kind::Pump), ""),
    spec("next_where", Takes::Choice(WHERE), ""),
    spec("welcomed", Takes::Flag, ""),
];
