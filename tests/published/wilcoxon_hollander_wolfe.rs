//! Hollander & Wolfe, Nonparametric Statistical Methods, 1973, p. 29 f.: Hamilton's depression
//! scale before and after, also in R's `help(wilcox.test)`.
//!
//! The data are from memory; V = 40, p = 0.01953 and the pseudo-median were worked out again.

use drawwell_core::statistics::{paired_shift, shift};

const BEFORE: [f64; 9] = [1.83, 0.50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30];
#[allow(clippy::approx_constant, reason = "3.14 is a score here")]
const AFTER: [f64; 9] = [0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29];

#[test]
fn depression_scale() {
    let fall: Vec<f64> = BEFORE.iter().zip(AFTER).map(|(before, after)| before - after).collect();
    let found = paired_shift(&fall).unwrap();
    assert_eq!(found.v, 40.0);
    // Printed for one side.
    assert!((found.p / 2.0 - 0.01953125).abs() < 1e-12, "{found:?}");
    assert!((found.shift - 0.46).abs() < 1e-9, "{found:?}");
}

/// A sample and the same moved are apart by the move, whatever the sample.
#[test]
fn a_sample_that_was_moved() {
    let moved: Vec<f64> = BEFORE.iter().map(|value| value - 0.25).collect();
    let found = shift(&BEFORE, &moved, 0.95, 1.0).unwrap();
    assert!((found.shift - -0.25).abs() < 1e-12, "{found:?}");
    assert!(found.low < -0.25 && -0.25 < found.high, "{found:?}");
}
