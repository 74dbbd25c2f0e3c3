//! The rules of Supply: each at its bounds and beyond them, and the band of a
//! course on both of its sides.

use drawwell_core::answer::supply::course::{course, Heading};
use drawwell_core::answer::supply::{DayProduction, Series};
use drawwell_core::answer::RestsOn;
use drawwell_core::guidance::{Rules, SupplyRules};
use drawwell_core::quantity::{Count, Production, Quantity, Share};
use drawwell_core::time::{LocalDay, Span};

/// Thirty days on a straight line that changes by so many per cent of its
/// middle each week.
fn straight(per_cent_a_week: f64, wobble: f64) -> Option<Heading> {
    let day = |n: usize| LocalDay::from_number(738_000 + n as i32).unwrap();
    let days: Vec<(LocalDay, Production)> = (0..29)
        .map(|n| {
            let along = (n as f64 - 14.0) / 7.0 * per_cent_a_week / 100.0;
            let by = wobble * [0.0, 1.0, -1.0, 0.7, -0.6, 0.2, -0.9][n % 7];
            (day(n), Production::from_canonical(700.0 * (1.0 + along + by)))
        })
        .collect();
    let series = Series {
        shares: vec![Share::ALL; days.len()],
        rests_on: RestsOn {
            from: day(0),
            to: day(28),
            days: Count::new(29),
            complete: Count::new(29),
            observed: Share::ALL,
            doubtful: Share::NONE,
        },
        days,
        days_a_point: 1,
    };
    course(&series, &SupplyRules::read(&Rules::default())).unwrap().heading
}

/// The band is 6 % a week, up or down.
#[test]
fn inside_the_band_it_holds_and_outside_it_rises_or_falls() {
    for (per_cent, expected) in [
        (5.9, Heading::Holding),
        (-5.9, Heading::Holding),
        (0.0, Heading::Holding),
        (6.1, Heading::Rising),
        (-6.1, Heading::Falling),
    ] {
        assert_eq!(straight(per_cent, 0.0), Some(expected), "{per_cent} % a week");
    }
}

/// A course is called by which side of nothing its range lies on, where it is worth a word (four
/// fifths of the band): one that had to lie beyond the band said nothing of most that changed
/// by 8 % a week.
#[test]
fn a_range_that_reaches_over_the_edge_of_the_band_and_is_not_worth_a_word_can_t_be_told() {
    for per_cent in [4.0, -4.0] {
        assert_eq!(straight(per_cent, 0.2), None, "{per_cent} % a week");
    }
    assert_eq!(straight(0.0, 0.9), None, "nor one so wide that it holds both edges");
    assert_eq!(straight(20.0, 0.2), Some(Heading::Rising));
    assert_eq!(straight(-20.0, 0.2), Some(Heading::Falling));
}

#[test]
fn a_day_of_which_nothing_is_known_has_no_production() {
    let day = DayProduction::unobserved(LocalDay::from_number(738_000).unwrap(), Span::hours(24));
    assert_eq!((day.production(), day.observed()), (None, Share::NONE));
}
