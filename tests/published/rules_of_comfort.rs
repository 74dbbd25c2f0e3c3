//! The rules of Comfort on both of their sides, and what check-values of the trade ask of it.
//! Most rules are proposals for consultants or common practice, no source; the rest say theirs.

use std::collections::BTreeMap;

use drawwell_core::answer::comfort::{comfort, felt_in, flange_first, Ceiling, Felt, Strength};
use drawwell_core::answer::flange_fit::{InUse, Sign};
use drawwell_core::answer::letdown::{heard_in, letdowns, Group};
use drawwell_core::answer::refill::plain_rate;
use drawwell_core::answer::supply::Side;
use drawwell_core::answer::trial::{flow, time_to, time_to_most, MOST};
use drawwell_core::answer::Estimate;
use drawwell_core::guidance::{ComfortRules, Rules};
use drawwell_core::quantity::{Count, Level, Quantity, Share, Vacuum, Volume};
use drawwell_core::record::mark::Phase;
use drawwell_core::record::{Fields, Session};
use drawwell_core::time::{Instant, Span};
use serde_json::{json, Value};

fn rules() -> ComfortRules {
    ComfortRules::read(&Rules::default())
}

const NOW: i64 = 1_790_000_000_000;

fn at(number: u32, of: u32) -> Instant {
    Instant::from_unix_milliseconds(NOW).minus(Span::hours(3 * i64::from(of - number)))
}

/// Sessions with a vacuum each and whether it was comfortable, three hours apart.
fn sessions(felt: &[(f64, bool)]) -> Vec<Felt> {
    let of = felt.len() as u32;
    (0..of)
        .zip(felt)
        .map(|(number, (vacuum, comfortable))| {
            let vacuum = Vacuum::from_canonical(*vacuum);
            Felt {
                session: format!("s{number}"),
                at: at(number, of),
                pump: None,
                side: Side::Left,
                phase: Phase::Expression,
                strength: Strength { level: None, vacuum: Some(Estimate { value: vacuum, low: vacuum, high: vacuum }) },
                comfortable: *comfortable,
            }
        })
        .collect()
}

fn ceiling(felt: &[(f64, bool)]) -> Ceiling<Vacuum> {
    let now = Instant::from_unix_milliseconds(NOW);
    comfort(&sessions(felt), Side::Left, Phase::Expression, now, &rules()).unwrap().in_vacuum.unwrap().ceiling
}

/// Kent et al., Breastfeed Med 2008;3:11-19: 190.7 ± 8.8 mmHg, where ± is most likely a standard
/// error. So 182 to 199 is no range to bring anybody into.
#[test]
fn comfortable_at_240_is_not_lowered_and_at_150_not_raised() {
    let up_to = |top: f64| (0..14).map(|n| (top - f64::from(n % 4) * 20.0, true)).collect::<Vec<_>>();
    assert_eq!(ceiling(&up_to(240.0)), Ceiling::RareUpTo(Vacuum::from_canonical(240.0)));
    assert_eq!(ceiling(&up_to(150.0)), Ceiling::RareUpTo(Vacuum::from_canonical(150.0)));
}

#[test]
fn the_ceiling_is_never_above_what_was_comfortable() {
    for top in [130.0, 170.0, 210.0, 250.0] {
        let felt: Vec<(f64, bool)> =
            (0..24).map(|n| (top - 60.0 + f64::from(n % 6) * 20.0, f64::from(n % 6) * 20.0 <= 60.0)).collect();
        let Ceiling::At(found) = ceiling(&felt) else { panic!("{:?}", ceiling(&felt)) };
        assert!(found.value.canonical() <= top, "{found:?}");
        assert!(found.low.canonical() <= found.value.canonical() && found.value.canonical() <= found.high.canonical());
    }
}

#[test]
fn ten_sessions_tell_and_nine_say_how_many_more() {
    let varied = |n: u32| (0..n).map(|i| (150.0 + f64::from(i % 5) * 20.0, i % 5 < 3)).collect::<Vec<_>>();
    assert_eq!(ceiling(&varied(9)), Ceiling::CannotTellYet(Count::new(1)));
    assert_eq!(ceiling(&varied(4)), Ceiling::CannotTellYet(Count::new(6)));
    assert!(!matches!(ceiling(&varied(20)), Ceiling::CannotTellYet(_)), "{:?}", ceiling(&varied(20)));
}

fn session(fields: Value) -> (Session, Fields) {
    let mut all: Fields = BTreeMap::from([
        ("kind".to_owned(), json!("session")),
        ("method".to_owned(), json!("electric_pump")),
        ("started".to_owned(), moment(0)),
        ("ended".to_owned(), moment(20)),
    ]);
    all.extend(fields.as_object().unwrap().clone());
    (Session::read("s", &all), all)
}

fn moment(minute: u32) -> Value {
    json!({"at": format!("2026-08-10T07:{minute:02}:00+02:00"), "zone": "Europe/Berlin"})
}

fn mark(minute: u32, more: Value) -> Value {
    let mut mark = moment(minute);
    mark.as_object_mut().unwrap().extend(more.as_object().unwrap().clone());
    mark
}

fn felt(fields: Value) -> Vec<(u32, bool)> {
    let (session, fields) = session(fields);
    let of = felt_in(&session, &fields, &|_| None, &rules());
    of.iter()
        .filter(|f| f.side == Side::Left && f.phase == Phase::Expression)
        .map(|f| (f.strength.level.unwrap().get(), f.comfortable))
        .collect()
}

#[test]
fn discomfort_begins_at_two_and_nothing_said_is_not_comfortable() {
    assert_eq!(felt(json!({"level_expression": 5, "pain_left_expression": 1})), [(5, true)]);
    assert_eq!(felt(json!({"level_expression": 5, "pain_left_expression": 2})), [(5, false)]);
    assert_eq!(felt(json!({"level_expression": 5})), []);
    assert_eq!(felt(json!({"pain_left_expression": 0})), []);
}

#[test]
fn a_setting_that_was_only_carried_over_never_counts() {
    let marks = |carried: bool| {
        json!({
            "marks/0": mark(0, json!({"does": "phase", "phase": "expression"})),
            "marks/1": mark(1, json!({"does": "setting", "level": 7, "carried": carried})),
            "marks/2": mark(2, json!({"does": "comfortable"})),
            "pain_left_expression": 0,
        })
    };
    assert_eq!(felt(marks(true)), []);
    assert_eq!(felt(marks(false)), [(7, true)]);
    // Turned down from what was only carried over: from where is not known, and to where is.
    let down = json!({
        "marks/0": mark(0, json!({"does": "phase", "phase": "expression"})),
        "marks/1": mark(0, json!({"does": "setting", "level": 7, "carried": true})),
        "marks/2": mark(2, json!({"does": "setting", "level": 6, "for_discomfort": true, "carried": false})),
        "pain_left_expression": 0,
    });
    assert_eq!(felt(down), [(6, true)]);
}

#[test]
fn turned_down_for_discomfort_says_where_it_hurt_and_where_it_did_not() {
    let fields = json!({
        "marks/0": mark(0, json!({"does": "phase", "phase": "expression"})),
        "marks/1": mark(1, json!({"does": "setting", "level": 8, "carried": false})),
        "marks/2": mark(4, json!({"does": "setting", "level": 6, "for_discomfort": true, "carried": false})),
        "pain_left_expression": 0,
    });
    assert_eq!(felt(fields), [(6, true), (8, false)]);
}

/// One side, then the other: what hurt on the left says nothing of the right, which begins at what
/// was set then.
#[test]
fn where_a_session_changes_its_side_each_side_feels_its_own() {
    let fields = json!({
        "sides": "both",
        "marks/0": mark(0, json!({"does": "phase", "phase": "expression"})),
        "marks/1": mark(1, json!({"does": "setting", "level": 8, "carried": false})),
        "marks/2": mark(2, json!({"does": "pain", "score": 4})),
        "marks/3": mark(3, json!({"does": "setting", "level": 5, "carried": false})),
        "marks/4": mark(8, json!({"does": "other_side", "side": "right"})),
        "marks/5": mark(9, json!({"does": "comfortable"})),
    });
    let (session, fields) = session(fields);
    let felt = felt_in(&session, &fields, &|_| None, &rules());
    let of = |side: Side| {
        let own = felt.iter().filter(|f| f.side == side);
        own.map(|f| (f.strength.level.unwrap().get(), f.comfortable)).collect::<Vec<_>>()
    };
    assert_eq!(of(Side::Left), [(8, false)]);
    assert_eq!(of(Side::Right), [(5, true)]);
}

#[test]
fn a_side_that_took_no_part_says_nothing() {
    let fields =
        json!({"sides": "right", "level_expression": 5, "pain_left_expression": 0, "pain_right_expression": 4});
    let (session, fields) = session(fields);
    let sides: Vec<Side> = felt_in(&session, &fields, &|_| None, &rules()).iter().map(|f| f.side).collect();
    assert_eq!(sides, [Side::Right]);
}

/// Common practice, no source: a flange that is too big needs the pump's highest vacuum.
#[test]
fn the_flange_is_suspected_at_five_of_ten_at_the_top_and_not_at_four_nor_one_below() {
    let of = |at_top: usize, top: u32| {
        let levels: Vec<Level> = (0..10).map(|n| Level::new(if n < at_top { top } else { 6 })).collect();
        flange_first(&levels, Some(Level::new(12)), Some(InUse::Larger), &[], &rules())
    };
    let found = of(5, 12).unwrap();
    assert_eq!((found.at_top, found.of, found.too_wide), (Count::new(5), Count::new(10), true));
    assert_eq!(of(4, 12), None);
    assert_eq!(of(10, 11), None);
    let levels = vec![Level::new(12); 10];
    let with = |in_use, signs: &[Sign]| flange_first(&levels, Some(Level::new(12)), in_use, signs, &rules());
    assert_eq!(with(Some(InUse::Within), &[]), None);
    assert_eq!(with(None, &[Sign::Rubbing]), None);
    assert!(with(None, &[Sign::AreolaDrawnIn]).is_some());
    assert_eq!(flange_first(&levels, None, Some(InUse::Larger), &[], &rules()), None);
    // Only the latest ten: what is older says nothing.
    let mut older = vec![Level::new(6); 6];
    older.extend(vec![Level::new(12); 30]);
    assert_eq!(flange_first(&older, Some(Level::new(12)), Some(InUse::Larger), &[], &rules()), None);
}

/// Ramsay et al., Pediatrics 2004;113:361-367: most ejections were not sensed. Not felt is not none.
#[test]
fn a_letdown_that_was_not_felt_is_not_none() {
    let (one, fields) = session(json!({"letdown_felt": "not_felt", "letdowns": 0}));
    let heard = heard_in(&one, &fields).unwrap();
    assert_eq!((heard.first, heard.number), (None, None));
    let (two, fields) = session(json!({
        "marks/0": mark(0, json!({"does": "phase", "phase": "letdown"})),
        "marks/1": mark(0, json!({"does": "setting", "level": 3, "carried": true})),
        "marks/2": mark(1, json!({"does": "setting", "level": 4, "carried": false})),
        "marks/3": mark(2, json!({"does": "letdown"})),
        "marks/4": mark(9, json!({"does": "letdown"})),
        "marks/5": mark(3, json!({"does": "phase", "phase": "expression"})),
    }));
    let second = heard_in(&two, &fields).unwrap();
    assert_eq!((second.first, second.number), (Some(Span::minutes(2)), Some(Count::new(2))));
    assert_eq!((second.how.level, second.stimulated), (Some(Level::new(4)), Some(Span::minutes(3))));
    let found = letdowns(
        &[heard, second.clone(), second.clone(), second],
        Instant::from_unix_milliseconds(two.started.unwrap().instant().unix_milliseconds() + 1000),
    )
    .unwrap();
    assert_eq!((found.marked, found.not_marked), (Count::new(3), Count::new(1)));
    assert_eq!(found.first.unwrap().median, Span::minutes(2));
    assert!(found.by.iter().any(|(group, _)| *group == Group::Level(Level::new(4))));
    assert!(!found.by.iter().any(|(group, _)| *group == Group::Level(Level::new(3))), "carried over");
}

/// Daly et al., Exp Physiol 1996;81:861-875: an interval of nothing has no rate, and 60 mL in three
/// hours are 20 mL an hour. Comfort's amounts are set against gaps that end so.
#[test]
fn an_interval_of_nothing_has_no_rate() {
    let rate = |millilitres: f64, hours: i64| {
        plain_rate(Volume::from_canonical(millilitres), Span::hours(hours)).map(|rate| rate.canonical() / 24.0)
    };
    assert_eq!((rate(60.0, 3), rate(60.0, 0), rate(60.0, -1)), (Some(20.0), None, None));
}

/// Prime et al., Breastfeed Med 2011;6:183-190, measured the time to 80 % of the volume. The course
/// is a made one: t80 is the first time at which four fifths had come.
#[test]
fn four_fifths_of_a_course() {
    let course: Vec<(Span, Volume)> = [(0, 0.0), (5, 60.0), (10, 80.0), (15, 100.0)]
        .map(|(minutes, volume)| (Span::minutes(minutes), Volume::from_canonical(volume)))
        .to_vec();
    let most = Share::of(MOST);
    assert_eq!(time_to(most, &course), Some(Span::minutes(10)));
    assert_eq!(time_to(Share::of(0.3), &course), Some(Span::milliseconds(150_000)));
    assert_eq!(time_to(most, &course[1..]), Some(Span::minutes(10)));
    let turned: Vec<(Span, Volume)> = course.iter().rev().copied().collect();
    assert_eq!(time_to(most, &turned), None);
    assert_eq!(time_to(most, &[(Span::minutes(5), Volume::from_canonical(0.0))]), None);
    // Read off close about that moment it is told, and further apart, or with less than before, not.
    let at = |minutes: i64, volume: f64| (Span::minutes(minutes), Volume::from_canonical(volume));
    let all = at(15, 100.0);
    assert_eq!(time_to_most(&[at(9, 75.0), at(13, 85.0)], all), Some(Span::minutes(11)));
    assert_eq!(time_to_most(&[at(9, 75.0), at(14, 85.0)], all), None);
    assert_eq!(time_to_most(&[], all), None);
    assert_eq!(time_to_most(&[at(9, 85.0), at(11, 75.0)], all), None);
    assert_eq!(time_to_most(&[at(12, 75.0), at(16, 120.0)], all), Some(Span::milliseconds(756_000)));
    let per_minute = |a: usize, b: usize| flow(course[a], course[b]).map(|flow| flow.canonical() / 1440.0);
    assert_eq!((per_minute(0, 1), per_minute(1, 2), per_minute(1, 1)), (Some(12.0), Some(4.0), None));
}
