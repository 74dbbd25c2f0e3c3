//! A pump's cycles counted by tapping along: how often the range holds the truth.

use drawwell_core::answer::pump::speed_steps::{counted, NoCount};
use drawwell_core::quantity::{Count, Quantity};
use drawwell_core::record::Taps;
use drawwell_core::time::Instant;
use drawwell_tests::chance::Chance;

fn taps(at: impl IntoIterator<Item = f64>) -> Taps {
    let began = 1_786_000_000_000_i64;
    at.into_iter().fold(Taps::default(), |taps, seconds| {
        taps.with(Instant::from_unix_milliseconds(began + (seconds * 1000.0).round() as i64))
    })
}

/// Taps of a person who is off by some hundredths of a second, each time anew (from memory).
#[test]
fn the_range_of_a_count_holds_the_truth_nine_times_in_ten() {
    let mut chance = Chance::on(23, "counting");
    let (mut held, mut widest, all) = (0, 0.0_f64, 2000);
    for _ in 0..all {
        let rate = chance.between(30.0, 120.0);
        let spread = chance.between(0.01, 0.05);
        let period = 60.0 / rate;
        let count: Vec<f64> = (0..11).map(|n| f64::from(n) * period + chance.around(0.0, spread)).collect();
        let found = counted(&taps(count)).unwrap();
        held += u32::from(found.low.canonical() <= rate && rate <= found.high.canonical());
        widest = widest.max((found.high.canonical() - found.low.canonical()) / rate);
    }
    let share = f64::from(held) / f64::from(all);
    assert!((0.87..=0.93).contains(&share), "{share}");
    assert!(widest < 0.2, "the widest range is {widest} of the rate");
}

#[test]
fn ten_cycles_are_eleven_taps_and_a_tap_that_was_missed_is_seen() {
    let even = |count: u32| taps((0..count).map(|n| f64::from(n) * 1.25));
    assert_eq!(counted(&even(0)), Err(NoCount::Needs(Count::new(11))));
    assert_eq!(counted(&even(10)), Err(NoCount::Needs(Count::new(1))));
    let found = counted(&even(11)).unwrap();
    assert!((found.value.canonical() - 48.0).abs() < 1e-9, "60 by 1.25 s: {found:?}");
    let but = |left_out: u32| taps((0..13).filter(|n| *n != left_out).map(|n| f64::from(n) * 1.25));
    assert_eq!(counted(&but(6)), Err(NoCount::Uneven));
    let twice = taps((0..11).map(|n| f64::from(n) * 1.25).chain([12.7]));
    assert_eq!(counted(&twice), Err(NoCount::Uneven));
}

/// What is stored is what was tapped; a tap that is not later is none.
#[test]
fn taps_come_back_as_they_were_made() {
    let made = taps([0.0, 1.25, 1.25, 1.0, 2.5]);
    assert_eq!(made.spans().len(), 3);
    assert_eq!(Taps::from_json(Some(&made.to_json())), made);
    for wrong in [r#"{"first":1}"#, r#"{"first":1,"after":[0,5,5]}"#, r#"{"first":"1","after":[0]}"#, "[]", "null"] {
        let value: serde_json::Value = serde_json::from_str(wrong).unwrap();
        assert_eq!(Taps::from_json(Some(&value)), Taps::default(), "{wrong}");
    }
}
