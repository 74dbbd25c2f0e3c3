//! Supply: what it says of a record, from an empty one to ten years of it.

use drawwell_core::screen::shapes::{Event, Place, Screen, SupplyScreen};
use drawwell_core::time::{Instant, Span, Zone};
use drawwell_tests::person::Person;
use drawwell_tests::written::{grams, milliliters, Written};
use serde_json::{json, Value};

pub(crate) const NOON: &str = "2026-05-20T12:30:00+02:00";

pub(crate) fn person() -> Person {
    Person::welcomed(NOON, "Europe/Berlin").unwrap()
}

pub(crate) fn berlin() -> Written {
    Written::within(Zone::named("Europe/Berlin").unwrap())
}

/// So long before the person's noon.
pub(crate) fn before(person: &Person, span: Span) -> Instant {
    person.now().minus(span)
}

/// Sessions every three hours over so many days, the last half an hour before
/// now; each side gives what is said of the session's day and number.
pub(crate) fn every_three_hours(person: &Person, days: i64, amount: impl Fn(i64, i64) -> f64) -> Written {
    let mut written = berlin();
    for n in 0..days * 8 {
        let ended = before(person, Span::minutes(30 + (days * 8 - 1 - n) * 180));
        written.both(&format!("s-{n:04}"), ended, amount(n / 8, n), amount(n / 8, n));
    }
    written
}

/// A little more and a little less, around a middle.
pub(crate) fn about(middle: f64, n: i64) -> f64 {
    middle + [0.0, 3.0, -2.0, 4.0, -4.0, 1.0, -2.0][n.rem_euclid(7) as usize]
}

pub(crate) fn supply(person: &mut Person, days: u32) -> SupplyScreen {
    let screen = person.show(&Place::Supply { days }).unwrap();
    let all = serde_json::to_string(&screen).unwrap();
    assert!(!all.contains("NaN") && !all.contains("inf "), "{all}");
    let Screen::Supply { supply, .. } = screen else { panic!("supply") };
    let Screen::Supply { supply: more, .. } = person.show(&Place::SupplyMore { days }).unwrap() else { panic!("more") };
    // All of it, whichever page it is on.
    SupplyScreen { weeks: supply.weeks, spans: supply.spans, asks: supply.asks, lines: more.lines.clone(), ..more }
}

pub(crate) fn go(person: &mut Person, place: Place) {
    person.send(Event::Go { place }).unwrap();
}

fn level(person: &mut Person) -> String {
    supply(person, 28).figure
}

#[test]
fn what_only_one_side_gives_is_the_whole_of_it() {
    let mut person = person();
    let mut written = berlin();
    for n in 0..80 {
        let fields = [("sides", json!("right")), ("amount_right", milliliters(about(60.0, n)))];
        written.session(&format!("s-{n}"), before(&person, Span::hours(3 * n + 1)), &fields);
    }
    person.import_file(&written.file()).unwrap();
    let supply = supply(&mut person, 28);
    assert_eq!(supply.figure, "about 480 mL a day");
    assert_eq!(supply.sides.iter().map(|s| s.column.label.as_str()).collect::<Vec<_>>(), ["Right"]);
}

#[test]
fn what_was_measured_together_tells_the_whole_and_neither_side() {
    let mut person = person();
    let mut written = berlin();
    for n in 0..80 {
        let fields = [("amount_together", milliliters(about(90.0, n)))];
        written.session(&format!("s-{n}"), before(&person, Span::hours(3 * n + 1)), &fields);
    }
    person.import_file(&written.file()).unwrap();
    let supply = supply(&mut person, 28);
    assert_eq!(supply.figure, "about 720 mL a day");
    assert!(supply.sides.is_empty(), "{:?}", supply.sides);
}

#[test]
fn milk_is_made_over_the_time_before_a_session_also_across_midnight() {
    let mut person = person();
    let mut written = berlin();
    // One session a twelfth of a day late: 22:30 and 10:30, both sides 360 mL a day together.
    for n in 0..20 {
        written.both(&format!("s-{n}"), before(&person, Span::hours(12 * n + 2)), 90.0, 90.0);
    }
    person.import_file(&written.file()).unwrap();
    let supply = supply(&mut person, 7);
    assert_eq!(supply.figure, "about 360 mL a day");
    let whole: Vec<_> = supply.weeks.bars.iter().filter(|bar| bar.counts).map(|bar| bar.height.unwrap()).collect();
    assert!(whole.len() == 7 && whole.windows(2).all(|w| (w[0] - w[1]).abs() < 1e-6), "{whole:?}");
}

/// Expressed every three hours, but a feed at the breast in place of every fourth session.
fn with_feeds(person: &Person, weighed: bool) -> Written {
    let mut written = berlin();
    for n in 0..160 {
        let ended = before(person, Span::hours(3 * n + 1));
        if n % 4 != 0 {
            written.both(&format!("s-{n}"), ended, 45.0, 45.0);
            continue;
        }
        let mut fields = vec![("method", json!("at_breast"))];
        if weighed {
            // 92.7 g at 1.03 g/mL (from memory) are 90 mL.
            fields.extend([("weight_before", grams(4000.0)), ("weight_after", grams(4092.7))]);
        }
        written.session(&format!("s-{n}"), ended, &fields);
    }
    written
}

#[test]
fn a_feed_that_was_not_weighed_leaves_its_time_unobserved_and_one_that_was_counts() {
    for (weighed, observed) in [(false, 75), (true, 100)] {
        let mut person = person();
        let written = with_feeds(&person, weighed);
        person.import_file(&written.file()).unwrap();
        let supply = supply(&mut person, 7);
        assert_eq!(supply.figure, "about 720 mL a day", "weighed: {weighed}");
        assert_eq!(supply.asks, [], "a feed that was not weighed is no amount that could be mistyped");
        let said = supply.lines.iter().any(|line| line.starts_with("Your log covers 75%"));
        assert_eq!(said, observed == 75, "{:?}", supply.lines);
    }
}

#[test]
fn a_clock_that_was_set_back_by_a_month_still_answers() {
    let mut person = person();
    let written = every_three_hours(&person, 30, |_, n| about(45.0, n));
    person.import_file(&written.file()).unwrap();
    person.wait(Span::hours(-24 * 20)).unwrap();
    assert_eq!(level(&mut person), "about 720 mL a day");
    person.wait(Span::hours(-24 * 200)).unwrap();
    assert_eq!(supply(&mut person, 28).headline, "Nothing to show yet");
    person.wait(Span::hours(24 * 220)).unwrap();
    assert_eq!(level(&mut person), "about 720 mL a day");
}

fn child(written: &mut Written, id: &str, birth: Option<&str>, weeks: u32) {
    let mut fields = vec![("name", json!(id)), ("gestation_weeks", json!(weeks))];
    fields.extend(birth.map(|birth| ("birth", json!(birth))));
    written.fact("child", id, &fields);
}

fn needs(fill: impl Fn(&Person, &mut Written)) -> String {
    let mut person = person();
    let mut written = every_three_hours(&person, 10, |_, n| about(45.0, n));
    fill(&person, &mut written);
    person.import_file(&written.file()).unwrap();
    let supply = supply(&mut person, 28);
    let told = supply.against.rows.iter().map(|row| format!("{}: {}", row.title, row.detail));
    told.filter(|told| told.contains("Intake")).collect::<Vec<_>>().join("\n")
}

#[test]
fn a_preterm_child_needs_by_its_weight_and_is_not_held_to_the_curve_for_term() {
    let weighed = |person: &Person, written: &mut Written| {
        let at = written.moment(before(person, Span::hours(24)));
        written.fact("weight", "w", &[("at", at), ("weight", grams(2000.0)), ("child", json!("Ina"))]);
    };
    let told = needs(|person, written| {
        child(written, "Ina", Some("2026-04-20"), 29);
        weighed(person, written);
    });
    // 150 mL for each of two kilograms.
    assert!(
        told.contains("About 300 mL a day") && told.contains("150 mL per kilogram a day") && !told.contains("%"),
        "{told}"
    );
    let told = needs(|_, written| child(written, "Ina", Some("2026-04-20"), 29));
    assert!(told.contains("Please add a recent weight for Ina"), "{told}");
}

#[test]
fn preterm_is_before_37_completed_weeks() {
    let told = |weeks| needs(|_, written| child(written, "Ina", Some("2026-04-20"), weeks));
    assert!(told(36).contains("By corrected age"), "{}", told(36));
    assert!(told(37).contains("620 mL a day"), "{}", told(37));
}

#[test]
fn a_rule_beyond_its_bounds_is_refused_in_words_and_nothing_changes() {
    let mut person = person();
    go(&mut person, Place::Entry { id: "rules".to_owned() });
    for (typed, key) in [("29.9", "bad-range"), ("100.1", "bad-range"), ("much", "bad-number"), ("-60", "bad-range")] {
        let refused = person.enter("complete_day", typed).unwrap_err();
        assert_eq!((refused.key, refused.field.as_str()), (key, "complete_day"), "{typed}");
    }
    assert!(person.only("rules").map_or(true, |rules: Value| rules.get("complete_day").is_none()));
    person.enter("complete_day", "30").unwrap();
    person.enter("complete_day", "100").unwrap();
}

/// The row of a preterm child's volume, so many days after its birth.
fn volume_by_day(age: i64, each: f64) -> String {
    let mut person = person();
    let mut written = every_three_hours(&person, 25, |_, n| about(each, n));
    let birth = chrono::NaiveDate::from_ymd_opt(2026, 5, 20).unwrap() - chrono::Duration::days(age);
    child(&mut written, "Ina", Some(&birth.to_string()), 29);
    person.import_file(&written.file()).unwrap();
    let rows = supply(&mut person, 28).against.rows;
    rows.into_iter().find(|row| row.title == "Ina: milk on day 14").map(|row| row.detail).unwrap_or_default()
}

#[test]
fn a_volume_by_day_is_told_from_day_14_on_with_its_source_and_for_three_months() {
    assert!(volume_by_day(13, 45.0).starts_with("Day 13 is too early to compare."));
    // Today is day 14 and not over: it was not observed well enough.
    assert!(volume_by_day(14, 45.0).contains("Not enough was logged"), "{}", volume_by_day(14, 45.0));
    for (each, expected) in [
        (45.0, "within a band from studies of 500 mL or more"),
        (25.0, "within a band from studies of 350 mL to 500 mL"),
        (15.0, "A band from studies is 350 mL to 500 mL"),
    ] {
        let told = volume_by_day(16, each);
        assert!(told.contains(expected) && told.contains("Hoban 2018"), "{told}");
        assert!(told.contains("Your unit’s own figure comes first"), "{told}");
        for word in ["low", "insufficient", "poor"] {
            assert!(!told.split_whitespace().any(|said| said.trim_matches('.') == word), "{told}");
        }
    }
    assert_eq!(volume_by_day(91, 45.0), "");
    assert_ne!(volume_by_day(90, 45.0), "");
}

#[test]
fn another_hour_at_which_days_begin_makes_other_days_of_the_same_milk() {
    let mut person = person();
    // Every other day there is less: days that begin at noon have some of each.
    let written = every_three_hours(&person, 30, |day, n| about(if day % 2 == 0 { 45.0 } else { 30.0 }, n));
    person.import_file(&written.file()).unwrap();
    let from_midnight = supply(&mut person, 28);
    let starts_at = |person: &mut Person, hour: &str| {
        go(person, Place::Entry { id: "settings".to_owned() });
        person.enter("day_start", hour).unwrap();
        supply(person, 28)
    };
    let from_noon = starts_at(&mut person, "12");
    assert_ne!(from_noon.weeks.bars, from_midnight.weeks.bars);
    assert_eq!(from_noon.figure, from_midnight.figure, "days are cut elsewhere, no milk is made by it");
    // As in a record in which days began at noon before anything was written down.
    let mut other = self::person();
    starts_at(&mut other, "12");
    other.import_file(&written.file()).unwrap();
    assert_eq!(supply(&mut other, 28).weeks.bars, from_noon.weeks.bars);
    assert_eq!(starts_at(&mut person, "0").weeks.bars, from_midnight.weeks.bars);
}
