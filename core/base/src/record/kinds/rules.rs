//! Rules that can be set anew.

use super::field_spec::{spec, FieldSpec};
use crate::record::FieldType;

pub(super) const fn percent(key: &'static str, least: f64, most: f64) -> FieldSpec {
    spec(key, FieldType::Number { least, most }, "supply-rules")
}

pub(super) const fn mercury(key: &'static str) -> FieldSpec {
    spec(key, FieldType::Number { least: 50.0, most: 600.0 }, "kit-rules")
}

pub(super) const fn comfort(key: &'static str, least: f64, most: f64) -> FieldSpec {
    spec(key, FieldType::Number { least, most }, "comfort-rules")
}

/// A field a rule, named as in the tables of the room `guidance`.
pub(super) const RULES_FIELDS: &[FieldSpec] = &[
    percent("complete_day", 30.0, 100.0),
    percent("bears_doubt", 5.0, 100.0),
    percent("least_complete", 1.0, 100.0),
    percent("band_a_week", 1.0, 30.0),
    percent("watched_day", 20.0, 100.0),
    spec("watch_reference", FieldType::Number { least: 0.1, most: 3.0 }, "supply-rules"),
    spec("watch_decision", FieldType::Number { least: 0.5, most: 20.0 }, "supply-rules"),
    spec("fever", FieldType::Number { least: 36.0, most: 42.0 }, "supply-rules"),
    spec("volume_day", FieldType::Number { least: 1.0, most: 60.0 }, "volume-rules"),
    spec("volume_reached", FieldType::Number { least: 50.0, most: 2000.0 }, "volume-rules"),
    spec("volume_between", FieldType::Number { least: 50.0, most: 2000.0 }, "volume-rules"),
    spec("need_a_kilogram", FieldType::Number { least: 50.0, most: 250.0 }, "volume-rules"),
    spec("intake_from", FieldType::Number { least: 1.0, most: 30.0 }, "volume-rules"),
    spec("preterm_below", FieldType::Number { least: 20.0, most: 44.0 }, "volume-rules"),
    mercury("personal_low"),
    mercury("personal_high"),
    mercury("hospital_low"),
    mercury("hospital_high"),
    mercury("good_low"),
    mercury("good_high"),
    mercury("hand_exemption"),
    spec("verdict_chance", FieldType::Number { least: 60.0, most: 99.9 }, "kit-rules"),
    spec("set_apart", FieldType::Number { least: 1.0, most: 200.0 }, "kit-rules"),
    spec("readings_apart", FieldType::Number { least: 5.0, most: 400.0 }, "kit-rules"),
    spec("likely_kilopascal", FieldType::Number { least: 10.0, most: 150.0 }, "kit-rules"),
    spec("life_from", FieldType::Number { least: 1.0, most: 240.0 }, "kit-rules"),
    spec("life_to", FieldType::Number { least: 1.0, most: 240.0 }, "kit-rules"),
    spec("usual_cycles_low", FieldType::Number { least: 5.0, most: 200.0 }, "kit-rules"),
    spec("usual_cycles_high", FieldType::Number { least: 5.0, most: 200.0 }, "kit-rules"),
    spec("gap_least", FieldType::Number { least: -3.0, most: 10.0 }, "fit-rules"),
    spec("gap_most", FieldType::Number { least: -3.0, most: 10.0 }, "fit-rules"),
    spec("comes_with_low", FieldType::Number { least: 10.0, most: 40.0 }, "fit-rules"),
    spec("comes_with_high", FieldType::Number { least: 10.0, most: 40.0 }, "fit-rules"),
    spec("measure_again", FieldType::Number { least: 1.0, most: 365.0 }, "fit-rules"),
    spec("longest_gap", FieldType::Number { least: 1.0, most: 24.0 }, "night-rules"),
    spec("longest_gap_early", FieldType::Number { least: 1.0, most: 24.0 }, "night-rules"),
    spec("early_days", FieldType::Number { least: 0.0, most: 60.0 }, "night-rules"),
    spec("least_sessions", FieldType::Number { least: 1.0, most: 12.0 }, "night-rules"),
    spec("least_sessions_early", FieldType::Number { least: 1.0, most: 14.0 }, "night-rules"),
    spec("asleep_again", FieldType::Number { least: 0.0, most: 90.0 }, "night-rules"),
    spec("usual_length", FieldType::Number { least: 5.0, most: 60.0 }, "night-rules"),
    spec("catches_up", FieldType::Number { least: 30.0, most: 100.0 }, "night-rules"),
    spec("late_after", FieldType::Number { least: 5.0, most: 120.0 }, "night-rules"),
    spec("highest_rate", FieldType::Number { least: 10.0, most: 200.0 }, "night-rules"),
    spec("breast_fever", FieldType::Number { least: 37.0, most: 41.0 }, "caution-rules"),
    spec("fever_with_place", FieldType::Number { least: 37.0, most: 41.0 }, "caution-rules"),
    spec("fever_after_birth", FieldType::Number { least: 37.0, most: 41.0 }, "caution-rules"),
    spec("fever_later", FieldType::Number { least: 37.0, most: 41.0 }, "caution-rules"),
    spec("after_birth", FieldType::Number { least: 30.0, most: 730.0 }, "caution-rules"),
    spec("no_better_after", FieldType::Number { least: 6.0, most: 96.0 }, "caution-rules"),
    spec("signs_together", FieldType::Number { least: 1.0, most: 72.0 }, "caution-rules"),
    spec("signs_hold", FieldType::Number { least: 24.0, most: 336.0 }, "caution-rules"),
    spec("severe_pain", FieldType::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("pain_rise", FieldType::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("pain_sessions", FieldType::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("pain_often", FieldType::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("pain_often_in", FieldType::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("pain_often_of", FieldType::Number { least: 2.0, most: 20.0 }, "caution-rules"),
    spec("breast_pain_high", FieldType::Number { least: 1.0, most: 10.0 }, "caution-rules"),
    spec("engorged_from", FieldType::Number { least: 0.0, most: 14.0 }, "caution-rules"),
    spec("engorged_to", FieldType::Number { least: 1.0, most: 30.0 }, "caution-rules"),
    spec("blood_lasts", FieldType::Number { least: 1.0, most: 60.0 }, "caution-rules"),
    spec("pump_far_below", FieldType::Number { least: 5.0, most: 80.0 }, "caution-rules"),
    comfort("comfortable_low", 50.0, 300.0),
    comfort("comfortable_high", 50.0, 400.0),
    comfort("discomfort_from", 1.0, 6.0),
    comfort("discomfort_rare", 5.0, 50.0),
    comfort("comfort_sessions", 5.0, 60.0),
    comfort("search_step", 2.0, 40.0),
    comfort("search_speed_step", 2.0, 30.0),
    comfort("search_pain", 1.0, 10.0),
    comfort("milk_sessions", 10.0, 120.0),
    comfort("milk_matters", 3.0, 50.0),
    comfort("pain_matters", 0.5, 5.0),
    comfort("minutes_matter", 0.25, 10.0),
    comfort("trial_false", 1.0, 20.0),
    comfort("trial_planned", 8.0, 200.0),
    comfort("trial_pain_rise", 1.0, 10.0),
    comfort("suspect_in", 1.0, 20.0),
    comfort("suspect_of", 2.0, 40.0),
    comfort("stimulation_low", 0.25, 5.0),
    comfort("stimulation_high", 0.5, 10.0),
    comfort("expression_low", 1.0, 20.0),
    comfort("expression_high", 2.0, 40.0),
    comfort("letdowns_low", 0.0, 10.0),
    comfort("letdowns_high", 1.0, 20.0),
    spec("look_after_gap", FieldType::Number { least: 6.0, most: 336.0 }, DESK_RULES),
    spec("visit_ahead", FieldType::Number { least: 0.0, most: 14.0 }, DESK_RULES),
];

/// Rules of a consultant's desk: no family's record goes by them.
pub const DESK_RULES: &str = "caseload-rules";

/// A rule that a family's record goes by, and so a plan can set anew.
pub fn rule_of_a_family(key: &str) -> Option<&'static FieldSpec> {
    RULES_FIELDS.iter().find(|spec| spec.key == key).filter(|spec| spec.group != DESK_RULES)
}
