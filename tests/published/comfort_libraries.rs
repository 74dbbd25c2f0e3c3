//! SciPy, scikit-learn and independent integration, for what Comfort rests on: two hundred
//! designs a method, with ties.
//!
//! `tests/python/comfort_vectors.py` made them and `tests/vectors` keeps them, with the versions
//! they were made with.

use std::path::Path;

use drawwell_core::statistics::{
    bounds, median_range, paired_range, randomisation, rising, Assignments, Observed, RandomBlock, Regression,
};
use serde_json::Value;

fn cases(method: &str) -> Vec<(Value, Value)> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("vectors").join(format!("{method}.json"));
    let file: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    let cases = file["cases"].as_array().unwrap();
    assert!(cases.len() >= 200);
    cases.iter().map(|case| (case["request"].clone(), case["expected"].clone())).collect()
}

fn numbers(of: &Value) -> Vec<f64> {
    of.as_array().unwrap().iter().map(|number| number.as_f64().unwrap()).collect()
}

fn near(found: f64, expected: &Value, within: f64, of: &Value) {
    let expected = expected.as_f64().unwrap();
    assert!((found - expected).abs() <= within * (1.0 + expected.abs()), "{found} {expected} in {of}");
}

/// `scipy.stats.permutation_test` of pairs and of two samples, and every draw of several blocks.
#[test]
fn randomisation_is_scipys() {
    for (request, expected) in cases("randomisation") {
        let blocks: Vec<RandomBlock> = request["blocks"]
            .as_array()
            .unwrap()
            .iter()
            .map(|block| RandomBlock { first: numbers(&block[0]), second: numbers(&block[1]) })
            .collect();
        let found = randomisation(&blocks, 1).unwrap();
        assert_eq!(found.assignments, Assignments::All);
        near(found.p, &expected, 1e-10, &request);
    }
}

/// Every set of signs, and the means of any two in order (NumPy).
#[test]
fn the_range_of_a_pseudo_median_is_that_of_all_signs() {
    for (request, expected) in cases("paired_range") {
        let found = paired_range(&numbers(&request["values"]), request["confidence"].as_f64().unwrap());
        assert_eq!(found.is_none(), expected.is_null(), "{request}");
        let Some(found) = found else { continue };
        near(found.found.shift, &expected["shift"], 1e-9, &request);
        near(found.low, &expected["low"], 1e-9, &request);
        near(found.high, &expected["high"], 1e-9, &request);
        near(found.confidence, &expected["confidence"], 1e-12, &request);
    }
}

/// `scipy.stats.quantile_test(p=0.5).confidence_interval`.
#[test]
fn the_range_of_a_median_is_scipys() {
    for (request, expected) in cases("median_range") {
        let found = median_range(&numbers(&request["values"]), request["confidence"].as_f64().unwrap());
        assert_eq!(found.is_none(), expected.is_null(), "{request}");
        let Some(found) = found else { continue };
        near(found.median, &expected["median"], 1e-12, &request);
        near(found.low, &expected["low"], 1e-12, &request);
        near(found.high, &expected["high"], 1e-12, &request);
    }
}

/// Gauss and Legendre's rule with SciPy's `brentq`, looks anywhere. Beyond eight spreads the
/// program has no bound.
#[test]
fn bounds_are_those_of_another_integration() {
    let mut held = 0;
    for (request, expected) in cases("bounds") {
        let found = bounds(request["chance"].as_f64().unwrap(), &numbers(&request["looks"]));
        for (found, expected) in found.iter().zip(numbers(&expected)) {
            match found {
                // Beyond six spreads a chance has few figures left.
                Some(found) => {
                    let within = if expected < 6.0 { 2e-4 } else { 1e-2 };
                    assert!((found - expected).abs() < within, "{found} {expected} in {request}");
                }
                None => assert!(expected > 7.9, "{expected} in {request}"),
            }
            held += usize::from(found.is_some());
        }
    }
    assert!(held > 500, "{held}");
}

/// `numpy.linalg.lstsq` and `scipy.stats.t.ppf`.
#[test]
fn least_squares_are_numpys() {
    for (request, expected) in cases("regression") {
        let beside = request["beside"].as_array().unwrap();
        let observed: Vec<Observed> = beside
            .iter()
            .zip(numbers(&request["values"]))
            .map(|(beside, value)| Observed { beside: numbers(beside), value })
            .collect();
        let found = Regression::fit(&observed).unwrap();
        let of = numbers(&request["of"]);
        near(found.combined(&of), &expected["combined"], 1e-8, &request);
        near(found.error_of(&of), &expected["error"], 1e-8, &request);
        near(found.spread, &expected["spread"], 1e-8, &request);
        near(found.reach(request["confidence"].as_f64().unwrap()).unwrap(), &expected["reach"], 1e-9, &request);
    }
}

/// `sklearn.isotonic.IsotonicRegression` with weights.
#[test]
fn rising_is_scikit_learns() {
    for (request, expected) in cases("rising_sklearn") {
        let pairs: Vec<(f64, f64)> =
            numbers(&request["values"]).into_iter().zip(numbers(&request["weights"])).collect();
        let found = rising(&pairs);
        assert_eq!(found.len(), pairs.len());
        for (found, expected) in found.iter().zip(numbers(&expected)) {
            assert!((found - expected).abs() < 1e-8 * (1.0 + expected.abs()), "{found} {expected} in {request}");
        }
    }
}
