//! SciPy, statsmodels, pymannkendall and ruptures: two hundred series for each
//! method, with ties, gaps and likeness of neighbours.
//!
//! `tests/python/statistics_vectors.py` made them and `tests/vectors` keeps them, with the
//! versions they were made with. The tests in Python make them anew, compare, and hold the
//! headless runner to them too.

use std::path::Path;

use drawwell_core::statistics::{
    autocorrelation, bend, hamed_rao, mann_kendall, median_absolute_deviation, paired_shift, pelt, quantile, rising,
    robust_slope, shift, two_sided_t, Point, RankTrend, Uncertain,
};
use serde_json::{json, Value};

struct Case(Value);

impl Case {
    fn given(&self, name: &str) -> f64 {
        self.0["request"][name].as_f64().unwrap()
    }

    fn count(&self, name: &str) -> Option<usize> {
        self.0["request"][name].as_u64().map(|count| count as usize)
    }

    fn numbers(&self, name: &str) -> Vec<f64> {
        self.0["request"][name].as_array().unwrap().iter().map(|number| number.as_f64().unwrap()).collect()
    }

    fn values(&self) -> Vec<f64> {
        self.numbers("values")
    }

    /// Day after day where no places are given.
    fn points(&self) -> Vec<Point> {
        let values = self.values();
        let at = match self.0["request"].get("at") {
            Some(_) => self.numbers("at"),
            None => (0..values.len()).map(|day| day as f64).collect(),
        };
        at.into_iter().zip(values).map(|(at, value)| Point { at, value }).collect()
    }
}

/// The same to nine figures; whatever is found may be more than was expected to be.
fn alike(found: &Value, expected: &Value) -> bool {
    match (found, expected) {
        (Value::Object(found), Value::Object(expected)) => {
            expected.iter().all(|(name, part)| found.get(name).is_some_and(|other| alike(other, part)))
        }
        (Value::Array(found), Value::Array(expected)) => {
            found.len() == expected.len() && found.iter().zip(expected).all(|(found, part)| alike(found, part))
        }
        (Value::Null, Value::Null) => true,
        _ => match (found.as_f64(), expected.as_f64()) {
            (Some(found), Some(expected)) => (found - expected).abs() <= 1e-9 * expected.abs() + 1e-13,
            _ => false,
        },
    }
}

fn cases(method: &str) -> Vec<Case> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("vectors").join(format!("{method}.json"));
    let file: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    let cases: Vec<Case> = file["cases"].as_array().unwrap().iter().cloned().map(Case).collect();
    assert!(cases.len() >= 200);
    cases
}

fn hold(method: &str, found: impl Fn(&Case) -> Value) {
    for case in cases(method) {
        let found = found(&case);
        assert!(alike(&found, &case.0["expected"]), "{method}: {found} in {}", case.0);
    }
}

fn trend(found: &RankTrend) -> Value {
    json!({ "s": found.s, "variance": found.variance, "z": found.z, "p": found.p, "tau": found.tau })
}

/// `scipy.stats.theilslopes(y, x, confidence)`.
#[test]
fn robust_slope_is_scipys() {
    hold("robust_slope", |case| {
        let found = robust_slope(&case.points(), case.given("confidence"), case.given("variance_inflation")).unwrap();
        json!({ "slope": found.slope, "low": found.low, "high": found.high, "intercept": found.intercept })
    });
}

/// `pymannkendall.original_test`.
#[test]
fn mann_kendall_is_pymannkendalls() {
    hold("mann_kendall", |case| trend(&mann_kendall(&case.values()).unwrap()));
}

/// `pymannkendall.hamed_rao_modification_test`, with all lags and with some; and where days
/// are missing, the published formula over `statsmodels.tsa.stattools.acf(missing="conservative")`.
#[test]
fn hamed_rao_is_pymannkendalls_and_statsmodels() {
    for method in ["hamed_rao", "hamed_rao_gaps"] {
        hold(method, |case| {
            let found = hamed_rao(&case.points(), case.count("lags")).unwrap();
            assert_eq!(found.variance_inflation, found.unbounded_inflation.max(1.0));
            let mut all = trend(&found.trend);
            all["unbounded_inflation"] = found.unbounded_inflation.into();
            all
        });
    }
}

/// `statsmodels.tsa.stattools.acf(missing="conservative")`.
#[test]
fn autocorrelation_is_statsmodels() {
    hold("autocorrelation", |case| {
        let found = autocorrelation(&case.points(), case.count("lags").unwrap());
        let values: Vec<f64> = found.iter().map(|lag| lag.value).collect();
        let pairs: Vec<usize> = found.iter().map(|lag| lag.pairs).collect();
        json!({ "value": values, "pairs": pairs })
    });
}

/// `ruptures.Pelt(model="l2", min_size, jump=1).predict(pen)`. Where the two differ ruptures
/// dropped a start too early, and its segments cost more.
#[test]
fn pelt_is_ruptures_or_better() {
    let cost = |values: &[f64], changes: &[usize], penalty: f64| {
        let edges: Vec<usize> = [0].into_iter().chain(changes.iter().copied()).chain([values.len()]).collect();
        let segments = edges.windows(2).map(|pair| &values[pair[0]..pair[1]]);
        let apart = segments.map(|part| {
            let mean = part.iter().sum::<f64>() / part.len() as f64;
            part.iter().map(|value| (value - mean).powi(2)).sum::<f64>()
        });
        apart.sum::<f64>() + penalty * changes.len() as f64
    };
    let mut same = 0;
    let cases = cases("pelt");
    for case in &cases {
        let (values, penalty) = (case.values(), case.given("penalty"));
        let found = pelt(&values, penalty, case.count("min_segment").unwrap());
        let peers: Vec<usize> = serde_json::from_value(case.0["expected"].clone()).unwrap();
        if found == peers {
            same += 1;
        } else {
            assert!(cost(&values, &found, penalty) < cost(&values, &peers, penalty) - 1e-9, "{found:?} in {}", case.0);
        }
    }
    println!("{same} of {}", cases.len());
    assert!(same * 100 >= cases.len() * 95, "{same} of {}", cases.len());
}

/// The definition of Hodges and Lehmann's shift, all differences made with NumPy; and for pairs
/// `scipy.stats.wilcoxon`.
#[test]
fn shifts_are_numpys_and_scipys() {
    hold("shift", |case| {
        let (first, second) = (case.values(), case.numbers("other"));
        let found = shift(&first, &second, case.given("confidence"), case.given("variance_inflation")).unwrap();
        json!({ "shift": found.shift, "low": found.low, "high": found.high })
    });
    hold("paired_shift", |case| {
        let found = paired_shift(&case.values()).unwrap();
        json!({ "shift": found.shift, "v": found.v, "p": found.p })
    });
}

/// `numpy.quantile(method="linear")` and `scipy.stats.median_abs_deviation`.
#[test]
fn order_is_numpys_and_scipys() {
    hold("quantile", |case| quantile(&case.values(), case.given("p")).into());
    hold("median_absolute_deviation", |case| median_absolute_deviation(&case.values()).into());
}

/// Rectangles and `scipy.stats.t` folded by `scipy.integrate.quad`. Sixteen places leave
/// less than 1e-6 of a chance.
#[test]
fn uncertain_is_scipys_quadrature() {
    for case in cases("uncertain") {
        let half_widths = [case.given("wide"), case.given("narrow")];
        let law = Uncertain::new(0.0, half_widths, case.given("standard_error"), case.given("freedom")).unwrap();
        let expected = |name: &str| case.0["expected"][name].as_f64().unwrap();
        let below = law.chance_below(case.given("value"));
        assert!((below - expected("below")).abs() < 1e-6, "{below} in {}", case.0);
        assert!((law.standard_uncertainty() - expected("uncertainty")).abs() < 1e-9, "{}", case.0);
        // What a quantile gives back is where the chance is.
        let chance = below.clamp(0.001, 0.999);
        assert!((law.chance_below(law.quantile(chance).unwrap()) - chance).abs() < 1e-9, "{}", case.0);
    }
}

/// `scipy.optimize.isotonic_regression(y, weights)`.
#[test]
fn rising_is_scipys_isotonic_regression() {
    hold("rising", |case| {
        let pairs: Vec<(f64, f64)> = case.values().into_iter().zip(case.numbers("weights")).collect();
        rising(&pairs).into()
    });
}

/// NumPy's `lstsq` with the bend at each whole place, and `scipy.stats.t.ppf`.
#[test]
fn bend_is_numpys_least_squares_at_every_place() {
    hold("bend", |case| match bend(&case.points(), case.given("confidence"), case.given("variance_inflation")) {
        Some(b) => json!({
            "at": b.at, "earliest": b.earliest, "latest": b.latest, "level": b.level, "slope": b.slope, "squares": b.squares,
        }),
        None => Value::Null,
    });
}

/// `scipy.stats.t.ppf`.
#[test]
fn two_sided_t_is_scipys() {
    hold("two_sided_t", |case| two_sided_t(case.given("confidence"), case.given("freedom")).into());
}
