//! Gauges and the air they stand in: EN 837-1, the standard atmosphere, UCUM.

use drawwell_core::answer::pump::applied::height;
use drawwell_core::answer::pump::gauge_error::of_class;
use drawwell_core::answer::pump::wear::{course, Forecast, Point};
use drawwell_core::answer::pump::{GaugeError, Pull};
use drawwell_core::quantity::{AirPressure, Altitude, Count, Quantity, Vacuum, VacuumUnit};
use drawwell_core::record::{ambient, check, Fields, Kind, Sides};
use drawwell_core::time::{Instant, Moment, Span, Zone};
use drawwell_tests::gauge_bench::{check_at, check_with, gauge, mercury, place};
use serde_json::{json, Value};

const NOW: Instant = Instant::from_unix_milliseconds(1_786_000_000_000);

/// EN 837-1:1996, table 11 (in a text that quotes it): the greatest error is so many per
/// cent of the span, anywhere along it. Class 1.6 over 0 to 10 bar: 0.16 bar.
#[test]
fn a_class_is_per_cent_of_the_span() {
    for (class, error) in [(1.0, 7.6), (1.6, 12.16), (2.5, 19.0), (4.0, 30.4)] {
        assert!((of_class(class, mercury(760.0)).canonical() - error).abs() < 1e-9, "class {class}");
    }
}

#[test]
fn a_makers_error_goes_before_a_class_and_neither_is_no_gauge() {
    let mut own = gauge(450.0, 1.6, 2.0);
    assert!((GaugeError::of(&own, std::iter::empty()).unwrap().greatest.canonical() - 7.2).abs() < 1e-9);
    own.error = Some(mercury(3.0));
    assert_eq!(GaugeError::of(&own, std::iter::empty()).unwrap().greatest, mercury(3.0));
    own.error = None;
    own.class = None;
    assert!(GaugeError::of(&own, std::iter::empty()).is_none());
}

/// A resolution that was not said is one in the last figure that was typed.
#[test]
fn the_last_figure_typed_stands_for_a_resolution_that_was_not_said() {
    let own = gauge(450.0, 1.6, 0.0);
    let step = |values: &[f64]| {
        let readings: Vec<_> = values.iter().map(|value| (place(Sides::Left, None), *value)).collect();
        let check = check_at(NOW, &readings);
        GaugeError::of(&own, check.readings.iter().map(|(_, r)| r)).unwrap().resolution.canonical()
    };
    assert!((step(&[262.0, 264.0]) - 1.0).abs() < 1e-12);
    assert!((step(&[262.0, 264.5]) - 0.1).abs() < 1e-12);
}

/// Checks a month of 30.4375 days apart, each of three readings that are all alike, on one gauge
/// that is never wrong and is read to 2 mmHg.
fn read_to_two(values: &[f64]) -> Vec<Point> {
    let own = gauge(450.0, 0.0, 2.0);
    let check = |(value, months): (&f64, i64)| {
        let at = NOW.plus(Span::seconds(2_629_800 * months));
        let check = check_at(at, &[(place(Sides::Left, None), *value); 3]);
        let pull = Pull::of(&check, Some(&own), |_| true).unwrap();
        Point { at, check: format!("check-{months}"), gauge: "gauge".to_owned(), pull }
    };
    values.iter().zip(0..).map(check).collect()
}

fn close(found: f64, published: f64) {
    assert!((found - published).abs() < 3e-3, "{found}, not {published}");
}

/// JCGM 100:2008 (GUM), F.2.2.1: a value read to a step d lies anywhere within d/2 of what was
/// read. Nine tenths of ±1 mmHg are ±0.9.
#[test]
fn a_resolution_is_half_a_step_either_way() {
    let points = read_to_two(&[262.0]);
    let found = points[0].pull.estimate;
    close(found.low.canonical(), 261.1);
    close(found.high.canonical(), 262.9);
}

/// The difference of two such readings has a triangular law over ±2 mmHg (GUM, 4.3.9), of which
/// nine tenths lie within 2 (1 - √0.1) = 1.3675.
#[test]
fn a_fall_between_two_checks_is_known_to_both_resolutions() {
    let points = read_to_two(&[260.0, 250.0]);
    let course = course(&points, &[], None, points[1].at).unwrap();
    let by = course.fell.unwrap().by;
    close(by.low.canonical(), 10.0 - 1.367_544);
    close(by.high.canonical(), 10.0 + 1.367_544);
}

/// Three checks on a straight line scatter by no less than they are read to, d/√12: with one
/// degree of freedom (t 6.3138) over months 0, 1 and 2 the slope is known to 2.5776 mmHg a month.
#[test]
fn a_slope_is_no_better_known_than_its_checks_are_read() {
    let points = read_to_two(&[260.0, 259.0, 258.0]);
    let slope = course(&points, &[], None, points[2].at).unwrap().slope.unwrap();
    close(slope.value.canonical(), -1.0);
    close(slope.low.canonical(), -1.0 - 2.577_578);
    close(slope.high.canonical(), -1.0 + 2.577_578);
}

/// Two points lie on a line whatever they are: nothing is left over to tell its error by.
#[test]
fn wear_is_told_from_three_checks_and_not_from_two() {
    let limit = Some(mercury(200.0));
    for (values, needs) in [(&[260.0][..], 2), (&[260.0, 250.0][..], 1)] {
        let points = read_to_two(values);
        let now = points.last().unwrap().at;
        let course = course(&points, &[], limit, now).unwrap();
        assert_eq!(course.forecast, Forecast::Needs(Count::new(needs)), "{values:?}");
        assert!(course.slope.is_none() && course.now.is_none() && course.on(now).is_none(), "{values:?}");
    }
    let points = read_to_two(&[260.0, 250.0, 240.0]);
    let course = course(&points, &[], limit, points[2].at).unwrap();
    assert!(course.slope.is_some() && course.now.is_some() && course.on(points[2].at).is_some());
    assert!(!matches!(course.forecast, Forecast::Needs(_)), "{:?}", course.forecast);
}

/// What a check on one gauge, and another so much lower, is said to have lost.
fn fell(by: f64) -> (f64, bool) {
    let own = gauge(760.0, 2.5, 0.1);
    let at = |days: i64, value: f64| {
        let here = place(Sides::Left, None);
        let check =
            check_at(NOW.plus(Span::hours(24 * days)), &[(here, value), (here, value + 0.2), (here, value - 0.2)]);
        Point {
            at: check.at.as_ref().unwrap().instant(),
            check: format!("check-{days}"),
            gauge: "gauge".to_owned(),
            pull: Pull::of(&check, Some(&own), |_| true).unwrap(),
        }
    };
    let points = [at(0, 270.0), at(30, 270.0 - by)];
    let found = course(&points, &[], Some(mercury(200.0)), NOW.plus(Span::hours(24 * 31))).unwrap().fell.unwrap();
    (found.gauge_error.canonical(), found.beyond_error)
}

/// EN 837-1, table 11: on a gauge of class 2.5 over 760 mmHg a drop of 15 mmHg is within its
/// error of 19.
#[test]
fn a_drop_within_what_the_gauge_may_be_wrong_by_is_said_to_be() {
    assert!(!fell(15.0).1);
    assert!((fell(15.0).0 - 19.0).abs() < 1e-9);
    assert_eq!((fell(18.9).1, fell(19.1).1), (false, true));
}

/// ICAO Doc 7488 and ISO 2533, computed (the published 1000, 2000, 3000 and 5000 m from
/// memory): geopotential height in m, pressure in Pa.
const STANDARD: [(f64, f64); 10] = [
    (0.0, 101_325.0),
    (500.0, 95_460.8),
    (1000.0, 89_874.6),
    (1500.0, 84_556.0),
    (2000.0, 79_495.2),
    (2240.0, 77_154.8),
    (2500.0, 74_682.5),
    (3000.0, 70_108.5),
    (4000.0, 61_640.2),
    (5000.0, 54_019.9),
];

#[test]
fn the_air_presses_as_the_standard_atmosphere_does() {
    for (meters, pascal) in STANDARD {
        let found = ambient::standard(Altitude::from_canonical(meters)).canonical() * 100.0;
        assert!((found - pascal).abs() < 1.0, "{meters} m: {found}");
    }
}

/// `ambiance` 1.3.1 (ICAO 1993), by `tests/python/air_vectors.py`.
#[test]
fn and_as_another_library_says() {
    let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("vectors/standard_atmosphere.json");
    let file: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    let rows = file["rows"].as_array().unwrap();
    assert!(rows.len() >= 50);
    for row in rows {
        let (meters, hectopascal) = (row["meters"].as_f64().unwrap(), row["hectopascal"].as_f64().unwrap());
        let found = ambient::standard(Altitude::from_canonical(meters)).canonical();
        assert!((found - hectopascal).abs() < 0.01, "{meters} m: {found} and {hectopascal}");
    }
}

fn held_to_air(read: f64, more: &[(&str, Value)]) -> Result<(), &'static str> {
    let moment = Moment::new(NOW, Zone::UTC);
    let mut fields = Fields::new();
    fields.insert("at".to_owned(), moment.to_json());
    let reading = json!({
        "at": moment.to_rfc3339(), "zone": "UTC", "side": "left", "vacuum": { "value": read, "unit": "mm[Hg]" }
    });
    fields.insert("readings/0".to_owned(), reading);
    fields.extend(more.iter().map(|(key, value)| ((*key).to_owned(), value.clone())));
    check::whole_record(Kind::Check, &fields, None, None).map_err(|trouble| trouble.key)
}

/// No vacuum is greater than the air presses: at 3000 m 525.9 mmHg (the table above).
#[test]
fn a_vacuum_beyond_the_air_is_refused() {
    let at_3000 = [("altitude", json!({ "value": 3000, "unit": "m" }))];
    assert_eq!(held_to_air(525.8, &at_3000), Ok(()));
    assert_eq!(held_to_air(526.0, &at_3000), Err("bad-beyond-air"));
    // What was measured goes before what a height stands for.
    let measured = [at_3000[0].clone(), ("air_pressure", json!({ "value": 720, "unit": "hPa" }))];
    assert_eq!(held_to_air(540.0, &measured), Ok(()));
    assert_eq!(held_to_air(540.1, &measured), Err("bad-beyond-air"));
    assert_eq!(held_to_air(700.0, &[]), Ok(()), "nothing is known of the air");
}

/// A pump that holds a fixed share of the air's pressure: 285 mmHg at the sea is 252.8 at
/// 1000 m and 197.2 at 3000 m (computed from the table above). One that holds its vacuum
/// is the same everywhere, so nothing is corrected.
#[test]
fn a_height_says_what_it_could_explain_and_corrects_nothing() {
    for (meters, read) in [(1000.0, 252.8), (3000.0, 197.2)] {
        let check = check_with(
            NOW,
            &[(place(Sides::Left, None), read)],
            &[("altitude", json!({ "value": meters, "unit": "m" }))],
        );
        let found = height(&check, mercury(read)).unwrap();
        assert!((found.at_sea_level.canonical() - 285.0).abs() < 0.1, "{found:?}");
        let pull =
            Pull::of(&check_at(NOW, &[(place(Sides::Left, None), read); 3]), Some(&gauge(450.0, 1.6, 2.0)), |_| true);
        assert_eq!(pull.unwrap().estimate.value, mercury(read));
    }
    assert!(height(&check_at(NOW, &[(place(Sides::Left, None), 250.0)]), mercury(250.0)).is_none());
}

/// ucum-essence.xml v2.2: m[Hg] is 133.3220 kPa, m[H2O] 9.80665 kPa, bar 1e5 Pa.
#[test]
fn units_of_a_gauges_face_are_ucums() {
    let in_pascal = |unit: VacuumUnit| Vacuum::of(1.0, unit).in_unit(VacuumUnit::Kilopascal) * 1000.0;
    for (unit, pascal) in [
        (VacuumUnit::MillimeterOfMercury, 133.322),
        (VacuumUnit::Kilopascal, 1000.0),
        (VacuumUnit::Millibar, 100.0),
        (VacuumUnit::CentimeterOfWater, 98.0665),
    ] {
        assert!((in_pascal(unit) / pascal - 1.0).abs() < 1e-9, "{unit:?}");
    }
    let air = AirPressure::of(760.0, drawwell_core::quantity::AirPressureUnit::MillimeterOfMercury);
    assert!((air.canonical() - 1013.2472).abs() < 1e-6);
}
