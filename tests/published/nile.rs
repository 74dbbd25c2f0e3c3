//! The flow of the Nile at Aswan, 1871 to 1970: R's `datasets::Nile`, as in Durbin &
//! Koopman, Time Series Analysis by State Space Methods, 2001.
//!
//! The trend was worked out with pymannkendall and SciPy, the segments with ruptures and
//! by trying all; Pettitt's K and p agree with what R packages document for this series
//! (those from memory).

use drawwell_core::statistics::{
    mann_kendall, mean, pelt, pettitt, robust_pelt, robust_slope, segment_range, variance, Point,
};

const NILE: [f64; 100] = [
    1120.0, 1160.0, 963.0, 1210.0, 1160.0, 1160.0, 813.0, 1230.0, 1370.0, 1140.0, 995.0, 935.0, 1110.0, 994.0, 1020.0,
    960.0, 1180.0, 799.0, 958.0, 1140.0, 1100.0, 1210.0, 1150.0, 1250.0, 1260.0, 1220.0, 1030.0, 1100.0, 774.0, 840.0,
    874.0, 694.0, 940.0, 833.0, 701.0, 916.0, 692.0, 1020.0, 1050.0, 969.0, 831.0, 726.0, 456.0, 824.0, 702.0, 1120.0,
    1100.0, 832.0, 764.0, 821.0, 768.0, 845.0, 864.0, 862.0, 698.0, 845.0, 744.0, 796.0, 1040.0, 759.0, 781.0, 865.0,
    845.0, 944.0, 984.0, 897.0, 822.0, 1010.0, 771.0, 676.0, 649.0, 846.0, 812.0, 742.0, 801.0, 1040.0, 860.0, 874.0,
    848.0, 890.0, 744.0, 749.0, 838.0, 1050.0, 918.0, 986.0, 797.0, 923.0, 975.0, 815.0, 1020.0, 906.0, 901.0, 1170.0,
    912.0, 746.0, 919.0, 718.0, 714.0, 740.0,
];

#[test]
fn it_falls() {
    let trend = mann_kendall(&NILE).unwrap();
    assert_eq!(trend.s, -1387);
    assert!((trend.variance - 112728.33).abs() < 5e-3, "{trend:?}");
    assert!((trend.z - -4.12807).abs() < 5e-6, "{trend:?}");
    assert!((trend.p - 3.658e-5).abs() < 5e-9, "{trend:?}");
    let points: Vec<Point> = NILE.into_iter().zip(1871..).map(|(value, at)| Point { at: at.into(), value }).collect();
    assert_eq!(robust_slope(&points, 0.95, 1.0).unwrap().slope, -2.6);
}

#[test]
fn it_changed_after_1898() {
    let found = pettitt(&NILE).unwrap();
    assert_eq!((found.k, 1871 + found.index - 1), (1617, 1898));
    assert!((found.p - 3.591e-7).abs() < 5e-11, "{found:?}");
    assert_eq!(mean(&NILE[..28]), Some(1097.75));
    assert!((mean(&NILE[28..]).unwrap() - 849.972).abs() < 5e-4);
}

/// A penalty of 2 σ² ln n finds the one change, and so does the bounded loss.
#[test]
fn its_segments_meet_there() {
    let spread = variance(&NILE).unwrap();
    assert_eq!(pelt(&NILE, 2.0 * spread * 100_f64.ln(), 2), [28]);
    assert_eq!(robust_pelt(&NILE, 4.0 * 100_f64.ln(), 2), [28]);
}

/// It would stand with a year mistyped by a figure, which makes a segment for `pelt`.
#[test]
fn a_mistyped_year_is_no_segment() {
    let mut mistyped = NILE;
    mistyped[70] *= 10.0;
    assert_eq!(robust_pelt(&mistyped, 4.0 * 100_f64.ln(), 1), [28]);
    let spread = variance(&NILE).unwrap();
    assert_eq!(pelt(&mistyped, 2.0 * spread * 100_f64.ln(), 1), [28, 70, 71]);
}

/// Where it may have changed, by Hansen (2000), eq. 12 and table I: every year at which the two
/// segments cost no more than the least by 5.94 (90 %), 7.35 (95 %) or 10.59 (99 %) of what they
/// leave over for each degree of freedom. Worked out from the sums of squares with NumPy; twice
/// the bound of 95 % is 14.7, and holds 1896 to 1902.
#[test]
fn the_change_has_a_range() {
    let range = |confidence, inflation| segment_range(&NILE, 0, 28, 100, confidence, inflation).unwrap();
    assert_eq!(range(0.5, 1.0), (28, 28));
    assert_eq!(range(0.9, 1.0), (26, 29));
    assert_eq!(range(0.95, 1.0), (26, 29));
    assert_eq!(range(0.99, 1.0), (26, 30));
    // Where neighbours are alike the bound is so many times as far.
    assert_eq!(range(0.5, 2.0), (27, 28));
    assert_eq!(range(0.9, 2.0), (26, 30));
    assert_eq!(range(0.95, 2.0), (25, 31));
    assert_eq!(range(0.99, 2.0), (24, 33));
}
