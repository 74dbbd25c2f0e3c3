//! SciPy's `optimize.least_squares`: eighty records without noise, with it, and with two
//! amounts mistyped, by the model of the refill curve written anew in
//! `tests/python/refill_vectors.py`; and what the model's parts must be.

use std::path::Path;

use drawwell_core::statistics::{grown, grown_elasticity, grown_slope, Collected, Saturation};
use serde_json::Value;

/// So far that slopes are not held back: SciPy does not.
const FREE: [f64; 3] = [1e9; 3];

fn numbers(of: &Value) -> Vec<f64> {
    of.as_array().unwrap().iter().map(|n| n.as_f64().unwrap()).collect()
}

fn cases() -> Vec<(Vec<Collected>, Value)> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("vectors/refill.json");
    let file: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    let cases = file["cases"].as_array().unwrap();
    assert!(cases.len() >= 80);
    let case = |case: &Value| {
        let request = &case["request"];
        let beside: Vec<Vec<f64>> = request["beside"].as_array().unwrap().iter().map(numbers).collect();
        let each = numbers(&request["gap"]).into_iter().zip(numbers(&request["amount"])).zip(beside);
        let collected = each.map(|((gap, amount), beside)| Collected {
            gap,
            amount,
            beside: beside.try_into().unwrap(),
            hides: [None; 2],
        });
        (collected.collect(), case["expected"].clone())
    };
    cases.iter().map(case).collect()
}

fn found(fit: &Saturation) -> Vec<f64> {
    let [a, b, c] = fit.slopes;
    vec![fit.log_rate, a, b, c, fit.levelling, fit.free_levelling]
}

fn expected(of: &Value) -> Vec<f64> {
    let slopes = numbers(&of["slopes"]);
    let one = |name: &str| of[name].as_f64().unwrap();
    [vec![one("log_rate")], slopes, vec![one("levelling"), one("free_levelling")]].concat()
}

fn near(found: &[f64], expected: &[f64], within: f64) {
    let apart = found.iter().zip(expected).map(|(f, e)| (f - e).abs()).fold(0.0, f64::max);
    assert!(apart <= within, "{apart}: {found:?} {expected:?}");
}

#[test]
fn the_fit_is_that_of_scipy() {
    for (turn, (collected, of)) in cases().into_iter().enumerate() {
        let fit = Saturation::fit(&collected, FREE).unwrap();
        // Every fourth is without noise. A log rate is told as a ratio: 1e-6 of it.
        near(&found(&fit), &expected(&of), if turn % 4 == 0 { 1e-6 } else { 1e-5 });
    }
}

#[test]
fn order_does_not_matter_and_scale_is_the_rate_s_alone() {
    for (mut collected, _) in cases().into_iter().take(12) {
        let fit = Saturation::fit(&collected, FREE).unwrap();
        collected.reverse();
        near(&found(&Saturation::fit(&collected, FREE).unwrap()), &found(&fit), 1e-6);
        collected.iter_mut().for_each(|c| c.amount *= 3.0);
        let mut thrice = found(&fit);
        thrice[0] += 3.0_f64.ln();
        near(&found(&Saturation::fit(&collected, FREE).unwrap()), &thrice, 1e-6);
    }
}

#[test]
fn what_cannot_be_fitted_is_none() {
    let (collected, _) = cases().swap_remove(1);
    assert_eq!(Saturation::fit(&[], FREE), None);
    assert_eq!(Saturation::fit(&collected[..9], FREE), None);
    for (gap, amount) in [(0.0, 50.0), (-1.0, 50.0), (f64::NAN, 50.0), (3.0, f64::NAN), (3.0, f64::INFINITY)] {
        let mut odd = collected.clone();
        odd[4] = Collected { gap, amount, ..odd[4] };
        assert_eq!(Saturation::fit(&odd, FREE), None);
    }
}

#[test]
fn growth_is_straight_at_first_and_level_at_last() {
    for gap in [0.5, 3.0, 12.0] {
        assert_eq!(grown(0.0, gap), gap);
        near(&[grown(1e-9, gap), grown(2e-6, gap)], &[gap, gap], 1e-3);
        near(&[grown(0.2, 1e3), grown(0.2, gap)], &[5.0, (1.0 - (-0.2 * gap).exp()) / 0.2], 1e-12);
        for levelling in [-0.2, -1e-7, 0.0, 1e-7, 1e-4, 0.03, 0.4] {
            let step = 1e-5;
            let slope = (grown(levelling + step, gap).ln() - grown(levelling - step, gap).ln()) / (2.0 * step);
            let longer =
                (grown(levelling, gap * (1.0 + step)).ln() - grown(levelling, gap * (1.0 - step)).ln()) / (2.0 * step);
            near(&[grown_slope(levelling, gap), grown_elasticity(levelling, gap)], &[slope, longer], 1e-5);
        }
    }
}

/// Ranges grow with how sure they are to be, reach no farther below a straight line than the
/// line allows, and widen as they are told to.
#[test]
fn ranges_are_cut_where_filling_would_grow_faster() {
    const RATE: [f64; 5] = [1.0, 0.0, 0.0, 0.0, 0.0];
    let mut straight = 0;
    for (turn, (collected, _)) in cases().into_iter().enumerate().filter(|(turn, _)| turn % 4 > 0) {
        let fit = Saturation::fit(&collected, FREE).unwrap();
        let reach = fit.reach(0.9);
        let (below, above) = fit.range_of(RATE, reach);
        let spread = fit.spread_of(RATE) * reach;
        assert!(below > 0.0 && below <= spread * 1.001 && above.is_finite(), "{turn}: {below} {spread}");
        if fit.levelling > 1e-9 && fit.free_levelling > 3.0 * fit.spread_of([0.0, 0.0, 0.0, 0.0, 1.0]) {
            near(&[below, above], &[spread, spread], 1e-9);
        }
        straight += u32::from(fit.free_levelling < 0.0 && below < spread);
        let wider = fit.clone().wider(2.0);
        near(&[wider.spread_of(RATE)], &[fit.spread_of(RATE) * 2.0], 1e-9);
    }
    assert!(straight > 0);
}
