//! The people and things of the story. Every name is made up.

use drawwell_core::record::{Kind, SETTINGS, WANTED};

use super::{
    fact::Fact,
    story::{date, BETTER_FLANGE, NEW_VALVE, SENT_HOME_ALONE},
};

pub(super) const TAVI: &str = "child-tavi";
pub(super) const HERON: &str = "pump-heron";
pub(super) const WARD_PUMP: &str = "pump-lantern-ward";
pub(super) const HAND_PUMP: &str = "pump-thimble";
pub(super) const WIDE_LEFT: &str = "flange-24-left";
pub(super) const WIDE_RIGHT: &str = "flange-24-right";
pub(super) const NARROW_LEFT: &str = "flange-19-left";
pub(super) const NARROW_RIGHT: &str = "flange-21-right";

/// How they want things, who they are, and what they have.
pub(super) fn facts() -> Vec<Fact> {
    [vec![settings()], children(), pumps(), parts(), flanges(), choosing()].concat()
}

fn settings() -> Fact {
    Fact::new(Kind::Settings, SETTINGS)
        .says("hand", "right")
        .says("palette", "as_device")
        .says("hour_clock", "24")
        .says("volume_unit", "mL")
        .says("vacuum_unit", "mm[Hg]")
        .says("temperature_unit", "Cel")
        .says("mass_unit", "g")
        .says("day_start", 4)
        .says("zone", "Europe/Berlin")
        .says("next_method", "electric_pump")
        .says("next_sides", "both")
        .says("next_pump", HERON)
        .says("next_where", "work")
        .says("flange_sizes", serde_json::json!([15, 17, 19, 21, 24]))
        .yes("welcomed")
}

fn children() -> Vec<Fact> {
    vec![
        Fact::new(Kind::Child, "child-pell")
            .says("name", "Pell")
            .says("birth", "2023-05-20")
            .says("gestation_weeks", 39)
            .says("gestation_days", 4)
            .says("sex", "girl")
            .mass("birth_weight", 3280.0),
        Fact::new(Kind::Child, TAVI)
            .says("name", "Tavi")
            .says("birth", date(0))
            .says("gestation_weeks", 29)
            .says("gestation_days", 2)
            .says("sex", "boy")
            .mass("birth_weight", 1240.0),
    ]
}

fn pumps() -> Vec<Fact> {
    vec![
        Fact::new(Kind::Pump, WARD_PUMP)
            .says("name", "The one on Lantern Ward")
            .says("grade", "hospital")
            .says("power", "mains")
            .says("in_use_since", date(1))
            .vacuum("maximum_vacuum_low", 310.0)
            .vacuum("maximum_vacuum_high", 340.0)
            .cycles("cycles_low", 40.0)
            .cycles("cycles_high", 70.0)
            .says("note", "Shows mmHg. Bring the own bottles, the blue trolley has the labels."),
        Fact::new(Kind::Pump, HERON)
            .says("name", "Heron")
            .says("grade", "personal")
            .says("power", "both")
            .says("levels", 12)
            .says("in_use_since", date(SENT_HOME_ALONE))
            .vacuum("maximum_vacuum_low", 250.0)
            .vacuum("maximum_vacuum_high", 280.0)
            .cycles("cycles_low", 40.0)
            .cycles("cycles_high", 70.0)
            .says("warranty_until", date(SENT_HOME_ALONE + 730)),
        Fact::new(Kind::Pump, HAND_PUMP)
            .says("name", "Thimble")
            .says("grade", "hand")
            .says("in_use_since", date(97))
            .says("note", "For trains."),
    ]
}

/// A second pump is looked for, to express at work. The makers' figures are made up.
fn choosing() -> Vec<Fact> {
    vec![
        Fact::new(Kind::Wanted, WANTED)
            .says("how_often", "daily_at_work")
            .says("weeks_wanted", 30)
            .yes("both_at_once")
            .says("must_run", "battery"),
        Fact::new(Kind::OfferedPump, "offered-1-thicket")
            .says("name", "Thicket")
            .says("grade", "hospital")
            .says("offered_how", "rented")
            .vacuum("maximum_vacuum_low", 240.0)
            .vacuum("maximum_vacuum_high", 270.0)
            .cycles("cycles_low", 40.0)
            .cycles("cycles_high", 80.0)
            .says("settings_apart", "apart")
            .yes("stimulation_phase")
            .says("sides_at_once", "both")
            .says("power", "mains")
            .says("made_for", "several")
            .says("milk_path", "closed")
            .mass("pump_weight", 2300.0)
            .says("price", 45.0)
            .says("currency", "EUR")
            .says("price_for", "month"),
        Fact::new(Kind::OfferedPump, "offered-2-larder")
            .says("name", "Larder")
            .says("grade", "personal")
            .says("offered_how", "new")
            .vacuum("maximum_vacuum_high", 290.0)
            .cycles("cycles_low", 45.0)
            .cycles("cycles_high", 70.0)
            .says("settings_apart", "together")
            .says("levels", 9)
            .says("sides_at_once", "both")
            .says("power", "battery")
            .yes("in_clothes")
            .says("made_for", "one")
            .says("motor_warranty", 24)
            .mass("pump_weight", 240.0)
            .says("price", 199.0)
            .says("currency", "EUR"),
        Fact::new(Kind::OfferedPump, "offered-3-tumbler")
            .says("name", "Tumbler")
            .says("grade", "personal")
            .says("offered_how", "second_hand")
            .vacuum("maximum_vacuum_low", 200.0)
            .says("power", "both")
            .says("price", 40.0)
            .says("currency", "EUR"),
    ]
}

fn parts() -> Vec<Fact> {
    let part = |id: &str, what: &str, since: i64| {
        Fact::new(Kind::Part, id).says("part", what).says("pump", HERON).says("in_use_since", date(since))
    };
    vec![
        part("part-valve-left-1", "valve", SENT_HOME_ALONE)
            .says("until", date(NEW_VALVE))
            .says("side", "left")
            .says("note", "It had gone soft and did not close any more."),
        part("part-valve-right-1", "valve", SENT_HOME_ALONE).says("side", "right"),
        part("part-valve-left-2", "valve", NEW_VALVE).says("side", "left"),
        part("part-membrane-1", "membrane", SENT_HOME_ALONE),
        part("part-tubing-1", "tubing", SENT_HOME_ALONE),
    ]
}

fn flanges() -> Vec<Fact> {
    let flange = |id: &str, size: f64, side: &str, since: i64| {
        Fact::new(Kind::Flange, id).length("size", size).says("side", side).says("in_use_since", date(since))
    };
    vec![
        flange(WIDE_LEFT, 24.0, "left", 1).says("note", "Came with the set."),
        flange(WIDE_RIGHT, 24.0, "right", 1).says("note", "Came with the set."),
        flange(NARROW_LEFT, 19.0, "left", BETTER_FLANGE).says("name", "The narrow one"),
        flange(NARROW_RIGHT, 21.0, "right", BETTER_FLANGE),
    ]
}
