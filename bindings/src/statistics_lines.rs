//! The statistics by themselves, for whoever wants to hold them to another program:
//! a JSON request a line in, a JSON answer a line out.
//!
//! A request names its `method` as `drawwell_core::statistics` does, with `values`
//! and, where a series has gaps, `at`; the other arguments are named as there. What
//! can't be worked out answers `null`. With `"repeat": 20` the answer is how many
//! nanoseconds each of twenty rounds took.

use std::io::{self, BufRead, Write};
use std::time::Instant;

use drawwell_core::statistics::{self, Point};
use serde_json::{json, Value};

/// Answers line after line, to the end of what comes in.
pub(crate) fn answer_lines(requests: impl BufRead, mut answers: impl Write) -> io::Result<()> {
    for line in requests.lines() {
        let answer = match serde_json::from_str(&line?) {
            Ok(request) => answer(&Request(request)),
            Err(error) => json!({ "error": error.to_string() }),
        };
        writeln!(answers, "{answer}")?;
    }
    answers.flush()
}

struct Request(Value);

impl Request {
    fn numbers(&self, name: &str) -> Vec<f64> {
        let all = self.0.get(name).and_then(Value::as_array);
        all.into_iter().flatten().map(|number| number.as_f64().unwrap_or(f64::NAN)).collect()
    }

    fn number(&self, name: &str) -> f64 {
        self.0.get(name).and_then(Value::as_f64).unwrap_or(f64::NAN)
    }

    fn count(&self, name: &str) -> Option<usize> {
        self.0.get(name).and_then(Value::as_u64).and_then(|count| usize::try_from(count).ok())
    }

    /// Day after day where no places are given.
    fn points(&self) -> Vec<Point> {
        let (at, values) = (self.numbers("at"), self.numbers("values"));
        let at = if at.is_empty() { (0..values.len()).map(|day| day as f64).collect() } else { at };
        at.into_iter().zip(values).map(|(at, value)| Point { at, value }).collect()
    }
}

fn answer(request: &Request) -> Value {
    let method = request.0.get("method").and_then(Value::as_str).unwrap_or_default();
    let Some(work) = work(method, request) else {
        return json!({ "error": format!("there is no method {method}") });
    };
    match request.count("repeat") {
        None => work(),
        Some(rounds) => (0..rounds)
            .map(|_| {
                let start = Instant::now();
                std::hint::black_box(work());
                Value::from(u64::try_from(start.elapsed().as_nanos()).unwrap_or(u64::MAX))
            })
            .collect(),
    }
}

/// What a method does with its arguments, which are read before so that timing leaves them out.
fn work(method: &str, request: &Request) -> Option<Box<dyn Fn() -> Value>> {
    let (points, values) = (request.points(), request.numbers("values"));
    let (other, number) = (request.numbers("other"), |name| request.number(name));
    let (confidence, inflation) = (number("confidence"), number("variance_inflation"));
    let (penalty, least) = (number("penalty"), request.count("min_segment").unwrap_or(1));
    let lags = request.count("lags");
    Some(match method {
        "quantile" => {
            let p = number("p");
            Box::new(move || statistics::quantile(&values, p).into())
        }
        "median_absolute_deviation" => Box::new(move || statistics::median_absolute_deviation(&values).into()),
        "robust_slope" => Box::new(move || {
            statistics::robust_slope(&points, confidence, inflation).map_or(
                Value::Null,
                |it| json!({ "slope": it.slope, "low": it.low, "high": it.high, "intercept": it.intercept }),
            )
        }),
        "mann_kendall" => Box::new(move || statistics::mann_kendall(&values).map_or(Value::Null, |it| trend(&it))),
        "hamed_rao" => Box::new(move || {
            statistics::hamed_rao(&points, lags).map_or(Value::Null, |it| {
                let mut all = trend(&it.trend);
                all["variance_inflation"] = it.variance_inflation.into();
                all["unbounded_inflation"] = it.unbounded_inflation.into();
                all
            })
        }),
        "autocorrelation" => Box::new(move || {
            let found = statistics::autocorrelation(&points, lags.unwrap_or(usize::MAX));
            found.iter().map(|lag| json!({ "value": lag.value, "pairs": lag.pairs })).collect()
        }),
        "pelt" => Box::new(move || statistics::pelt(&values, penalty, least).into()),
        "robust_pelt" => Box::new(move || statistics::robust_pelt(&values, penalty, least).into()),
        "pettitt" => Box::new(move || {
            statistics::pettitt(&values).map_or(Value::Null, |it| json!({ "k": it.k, "index": it.index, "p": it.p }))
        }),
        "shift" => Box::new(move || {
            statistics::shift(&values, &other, confidence, inflation)
                .map_or(Value::Null, |it| json!({ "shift": it.shift, "low": it.low, "high": it.high }))
        }),
        "paired_shift" => Box::new(move || {
            statistics::paired_shift(&values)
                .map_or(Value::Null, |it| json!({ "shift": it.shift, "v": it.v, "p": it.p }))
        }),
        "uncertain" => {
            let half_widths = [number("wide"), number("narrow")];
            let (error, freedom, value) = (number("standard_error"), number("freedom"), number("value"));
            Box::new(move || {
                statistics::Uncertain::new(0.0, half_widths, error, freedom).map_or(
                    Value::Null,
                    |it| json!({ "below": it.chance_below(value), "uncertainty": it.standard_uncertainty() }),
                )
            })
        }
        "rising" => {
            let pairs: Vec<(f64, f64)> = values.into_iter().zip(request.numbers("weights")).collect();
            Box::new(move || statistics::rising(&pairs).into())
        }
        "bend" => Box::new(move || {
            statistics::bend(&points, confidence, inflation).map_or(Value::Null, |b| {
                json!({
                    "at": b.at, "earliest": b.earliest, "latest": b.latest, "level": b.level, "slope": b.slope, "squares": b.squares,
                })
            })
        }),
        "two_sided_t" => {
            let freedom = number("freedom");
            Box::new(move || statistics::two_sided_t(confidence, freedom).into())
        }
        _ => return None,
    })
}

fn trend(found: &statistics::RankTrend) -> Value {
    json!({ "s": found.s, "variance": found.variance, "z": found.z, "p": found.p, "tau": found.tau })
}
