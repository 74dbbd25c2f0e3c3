//! NIST Statistical Reference Datasets, <https://www.itl.nist.gov/div898/strd/>.
//!
//! The data were copied from repositories that cite NIST's files; the certified
//! values were seen there too and worked out again to sixty figures.

use drawwell_core::statistics::{
    first_autocorrelation, least_squares_line, mean, robust_slope, standard_deviation, Point,
};

const MICHELSO: [f64; 100] = [
    299.85, 299.74, 299.90, 300.07, 299.93, 299.85, 299.95, 299.98, 299.98, 299.88, 300.00, 299.98, 299.93, 299.65,
    299.76, 299.81, 300.00, 300.00, 299.96, 299.96, 299.96, 299.94, 299.96, 299.94, 299.88, 299.80, 299.85, 299.88,
    299.90, 299.84, 299.83, 299.79, 299.81, 299.88, 299.88, 299.83, 299.80, 299.79, 299.76, 299.80, 299.88, 299.88,
    299.88, 299.86, 299.72, 299.72, 299.62, 299.86, 299.97, 299.95, 299.88, 299.91, 299.85, 299.87, 299.84, 299.84,
    299.85, 299.84, 299.84, 299.84, 299.89, 299.81, 299.81, 299.82, 299.80, 299.77, 299.76, 299.74, 299.75, 299.76,
    299.91, 299.92, 299.89, 299.86, 299.88, 299.72, 299.84, 299.85, 299.85, 299.78, 299.89, 299.84, 299.78, 299.81,
    299.76, 299.81, 299.79, 299.81, 299.82, 299.85, 299.87, 299.87, 299.81, 299.74, 299.81, 299.94, 299.95, 299.80,
    299.81, 299.87,
];

const NORRIS_X: [f64; 36] = [
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5,
    11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1,
    448.9, 0.5,
];

const NORRIS_Y: [f64; 36] = [
    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9,
    10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4,
    449.2, 0.2,
];

/// 1.2, or whatever the middle is, then a tenth less and a tenth more five hundred times.
fn numerical_accuracy(middle: &str, less: &str, more: &str) -> Vec<f64> {
    let [middle, less, more] = [middle, less, more].map(|text| text.parse().unwrap());
    std::iter::once(middle).chain([less, more].into_iter().cycle().take(1000)).collect()
}

/// Relative, as NIST counts right figures.
fn close(found: Option<f64>, certified: f64, tolerance: f64) {
    let found = found.unwrap();
    let apart = (found - certified).abs() / certified.abs();
    assert!(apart <= tolerance, "{found} is not {certified}: {apart:e}");
}

/// Univariate, Michelso (Michelson's speed of light; n = 100).
#[test]
fn michelso() {
    close(mean(&MICHELSO), 299.852400000000, 1e-14);
    close(standard_deviation(&MICHELSO), 0.0790105478190518, 1e-12);
    close(first_autocorrelation(&MICHELSO), 0.535199668621283, 1e-12);
}

/// Univariate, NumAcc1 to NumAcc4: large values whose differences are small, on which a
/// sum of squares gives a negative variance.
#[test]
fn numerical_accuracy_1_to_4() {
    let first = [10000001.0, 10000003.0, 10000002.0];
    let second = numerical_accuracy("1.2", "1.1", "1.3");
    let third = numerical_accuracy("1000000.2", "1000000.1", "1000000.3");
    let fourth = numerical_accuracy("10000000.2", "10000000.1", "10000000.3");
    close(mean(&first), 10000002.0, 1e-14);
    close(standard_deviation(&first), 1.0, 1e-12);
    close(first_autocorrelation(&first), -0.5, 1e-12);
    for (values, middle, tolerance) in [(&second, 1.2, 1e-10), (&third, 1000000.2, 1e-9), (&fourth, 10000000.2, 1e-8)] {
        close(mean(values), middle, 1e-14);
        close(standard_deviation(values), 0.1, tolerance);
        close(first_autocorrelation(values), -0.999, tolerance);
    }
}

fn norris() -> Vec<Point> {
    NORRIS_X.into_iter().zip(NORRIS_Y).map(|(at, value)| Point { at, value }).collect()
}

/// Linear regression, Norris (calibration of ozone monitors; n = 36).
#[test]
fn norris_line() {
    let line = least_squares_line(&norris()).unwrap();
    close(Some(line.intercept), -0.262323073774029, 1e-10);
    close(Some(line.slope), 1.00211681802045, 1e-12);
    close(Some(line.intercept_sd), 0.232818234301152, 1e-11);
    close(Some(line.slope_sd), 0.429796848199937e-03, 1e-11);
    close(Some(line.residual_sd), 0.884796396144373, 1e-11);
    close(Some(line.r_squared), 0.999993745883712, 1e-13);
}

/// The robust slope of the same points, with ties in both: not certified, worked out
/// with SciPy.
#[test]
fn norris_robust_slope() {
    close(robust_slope(&norris(), 0.95, 1.0).map(|found| found.slope), 1.00219683655536, 1e-13);
}
