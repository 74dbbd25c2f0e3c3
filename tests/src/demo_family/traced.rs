//! A trace of the pump at home, made of straight lines and a little noise.

use drawwell_core::{
    answer::trace::{findings, Notes, Samples, Seconds, TraceFile},
    quantity::{Count, Share, VacuumUnit},
    record::Kind,
};

use super::{fact::Fact, kit::HERON, story};
use crate::chance::Chance;

/// Samples a second, and seconds of letdown and of expression pattern.
const A_SECOND: f64 = 20.0;
const LETDOWN: f64 = 75.0;
const EXPRESSION: f64 = 165.0;

/// The one trace.
pub(super) fn facts() -> Vec<Fact> {
    let Some(samples) = samples() else { return Vec::new() };
    let notes = Notes {
        rows: Count::new(samples.values().len() as u32),
        passed_over: Count::new(0),
        first_passed_over: None,
        dropouts: Count::new(0),
        dropped: Seconds::new(0.0),
        spikes: Some(Count::new(0)),
        native_step: samples.step(),
        sign_turned: true,
        time_unit_assumed: None,
        times_spread: false,
        at_extreme: Share::NONE,
    };
    let file = TraceFile { samples, unit: Some(VacuumUnit::MillimeterOfMercury), notes };
    let Ok(found) = findings(&file) else { return Vec::new() };
    let fact = Fact::new(Kind::Trace, "trace-heron")
        .when("at", &story::moment(story::LAST - 5, (10 * 60 + 40) * 60))
        .says("pump", HERON)
        .says("side", "left")
        .says("level", 6)
        .says("connected", "dead_headed")
        .says("ran_on", "mains")
        .says("unit", "mm[Hg]")
        .says("findings", found.to_json());
    vec![fact]
}

fn samples() -> Option<Samples> {
    let mut chance = Chance::on(story::LAST, "trace");
    let mut values = Vec::new();
    let mut within = 0.0;
    for n in 0..((LETDOWN + EXPRESSION) * A_SECOND) as u32 {
        let at = f64::from(n) / A_SECOND;
        let (period, top, rest) = if at < LETDOWN { (0.6, 94.0, 12.0) } else { (1.15, 158.0, 26.0) };
        within = if within + 1.0 / A_SECOND >= period { 0.0 } else { within + 1.0 / A_SECOND };
        let value = rest + (top - rest) * height(within / period) + chance.around(0.0, 0.4);
        values.push(((value * 10.0).round() / 10.0) as f32);
    }
    Samples::new(Seconds::new(1.0 / A_SECOND), values)
}

/// A cycle from 0 to 1: up, held, let go, at rest.
fn height(share: f64) -> f64 {
    let eased = |x: f64| x * x * (3.0 - 2.0 * x);
    match share {
        s if s < 0.30 => eased(s / 0.30),
        s if s < 0.55 => 1.0,
        s if s < 0.80 => 1.0 - eased((s - 0.55) / 0.25),
        _ => 0.0,
    }
}
