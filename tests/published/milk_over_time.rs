//! Milk over the time in which it was made: Daly, Kent, Owens, Hartmann, "Frequency
//! and degree of milk removal and the short-term control of human milk
//! synthesis", Experimental Physiology 1996;81:861-875: volume over the hours since
//! the end before, and no time is never an infinite rate. And days of which too
//! little was written down (Breastfeeding Medicine 2023;18(8):571-578): a gap is
//! left open, missing is not zero.

use drawwell_core::answer::supply::{Calendar, Of, Series, Spread};
use drawwell_core::guidance::{Rules, SupplyRules};
use drawwell_core::quantity::{Quantity, Volume};
use drawwell_core::record::{Answered, Milk, Removal, Sides};
use drawwell_core::time::{DayStart, Instant, LocalDay, Moment, Span, Zone};

const BEGINS: Instant = Instant::from_unix_milliseconds(1_767_225_600_000);

fn left(minutes: i64, milliliters: f64) -> Removal {
    Removal {
        began: None,
        session: format!("at {minutes}"),
        at: BEGINS.plus(Span::minutes(minutes)),
        zone: Zone::UTC,
        sides: Sides::Left,
        milk: Milk::Sides { left: Some(Volume::from_canonical(milliliters)), right: None },
        answered: Answered::default(),
    }
}

const CALENDAR: Calendar = Calendar { start: DayStart::MIDNIGHT, zone: Zone::UTC };

fn day(number: u32) -> LocalDay {
    let first = LocalDay::of(&Moment::new(BEGINS, Zone::UTC), DayStart::MIDNIGHT);
    LocalDay::from_number(first.number() + number as i32).unwrap()
}

#[test]
fn an_interval_of_no_length_or_less_is_never_infinite() {
    for removals in [
        vec![left(60, 50.0), left(60, 60.0)],
        vec![left(60, 50.0), left(61, 60.0), left(61, 60.0)],
        // Given in the wrong order: a length below nothing.
        vec![left(600, 50.0), left(60, 60.0), left(60, 5.0)],
        vec![left(0, 50.0), left(300, 60.0), left(300, 60.0), left(299, 1.0)],
    ] {
        let made = Spread::new(&removals, CALENDAR).day(day(0));
        let rate = made.production().map_or(0.0, Quantity::canonical);
        assert!(rate.is_finite() && (0.0..2000.0).contains(&rate), "{removals:?}: {rate}");
        assert!((0.0..=1.0).contains(&made.observed().fraction()));
    }
}

/// Eight sessions a day on each of three days, and then a day with only so many.
fn with_a_day_of(sessions: i64) -> Vec<Removal> {
    let mut removals: Vec<Removal> = (0..32).map(|n| left(90 + 180 * n, 60.0)).collect();
    // A day in which only the first few were written down; then it goes on.
    removals.extend((0..sessions).map(|n| left(90 + 180 * (32 + n), 60.0)));
    removals.extend((0..8).map(|n| left(90 + 180 * (40 + n), 60.0)));
    removals
}

#[test]
fn a_day_with_three_sessions_of_eight_is_incomplete_and_left_out() {
    let rules = SupplyRules::read(&Rules::default());
    let series = |sessions| {
        let removals = with_a_day_of(sessions);
        let mut spread = Spread::new(&removals, CALENDAR);
        let days: Vec<_> = (1..6).map(|n| spread.day(day(n))).collect();
        (Series::of(&days, Of::Both, &rules), days)
    };
    let (whole, _) = series(8);
    assert_eq!(whole.rests_on.complete.get(), 5);
    let (short, days) = series(3);
    assert!(days[3].observed() < rules.complete_day, "{:?}", days[3].observed());
    assert!(short.days.iter().all(|(d, _)| *d != day(4)), "left out, not averaged as if it were whole");
    for (_, made) in &short.days {
        assert!((made.canonical() - 480.0).abs() < 1.0, "the other days are as they were: {made:?}");
    }
}

/// 60 % of 24 h are 14 h 24.
#[test]
fn a_day_counts_from_the_share_of_the_rule_on() {
    let rules = SupplyRules::read(&Rules::default());
    let counts = |minutes: i64| {
        // One stretch of so many minutes, in parts of four hours at most.
        let mut removals = vec![left(0, 1.0)];
        let mut at = 0;
        while at < minutes {
            at = (at + 240).min(minutes);
            removals.push(left(at, 40.0));
        }
        let made = Spread::new(&removals, CALENDAR).day(day(0));
        Series::of(&[made], Of::Both, &rules).rests_on.complete.get() == 1
    };
    assert!(counts(14 * 60 + 24));
    assert!(!counts(14 * 60 + 23));
}
