//! Cautions on both sides of their limits, each with its source. None of them has been
//! reviewed by a clinician.

use drawwell_core::answer::caution::body::{self, BodySign};
use drawwell_core::answer::caution::comfort::{self, SessionPain};
use drawwell_core::answer::caution::{pull, standing, Because, Caution, Dealt};
use drawwell_core::answer::pump::{judge, Limits, Pull};
use drawwell_core::guidance::{CautionRules, CautionSource, KitRules, Rules, Urgency};
use drawwell_core::quantity::{Entered, Score, Temperature, TemperatureUnit, Unit, Vacuum, VacuumUnit};
use drawwell_core::record::{Fields, Session, Sides};
use drawwell_core::time::{Instant, Moment, Span, Zone};
use drawwell_tests::gauge_bench::{check_at, gauge, place};
use serde_json::{json, Value};

const NOW: Instant = Instant::from_unix_milliseconds(1_786_000_000_000);

fn rules() -> CautionRules {
    CautionRules::read(&Rules::default())
}

#[test]
fn each_caution_names_its_source_and_that_no_clinician_has_reviewed_it() {
    assert_eq!(CautionSource::all().len(), 10);
    for caution in CautionSource::all() {
        assert!(!caution.source.is_empty() && caution.year > 1900, "{}", caution.key);
        assert!(!caution.reviewed, "{}", caution.key);
        assert!(caution.rules.iter().all(|rule| Rules::named(rule).is_some()), "{}", caution.key);
    }
}

/// What was written down, so long before now.
fn sign(before: Span, fields: Value) -> BodySign {
    let at = Moment::new(NOW.minus(before), Zone::UTC).to_json();
    let mut fields: Fields = fields.as_object().unwrap().clone().into_iter().collect();
    fields.insert("at".to_owned(), at);
    BodySign::read(&fields).unwrap()
}

fn degrees(value: f64, unit: &str) -> Value {
    Entered::<Temperature>::parse(&value.to_string(), TemperatureUnit::from_ucum(unit).unwrap()).unwrap().to_json()
}

fn keys(signs: &[BodySign]) -> Vec<&'static str> {
    body::cautions(signs, NOW, &rules()).iter().map(|c| c.source.key.as_str()).collect()
}

fn hours(count: i64) -> Span {
    Span::hours(count)
}

/// Academy of Breastfeeding Medicine, Clinical Protocol 4 (2008, revised 2014): "fever of
/// 38.5 °C or greater" with a tender, hot, swollen breast. 38.5 °C is 101.3 °F.
#[test]
fn fever_with_breast_signs_begins_at_38_5_and_not_at_38_4() {
    for (typed, unit, fires) in [
        (38.4, "Cel", false),
        (38.49, "Cel", false),
        (38.5, "Cel", true),
        (101.2, "[degF]", false),
        (101.3, "[degF]", true),
    ] {
        let found = keys(&[sign(hours(1), json!({"temperature": degrees(typed, unit), "swelling": "left"}))]);
        assert_eq!(found.contains(&"breast-fever"), fires, "{typed} {unit}");
    }
    assert_eq!(
        keys(&[sign(hours(1), json!({"temperature": degrees(39.5, "Cel")}))]),
        [""; 0],
        "fever alone is no sign at the breast"
    );
    let none = json!({"temperature": degrees(39.5, "Cel"), "redness": "neither", "swelling": "neither"});
    assert_eq!(keys(&[sign(hours(1), none)]), [""; 0], "looked for, and not there");
}

/// Union of Academy of Breastfeeding Medicine protocols 4 and 36, from memory: 38.0 °C
/// with a red, hot or painful place; a swelling alone is no such place.
#[test]
fn fever_with_a_place_begins_at_38_0_and_not_below() {
    for (typed, fires) in [(37.99, false), (38.0, true), (38.49, true)] {
        for place in ["redness", "heat", "painful_place"] {
            let found = keys(&[sign(hours(1), json!({"temperature": degrees(typed, "Cel"), place: "right"}))]);
            assert_eq!(found, if fires { vec!["fever-with-place"] } else { vec![] }, "{typed} {place}");
        }
    }
    assert_eq!(keys(&[sign(hours(1), json!({"temperature": degrees(38.2, "Cel"), "swelling": "left"}))]), [""; 0]);
}

/// Ours: a temperature and a sign are read together within 24 h.
#[test]
fn a_temperature_and_a_sign_are_read_together_within_a_day() {
    for (apart, fires) in [(hours(24), true), (Span::minutes(24 * 60 + 1), false)] {
        let signs = [
            sign(Span::minutes(apart.in_minutes() + 1), json!({"temperature": degrees(39.0, "Cel")})),
            sign(Span::minutes(1), json!({"redness": "left"})),
        ];
        assert_eq!(keys(&signs).contains(&"breast-fever"), fires, "{apart:?}");
    }
}

/// Academy of Breastfeeding Medicine, Clinical Protocol 36 (2022), from memory: signs that
/// last longer than 24 h.
#[test]
fn no_better_fires_at_24_hours_and_not_a_minute_before() {
    for (before, fires) in [(Span::minutes(24 * 60 - 1), false), (hours(24), true)] {
        assert_eq!(keys(&[sign(before, json!({"redness": "left"}))]), if fires { vec!["no-better"] } else { vec![] });
    }
}

#[test]
fn what_got_better_or_went_away_is_not_called_lasting() {
    let began = sign(hours(30), json!({"lump": "left"}));
    for later in [json!({"since_before": "better", "lump": "left"}), json!({"lump": "neither"})] {
        assert_eq!(keys(&[began.clone(), sign(hours(2), later)]), [""; 0]);
    }
    for later in
        [json!({"since_before": "same"}), json!({"since_before": "worse", "lump": "left"}), json!({"note": "slept"})]
    {
        assert_eq!(keys(&[began.clone(), sign(hours(2), later)]), ["no-better"]);
    }
    let worse_again =
        [began, sign(hours(20), json!({"since_before": "better"})), sign(hours(2), json!({"lump": "left"}))];
    assert_eq!(keys(&worse_again), [""; 0], "time runs anew");
}

/// Danger signs of a published list, in a secondary summary: each by itself.
#[test]
fn each_danger_sign_asks_for_emergency_care() {
    let flags =
        ["fainting", "confusion", "severe_weakness", "short_of_breath", "keeps_vomiting", "pain_beyond_what_is_seen"];
    for (key, there, absent) in flags
        .map(|key| (key, json!(true), json!(false)))
        .into_iter()
        .chain(["spreading_redness", "dark_skin"].map(|key| (key, json!("both"), json!("neither"))))
    {
        let found = body::cautions(&[sign(hours(1), json!({ key: there }))], NOW, &rules());
        assert_eq!(
            found.iter().map(|c| (c.source.key.as_str(), c.urgency())).collect::<Vec<_>>(),
            [("emergency", Urgency::Now)],
            "{key}"
        );
        assert_eq!(keys(&[sign(hours(1), json!({ key: absent }))]), [""; 0], "{key}");
    }
}

#[test]
fn shivering_pus_and_blood_each_ask_for_a_look_today() {
    for (fields, key) in [
        (json!({"shivering": true}), "shivering"),
        (json!({"pus": "left"}), "pus-or-blood"),
        (json!({"blood": "right"}), "pus-or-blood"),
    ] {
        let found = body::cautions(&[sign(hours(1), fields)], NOW, &rules());
        assert_eq!(
            found.iter().map(|c| (c.source.key.as_str(), c.urgency())).collect::<Vec<_>>(),
            [(key, Urgency::Today)]
        );
    }
}

/// Ours: what was written down stands for 72 h.
#[test]
fn what_was_written_down_stands_for_three_days() {
    for (before, fires) in [(hours(72), true), (Span::minutes(72 * 60 + 1), false)] {
        assert_eq!(!keys(&[sign(before, json!({"shivering": true}))]).is_empty(), fires);
    }
}

fn pain(before: Span, scores: &[u32]) -> SessionPain {
    SessionPain { at: NOW.minus(before), runs: vec![scores.iter().copied().map(Score::new).collect()] }
}

fn pain_keys(sessions: &[SessionPain]) -> Vec<&'static str> {
    comfort::cautions(sessions, NOW, &rules()).iter().map(|c| c.source.key.as_str()).collect()
}

/// Palos et al. 2006: severe is 7 to 10. Serlin 1995 and Palos call 4 mild, a popular scheme
/// moderate: no caution rests on that.
#[test]
fn severe_pain_is_seven_in_two_sessions_after_each_other() {
    assert_eq!(pain_keys(&[pain(hours(9), &[7]), pain(hours(6), &[7])]), ["pain-stays-high"]);
    assert_eq!(pain_keys(&[pain(hours(9), &[7]), pain(hours(6), &[6])]), [""; 0]);
    assert_eq!(pain_keys(&[pain(hours(9), &[6]), pain(hours(6), &[7])]), [""; 0]);
    assert_eq!(pain_keys(&[pain(hours(12), &[7]), pain(hours(9), &[3]), pain(hours(6), &[7])]), [""; 0]);
    assert_eq!(pain_keys(&[pain(hours(6), &[4]), pain(hours(3), &[4])]), [""; 0]);
}

/// Ours, a proposal: a rise of 2 points within a session.
#[test]
fn pain_that_rises_by_two_within_a_session_is_told() {
    assert_eq!(pain_keys(&[pain(hours(3), &[1, 2, 3])]), ["pain-rises"]);
    assert_eq!(pain_keys(&[pain(hours(3), &[1, 2])]), [""; 0]);
    assert_eq!(pain_keys(&[pain(hours(3), &[5, 2])]), [""; 0], "it fell");
    assert_eq!(pain_keys(&[pain(hours(3), &[1]), pain(hours(2), &[3])]), [""; 0], "two sessions are not one");
}

#[test]
fn a_session_without_a_score_says_nothing_of_pain() {
    let at = Moment::new(NOW, Zone::UTC).to_json();
    let fields: Fields =
        [("started".to_owned(), at.clone()), ("marks/a".to_owned(), json!({"does": "pain", "at": at}))].into();
    assert!(SessionPain::read("s", &fields).is_none());
    assert!(Session::read("s", &fields).started.is_some());
}

/// Ours: the whole range of the pull lies more than 20 % below the lower end.
#[test]
fn a_pump_is_far_below_where_all_of_its_range_is() {
    let low = Entered::<Vacuum>::of(250.0, VacuumUnit::MillimeterOfMercury).to_json();
    let pump: Fields = [("maximum_vacuum_low".to_owned(), low)].into();
    let kit = KitRules::read(&Rules::default());
    let limits = Limits::of(&pump, &kit);
    let told = |reads: f64| -> Option<Caution> {
        let gauge = gauge(450.0, 0.1, 0.1);
        let check = check_at(NOW, &[(place(Sides::Left, None), reads); 3]);
        let pull = Pull::of(&check, Some(&gauge), |_| true).unwrap();
        let judged = judge(&pull, &limits, kit.verdict_chance, gauge.span);
        pull::caution("p", NOW, &pull, &judged, &limits, &rules())
    };
    let far = told(198.0).unwrap();
    assert_eq!((far.key().as_str(), far.because.len()), ("pump-far-below:p", 1));
    assert!(told(202.0).is_none(), "below, and not far");
    assert!(told(260.0).is_none());
}

#[test]
fn what_was_dealt_with_stays_away_until_a_later_fact() {
    let signs = [sign(hours(5), json!({"shivering": true}))];
    let found = || body::cautions(&signs, NOW, &rules());
    let dealt = Dealt { key: "shivering".to_owned(), seen: found()[0].seen };
    assert!(standing(found(), std::slice::from_ref(&dealt)).is_empty());
    let again = [signs[0].clone(), sign(hours(1), json!({"shivering": true}))];
    assert_eq!(standing(body::cautions(&again, NOW, &rules()), &[dealt]).len(), 1);
}

#[test]
fn the_most_urgent_comes_first() {
    let signs = [sign(hours(5), json!({"shivering": true})), sign(hours(6), json!({"fainting": true}))];
    let found = standing(body::cautions(&signs, NOW, &rules()), &[]);
    assert_eq!(found.iter().map(|c| c.source.key.as_str()).collect::<Vec<_>>(), ["emergency", "shivering"]);
    assert!(matches!(found[0].because[0], Because::Sign(_, "fainting", None)));
}
