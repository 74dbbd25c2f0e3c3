//! Parker, Vannest & Davis, Behavior Modification 2011;35:303-322: two phases of one person. The
//! values were read in the tests of the R package SingleCaseES, and worked out again.

use drawwell_core::statistics::non_overlap;

#[test]
fn their_example() {
    let before = [20.0, 20.0, 26.0, 25.0, 22.0, 23.0];
    let after = [28.0, 25.0, 24.0, 27.0, 30.0, 30.0, 29.0];
    let found = non_overlap(&before, &after).unwrap();
    assert_eq!((found.above, found.pairs), (38.5, 42));
    assert!((found.nap - 0.916_667).abs() < 1e-6, "{found:?}");
    assert!((found.tau - 35.0 / 42.0).abs() < 1e-12, "{found:?}");
}

/// Parker, Vannest, Davis & Sauber, Behavior Therapy 2011;42:284-299: Tau without a trend taken off.
#[test]
fn tau_of_the_example_of_tau_u() {
    let found = non_overlap(&[3.0, 3.0, 4.0, 5.0], &[4.0, 5.0, 6.0, 7.0, 7.0]).unwrap();
    assert!((found.tau - 0.8).abs() < 1e-12, "{found:?}");
}
