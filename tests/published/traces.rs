//! Pressure traces of known truth, and what SciPy finds in them.
//!
//! `tests/python/trace_waveforms.py` made them and `tests/vectors/traces` keeps them, with
//! the versions they were made with: `scipy.signal.find_peaks` by prominence (SciPy
//! 1.17.1). Rise and release are between 10 and 90 % (IEEE Std 181-2011, 5.3); kPa and
//! cmH2O are UCUM's (1000 and 98.0665 over 133.322 mm[Hg]). Bars: the cycle rate to 1 %,
//! the peak to 2 mmHg, the switch to 2 s.

use std::io::BufReader;
use std::path::{Path, PathBuf};

use drawwell_core::answer::trace::{findings, Cycles, Findings, Offset, Pattern, TimeUnit, TraceFile};
use drawwell_core::quantity::{Quantity, SpeedUnit, Unit, VacuumUnit};
use drawwell_core::record::mark::Phase;
use drawwell_core::share::trace_file::read;
use serde_json::Value;

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("vectors/traces")
}

fn expected() -> Value {
    serde_json::from_str(&std::fs::read_to_string(folder().join("expected.json")).unwrap()).unwrap()
}

struct Case {
    name: String,
    truth: Value,
    scipy: Value,
    file: TraceFile,
    found: Findings,
}

impl Case {
    fn of(name: &str) -> Self {
        let expected = expected()["cases"][name].clone();
        let file = std::fs::File::open(folder().join(format!("{name}.csv"))).unwrap();
        let file = read(&mut BufReader::new(file)).unwrap();
        let found = findings(&file).unwrap();
        Self { name: name.to_owned(), truth: expected["truth"].clone(), scipy: expected["scipy"].clone(), file, found }
    }

    fn all() -> Vec<Self> {
        let expected = expected();
        let cases = expected["cases"].as_object().unwrap();
        assert!(cases.len() >= 12);
        cases.keys().map(|name| Self::of(name)).collect()
    }

    fn true_value(&self, name: &str) -> Option<f64> {
        self.truth.get(name).map(|value| value.as_f64().unwrap())
    }

    fn unit(&self) -> VacuumUnit {
        self.file.unit.unwrap_or(VacuumUnit::MillimeterOfMercury)
    }

    /// One for a session of one pattern, else one a phase.
    fn parts(&self) -> Vec<(Value, Cycles)> {
        match self.truth.get("phases") {
            None => vec![(self.truth.clone(), self.found.overall)],
            Some(phases) => {
                let phases = phases.as_array().unwrap();
                assert_eq!(self.found.segments.len(), phases.len(), "{}", self.name);
                phases.iter().cloned().zip(self.found.segments.iter().map(|segment| segment.cycles)).collect()
            }
        }
    }

    fn near(&self, what: &str, found: f64, expected: f64, within: f64) {
        println!("{:<14} {what:<14} found {found:.4} true {expected:.4}", self.name);
        assert!((found - expected).abs() <= within, "{}: {what} is {found}, should be {expected}", self.name);
    }
}

#[test]
fn the_cycle_rate_is_right_to_one_per_cent() {
    for case in Case::all() {
        for (truth, found) in case.parts() {
            let rate = truth["rate"].as_f64().unwrap();
            let found = found.rate.unwrap();
            case.near("rate", found.value.in_unit(SpeedUnit::PerMinute), rate, 0.01 * rate);
            assert!(found.low <= found.value && found.value <= found.high, "{}", case.name);
        }
    }
}

#[test]
fn the_highest_vacuum_is_right_to_two_mmhg() {
    for case in Case::all() {
        for (truth, found) in case.parts() {
            let peak = found.peak.usual.vacuum(case.unit()).canonical();
            case.near("peak", peak, truth["peak"].as_f64().unwrap(), 2.0);
            let highest = found.highest.vacuum(case.unit()).canonical();
            assert!(found.peak.low <= found.peak.usual && found.peak.usual <= found.peak.high && peak <= highest);
        }
    }
}

#[test]
fn the_cycles_are_those_that_find_peaks_finds() {
    for case in Case::all() {
        let scipy = case.scipy.as_array().unwrap();
        let count: u64 = scipy.iter().map(|part| part["count"].as_u64().unwrap()).sum();
        let found = case.found.overall.count.get();
        println!("{:<14} cycles         found {found} SciPy {count} true {:?}", case.name, case.true_value("cycles"));
        // A dropout may take the side of a cycle and leave its top: SciPy goes over the gap.
        let apart = if case.truth.get("dropouts").is_some() { 3 } else { 0 };
        assert!(u64::from(found).abs_diff(count) <= apart, "{}: {found}, SciPy {count}", case.name);
        if let Some(cycles) = case.true_value("cycles") {
            assert_eq!(f64::from(found), cycles, "{}", case.name);
        }
        for (part, (_, found)) in scipy.iter().zip(case.parts()) {
            // Its highest samples are too high by what noise adds, ours are not.
            let raw = part["peak"].as_f64().unwrap();
            let noise = case.found.noise.vacuum(case.unit()).canonical();
            let ours = found.peak.usual.vacuum(case.unit()).canonical();
            case.near("SciPy's peak", ours, raw, 1.0 + 3.0 * noise);
        }
    }
}

#[test]
fn the_resting_vacuum_is_right_to_two_mmhg() {
    for case in Case::all() {
        let Some(rest) = case.true_value("rest") else { continue };
        case.near("rest", case.found.overall.rest.usual.vacuum(case.unit()).canonical(), rest, 2.0);
    }
}

#[test]
fn rise_release_and_time_at_vacuum_are_those_of_the_reference_levels() {
    for case in Case::all() {
        let found = &case.found.overall;
        // Samples stand 20 ms apart: an edge is known to a fraction of that.
        if let Some(rise) = case.true_value("rise") {
            case.near("rise", found.rise.unwrap().get(), rise, 0.005);
        }
        if let Some(release) = case.true_value("release") {
            case.near("release", found.release.unwrap().get(), release, 0.005);
        }
        if let Some(share) = case.true_value("at_vacuum") {
            case.near("at vacuum", found.at_vacuum.unwrap().fraction(), share, 0.01);
        }
    }
}

#[test]
fn missed_and_weak_cycles_are_counted() {
    for case in Case::all() {
        let found = &case.found.overall;
        if let Some(share) = case.true_value("missed_share") {
            case.near("missed", found.missed_share.fraction(), share, 1e-5);
        }
        if let Some(share) = case.true_value("weak_share") {
            case.near("weak", found.weak_share.fraction(), share, 1e-5);
        }
    }
}

#[test]
fn a_leak_is_told_from_a_held_vacuum() {
    let mut told = 0;
    for case in Case::all() {
        let Some(leak) = case.true_value("leak") else { continue };
        let found = case.found.overall.leak.unwrap();
        case.near("leak", found.value.leak(case.unit()).canonical(), leak, 2.0);
        assert!(found.low.get() <= leak && leak <= found.high.get(), "{}: {found:?} holds {leak}", case.name);
        told += 1;
    }
    assert_eq!(told, 3);
    assert_eq!(Case::of("sine").found.overall.leak, None, "a sine holds nothing");
    assert_eq!(Case::of("sharp").found.overall.leak, None, "a slow release is no leak");
}

#[test]
fn a_drift_is_told_with_a_range_that_holds_it() {
    let case = Case::of("drift");
    let (drift, truth) = (case.found.overall.peak_drift.unwrap(), case.true_value("peak_drift").unwrap());
    case.near("drift", drift.value.get(), truth, 1.0);
    assert!(drift.low.get() <= truth && truth <= drift.high.get(), "{drift:?}");
    let rest = case.found.overall.rest_drift.unwrap();
    assert!(rest.low.get() <= 0.0 && 0.0 <= rest.high.get(), "the rest stays: {rest:?}");
    let still = Case::of("noise").found.overall.peak_drift.unwrap();
    assert!(still.low.get() <= 0.0 && 0.0 <= still.high.get(), "{still:?}");
}

#[test]
fn the_fast_and_light_phase_is_letdown_and_the_switch_is_right_to_two_seconds() {
    for name in ["two-phases", "light-phase"] {
        let case = Case::of(name);
        assert_eq!(case.found.pattern, Pattern::LetdownAndExpression, "{name}");
        let phases: Vec<_> = case.found.segments.iter().map(|segment| segment.phase).collect();
        assert_eq!(phases, [Some(Phase::Letdown), Some(Phase::Expression)], "{name}");
        case.near("switch", case.found.switches[0].get(), case.true_value("switch").unwrap(), 2.0);
        assert_eq!(case.found.overall.rate, None, "a session with two patterns has no one rate");
    }
    for case in Case::all().iter().filter(|case| case.truth.get("phases").is_none()) {
        assert_eq!((case.found.pattern, case.found.segments.len()), (Pattern::One, 1), "{}", case.name);
        assert_eq!(case.found.segments[0].phase, None);
    }
}

#[test]
fn noise_offset_clipping_and_dropouts_are_said_where_they_are_and_nowhere_else() {
    for case in Case::all() {
        let found = &case.found;
        if let Some(noise) = case.true_value("noise") {
            case.near("noise", found.noise.get(), noise, 0.1 * noise);
        }
        match (case.true_value("clipped"), found.clipped) {
            (Some(at), Some(clipped)) => case.near("clipped", clipped.at.get(), at, 1e-3),
            (None, None) => {}
            other => panic!("{}: {other:?}", case.name),
        }
        match (case.true_value("offset"), case.true_value("above_ambient"), found.offset) {
            (Some(by), None, Some(Offset::Still(found))) => case.near("offset", found.get(), by, 0.5),
            (None, Some(by), Some(Offset::AboveAmbient(found))) => case.near("above", found.get(), by, 0.5),
            (None, None, None) => {}
            other => panic!("{}: {other:?}", case.name),
        }
        assert_eq!(found.unread.get(), 0.0, "{}", case.name);
        let dropouts = case.true_value("dropouts").unwrap_or(0.0);
        assert_eq!(f64::from(found.notes.dropouts.get()), dropouts, "{}", case.name);
        case.near("dropped", found.notes.dropped.get(), case.true_value("dropped").unwrap_or(0.0), 0.05);
        let holes = found.picture.iter().any(Option::is_none);
        assert_eq!(holes, dropouts > 0.0, "{}: the picture shows them", case.name);
    }
}

#[test]
fn units_signs_and_times_are_those_of_the_file() {
    for case in Case::all() {
        let unit = case.truth.get("unit").map(|unit| VacuumUnit::from_ucum(unit.as_str().unwrap()).unwrap());
        let headless = case.name == "noisy-sine";
        let said = if headless { None } else { Some(unit.unwrap_or(VacuumUnit::MillimeterOfMercury)) };
        assert_eq!(case.file.unit, said, "{}", case.name);
        let turned = case.truth.get("sign_turned").is_some();
        assert_eq!(case.file.notes.sign_turned, turned, "{}", case.name);
        assert_eq!(case.file.notes.passed_over.get(), 0, "{}", case.name);
        assert!(!case.file.notes.times_spread, "{}", case.name);
        let assumed = case.file.notes.time_unit_assumed;
        let unsaid = headless || case.truth.get("phases").is_some();
        assert_eq!(assumed, unsaid.then_some(TimeUnit::Second), "{}", case.name);
    }
}

#[test]
fn what_is_kept_comes_back_the_same_and_is_small() {
    for case in Case::all() {
        let text = case.found.to_json().to_string();
        assert!(text.len() < 30_000, "{}: {}", case.name, text.len());
        println!("{:<14} kept           {} bytes", case.name, text.len());
        let back = Findings::from_json(&serde_json::from_str(&text).unwrap());
        assert_eq!(back.as_ref(), Some(&case.found), "{}", case.name);
        assert!(case.found.picture.len() <= 600);
    }
    let mut other = Case::of("sine").found.to_json();
    other["way"] = 3.into();
    assert_eq!(Findings::from_json(&other), None, "another way is worked out anew");
}

/// `trace-way-1.json` is what a version kept that looked for no lone readings, no lost pull and no zero
/// that moved.
#[test]
fn what_an_earlier_version_kept_is_still_read_and_says_nothing_it_did_not_look_for() {
    let text = include_str!("../fixtures/trace-way-1.json");
    let kept: Value = serde_json::from_str(text).unwrap();
    assert_eq!(kept["way"], 1);
    let found = Findings::from_json(&kept).unwrap();
    assert_eq!(f64::from(found.overall.count.get()), kept["overall"]["count"].as_f64().unwrap());
    assert_eq!(found.segments.len(), 2);
    assert_eq!(found.segments[1].cycles.peak.usual.get(), kept["segments"][1]["cycles"]["peak"][0].as_f64().unwrap());
    assert!(found.collapses.is_none() && found.zero.is_none() && found.rest_rises.is_none());
    assert!(found.fastest.is_none() && found.notes.spikes.is_none(), "not looked for is not none");
    assert!(found.offset.is_none() && found.clipped.is_none());
}
