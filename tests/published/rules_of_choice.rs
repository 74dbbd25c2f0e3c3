//! The rules of choosing a pump, each on both of its sides. All of them are common practice, no source; units
//! by UCUM.

use chrono::NaiveDate;
use drawwell_core::answer::choice::doubts::meant_unit;
use drawwell_core::answer::choice::{
    doubts, early, lines, questions, reaches, Aspect, Claim, CyclesAre, Doubt, Found, Line, Question, Reaches, Says,
    Strength,
};
use drawwell_core::answer::pump::calibration::past_due;
use drawwell_core::answer::pump::two_gauges::two_gauges;
use drawwell_core::answer::pump::{Grade, Pull};
use drawwell_core::guidance::{KitRules, Rules};
use drawwell_core::quantity::{Entered, Quantity, Speed, SpeedUnit, Vacuum, VacuumUnit};
use drawwell_core::record::{check::whole_record, Fields, Gauge, Kind, Offered, Sides, Wanted};
use drawwell_core::time::Instant;
use drawwell_tests::gauge_bench::{check_at, gauge, place};
use serde_json::{json, Value};

const MERCURY: VacuumUnit = VacuumUnit::MillimeterOfMercury;

fn rules() -> KitRules {
    KitRules::read(&Rules::default())
}

fn vacuum(value: f64, unit: VacuumUnit) -> Value {
    Entered::<Vacuum>::of(value, unit).to_json()
}

/// A technical sheet that states these figures in mmHg, and whatever else is said.
fn sheet(low: Option<f64>, high: Option<f64>, says: &[(&str, Value)]) -> Fields {
    let ends = [("maximum_vacuum_low", low), ("maximum_vacuum_high", high)];
    let stated = ends.into_iter().filter_map(|(key, value)| Some((key.to_owned(), vacuum(value?, MERCURY))));
    stated.chain(says.iter().map(|(key, value)| ((*key).to_owned(), value.clone()))).collect()
}

fn cycling(low: Option<f64>, high: Option<f64>) -> Fields {
    let ends = [("cycles_low", low), ("cycles_high", high)];
    let per_minute = |value| Entered::<Speed>::of(value, SpeedUnit::PerMinute).to_json();
    ends.into_iter().filter_map(|(key, value)| Some((key.to_owned(), per_minute(value?)))).collect()
}

fn wanted(says: &[(&str, Value)]) -> Wanted {
    Wanted::read(&says.iter().map(|(key, value)| ((*key).to_owned(), value.clone())).collect())
}

fn line(pump: &Fields, wanted: &Wanted, aspect: Aspect) -> Line {
    let lines = lines(&Offered::read(pump), wanted, &rules());
    assert_eq!(lines.iter().map(|line| line.aspect).collect::<Vec<_>>(), Aspect::ALL);
    *lines.iter().find(|line| line.aspect == aspect).unwrap()
}

fn found(pump: &Fields, wanted: &Wanted, aspect: Aspect) -> Found {
    line(pump, wanted, aspect).found
}

/// Hospital grade: 300 mmHg and more. Personal: 250 and more. What is claimed is held against the pump's own
/// figures.
#[test]
fn a_claimed_grade_is_met_by_its_own_figures_or_not() {
    let claimed = |grade: &str, low: Option<f64>, high: Option<f64>| {
        found(&sheet(low, high, &[("grade", json!(grade))]), &Wanted::default(), Aspect::Grade)
    };
    // One figure: on either side, and exactly met.
    for (grade, limit) in [("hospital", 300.0), ("personal", 250.0)] {
        assert_eq!(claimed(grade, None, Some(limit - 1.0)), Found::DoesNot);
        assert_eq!(claimed(grade, None, Some(limit)), Found::Fits);
        assert_eq!(claimed(grade, None, Some(limit + 1.0)), Found::Fits);
        // Only from here on: what lies above is not stated.
        assert_eq!(claimed(grade, Some(limit - 1.0), None), Found::CannotTell);
        assert_eq!(claimed(grade, Some(limit), None), Found::Fits);
        // A range.
        assert_eq!(claimed(grade, Some(limit - 30.0), Some(limit - 1.0)), Found::DoesNot);
        assert_eq!(claimed(grade, Some(limit - 1.0), Some(limit)), Found::Partly);
        assert_eq!(claimed(grade, Some(limit), Some(limit + 50.0)), Found::Fits);
        assert_eq!(claimed(grade, None, None), Found::NotStated);
    }
    // "Called hospital grade, states 240 to 270."
    let said =
        line(&sheet(Some(240.0), Some(270.0), &[("grade", json!("hospital"))]), &Wanted::default(), Aspect::Grade);
    assert_eq!(said.found, Found::DoesNot);
    assert_eq!(said.says, Says::Claim(Claim { grade: Grade::Hospital, reaches: Some(Reaches::No) }));
    // No hand pump is held to a motor's grade, and none that is called nothing.
    assert_eq!(claimed("hand", None, Some(200.0)), Found::NothingWanted);
    assert_eq!(found(&sheet(None, Some(320.0), &[]), &Wanted::default(), Aspect::Grade), Found::NotStated);
    // Hospital grade is for several people.
    let one = sheet(None, Some(330.0), &[("grade", json!("hospital")), ("made_for", json!("one"))]);
    assert_eq!(line(&one, &Wanted::default(), Aspect::Grade).says, Says::HospitalForOne);
}

/// 220 to 350 mmHg is good for any pump; a motor under 250 is a weaker one, and more than 350 is not better.
#[test]
fn how_strong_a_pump_gets_is_said_on_both_sides_of_each_limit() {
    let strong = |value: f64| match line(&sheet(None, Some(value), &[]), &Wanted::default(), Aspect::Strength).says {
        Says::Strength { strength, daily: false } => strength,
        other => panic!("{other:?}"),
    };
    let of = |good, no_weak, beyond| Strength { good, no_weak, beyond };
    let (yes, no) = (Reaches::Yes, Reaches::No);
    assert_eq!(strong(219.0), of(no, no, no));
    assert_eq!(strong(220.0), of(yes, no, no));
    assert_eq!(strong(249.0), of(yes, no, no));
    assert_eq!(strong(250.0), of(yes, yes, no));
    assert_eq!(strong(350.0), of(yes, yes, no));
    assert_eq!(strong(351.0), of(yes, yes, yes));

    // Under 250 is enough for some, but not for daily use.
    let often = |how: &str| wanted(&[("how_often", json!(how))]);
    let fits = |value: f64, how: &str| found(&sheet(None, Some(value), &[]), &often(how), Aspect::Strength);
    assert_eq!((fits(249.0, "now_and_then"), fits(249.0, "daily_at_work")), (Found::Fits, Found::DoesNot));
    assert_eq!((fits(250.0, "daily_at_work"), fits(219.0, "now_and_then")), (Found::Fits, Found::DoesNot));
}

/// A hand pump has no motor: it is held to what is good for any pump, and to no speed.
#[test]
fn a_hand_pump_is_held_to_no_motor() {
    let hand = |value: f64| sheet(None, Some(value), &[("grade", json!("hand"))]);
    let daily = wanted(&[("how_often", json!("daily_at_work")), ("letdown_needs_more", json!(true))]);
    let strong = |value: f64| found(&hand(value), &daily, Aspect::Strength);
    assert_eq!((strong(219.0), strong(220.0)), (Found::DoesNot, Found::Fits));
    for aspect in [Aspect::Cycles, Aspect::SetApart, Aspect::Stimulation] {
        assert_eq!(line(&hand(230.0), &daily, aspect).says, Says::ByHand);
    }
}

/// Above 300 mmHg for nearly all of a child's milk, or a long stay on a neonatal unit.
#[test]
fn nearly_all_milk_asks_for_more_than_three_hundred() {
    for how in ["nearly_all_milk", "neonatal_unit"] {
        let wanted = wanted(&[("how_often", json!(how))]);
        let one = |value: f64| found(&sheet(None, Some(value), &[]), &wanted, Aspect::MostMilk);
        assert_eq!([299.0, 300.0, 301.0].map(one), [Found::DoesNot, Found::DoesNot, Found::Fits]);
        assert_eq!(found(&sheet(Some(300.0), None, &[]), &wanted, Aspect::MostMilk), Found::CannotTell);
        assert_eq!(found(&sheet(Some(290.0), Some(320.0), &[]), &wanted, Aspect::MostMilk), Found::Partly);
        assert_eq!(found(&Fields::new(), &wanted, Aspect::MostMilk), Found::NotStated);
    }
    for how in ["now_and_then", "daily_at_work"] {
        let wanted = wanted(&[("how_often", json!(how))]);
        assert_eq!(found(&sheet(None, Some(200.0), &[]), &wanted, Aspect::MostMilk), Found::NothingWanted);
    }
}

/// 40 to 70 cycles per minute are usual.
#[test]
fn cycles_are_held_against_forty_to_seventy() {
    let of = |low, high| match line(&cycling(low, high), &Wanted::default(), Aspect::Cycles) {
        Line { found, says: Says::Cycles(are), .. } => (found, are),
        other => panic!("{other:?}"),
    };
    assert_eq!(of(Some(40.0), Some(70.0)), (Found::Fits, CyclesAre::AllOfThem), "exactly met");
    assert_eq!(of(Some(39.0), Some(71.0)).0, Found::Fits);
    assert_eq!(of(Some(41.0), Some(70.0)), (Found::Partly, CyclesAre::SomeOfThem));
    assert_eq!(of(Some(40.0), Some(69.0)).0, Found::Partly);
    assert_eq!(of(Some(70.0), Some(120.0)).0, Found::Partly, "one of them is one");
    assert_eq!(of(Some(71.0), Some(120.0)), (Found::DoesNot, CyclesAre::NoneOfThem));
    assert_eq!(of(Some(20.0), Some(39.0)).0, Found::DoesNot);
    assert_eq!(of(None, Some(39.0)).0, Found::DoesNot);
    assert_eq!(of(None, Some(60.0)), (Found::CannotTell, CyclesAre::OneEnd));
    assert_eq!(of(Some(30.0), None), (Found::CannotTell, CyclesAre::OneEnd));
    assert_eq!(of(None, None), (Found::NotStated, CyclesAre::NotStated));
}

/// Two settings that can be changed apart; letdown that needs more asks for a stimulation phase; and what was
/// wanted is had, or not, or not stated.
#[test]
fn what_was_wanted_is_had_or_not_or_not_stated() {
    let apart =
        |how: &str| found(&sheet(None, None, &[("settings_apart", json!(how))]), &Wanted::default(), Aspect::SetApart);
    assert_eq!(apart("apart"), Found::Fits);
    assert_eq!(["together", "vacuum_only", "none"].map(apart), [Found::DoesNot; 3]);

    let of = |asks: (&str, Value), offers: (&str, Value), aspect| {
        let (asked, nothing) = (wanted(&[asks]), Wanted::default());
        let pump = sheet(None, None, &[offers]);
        (found(&pump, &asked, aspect), found(&Fields::new(), &asked, aspect), found(&pump, &nothing, aspect))
    };
    let (fits, does_not) = (Found::Fits, Found::DoesNot);
    let rest = |found| (found, Found::NotStated, Found::NothingWanted);
    let letdown = || ("letdown_needs_more", json!(true));
    assert_eq!(of(letdown(), ("stimulation_phase", json!(true)), Aspect::Stimulation), rest(fits));
    assert_eq!(of(letdown(), ("stimulation_phase", json!(false)), Aspect::Stimulation), rest(does_not));
    let both = || ("both_at_once", json!(true));
    assert_eq!(of(both(), ("sides_at_once", json!("both")), Aspect::BothAtOnce), rest(fits));
    assert_eq!(of(both(), ("sides_at_once", json!("one")), Aspect::BothAtOnce), rest(does_not));
    let runs = |on: &str| ("must_run", json!(on));
    for (on, power, has) in [
        ("mains", "mains", fits),
        ("mains", "both", fits),
        ("mains", "battery", does_not),
        ("battery", "both", fits),
        ("battery", "mains", does_not),
    ] {
        assert_eq!(of(runs(on), ("power", json!(power)), Aspect::Runs), rest(has), "{on} {power}");
    }
    assert_eq!(of(runs("in_clothes"), ("in_clothes", json!(true)), Aspect::Runs), rest(fits));
}

/// A personal grade motor lasts two to three years.
#[test]
fn a_motor_is_held_against_the_weeks_that_are_planned() {
    let personal = [("grade", json!("personal")), ("offered_how", json!("new"))];
    let weeks = |weeks: u32| wanted(&[("weeks_wanted", json!(weeks))]);
    let of = |planned: u32| found(&sheet(None, None, &personal), &weeks(planned), Aspect::Motor);
    // Two years are 104.4 weeks, three 156.5.
    assert_eq!([104, 105, 156, 157].map(of), [Found::Fits, Found::Partly, Found::Partly, Found::DoesNot]);
    let used = sheet(None, None, &[("grade", json!("personal")), ("offered_how", json!("second_hand"))]);
    assert_eq!(found(&used, &weeks(12), Aspect::Motor), Found::CannotTell, "nobody knows what it has run");
    assert_eq!(found(&Fields::new(), &weeks(12), Aspect::Motor), Found::NotStated);
    assert_eq!(found(&sheet(None, None, &personal), &Wanted::default(), Aspect::Motor), Found::NothingWanted);

    // A warranty of six months is 26.09 weeks.
    let covers = |planned: u32| {
        let pump = sheet(None, None, &[("motor_warranty", json!(6))]);
        match line(&pump, &weeks(planned), Aspect::Motor).says {
            Says::Motor { covers, .. } => covers,
            other => panic!("{other:?}"),
        }
    };
    assert_eq!((covers(26), covers(27)), (Some(true), Some(false)));
}

/// Made for one person, it is not had after others; nor is one whose motor milk can reach.
#[test]
fn a_pump_that_others_had_is_made_for_that_or_not() {
    let of = |how: &str, made_for: Option<&str>, path: Option<&str>| {
        let says = [("offered_how", Some(how)), ("made_for", made_for), ("milk_path", path)];
        let says: Vec<_> = says.into_iter().filter_map(|(key, word)| Some((key, json!(word?)))).collect();
        found(&sheet(None, None, &says), &Wanted::default(), Aspect::SharedUse)
    };
    assert_eq!(of("new", Some("one"), Some("open")), Found::NothingWanted);
    for how in ["second_hand", "borrowed", "rented"] {
        assert_eq!(of(how, Some("one"), Some("closed")), Found::DoesNot);
        assert_eq!(of(how, Some("several"), Some("open")), Found::DoesNot);
        assert_eq!(of(how, Some("several"), Some("closed")), Found::Fits);
        assert_eq!(of(how, Some("several"), None), Found::NotStated);
        assert_eq!(of(how, None, None), Found::NotStated);
    }
}

/// What is not stated may be asked for, and what is stated is not asked.
#[test]
fn a_seller_is_asked_for_what_is_not_stated() {
    let nothing = questions(&Offered::read(&Fields::new()), &Wanted::default());
    assert_eq!(
        nothing,
        [
            Question::HighestVacuum,
            Question::Cycles,
            Question::SetApart,
            Question::Stimulation,
            Question::MadeFor,
            Question::Warranty
        ]
    );
    let mut all = sheet(
        Some(250.0),
        Some(280.0),
        &[
            ("settings_apart", json!("apart")),
            ("stimulation_phase", json!(true)),
            ("made_for", json!("one")),
            ("motor_warranty", json!(24)),
        ],
    );
    all.extend(cycling(Some(40.0), Some(70.0)));
    assert_eq!(questions(&Offered::read(&all), &Wanted::default()), []);
    // What is wanted is asked for, too.
    let wants = wanted(&[("both_at_once", json!(true)), ("must_run", json!("battery"))]);
    assert_eq!(questions(&Offered::read(&all), &wants), [Question::BothAtOnce, Question::Power]);
    all.remove("maximum_vacuum_high");
    assert_eq!(questions(&Offered::read(&all), &Wanted::default()), [Question::UpToWhich]);
    all.insert("offered_how".to_owned(), json!("second_hand"));
    let asked = questions(&Offered::read(&all), &Wanted::default());
    assert_eq!(asked, [Question::UpToWhich, Question::MilkPath, Question::HoursRun]);
}

/// UCUM: 33 kPa are 247.52 mmHg, 400 mbar are 300.03 mmHg. A figure that may be in another unit is asked about
/// and judged by no rule until it was looked at.
#[test]
fn a_figure_that_may_be_in_another_unit_is_asked_about() {
    let of = |value: f64, unit: VacuumUnit, right: bool| {
        let mut pump = Fields::new();
        pump.insert("maximum_vacuum_high".to_owned(), vacuum(value, unit));
        pump.insert("figures_are_right".to_owned(), json!(right));
        let first = doubts(&Offered::read(&pump), &rules()).first().copied();
        let says = line(&pump, &Wanted::default(), Aspect::Strength).says;
        assert_eq!(first.is_some(), says == Says::AskFirst, "{value} {unit:?}");
        first
    };
    match of(33.0, MERCURY, false) {
        Some(doubt @ Doubt::PerhapsKilopascal { meant, .. }) => {
            assert!((meant.canonical() - 247.521).abs() < 0.001, "{meant:?}");
            assert_eq!(meant_unit(&doubt), Some("kPa"));
        }
        other => panic!("{other:?}"),
    }
    assert!(matches!(of(33.0, VacuumUnit::Millibar, false), Some(Doubt::PerhapsKilopascal { .. })));
    match of(400.0, MERCURY, false) {
        Some(doubt @ Doubt::PerhapsMillibar { meant, .. }) => {
            assert!((meant.canonical() - 300.025).abs() < 0.001, "{meant:?}");
            assert_eq!(meant_unit(&doubt), Some("mbar"));
        }
        other => panic!("{other:?}"),
    }
    // On the other side of each: 60 mmHg is not asked about, nor 380, nor what was looked at.
    assert_eq!((of(60.0, MERCURY, false), of(380.0, MERCURY, false)), (None, None));
    assert_eq!((of(33.0, VacuumUnit::Kilopascal, false), of(400.0, VacuumUnit::Millibar, false)), (None, None));
    assert_eq!((of(33.0, MERCURY, true), of(400.0, MERCURY, true)), (None, None));
    assert!(of(59.9, MERCURY, false).is_some() && of(381.0, MERCURY, false).is_some());
}

#[test]
fn a_price_has_a_currency_and_ends_rise() {
    let priced = |currency: Option<&str>| {
        let mut pump = sheet(None, None, &[("price", json!(199))]);
        pump.extend(currency.map(|code| ("currency".to_owned(), json!(code))));
        pump
    };
    assert_eq!(doubts(&Offered::read(&priced(None)), &rules()), [Doubt::NoCurrency]);
    assert_eq!(doubts(&Offered::read(&priced(Some("eur"))), &rules()), []);
    let whole = |kind, fields: &Fields| whole_record(kind, fields, None, None).map_err(|trouble| trouble.key);
    assert_eq!(whole(Kind::OfferedPump, &priced(Some("eur"))), Ok(()));
    for wrong in ["€", "eu", "12a"] {
        assert_eq!(whole(Kind::OfferedPump, &priced(Some(wrong))), Err("bad-currency"), "{wrong}");
    }
    for kind in [Kind::OfferedPump, Kind::Pump] {
        assert_eq!(whole(kind, &sheet(Some(280.0), Some(250.0), &[])), Err("bad-order"));
        assert_eq!(whole(kind, &sheet(Some(250.0), Some(250.0), &[])), Ok(()));
    }
    let gauge = |on: &str, due: &str| {
        Fields::from([("calibrated_on".to_owned(), json!(on)), ("calibration_due".to_owned(), json!(due))])
    };
    assert_eq!(whole(Kind::Gauge, &gauge("2026-03-02", "2026-03-01")), Err("bad-due-before"));
    assert_eq!(whole(Kind::Gauge, &gauge("2026-03-01", "2026-03-01")), Ok(()));
}

#[test]
fn the_early_weeks_end_on_a_day() {
    let day = |text: &str| NaiveDate::parse_from_str(text, "%Y-%m-%d").unwrap();
    // Six weeks, our own starting value.
    let on = |today: &str| early(day("2026-03-01"), day(today), &rules()).unwrap();
    assert_eq!((on("2026-04-12").until, on("2026-04-12").over), (day("2026-04-12"), false));
    assert!(on("2026-04-13").over);
}

#[test]
fn a_gauge_is_past_its_date_the_day_after_it() {
    let day = |text: &str| NaiveDate::parse_from_str(text, "%Y-%m-%d").unwrap();
    let gauge = Gauge::read(&Fields::from([("calibration_due".to_owned(), json!("2026-03-01"))]));
    assert_eq!(past_due(&gauge, day("2026-03-01")), None);
    assert_eq!(past_due(&gauge, day("2026-03-02")), Some(day("2026-03-01")));
    assert_eq!(past_due(&Gauge::read(&Fields::new()), day("2026-03-02")), None, "what was not said is not known");
}

/// EN 837-1: class 1.6 over 450 mmHg is wrong by up to 7.2 mmHg, so that two such gauges, each read to 2 mmHg, may
/// differ by 16.4.
#[test]
fn two_gauges_may_differ_by_the_errors_of_both() {
    let pull = |value: f64| {
        let check =
            check_at(Instant::from_unix_milliseconds(1_786_000_000_000), &[(place(Sides::Left, None), value); 3]);
        Pull::of(&check, Some(&gauge(450.0, 1.6, 2.0)), |_| true).unwrap()
    };
    let held = |one: f64, other: f64| two_gauges(&pull(one), &pull(other)).unwrap();
    assert!((held(260.0, 250.0).allowed.canonical() - 16.4).abs() < 1e-9);
    assert!((held(260.0, 250.0).by.canonical() - 10.0).abs() < 1e-9);
    assert!(held(260.0, 243.7).agree() && !held(260.0, 243.5).agree());
    assert!(held(243.7, 260.0).agree() && !held(243.5, 260.0).agree());
}

#[test]
fn a_range_reaches_a_limit_with_all_or_part_of_it() {
    let of = |low, high| {
        let stated = Offered::read(&sheet(low, high, &[])).vacuum;
        reaches(&stated, |vacuum| vacuum >= Vacuum::of(250.0, MERCURY))
    };
    assert_eq!(of(None, None), Reaches::NotStated);
    assert_eq!((of(Some(250.0), Some(280.0)), of(Some(250.0), None)), (Reaches::Yes, Reaches::Yes));
    assert_eq!((of(Some(249.0), Some(250.0)), of(Some(249.0), None)), (Reaches::Partly, Reaches::OpenAbove));
    assert_eq!((of(Some(200.0), Some(249.0)), of(None, Some(249.0))), (Reaches::No, Reaches::No));
}
