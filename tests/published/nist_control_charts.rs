//! NIST/SEMATECH e-Handbook of Statistical Methods, doi:10.18434/M32189, sections 6.3.2.2
//! (individual values) and 6.3.2.4 (EWMA); and what is known of the cumulative sum.
//!
//! Limits were seen in repositories that cite the handbook. The twenty values of 6.3.2.4 are
//! from memory; their averages were worked out and agree with those printed.

use drawwell_core::statistics::{ewma_chart, individuals_chart, Cusum};
use drawwell_tests::chance::Chance;

const EWMA_DATA: [f64; 20] = [
    52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6,
    52.1,
];
const EWMA_PRINTED: [f64; 20] = [
    50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92,
    50.73, 51.23, 51.94, 51.99,
];

/// 6.3.2.4: target 50, s = 2.0539, λ = 0.3, three standard deviations.
#[test]
fn ewma() {
    let chart = ewma_chart(&EWMA_DATA, 50.0, 2.0539, 0.3, 3.0).unwrap();
    assert!((chart.high - 52.5884).abs() < 5e-5, "{}", chart.high);
    assert!((chart.low - 47.4115).abs() < 1e-4, "{}", chart.low);
    for (found, printed) in chart.values.iter().zip(EWMA_PRINTED) {
        assert!((found - printed).abs() <= 5e-3 + 1e-9, "{found} is not {printed}");
    }
    assert!(chart.values.iter().all(|value| (chart.low..=chart.high).contains(value)), "it gives no signal");
}

/// 6.3.2.2: the last ten of them.
#[test]
fn individual_values() {
    let chart = individuals_chart(&EWMA_DATA[10..]).unwrap();
    for (found, printed, tolerance) in [
        (chart.centre, 50.81, 1e-9),
        (chart.moving_range, 1.8778, 5e-5),
        (chart.high, 55.8041, 5e-5),
        (chart.low, 45.8159, 5e-5),
        // Printed from a rounded mean; 3.267 × 1.87778 is 6.1347.
        (chart.moving_range_high, 6.1349, 3e-4),
    ] {
        assert!((found - printed).abs() < tolerance, "{found} is not {printed}");
    }
}

/// How long a sum of k = 1/2 and h = 5 takes to its first signal: 938 days without a change
/// and 10.4 with a fall of one standard deviation (Hawkins & Olwell, Cumulative Sum Charts
/// and Charting for Quality Improvement, 1998; from memory; Siegmund's formula gives 938.2 and
/// 10.34). A sample of normal values, so nearly.
#[test]
fn how_long_a_cumulative_sum_takes() {
    let mut chance = Chance::seeded(11);
    for (fall, expected, rounds) in [(0.0, 938.0, 1500), (1.0, 10.4, 4000)] {
        let mut days = 0_u32;
        for _ in 0..rounds {
            let mut sum = Cusum::lower(0.5, 5.0).unwrap();
            days += 1;
            while !sum.step(Some(chance.normal() - fall)) {
                days += 1;
            }
        }
        let average = f64::from(days) / f64::from(rounds);
        assert!((average / expected - 1.0).abs() < 0.06, "{average} and not {expected}");
    }
}

#[test]
fn a_missing_day_leaves_the_sum_where_it_was() {
    let mut sum = Cusum::lower(0.5, 2.0).unwrap();
    assert!(!sum.step(Some(-2.0)));
    assert_eq!(sum.sum(), 1.5);
    assert!(!sum.step(None));
    assert_eq!(sum.sum(), 1.5);
    assert!(sum.step(Some(-1.5)), "1.5 and 1.0 are over 2");
    sum.reset();
    assert!(!sum.signals());
    assert!(!sum.step(Some(3.0)), "a rise is not looked for");
    assert_eq!(sum.sum(), 0.0);
}
