//! What the parent notes beside the milk: signs, what changed, and free lines.

use drawwell_core::record::Kind;

use super::{
    fact::Fact,
    story::{self, BACK_TO_WORK, BETTER_FLANGE, FEVER, HOME_TOGETHER, NEW_VALVE, WATCHING_AGAIN},
};

/// Everything that was noted, in no order.
pub(super) fn facts() -> Vec<Fact> {
    [signs(), dealt_with(), changes_in_life(), notes()].concat()
}

fn changes_in_life() -> Vec<Fact> {
    let event = |day: i64, hour: f64, what: &str| {
        Fact::new(Kind::LifeEvent, format!("life-{}", story::date(day)))
            .when("at", &story::moment(day, (hour * 3600.0) as i64))
            .says("what", what)
    };
    vec![
        event(FEVER, 9.4, "illness").says("note", "The breast, right. See the signs."),
        event(FEVER + 1, 10.0, "medicine").says("note", "From the doctor, for ten days."),
        event(99, 6.5, "journey").says("note", "The islands."),
        event(BACK_TO_WORK, 7.1, "back_to_work").says("note", "Four days a week."),
    ]
}

fn signs() -> Vec<Fact> {
    let sign = |day: i64, hour: f64| {
        Fact::new(Kind::Sign, format!("sign-{}-{}", story::date(day), hour as i64))
            .when("at", &story::moment(day, (hour * 3600.0) as i64))
    };
    vec![
        sign(19, 9.9).says("nipple_damage", "both").says("note", "Sore all round, left more."),
        sign(28, 10.1).says("nipple_damage", "left"),
        sign(44, 9.8).says("nipple_damage", "neither"),
        sign(FEVER - 1, 22.1).temperature("temperature", 37.4).says("lump", "right"),
        sign(FEVER, 4.1)
            .temperature("temperature", 38.7)
            .says("redness", "right")
            .says("heat", "right")
            .says("lump", "right")
            .yes("shivering")
            .says("note", "Woke up shaking."),
        sign(FEVER, 9.2).temperature("temperature", 38.4).says("redness", "right").says("heat", "right"),
        sign(FEVER, 20.3).temperature("temperature", 38.1).says("redness", "right").says("swelling", "right"),
        sign(FEVER + 1, 8.4).temperature("temperature", 37.6).says("redness", "right").says("lump", "right"),
        sign(FEVER + 2, 9.1).temperature("temperature", 36.9).says("redness", "neither").says("heat", "neither"),
        sign(FEVER + 4, 9.0).temperature("temperature", 36.7).says("lump", "neither").says("swelling", "neither"),
    ]
}

/// What came of the fever: who looked at it, and what had been seen by then.
fn dealt_with() -> Vec<Fact> {
    let at = |day: i64, hour: f64| story::moment(day, (hour * 3600.0) as i64);
    let dealt = |caution: &str, seen: (i64, f64), by: (i64, f64)| {
        Fact::new(Kind::CautionDealt, format!("dealt-{caution}-{}", story::date(by.0)))
            .when("at", &at(by.0, by.1))
            .says("dealt_how", "doctor_or_midwife")
            .says("caution", caution)
            .when("seen", &at(seen.0, seen.1))
    };
    vec![
        dealt("shivering", (FEVER, 4.1), (FEVER, 11.8)),
        dealt("breast-fever", (FEVER, 9.2), (FEVER, 11.8)).says("note", "A medicine from tomorrow on."),
        dealt("breast-fever", (FEVER + 1, 8.4), (FEVER + 1, 10.1)),
        dealt("no-better", (FEVER + 1, 8.4), (FEVER + 1, 10.1)),
    ]
}

fn notes() -> Vec<Fact> {
    let note = |day: i64, hour: f64, text: &str| {
        Fact::new(Kind::Note, format!("note-{}-{}", story::date(day), hour as i64))
            .when("at", &story::moment(day, (hour * 3600.0) as i64))
            .says("text", text)
    };
    vec![
        note(0, 18.5, "Half a syringe. Everyone was so pleased with it."),
        note(2, 13.4, "Nurse says every three hours, and the night counts too."),
        note(4, 19.0, "Sent home without Tavi. Heron is on the bedside table."),
        note(9, 11.0, "First time both bottles were more than he needs for the day."),
        note(14, 16.2, "An hour with Tavi on my chest, then more than usual came."),
        note(24, 21.0, "Set to 10 and still slow. It hurts at the edge of the flange."),
        note(BETTER_FLANGE, 12.9, "Measured: 19 left, 21 right. The old ones were far too wide."),
        note(BETTER_FLANGE + 4, 10.6, "6 is enough now."),
        note(47, 20.0, "Labels mixed up, two days of amounts are lost. So be it."),
        note(HOME_TOGETHER, 17.1, "Home. All four of us."),
        note(FEVER, 9.5, "Rang Lantern Ward's line, they had me see the doctor the same day."),
        note(90, 8.0, "Pell had a stomach bug, nothing written down for two days."),
        note(102, 9.2, "Back from the islands. Left side is slow since a week or so."),
        note(106, 21.4, "Turned up to 9 and the left still gives half. Is it me?"),
        note(NEW_VALVE, 19.2, "It was the valve. New one in."),
        note(NEW_VALVE + 3, 11.0, "Left is back."),
        note(BACK_TO_WORK, 20.9, "First day at work. The room with the key is at the end of the corridor."),
        note(136, 21.6, "The bottles here are marked in ounces."),
        note(WATCHING_AGAIN, 7.2, "A week of writing everything down again, for the visit."),
        note(150, 22.9, "Five times a day is what I can do, and it holds."),
    ]
}
