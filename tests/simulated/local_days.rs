//! Milk spread over local days: none is lost and none is made by the calendar,
//! whatever the clock on the wall does.

use drawwell_core::answer::supply::{Calendar, DayProduction, IntervalStatus, PartOfDay, Side, Spread};
use drawwell_core::quantity::{Quantity, Volume};
use drawwell_core::record::{Answered, Milk, Removal, Sides};
use drawwell_core::time::{DayStart, Instant, LocalDay, Moment, Span, Zone};
use proptest::prelude::*;

fn removal(at: Instant, zone: Zone, sides: Sides, milk: Milk) -> Removal {
    Removal {
        began: None,
        session: format!("at {}", at.unix_milliseconds()),
        at,
        zone,
        sides,
        milk,
        answered: Answered::default(),
    }
}

fn each(left: f64, right: f64) -> Milk {
    Milk::Sides { left: Some(Volume::from_canonical(left)), right: Some(Volume::from_canonical(right)) }
}

fn zone(name: &str) -> Zone {
    Zone::named(name).unwrap()
}

fn instant(at: &str, name: &str) -> Instant {
    Moment::from_parts(at, name).unwrap().instant()
}

/// Every day that a removal can tell of, and some room around them.
fn every_day(removals: &[Removal], calendar: Calendar) -> Vec<DayProduction> {
    let (Some(first), Some(last)) = (removals.first(), removals.last()) else { return Vec::new() };
    let number = |removal: &Removal| LocalDay::of(&Moment::new(removal.at, removal.zone), calendar.start).number();
    let mut spread = Spread::new(removals, calendar);
    (number(first) - 3..=number(last) + 3).map(|n| spread.day(LocalDay::from_number(n).unwrap())).collect()
}

fn milk(days: &[DayProduction]) -> f64 {
    days.iter().flat_map(|day| &day.sides).map(|side| side.shared.milk().canonical()).sum()
}

/// What counts, from the intervals themselves.
fn counted(removals: &[Removal], calendar: Calendar) -> f64 {
    let mut spread = Spread::new(removals, calendar);
    let (from, until) = (Instant::from_unix_milliseconds(0), Instant::from_unix_milliseconds(4_000_000_000_000));
    let mut sum = 0.0;
    for side in Side::BOTH {
        let judged = spread.judged(side, from, until);
        sum += judged
            .iter()
            .filter(|i| i.status == IntervalStatus::Counts)
            .filter_map(|i| i.milk)
            .map(Quantity::canonical)
            .sum::<f64>();
    }
    sum
}

/// 15 mL an hour from each side, every so many minutes.
fn steady(from: Instant, every: i64, count: i64, zone_at: impl Fn(Instant) -> Zone) -> Vec<Removal> {
    (0..count)
        .map(|n| {
            let at = from.plus(Span::minutes(n * every));
            let side = 15.0 * every as f64 / 60.0;
            removal(at, zone_at(at), Sides::Both, each(side, side))
        })
        .collect()
}

/// From Berlin to New York on 10 May: that day has 30 hours, and the way back
/// on the 20th makes one of 18.
#[test]
fn a_day_of_flight_is_scaled_by_the_hours_it_had() {
    let (berlin, new_york) = (zone("Europe/Berlin"), zone("America/New_York"));
    let there = instant("2026-05-10T12:00:00+02:00", "Europe/Berlin");
    let back = instant("2026-05-20T12:00:00-04:00", "America/New_York");
    let removals = steady(instant("2026-05-01T00:00:00+02:00", "Europe/Berlin"), 150, 290, |at| {
        if (there..back).contains(&at) {
            new_york
        } else {
            berlin
        }
    });
    let days = every_day(&removals, Calendar { start: DayStart::MIDNIGHT, zone: berlin });
    let lasted: Vec<i64> =
        days.iter().filter(|d| d.lasted != Span::hours(24)).map(|d| d.lasted.in_minutes() / 60).collect();
    assert_eq!(lasted, [30, 18]);
    for day in days.iter().filter(|d| d.observed().fraction() > 0.999) {
        let made = day.production().unwrap().canonical();
        assert!((made - 720.0).abs() < 1e-6, "{:?}: {made}", day.day);
    }
    assert!(days.iter().filter(|d| d.observed().fraction() > 0.999).count() > 25);
}

/// The four parts of a day share out what the day made, also at four o'clock
/// and where the clock is changed within one of them.
#[test]
fn the_parts_of_a_day_are_the_whole_of_it() {
    for (name, begins) in
        [("Europe/Berlin", "2026-03-27T00:00:00+01:00"), ("Europe/Berlin", "2026-10-23T00:00:00+02:00")]
    {
        for hour in [0, 4] {
            let calendar = Calendar { start: DayStart::at_hour(hour).unwrap(), zone: zone(name) };
            let removals = steady(instant(begins, name), 130, 60, |_| calendar.zone);
            for day in every_day(&removals, calendar) {
                for side in &day.sides {
                    let parts: f64 = side.by_part.iter().map(|part| part.milk().canonical()).sum();
                    assert!((parts - side.shared.milk().canonical()).abs() < 1e-9, "{day:?}");
                }
                if day.observed().fraction() > 0.999 {
                    // The clock is changed at night: only the night is longer or shorter for it.
                    let night = day.lasted.in_minutes() as f64 / 60.0 - 18.0;
                    for (part, hours) in PartOfDay::ALL.iter().zip([night, 6.0, 6.0, 6.0]) {
                        let milk = day.sides[0].by_part[*part as usize].milk().canonical();
                        assert!((milk - 15.0 * hours).abs() < 1e-6, "{part:?} of {:?}: {milk}", day.day);
                    }
                }
            }
        }
    }
}

const ZONES: &[&str] = &[
    "Europe/Berlin",
    "America/New_York",
    "Australia/Lord_Howe",
    "Asia/Kathmandu",
    "Pacific/Apia",
    "America/St_Johns",
    "UTC",
];

/// Gaps in minutes, amounts, sides and how they were measured.
fn written() -> impl Strategy<Value = Vec<Removal>> {
    let one = (5..1500_i64, 0..160_u32, 0..160_u32, 0..6_u8, 0..ZONES.len());
    // Beginning some days before a change of the clock somewhere.
    let begins = prop_oneof![Just(1_774_000_000_000_i64), Just(1_792_000_000_000), Just(1_775_100_000_000)];
    (begins, prop::collection::vec(one, 2..120), any::<bool>()).prop_map(|(begins, all, travels)| {
        let mut at = Instant::from_unix_milliseconds(begins);
        let home = all.first().map_or(0, |first| first.4);
        all.iter()
            .enumerate()
            .map(|(n, (gap, left, right, how, abroad))| {
                at = at.plus(Span::minutes(*gap));
                let place = if travels && n % 40 > 20 { *abroad } else { home };
                let (left, right) = (f64::from(*left), f64::from(*right));
                let (sides, milk) = match how {
                    0 => (Sides::Left, Milk::Sides { left: Some(Volume::from_canonical(left)), right: None }),
                    1 => (Sides::Right, Milk::Sides { left: None, right: Some(Volume::from_canonical(right)) }),
                    2 => (Sides::Both, Milk::Unknown),
                    3 => (Sides::Both, Milk::Together(Volume::from_canonical(left + right))),
                    _ => (Sides::Both, each(left, right)),
                };
                removal(at, zone(ZONES[place]), sides, milk)
            })
            .collect()
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn milk_spread_over_days_adds_up_to_the_milk_that_counts(removals in written(), hour in 0..=12_u32) {
        // In one zone: days then lie without a gap side by side.
        let home = removals[0].zone;
        let removals: Vec<Removal> = removals.into_iter().map(|r| Removal { zone: home, ..r }).collect();
        let calendar = Calendar { start: DayStart::at_hour(hour).unwrap(), zone: home };
        let (spread, whole) = (milk(&every_day(&removals, calendar)), counted(&removals, calendar));
        prop_assert!((spread - whole).abs() < 1e-6 * (1.0 + whole), "{spread} of {whole}");
    }

    #[test]
    fn no_day_is_made_of_more_than_all_its_hours_also_for_a_traveller(removals in written(), hour in 0..=12_u32) {
        let calendar = Calendar { start: DayStart::at_hour(hour).unwrap(), zone: removals[0].zone };
        for day in every_day(&removals, calendar) {
            prop_assert!((0.0..=1.0).contains(&day.observed().fraction()));
            let made = day.production().map_or(0.0, Quantity::canonical);
            prop_assert!(made.is_finite() && made >= 0.0, "{made}");
            for side in &day.sides {
                let parts: f64 = side.by_part.iter().map(|part| part.milk().canonical()).sum();
                prop_assert!((parts - side.shared.milk().canonical()).abs() < 1e-6);
                prop_assert!(side.alone.milk() <= side.shared.milk());
            }
        }
        let (spread, whole) = (milk(&every_day(&removals, calendar)), counted(&removals, calendar));
        prop_assert!((spread - whole).abs() < 1e-6 * (1.0 + whole), "{spread} of {whole}");
    }
}
