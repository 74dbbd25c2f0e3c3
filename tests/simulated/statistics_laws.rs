//! Laws that the statistics keep whatever the series.

use drawwell_core::statistics::{
    hamed_rao, mann_kendall, median, pelt, pettitt, robust_pelt, robust_slope, shift, Point, RobustSlope,
};
use proptest::prelude::*;

/// Whole numbers and quarters, so that many are equal and sums are exact.
fn value() -> impl Strategy<Value = f64> {
    prop_oneof![(-8_i32..8).prop_map(f64::from), (-4_000_i32..4_000).prop_map(|quarters| f64::from(quarters) / 4.0)]
}

/// Points in order, with gaps and with points at one place.
fn points(most: usize) -> impl Strategy<Value = Vec<Point>> {
    let steps = proptest::collection::vec((0_u8..4, value()), 2..most);
    steps.prop_map(|steps| {
        let mut at = 0.0;
        let point = |(step, value)| {
            at += f64::from(step);
            Point { at, value }
        };
        steps.into_iter().map(point).collect()
    })
}

/// All slopes, made and put in order.
fn all_slopes(points: &[Point]) -> Vec<f64> {
    let pairs = points.iter().enumerate().flat_map(|(place, a)| points[place + 1..].iter().map(move |b| (a, b)));
    let mut slopes: Vec<f64> =
        pairs.filter(|(a, b)| a.at < b.at).map(|(a, b)| (b.value - a.value) / (b.at - a.at)).collect();
    slopes.sort_by(f64::total_cmp);
    slopes
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * (1.0 + a.abs())
}

fn alike(a: RobustSlope, b: RobustSlope) -> bool {
    near(a.slope, b.slope) && near(a.low, b.low) && near(a.high, b.high) && near(a.intercept, b.intercept)
}

/// The least cost of any segmentation, one end after another.
fn least_cost(values: &[f64], penalty: f64, least: usize) -> f64 {
    let mut best = vec![f64::INFINITY; values.len() + 1];
    best[0] = -penalty;
    for end in least..=values.len() {
        for start in 0..=end - least {
            best[end] = best[end].min(best[start] + penalty + cost(&values[start..end]));
        }
    }
    best[values.len()]
}

fn cost(part: &[f64]) -> f64 {
    let mean = part.iter().sum::<f64>() / part.len() as f64;
    part.iter().map(|value| (value - mean).powi(2)).sum()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(96))]

    #[test]
    fn slopes_that_are_looked_for_are_those_that_are_made(points in points(420), confidence in 0.5..0.999_f64) {
        let slopes = all_slopes(&points);
        let found = robust_slope(&points, confidence, 1.0);
        prop_assert_eq!(found.is_some(), !slopes.is_empty());
        if let Some(found) = found {
            prop_assert_eq!(found.pairs, slopes.len() as u64);
            prop_assert_eq!(Some(found.slope), median(&slopes));
            prop_assert!(slopes.binary_search_by(|slope| slope.total_cmp(&found.low)).is_ok());
            prop_assert!(slopes.binary_search_by(|slope| slope.total_cmp(&found.high)).is_ok());
            prop_assert!(found.low <= found.slope && found.slope <= found.high);
        }
    }

    #[test]
    fn a_slope_follows_the_series(points in points(60), up in value(), rise in -3_i32..4, times in 1_i32..5) {
        let Some(plain) = robust_slope(&points, 0.9, 1.0) else { return Ok(()) };
        let (rise, times) = (f64::from(rise), f64::from(times));
        let moved: Vec<Point> =
            points.iter().map(|p| Point { value: times * p.value + rise * p.at + up, ..*p }).collect();
        let moved = robust_slope(&moved, 0.9, 1.0).unwrap();
        // Ties come and go when a slope is added, and the range with them.
        prop_assert!(near(moved.slope, times * plain.slope + rise));
        let later: Vec<Point> = points.iter().map(|p| Point { at: p.at + 1000.0, value: times * p.value }).collect();
        let later = robust_slope(&later, 0.9, 1.0).unwrap();
        let expected = RobustSlope {
            slope: times * plain.slope,
            low: times * plain.low,
            high: times * plain.high,
            intercept: times * (plain.intercept - 1000.0 * plain.slope),
            ..plain
        };
        prop_assert!(alike(later, expected), "{later:?} is not {expected:?}");
    }

    #[test]
    fn a_wider_range_holds_the_narrower(points in points(80), inflation in 1.0..5.0_f64) {
        if let Some(plain) = robust_slope(&points, 0.9, 1.0) {
            let wider = robust_slope(&points, 0.9, inflation).unwrap();
            prop_assert!(wider.low <= plain.low && plain.high <= wider.high);
        }
    }

    #[test]
    fn a_trend_read_backwards_is_its_opposite(values in proptest::collection::vec(value(), 2..200)) {
        let forwards = mann_kendall(&values).unwrap();
        let backwards = mann_kendall(&values.iter().rev().copied().collect::<Vec<_>>()).unwrap();
        prop_assert_eq!((forwards.s, forwards.p), (-backwards.s, backwards.p));
        let brute: i64 = (0..values.len())
            .flat_map(|a| (a + 1..values.len()).map(move |b| (a, b)))
            .map(|(a, b)| i64::from(values[b] > values[a]) - i64::from(values[b] < values[a]))
            .sum();
        prop_assert_eq!(forwards.s, brute);
    }

    #[test]
    fn segments_cost_as_little_as_any(
        values in proptest::collection::vec(value(), 2..40),
        penalty in 0.5..20_000.0_f64,
        least in 1_usize..6,
    ) {
        let found = pelt(&values, penalty, least);
        if values.len() < 2 * least {
            prop_assert!(found.is_empty());
            return Ok(());
        }
        let edges: Vec<usize> = [0].into_iter().chain(found.iter().copied()).chain([values.len()]).collect();
        prop_assert!(edges.windows(2).all(|pair| pair[1] - pair[0] >= least));
        let segments: f64 = edges.windows(2).map(|pair| cost(&values[pair[0]..pair[1]])).sum();
        let (total, expected) = (segments + penalty * found.len() as f64, least_cost(&values, penalty, least));
        prop_assert!((total - expected).abs() <= 1e-9 * (1.0 + expected.abs()), "{total} is not {expected}");
    }

    #[test]
    fn changes_stay_when_a_series_is_moved_and_stretched(
        values in proptest::collection::vec(value(), 10..80),
        up in value(),
        power in -2_i32..3,
    ) {
        let moved: Vec<f64> = values.iter().map(|value| value * 2_f64.powi(power) + up).collect();
        prop_assert_eq!(robust_pelt(&values, 9.0, 3), robust_pelt(&moved, 9.0, 3));
        prop_assert_eq!(pettitt(&values), pettitt(&moved));
    }

    #[test]
    fn a_shift_there_and_back_is_its_opposite(
        first in proptest::collection::vec(value(), 1..40),
        second in proptest::collection::vec(value(), 1..40),
    ) {
        let (there, back) = (shift(&first, &second, 0.9, 1.0).unwrap(), shift(&second, &first, 0.9, 1.0).unwrap());
        prop_assert_eq!(there.shift, -back.shift);
        prop_assert!(there.low <= there.shift && there.shift <= there.high);
    }

    #[test]
    fn whatever_comes_in_no_nan_comes_out(
        at in proptest::collection::vec(any::<f64>(), 0..12),
        values in proptest::collection::vec(prop_oneof![any::<f64>(), Just(f64::NAN), Just(f64::MAX), Just(0.0)], 0..12),
        number in any::<f64>(),
        count in 0_usize..20,
    ) {
        let points: Vec<Point> = at.into_iter().zip(&values).map(|(at, value)| Point { at, value: *value }).collect();
        if let Some(found) = robust_slope(&points, number, number) {
            prop_assert!([found.slope, found.low, found.high, found.intercept].iter().all(|it| it.is_finite()));
        }
        if let Some(found) = robust_slope(&points, 0.9, 1.0) {
            prop_assert!([found.slope, found.low, found.high, found.intercept].iter().all(|it| it.is_finite()));
        }
        if let Some(found) = hamed_rao(&points, Some(count)) {
            prop_assert!(found.trend.p.is_finite() && found.unbounded_inflation.is_finite());
        }
        if let Some(found) = shift(&values, &values, 0.9, number) {
            prop_assert!(found.shift.is_finite() && found.low.is_finite() && found.high.is_finite());
        }
        if let Some(found) = drawwell_core::statistics::paired_shift(&values) {
            prop_assert!(found.shift.is_finite() && (0.0..=1.0).contains(&found.p));
        }
        pelt(&values, number, count);
        robust_pelt(&values, number, count);
        drawwell_core::statistics::segment_range(&values, count / 3, count / 2, count, number, 1.0);
        for found in [drawwell_core::statistics::quantile(&values, number), median(&values)].into_iter().flatten() {
            prop_assert!(found.is_finite());
        }
        if let Some(found) = drawwell_core::statistics::least_squares_line(&points) {
            prop_assert!(found.slope.is_finite() && found.r_squared.is_finite());
        }
    }
}
