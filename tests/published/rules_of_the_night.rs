//! Rules of the night on both of their sides, each with its source.

use drawwell_core::answer::night::{nights_that_were, Frame, Habit, NightThatWas, Origin, Stretch};
use drawwell_core::guidance::{Evidence, NightRules, Rules};
use drawwell_core::journal::Journal;
use drawwell_core::quantity::Count;
use drawwell_core::record::{Kind, Rhythm};
use drawwell_core::screen::shapes::{Event, Place};
use drawwell_core::time::{Instant, Moment, Span, Zone};
use drawwell_tests::person::Person;
use drawwell_tests::written::Written;
use serde_json::json;

fn frame(rhythm: &Rhythm, age: Option<Span>) -> Frame {
    Frame::of(rhythm, Habit::default(), NightRules::read(&Rules::default()), age)
}

fn days(count: i64) -> Span {
    Span::hours(24 * count)
}

/// Lai et al., Arch Dis Child Fetal Neonatal Ed 2020;105:F266-F269: "maximum interval
/// should be 7 hours".
#[test]
fn a_gap_of_seven_hours_is_within_and_a_minute_more_is_not() {
    let limit = frame(&Rhythm::default(), Some(days(20))).longest;
    assert_eq!((limit.value, limit.origin), (Span::hours(7), Origin::Rule("longest_gap")));
    let zero = Instant::from_unix_milliseconds(0);
    let night = |longest: i64| NightThatWas {
        window: Stretch { from: zero, until: zero.plus(Span::hours(8)) },
        longest: Some(Span::minutes(longest)),
    };
    assert_eq!(night(7 * 60).is_within(limit.value), Some(true));
    assert_eq!(night(7 * 60 + 1).is_within(limit.value), Some(false));
}

/// The same from a record: the end of the evening's session to the end of the morning's.
#[test]
fn a_night_of_the_record_is_within_at_seven_hours_and_not_at_seven_hours_and_one_minute() {
    let at = |text: &str| Moment::from_parts(text, "Europe/Berlin").unwrap().instant();
    for (morning, kept) in [("05:30", true), ("05:31", false)] {
        let mut written = Written::within(Zone::named("Europe/Berlin").unwrap());
        written.both("evening", at("2026-06-03T22:30:00+02:00"), 60.0, 60.0);
        written.both("morning", at(&format!("2026-06-04T{morning}:00+02:00")), 60.0, 60.0);
        let mut person = Person::at("2026-06-04T09:00:00+02:00", "Europe/Berlin").unwrap();
        person.import_file(&written.file()).unwrap();
        let journal = Journal::open(person.path(), "reader", person.now()).unwrap().journal;
        let rows = journal.of_kind_since(Kind::Session, at("2026-06-01T00:00:00+02:00")).unwrap();
        let frame = frame(&Rhythm::default(), Some(days(20)));
        let since = at("2026-06-03T12:00:00+02:00");
        let nights = nights_that_were(&rows, &frame, since, person.now(), Zone::named("Europe/Berlin").unwrap());
        // The window ends at 06:30, and the morning's session lies within it: the gap that
        // reaches to the next session is not known yet.
        assert_eq!(nights.len(), 1);
        assert_eq!(nights[0].longest, None, "nothing was written down after the night yet");
        written.both("later", at("2026-06-04T07:00:00+02:00"), 60.0, 60.0);
        person.import_file(&written.file()).unwrap();
        let rows = journal.of_kind_since(Kind::Session, at("2026-06-01T00:00:00+02:00")).unwrap();
        let nights = nights_that_were(&rows, &frame, since, person.now(), Zone::named("Europe/Berlin").unwrap());
        assert_eq!(nights[0].is_within(frame.longest.value), Some(kept), "{morning}");
    }
}

/// Poeliniz et al., Breastfeed Med 2024/25, doi:10.1089/bfm.2024.0396: each interval over
/// 5 h, 242 mL less by day 7, not significant. It holds for the first two weeks, and where no
/// birth date says that they are over.
#[test]
fn in_the_first_days_the_longest_gap_is_shorter() {
    let at = |age: Span| frame(&Rhythm::default(), Some(age)).longest.value;
    assert_eq!(at(Span::milliseconds(days(14).in_milliseconds() - 1)), Span::hours(5));
    assert_eq!(at(days(14)), Span::hours(7));
    let set = Rhythm { longest: Some(Span::hours(4)), ..Rhythm::default() };
    assert_eq!(frame(&set, Some(days(3))).longest.value, Span::hours(4), "what was set goes first");
    assert_eq!(
        frame(&Rhythm::default(), None).longest.value,
        Span::hours(5),
        "an age that is not known is no all-clear"
    );
}

fn tonight(wish: u32, birth: Option<&str>) -> String {
    let mut written = Written::within(Zone::UTC);
    written.fact("rhythm", "rhythm", &[("sessions_a_day", json!(wish))]);
    if let Some(birth) = birth {
        written.fact("child", "c", &[("birth", json!(birth))]);
    }
    let mut person = Person::at("2026-06-03T20:00:00Z", "UTC").unwrap();
    person.import_file(&written.file()).unwrap();
    person.send(Event::Go { place: Place::Tonight }).unwrap();
    person.reads().unwrap()
}

/// Lai 2020: "at least five times a day". Four a day carry a note, five none.
#[test]
fn four_sessions_a_day_carry_a_note_and_five_none() {
    for (wish, noted) in [(4, true), (5, false)] {
        assert_eq!(tonight(wish, Some("2026-05-01")).contains("suggests at least 5 a day (Lai 2020)"), noted, "{wish}");
    }
}

/// Usual guidance for the first weeks, 8 to 12 a day (from memory): in the first two weeks.
#[test]
fn in_the_first_two_weeks_fewer_than_eight_a_day_carry_a_note() {
    for (wish, birth, noted) in
        [(7, "2026-05-21", true), (8, "2026-05-21", false), (7, "2026-05-20", false), (7, "2026-06-03", true)]
    {
        let noted_there = tonight(wish, Some(birth)).contains("first two weeks is 8 to 12 a day");
        assert_eq!(noted_there, noted, "{wish} {birth}");
    }
}

#[test]
fn without_a_birth_date_the_shorter_gap_is_kept_and_the_date_is_asked_for() {
    let unknown = tonight(8, None);
    assert!(unknown.contains("Longest gap 5 h") && unknown.contains("There is no birth date yet"), "{unknown}");
    let known = tonight(8, Some("2026-05-01"));
    assert!(known.contains("Longest gap 7 h") && !known.contains("no birth date yet"), "{known}");
}

/// What studies say on how often stands side by side, and none of it is a constant of ours:
/// Hopkinson 1988 and Lai 2020 five or more, Front Pediatr 2020;8:191 six or more, usual
/// guidance eight to twelve (from memory).
#[test]
fn the_evidence_differs_and_each_names_its_source() {
    let all: Vec<(u32, u32, bool)> =
        Evidence::on_sessions_a_day().iter().map(|e| (e.sessions, e.year, e.from_memory)).collect();
    assert_eq!(all, [(5, 2020, false), (5, 1988, false), (6, 2020, false), (8, 2026, true)]);
    assert!(Evidence::on_sessions_a_day().iter().all(|e| !e.source.is_empty()));
    assert!(frame(&Rhythm::default(), None).sessions.is_none(), "no number is taken where none was set or done");
}

#[test]
fn a_rule_that_was_set_anew_holds() {
    let mut rules = Rules::default();
    rules.set("longest_gap", 6.0);
    rules.set("least_sessions", 6.0);
    let rules = NightRules::read(&rules);
    assert_eq!((rules.longest, rules.least_sessions), (Span::hours(6), Count::new(6)));
    let mut beyond = Rules::default();
    beyond.set("longest_gap", 25.0);
    assert_eq!(NightRules::read(&beyond).longest, Span::hours(7), "outside its bounds the shipped one stays");
}
