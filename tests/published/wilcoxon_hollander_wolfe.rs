//! Hollander & Wolfe, Nonparametric Statistical Methods, 1973, p. 29 f.: Hamilton's depression
//! scale before and after, also in R's `help(wilcox.test)`.
//!
//! The data are from memory; V = 40, p = 0.01953 and the pseudo-median were worked out again.

use drawwell_core::statistics::{paired_range, paired_shift, randomisation, shift, RandomBlock};

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

/// R's `wilcox.test(x, y, paired = TRUE, conf.int = TRUE, conf.level = 0.95)` prints the range
/// 0.010 to 0.786 at 96.1 in 100 for these pairs (from memory; counted again over all 512 signs).
#[test]
fn depression_scale_with_its_exact_range() {
    let fall: Vec<f64> = BEFORE.iter().zip(AFTER).map(|(before, after)| before - after).collect();
    let found = paired_range(&fall, 0.95).unwrap();
    assert!((found.low - 0.010).abs() < 1e-9 && (found.high - 0.786).abs() < 1e-9, "{found:?}");
    assert!((found.confidence - (1.0 - 20.0 / 512.0)).abs() < 1e-12, "{found:?}");
}

/// The same pairs, each turned or not: as SciPy's `permutation_test` with `samples` has it.
#[test]
fn depression_scale_drawn_again() {
    let blocks: Vec<RandomBlock> = BEFORE
        .iter()
        .zip(AFTER)
        .map(|(before, after)| RandomBlock { first: vec![*before], second: vec![after] })
        .collect();
    let found = randomisation(&blocks, 0).unwrap();
    assert!((found.p - 14.0 / 512.0).abs() < 1e-12, "{found:?}");
}
