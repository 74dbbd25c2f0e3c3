//! The rules of Kit: each at its bounds and beyond them, and each on both of its sides.

use chrono::NaiveDate;
use drawwell_core::answer::flange_fit::{candidates, stands, InUse, Nipple};
use drawwell_core::answer::pump::age::{age, AgainstLife};
use drawwell_core::answer::pump::applied::{beyond_hand_exemption, not_delivered};
use drawwell_core::answer::pump::doubts::{doubts, Doubt};
use drawwell_core::answer::pump::{judge, Grade, Limits, Pull, Settles, Verdict, Whose};
use drawwell_core::guidance::{FitRules, KitRules, Rules};
use drawwell_core::quantity::{Count, Entered, Length, Quantity, Share, Vacuum, VacuumUnit};
use drawwell_core::record::{Fields, Reading, Sides};
use drawwell_core::time::{Instant, Moment, Zone};
use drawwell_tests::gauge_bench::{check_at, check_with, gauge, mercury, place};
use serde_json::json;

const NOW: Instant = Instant::from_unix_milliseconds(1_786_000_000_000);
fn rules() -> KitRules {
    KitRules::read(&Rules::default())
}

/// What is said of a pump of a grade whose readings all show one value, on a gauge that
/// is wrong by no more than 0.45 mmHg (EN 837-1 class 0.1 over 450 mmHg).
fn verdict(grade: &str, maker: Option<(f64, f64)>, value: f64) -> (Verdict, Whose) {
    let mut pump = Fields::new();
    pump.insert("grade".to_owned(), json!(grade));
    if let Some((low, high)) = maker {
        let vacuum = |value| Entered::<Vacuum>::of(value, VacuumUnit::MillimeterOfMercury).to_json();
        pump.insert("maximum_vacuum_low".to_owned(), vacuum(low));
        pump.insert("maximum_vacuum_high".to_owned(), vacuum(high));
    }
    let gauge = gauge(450.0, 0.1, 0.1);
    let check = check_at(NOW, &[(place(Sides::Left, None), value); 3]);
    let pull = Pull::of(&check, Some(&gauge), |_| true).unwrap();
    let limits = Limits::of(&pump, &rules());
    (judge(&pull, &limits, rules().verdict_chance, gauge.span).verdict, limits.whose)
}

/// Common practice, no source: personal grade 250 to 300 mmHg, weak below 250; hospital
/// grade above 300, tops 320 to 350; good anywhere in 220 to 350.
#[test]
fn each_grade_is_judged_on_both_sides_of_its_limits() {
    let of = |grade: &str, value: f64| verdict(grade, None, value).0;
    assert_eq!((of("personal", 249.0), of("personal", 251.0)), (Verdict::Below, Verdict::Meets));
    assert_eq!((of("hospital", 299.0), of("hospital", 301.0)), (Verdict::Below, Verdict::Meets));
    // Nothing is wrong with a pump that reaches more than its grade usually does.
    assert_eq!((of("personal", 301.0), of("hospital", 351.0)), (Verdict::Meets, Verdict::Meets));
    for grade in ["hand", "another"] {
        assert_eq!((of(grade, 219.0), of(grade, 221.0)), (Verdict::Below, Verdict::Meets));
        assert_eq!((of(grade, 349.0), of(grade, 351.0)), (Verdict::Meets, Verdict::Above));
    }
    for value in [250.0, 250.2, 249.8] {
        assert_eq!(of("personal", value), Verdict::CannotTell, "right at the limit: {value}");
    }
}

/// A mean that lies so far above the limit of its grade, in spreads of a reading, on a gauge
/// that is never wrong. What would settle it is worked out with SciPy's `stats.t`: n readings
/// do where t₀.₉₅ on n - 1 degrees of freedom is no more than so many spreads times √n.
#[test]
fn readings_that_would_settle_it_are_said_up_to_twenty_in_all() {
    let settles = |above: f64| {
        let mut pump = Fields::new();
        pump.insert("grade".to_owned(), json!("personal"));
        let middle = 250.0 + 10.0 * above;
        let readings = [middle - 10.0, middle, middle + 10.0].map(|value| (place(Sides::Left, None), value));
        let gauge = gauge(450.0, 0.0, 0.001);
        let pull = Pull::of(&check_at(NOW, &readings), Some(&gauge), |_| true).unwrap();
        judge(&pull, &Limits::of(&pump, &rules()), Share::of(0.95), gauge.span).settles
    };
    // Between 0.518 and 0.546 twelve do, three of which are there.
    assert_eq!(settles(0.530), Settles::MoreReadings(Count::new(9)));
    assert_eq!(settles(0.520), Settles::MoreReadings(Count::new(9)));
    assert_eq!(settles(0.545), Settles::MoreReadings(Count::new(9)));
    // From 0.3866 on twenty do; below it takes twenty-one, which nobody takes.
    assert_eq!(settles(0.388), Settles::MoreReadings(Count::new(17)));
    assert_eq!(settles(0.385), Settles::Neither);
}

#[test]
fn what_the_maker_states_goes_before_the_grade() {
    let of = |value: f64| verdict("hospital", Some((180.0, 240.0)), value);
    assert_eq!(of(179.0), (Verdict::Below, Whose::Maker));
    assert_eq!(of(181.0).0, Verdict::Meets);
    assert_eq!(of(239.0).0, Verdict::Meets);
    assert_eq!(of(241.0).0, Verdict::Above);
}

fn reading(value: f64, set: Option<f64>) -> Reading {
    Reading {
        at: Moment::new(NOW, Zone::UTC),
        place: place(Sides::Left, None),
        vacuum: Entered::of(value, VacuumUnit::MillimeterOfMercury),
        set: set.map(|set| Entered::of(set, VacuumUnit::MillimeterOfMercury)),
    }
}

/// BMC Pregnancy Childbirth 2020;20:516, doi:10.1186/s12884-020-03191-5 (primary text):
/// a session counted as valid only where applied vacuum lay within 20 mmHg of set vacuum.
#[test]
fn twenty_apart_from_what_was_set_passes_and_a_tenth_more_is_flagged() {
    let flagged = |read: f64, set: f64| not_delivered(&reading(read, Some(set)), &rules()).is_some();
    assert!(!flagged(180.0, 200.0) && !flagged(220.0, 200.0));
    assert!(flagged(179.9, 200.0) && flagged(220.1, 200.0));
    assert!(not_delivered(&reading(10.0, None), &rules()).is_none(), "nothing was set");
}

/// 21 CFR 884.5150 (primary text): a hand pump that "does not develop more than 250 mm Hg
/// suction" is exempt. No limit of safety, and none for other pumps.
#[test]
fn a_hand_pump_carries_its_note_above_250_and_no_other_pump_does() {
    let noted = |grade, value: f64| beyond_hand_exemption(grade, mercury(value), &rules());
    assert!(!noted(Some(Grade::Hand), 250.0));
    assert!(noted(Some(Grade::Hand), 250.1));
    assert!(!noted(Some(Grade::Personal), 400.0) && !noted(Some(Grade::Hospital), 400.0) && !noted(None, 400.0));
}

#[test]
fn a_highest_reading_below_sixty_may_be_in_kilopascal_and_is_asked_about() {
    let asked = |value: f64| {
        let check = check_at(NOW, &[(place(Sides::Left, None), value)]);
        doubts(&check, None, &rules()).iter().any(|doubt| matches!(doubt, Doubt::PerhapsKilopascal { .. }))
    };
    assert!(asked(40.0) && asked(59.9));
    assert!(!asked(60.0) && !asked(262.0));
    let low_level = check_at(NOW, &[(place(Sides::Left, Some(1)), 40.0), (place(Sides::Left, None), 262.0)]);
    assert!(doubts(&low_level, None, &rules()).is_empty(), "a low level may well pull little");
    let right = check_with(NOW, &[(place(Sides::Left, None), 40.0)], &[("readings_are_right", json!(true))]);
    assert!(doubts(&right, None, &rules()).is_empty(), "the person looked");
}

#[test]
fn readings_more_than_fifty_apart_are_asked_about() {
    let asked = |apart: f64| {
        let here = place(Sides::Left, None);
        let check = check_at(NOW, &[(here, 200.0), (here, 200.0 + apart)]);
        doubts(&check, None, &rules()).iter().any(|doubt| matches!(doubt, Doubt::FarApart { .. }))
    };
    assert!(!asked(50.0));
    assert!(asked(50.1) && asked(200.0));
    let elsewhere = check_at(NOW, &[(place(Sides::Left, Some(2)), 100.0), (place(Sides::Left, Some(8)), 300.0)]);
    assert!(doubts(&elsewhere, None, &rules()).is_empty(), "two levels are two places");
}

/// Common practice, no source: a personal grade motor lasts about 2 to 3 years.
#[test]
fn a_motor_is_held_against_its_years_on_both_sides() {
    let since = NaiveDate::from_ymd_opt(2023, 1, 1).unwrap();
    let after = |days: i64, grade| age(since, since + chrono::Duration::days(days), grade, &rules()).against_life;
    let personal = Some(Grade::Personal);
    assert_eq!(after(730, personal), Some(AgainstLife::Before));
    assert_eq!(after(731, personal), Some(AgainstLife::Within));
    assert_eq!(after(1095, personal), Some(AgainstLife::Within));
    assert_eq!(after(1096, personal), Some(AgainstLife::Beyond));
    assert_eq!(after(5000, Some(Grade::Hospital)), None);
}

/// MDPI Proceedings 112(1), article 7 (abstract): advice ranges "from fitting the breast
/// shield to nipple dimensions to allowing a 4 mm gap"; 16 mm gives 16 to 20 mm.
#[test]
fn a_flange_is_up_to_four_millimetres_wider_than_the_nipple() {
    let rules = FitRules::read(&Rules::default());
    let size = Length::from_canonical;
    let stock: Vec<Length> = [13.0, 15.0, 16.0, 17.0, 19.0, 20.0, 21.0, 24.0].map(size).to_vec();
    let nipple = Nipple { before: Some(size(16.0)), after: Some(size(18.0)) };
    let found = candidates(&nipple, &stock, &rules).unwrap();
    assert_eq!((found.from, found.to), (size(16.0), size(20.0)));
    assert_eq!(found.in_stock, [16.0, 17.0, 19.0, 20.0].map(size), "both ends belong to it");
    assert_eq!(stands(size(15.9), &found), InUse::Smaller);
    assert_eq!(stands(size(16.0), &found), InUse::Within);
    assert_eq!(stands(size(20.0), &found), InUse::Within);
    assert_eq!(stands(size(20.1), &found), InUse::Larger);
}

#[test]
fn where_no_size_in_stock_fits_the_nearest_is_named_and_of_two_the_smaller() {
    let rules = FitRules::read(&Rules::default());
    let size = Length::from_canonical;
    let nearest = |stock: &[f64], diameter: f64| {
        let stock: Vec<Length> = stock.iter().copied().map(size).collect();
        let nipple = Nipple { before: Some(size(diameter)), after: None };
        candidates(&nipple, &stock, &rules).unwrap().nearest
    };
    assert_eq!(nearest(&[24.0, 28.0], 12.0), Some(size(24.0)));
    assert_eq!(nearest(&[10.0, 18.0], 12.0), Some(size(10.0)), "both are 2 mm off");
    assert_eq!(nearest(&[], 12.0), None);
    let unmeasured = Nipple { before: None, after: None };
    assert!(candidates(&unmeasured, &[size(17.0)], &rules).is_none());
    let only_after = Nipple { before: None, after: Some(size(17.0)) };
    assert_eq!(candidates(&only_after, &[], &rules).unwrap().diameter, size(17.0));
}
