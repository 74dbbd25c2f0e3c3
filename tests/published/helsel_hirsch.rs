//! Helsel, Hirsch, Ryberg, Archfield & Gilroy, "Statistical methods in water
//! resources", USGS Techniques and Methods 4-A3, 2020.
//!
//! The numbers of both examples are from memory; the results were worked out again.

use drawwell_core::statistics::{least_squares_line, mann_kendall, robust_slope, Point};

const KENDALL: [f64; 10] = [1.22, 2.20, 4.80, 1.28, 1.97, 1.46, 2.64, 2.34, 4.84, 2.96];

/// The Theil-Sen line: seven points of which one is far off.
#[test]
fn one_value_far_off() {
    let points: Vec<Point> = [1.0, 2.0, 3.0, 4.0, 5.0, 16.0, 7.0]
        .into_iter()
        .zip(1..)
        .map(|(value, at)| Point { at: at.into(), value })
        .collect();
    let robust = robust_slope(&points, 0.95, 1.0).unwrap();
    assert_eq!((robust.slope, robust.intercept, robust.pairs), (1.0, 0.0, 21));
    let line = least_squares_line(&points).unwrap();
    assert!((line.slope - 1.714).abs() < 5e-4, "{line:?}");
}

/// Kendall's tau. The exact p, 0.0726, is not what the program has: it uses the
/// normal distribution, 0.074.
#[test]
fn kendalls_tau() {
    let trend = mann_kendall(&KENDALL).unwrap();
    assert_eq!(trend.s, 21);
    assert!((trend.tau - 0.467).abs() < 5e-4, "{trend:?}");
    assert!((trend.z - 1.789).abs() < 5e-4, "{trend:?}");
    assert!((trend.p - 0.074).abs() < 5e-4, "{trend:?}");
}
