//! What the consultant's gauge showed, and how the flanges came to be changed.

use drawwell_core::{
    record::{Kind, Reading, ReadingPlace, Sides},
    time::Moment,
};
use serde_json::json;

use super::{
    fact::{vacuum, Fact},
    kit::{HERON, WARD_PUMP},
    story::{self, BETTER_FLANGE, NEW_VALVE},
};

pub(super) const GAUGE: &str = "gauge-in-the-bag";

/// A place of a check and what was read there.
struct Read(Sides, Option<u32>, &'static [f64]);

/// The gauge, every check, and both measurements, in order.
pub(super) fn facts() -> Vec<Fact> {
    let ward = check("check-ward", 9, WARD_PUMP)
        .says("ran_on", "mains")
        .says("sides_at_once", "both")
        .with(&[Read(Sides::Left, None, &[326.0, 328.0, 326.0]), Read(Sides::Right, None, &[324.0, 324.0, 326.0])], 9);
    vec![gauge(), ward, heron_new(), heron(40), heron(74), heron_soft_valve(), heron_new_valve(), heron_now()]
        .into_iter()
        .chain(measured())
        .collect()
}

fn gauge() -> Fact {
    Fact::new(Kind::Gauge, GAUGE)
        .says("name", "The one in the bag")
        .vacuum("span", 450.0)
        .says("reads_in", "mm[Hg]")
        .says("accuracy_class", "1.6")
        .vacuum("resolution", 2.0)
        .says("note", "Our consultant brings it.")
}

fn check(id: &str, day: i64, pump: &str) -> Fact {
    Fact::new(Kind::Check, id)
        .when("at", &morning(day, 0))
        .says("pump", pump)
        .says("gauge", GAUGE)
        .says("connected", "dead_headed")
}

fn heron_check(id: &str, day: i64) -> Fact {
    check(id, day, HERON).says("ran_on", "mains").says("sides_at_once", "one")
}

fn morning(day: i64, minute: i64) -> Moment {
    story::moment(day, (10 * 60 + 12 + minute) * 60)
}

/// When it was new: every third level too.
fn heron_new() -> Fact {
    heron_check("check-heron-new", 8).with(
        &[
            Read(Sides::Left, None, &[270.0, 268.0, 270.0]),
            Read(Sides::Right, None, &[268.0, 268.0, 266.0]),
            Read(Sides::Left, Some(3), &[92.0]),
            Read(Sides::Left, Some(6), &[164.0]),
            Read(Sides::Left, Some(9), &[222.0]),
        ],
        8,
    )
}

fn heron(day: i64) -> Fact {
    let lost = if day > 50 { 2.0 } else { 0.0 };
    let readings: &[f64] = if lost > 0.0 { &[266.0, 264.0, 266.0] } else { &[268.0, 268.0, 266.0] };
    heron_check(&format!("check-heron-{day}"), day)
        .with(&[Read(Sides::Left, None, readings), Read(Sides::Right, None, &[266.0, 266.0, 264.0])], day)
}

/// The left valve had gone soft.
fn heron_soft_valve() -> Fact {
    heron_check("check-heron-soft-valve", NEW_VALVE - 1).with(
        &[Read(Sides::Left, None, &[230.0, 226.0, 228.0]), Read(Sides::Right, None, &[264.0, 262.0, 264.0])],
        NEW_VALVE - 1,
    )
}

fn heron_new_valve() -> Fact {
    heron_check("check-heron-new-valve", NEW_VALVE + 2).with(
        &[Read(Sides::Left, None, &[264.0, 266.0, 264.0]), Read(Sides::Right, None, &[264.0, 262.0, 262.0])],
        NEW_VALVE + 2,
    )
}

/// The latest: most levels once.
fn heron_now() -> Fact {
    heron_check("check-heron-now", story::LAST - 5).with(
        &[
            Read(Sides::Left, None, &[262.0, 264.0, 262.0]),
            Read(Sides::Right, None, &[260.0, 262.0, 262.0]),
            Read(Sides::Left, Some(2), &[66.0]),
            Read(Sides::Left, Some(4), &[112.0]),
            Read(Sides::Left, Some(6), &[158.0]),
            Read(Sides::Left, Some(8), &[200.0]),
            Read(Sides::Left, Some(10), &[236.0]),
        ],
        story::LAST - 5,
    )
}

impl Fact {
    fn with(self, places: &[Read], day: i64) -> Self {
        let mut check = self;
        let mut number = 0;
        for Read(side, level, values) in places {
            for value in *values {
                let reading = Reading {
                    at: morning(day, number + 1),
                    place: ReadingPlace { level: level.map(drawwell_core::quantity::Level::new), side: *side },
                    vacuum: vacuum(*value),
                    set: None,
                };
                check = check.says(&format!("readings/{number:03}"), reading.to_json(None));
                number += 1;
            }
        }
        check
    }
}

fn measured() -> Vec<Fact> {
    let fit = |id: &str, day: i64| Fact::new(Kind::Fit, id).when("at", &story::moment(day, (9 * 60 + 30) * 60));
    vec![
        fit("fit-first", BETTER_FLANGE)
            .length("nipple_left_before", 15.5)
            .length("nipple_right_before", 17.0)
            .says("areola_drawn_in", "both")
            .says("rubbing", "neither")
            .says("marked_nipple", "left")
            .says("only_at_highest", json!("both")),
        fit("fit-second", NEW_VALVE + 2)
            .length("nipple_left_before", 16.0)
            .length("nipple_left_after", 17.0)
            .length("nipple_right_before", 17.0)
            .length("nipple_right_after", 17.5)
            .says("areola_drawn_in", "neither")
            .says("rubbing", "neither")
            .says("marked_nipple", "neither")
            .says("only_at_highest", "neither"),
    ]
}
