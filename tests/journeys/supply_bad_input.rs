//! Supply over records that are empty, thin, odd or long.

use chrono::{DateTime, Duration};
use drawwell_core::screen::shapes::{Event, Place, SupplyScreen};
use drawwell_tests::person::Person;
use drawwell_tests::ten_years;
use serde_json::{json, Value};

use crate::supply::supply;

const NOW: &str = "2026-03-30T12:00:00Z";

fn person() -> Person {
    Person::welcomed(NOW, "UTC").unwrap()
}

/// Eight sessions a day, three hours apart, for so many days up to now: what
/// each gave from either side, or nothing where it was not written down.
fn sessions(days: i64, gave: impl Fn(i64) -> Option<Value>) -> String {
    let now = DateTime::parse_from_rfc3339(NOW).unwrap();
    (0..days * 8)
        .filter_map(|number| {
            let ended = now - Duration::hours(1) - Duration::hours(3 * (days * 8 - 1 - number));
            let at = |moment: DateTime<_>| json!({ "at": moment.to_rfc3339(), "zone": "UTC" });
            let amount = gave(number)?;
            let line = json!({
                "fact": "session", "id": format!("s{number:04}"), "method": "electric_pump", "sides": "both",
                "started": at(ended - Duration::minutes(20)), "ended": at(ended),
                "amount_left": amount, "amount_right": amount,
            });
            Some(format!("{line}\n"))
        })
        .collect()
}

fn milliliters(ml: i64) -> Option<Value> {
    Some(json!({ "value": ml, "unit": "mL" }))
}

/// Amounts that differ a little, as they do: 40 mL on the whole.
fn about_40(number: i64) -> Option<Value> {
    milliliters(40 + [0, 3, -2, 4, -4, 1, -1, -1][(number * 5 + number / 8) as usize % 8])
}

fn with(record: &str) -> Person {
    let mut person = person();
    person.import_file(record.as_bytes()).unwrap();
    person
}

/// Every number in a picture is a place within it, and none is no number.
fn within_the_picture(supply: &SupplyScreen) {
    let mut places = Vec::new();
    for weeks in std::iter::once(&supply.weeks).chain(supply.sides.iter().map(|s| &s.weeks)) {
        for bar in &weeks.bars {
            places.extend([bar.from, bar.to, bar.observed]);
            places.extend(bar.height.into_iter().chain(bar.by_the_clock));
        }
        places.extend(weeks.ribbon.iter().flat_map(|p| [p.at, p.low, p.middle, p.high]));
        places.extend(weeks.breaks.iter().flat_map(|b| [b.from, b.to]));
        places.extend(weeks.ticks.iter().chain(&weeks.scale).chain(&weeks.aim).map(|t| t.at));
        for point in &weeks.ribbon {
            assert!(point.low <= point.middle && point.middle <= point.high, "{point:?}");
        }
    }
    for bar in &supply.hours.bars {
        places.extend([bar.from, bar.to, bar.low, bar.high]);
        places.extend(bar.height);
    }
    assert!(places.iter().all(|p| (0.0..=1.001).contains(p)), "{places:?}");
}

#[test]
fn without_a_session_it_says_what_will_stand_here() {
    let shown = supply(&mut person(), 28);
    assert_eq!((shown.headline.as_str(), shown.figure.as_str()), ("Nothing to show yet", ""));
    assert!(shown.caption.contains("Three full days"));
    assert!(shown.weeks.bars.is_empty() && shown.behind.is_none() && shown.against.rows.is_empty());
}

#[test]
fn one_session_is_no_interval_and_one_day_is_no_level() {
    for days in [7, 0] {
        let shown = supply(&mut with(&sessions(8, |n| if n == 63 { milliliters(50) } else { None })), days);
        assert_eq!((shown.headline.as_str(), shown.figure.as_str()), ("Can’t tell yet", ""));
        let shown = supply(&mut with(&sessions(1, about_40)), days);
        assert_eq!((shown.headline.as_str(), shown.figure.as_str()), ("Can’t tell yet", ""));
        assert!(shown.caption.contains("needed"), "{}", shown.caption);
        within_the_picture(&shown);
    }
}

#[test]
fn amounts_that_are_all_unknown_are_unknown_and_not_nought() {
    let shown = supply(&mut with(&sessions(20, |_| Some(json!({ "said": "unknown" })))), 14);
    assert_eq!((shown.headline.as_str(), shown.figure.as_str()), ("Can’t tell yet", ""));
    assert!(shown.weeks.bars.iter().all(|bar| bar.height.is_none() && bar.observed == 0.0));
    within_the_picture(&shown);
}

#[test]
fn nothing_on_every_day_is_a_level_of_nothing_that_holds() {
    let shown = supply(&mut with(&sessions(20, |_| milliliters(0))), 14);
    assert_eq!((shown.headline.as_str(), shown.figure.as_str()), ("Steady", "about 0 mL a day"));
    within_the_picture(&shown);
}

#[test]
fn every_amount_known_is_the_sum_of_the_day() {
    // 8 sessions of 2 × 40 mL are 640 mL a day.
    for days in [7, 14, 28, 0] {
        let shown = supply(&mut with(&sessions(35, about_40)), days);
        assert_eq!(shown.figure, "about 640 mL a day", "{days}");
        // A week is too short to tell whether it holds.
        assert_eq!(shown.headline, if days == 7 { "Can’t tell yet" } else { "Steady" }, "{days}");
        within_the_picture(&shown);
    }
}

#[test]
fn two_children_of_different_age_need_the_sum_and_a_birth_that_is_not_known_is_said() {
    let mut record = sessions(20, about_40);
    // 90 and 30 days old: 735.0 and 621.2 mL a day (Rios-Leyvraz and Yao 2023).
    record.push_str(
        "{\"fact\":\"child\",\"id\":\"a\",\"name\":\"Wren\",\"birth\":\"2025-12-30\",\"gestation_weeks\":40}\n",
    );
    record.push_str(
        "{\"fact\":\"child\",\"id\":\"b\",\"name\":\"Lark\",\"birth\":\"2026-02-28\",\"gestation_weeks\":39}\n",
    );
    let need = |person: &mut Person| {
        let rows = supply(person, 14).against.rows;
        rows.into_iter().find(|row| row.title.contains("Intake in studies")).map(|row| row.detail).unwrap_or_default()
    };
    let mut person = with(&record);
    assert!(need(&mut person).starts_with("About 1355 mL a day."), "{}", need(&mut person));
    person.import_file(b"{\"fact\":\"child\",\"id\":\"c\",\"name\":\"Siskin\"}\n").unwrap();
    assert!(need(&mut person).contains("Please add the birth date of Siskin"), "{}", need(&mut person));
}

#[test]
fn a_rule_that_is_set_anew_holds_and_clearing_brings_the_shipped_one_back() {
    let mut person = with(&sessions(20, |n| if n % 8 == 3 { Some(json!({ "said": "unknown" })) } else { about_40(n) }));
    assert_eq!(supply(&mut person, 14).figure, "about 640 mL a day");
    person.send(Event::Go { place: Place::Entry { id: "rules".to_owned() } }).unwrap();
    assert!(person.reads().unwrap().contains("Hoban"), "a rule tells its source");
    person.enter("complete_day", "95").unwrap();
    assert_eq!(supply(&mut person, 14).figure, "", "seven eighths of a day are not enough now");
    assert_eq!(person.enter("complete_day", "101").unwrap_err().field, "complete_day");
    person.press("clear-complete_day").unwrap();
    assert_eq!(supply(&mut person, 14).figure, "about 640 mL a day");
}

#[test]
fn an_aim_says_when_it_would_be_met_or_that_it_would_not() {
    let mut person = with(&sessions(35, |n| milliliters(20 + n / 12)));
    let aim = |person: &mut Person, typed: &str| {
        person.send(Event::Go { place: Place::Entry { id: "settings".to_owned() } }).unwrap();
        person.enter("aim", typed).unwrap();
        let rows = supply(person, 28).against.rows;
        rows.into_iter().find(|row| row.title == "Your goal").map(|row| row.detail).unwrap_or_default()
    };
    assert_eq!(supply(&mut person, 28).headline, "Rising");
    assert!(aim(&mut person, "900").contains("With this trend, between"), "{}", aim(&mut person, "900"));
    assert!(aim(&mut person, "300").contains("You are there."), "{}", aim(&mut person, "300"));
    let mut falling = with(&sessions(35, |n| milliliters(60 - n / 12)));
    assert!(aim(&mut falling, "900").contains("This trend does not lead there now."), "{}", aim(&mut falling, "900"));
}

#[test]
fn ten_years_answer_every_span() {
    let mut person = Person::welcomed("2026-02-25T06:20:00Z", "UTC").unwrap();
    person.import_file(ten_years::exchange_file().as_bytes()).unwrap();
    for days in [7, 14, 28, 0, 40_000, u32::MAX] {
        let shown = supply(&mut person, days);
        assert!(!shown.figure.is_empty(), "{days}: {}", shown.caption);
        within_the_picture(&shown);
        person.show(&Place::SupplyFigures { days }).unwrap();
    }
}
