//! The invented family: as its generator writes it, and as core takes it in.

use std::{collections::BTreeMap, fs};

use drawwell_core::record::{moment, Kind, Session};
use drawwell_tests::{demo_family, place::demo_data};

use crate::record::Record;

#[test]
fn the_files_are_those_the_generator_writes() {
    let file = |name| fs::read_to_string(demo_data(name)).unwrap();
    let written_anew = "write them anew: cargo xtask demo";
    assert!(file("family.jsonl") == demo_family::file(demo_family::facts()), "{written_anew}");
    assert!(file("family.clock") == demo_family::clock(), "{written_anew}");
}

#[test]
fn every_line_is_taken_and_comes_out_as_it_went_in() {
    let file = demo_family::file(demo_family::facts());
    let mut record = Record::empty();
    let report = record.import(&file);
    assert_eq!(report.wrong, []);
    assert_eq!(report.wrong_count, 0);
    assert_eq!(report.taken as usize, file.lines().count() - 1);
    let out = record.export();
    let differing = file.lines().zip(out.lines()).find(|(went, came)| went != came);
    assert_eq!(differing, None);
    assert!(file == out, "{} bytes went in, {} came out", file.len(), out.len());

    let again = record.import(&out);
    assert_eq!((again.taken, again.wrong_count), (0, 0), "the same file twice says nothing new");
}

#[test]
fn it_ends_a_few_hours_before_it_is_looked_at_with_nothing_running() {
    let facts = demo_family::facts();
    let newest = facts
        .iter()
        // The next visit is to come.
        .filter(|fact| fact.kind != Kind::Visit)
        .filter_map(|fact| fact.kind.time_field().and_then(|key| moment(&fact.fields, key)))
        .map(|at| at.instant())
        .max()
        .unwrap();
    let since = demo_family::present().instant().since(newest).in_minutes();
    assert!((120..300).contains(&since), "{since} min");
    assert!(!sessions().iter().any(Session::is_running));
    let waiting = sessions().iter().filter(|session| session.lacks_amount()).count();
    assert!((1..=3).contains(&waiting), "{waiting} sessions wait for an amount");
}

#[test]
fn no_two_sessions_meet_on_one_side() {
    let mut sessions = sessions();
    sessions.sort_by_key(|session| session.started.as_ref().map(|at| at.instant()));
    for pair in sessions.windows(2) {
        let (ended, started) = (pair[0].ended.as_ref().unwrap(), pair[1].started.as_ref().unwrap());
        assert!(ended.instant() <= started.instant(), "{} and {}", pair[0].id, pair[1].id);
    }
}

/// What the story says can be seen in what was written down.
#[test]
fn milk_comes_in_holds_and_dips_on_the_left_while_the_valve_leaks() {
    let mut days: BTreeMap<String, (f64, f64)> = BTreeMap::new();
    for session in sessions() {
        use drawwell_core::quantity::Quantity;
        let day = session.started.as_ref().unwrap().on_the_wall().date().to_string();
        let known = |amount: &Option<_>| {
            amount.as_ref().and_then(drawwell_core::record::Amount::known).map_or(0.0, Quantity::canonical)
        };
        let sums = days.entry(day).or_default();
        sums.0 += known(&session.left);
        sums.1 += known(&session.right) + known(&session.together);
    }
    let both = |day: &str| days[day].0 + days[day].1;
    assert!(both("2026-03-13") < 100.0, "first day");
    assert!(both("2026-03-17") > 250.0, "fifth day");
    assert!(both("2026-04-01") > 600.0, "third week");
    let left = |days_of: [&str; 3]| days_of.iter().map(|day| days[*day].0).sum::<f64>() / 3.0;
    let before = left(["2026-06-05", "2026-06-12", "2026-06-13"]);
    let leaking = left(["2026-06-24", "2026-06-25", "2026-06-26"]);
    let after = left(["2026-07-01", "2026-07-02", "2026-07-03"]);
    assert!(leaking < before * 0.75, "{leaking} after {before}");
    assert!(after > before * 0.85, "{after} after {before}");
    assert!(!days.contains_key("2026-06-08") && !days.contains_key("2026-06-09"), "two days went unlogged");
}

fn sessions() -> Vec<Session> {
    demo_family::facts()
        .iter()
        .filter(|fact| fact.kind == Kind::Session)
        .map(|fact| Session::read(&fact.id, &fact.fields))
        .collect()
}
