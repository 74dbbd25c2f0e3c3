//! Comfort and trials given what nobody hoped for: each row answers or says that it can't.

use drawwell_core::answer::comfort::{comfort, Ceiling, Comfort, Felt, Strength};
use drawwell_core::answer::milk_by_vacuum::{milk_by_vacuum, MilkAt, Says};
use drawwell_core::answer::supply::Side;
use drawwell_core::answer::trial::{
    answer, before_after, closes, order, Design, Done, Milk, Outcome, Reached, SetUp, Verdict, Way,
};
use drawwell_core::answer::Estimate;
use drawwell_core::guidance::{ComfortRules, Rules};
use drawwell_core::quantity::{Count, Level, Quantity, Score, Vacuum, Volume};
use drawwell_core::record::mark::Phase;
use drawwell_core::time::{Instant, Moment, Span, Zone};

const NOW: Instant = Instant::from_unix_milliseconds(1_790_000_000_000);

fn rules() -> ComfortRules {
    ComfortRules::read(&Rules::default())
}

fn vacuum(mmhg: f64) -> Vacuum {
    Vacuum::from_canonical(mmhg)
}

/// Thirty sessions, as each is said to be.
fn felt(of: impl Fn(u32) -> (Option<f64>, Option<u32>, bool, &'static str)) -> Vec<Felt> {
    (0..30)
        .map(|n| {
            let (mmhg, level, comfortable, pump) = of(n);
            let shown = mmhg.map(|v| Estimate { value: vacuum(v), low: vacuum(v), high: vacuum(v) });
            Felt {
                session: format!("s{n}"),
                at: NOW.minus(Span::hours(3 * i64::from(30 - n))),
                pump: Some(pump.to_owned()),
                side: Side::Left,
                phase: Phase::Expression,
                strength: Strength { level: level.map(Level::new), vacuum: shown },
                comfortable,
            }
        })
        .collect()
}

fn told(felt: &[Felt], side: Side) -> Option<Comfort> {
    comfort(felt, side, Phase::Expression, NOW, &rules())
}

fn in_vacuum(felt: &[Felt]) -> Ceiling<Vacuum> {
    told(felt, Side::Left).unwrap().in_vacuum.unwrap().ceiling
}

fn spread(n: u32) -> f64 {
    120.0 + f64::from(n % 7) * 15.0
}

#[test]
fn all_pain_zero_is_no_ceiling() {
    assert_eq!(in_vacuum(&felt(|n| (Some(spread(n)), None, true, "p"))), Ceiling::RareUpTo(vacuum(210.0)));
}

#[test]
fn pain_everywhere_lies_above_it() {
    assert_eq!(in_vacuum(&felt(|n| (Some(spread(n)), None, false, "p"))), Ceiling::NotRareFrom(vacuum(120.0)));
}

#[test]
fn one_level_only_can_not_be_told() {
    assert_eq!(in_vacuum(&felt(|n| (Some(180.0), None, n % 3 > 0, "p"))), Ceiling::NeverVaried);
    let by_level = told(&felt(|n| (None, Some(5), n % 3 > 0, "p")), Side::Left).unwrap();
    assert_eq!(by_level.in_levels.unwrap().ceiling, Ceiling::NeverVaried);
}

#[test]
fn levels_without_a_curve_are_told_in_levels_of_the_pump_of_now() {
    let found = told(&felt(|n| (None, Some(2 + n % 6), n % 6 < 3, "p")), Side::Left).unwrap();
    assert!(found.in_vacuum.is_none());
    let Ceiling::At(at) = found.in_levels.unwrap().ceiling else { panic!("not told") };
    assert_eq!(at.value, Level::new(4));
    // Another pump came in the middle: its levels are not those of the first.
    let changed = felt(|n| match n < 15 {
        true => (None, Some(2 + n % 6), n % 6 < 3, "old"),
        false => (None, Some(1 + n % 4), n % 4 < 2, "new"),
    });
    let told = told(&changed, Side::Left).unwrap().in_levels.unwrap();
    assert_eq!(told.dots.len(), 15);
    assert!(told.dots.iter().all(|dot| dot.setting <= Level::new(4)), "{:?}", told.dots);
}

#[test]
fn a_side_that_is_never_logged_is_not_there() {
    assert_eq!(told(&felt(|n| (Some(spread(n)), None, true, "p")), Side::Right), None);
    assert_eq!(told(&[], Side::Left), None);
}

#[test]
fn figures_that_are_none_do_not_come_out() {
    let wild = felt(|n| (Some(if n == 3 { f64::NAN } else { spread(n) }), None, n % 2 == 0, "p"));
    let found = told(&wild, Side::Left).unwrap().in_vacuum.unwrap();
    assert!(!matches!(found.ceiling, Ceiling::At(at) if !at.value.canonical().is_finite()), "{found:?}");
}

fn milk(setting: impl Fn(u32) -> f64, amount: impl Fn(u32) -> f64) -> Vec<MilkAt<Vacuum>> {
    let at = |n: u32| Moment::new(NOW.minus(Span::hours(3 * i64::from(40 - n))), Zone::UTC);
    (0..40)
        .map(|n| MilkAt {
            session: format!("s{n}"),
            at: at(n),
            side: None,
            setting: vacuum(setting(n)),
            milk: Volume::from_canonical(amount(n)),
            expected: None,
            gap: Span::hours(3),
            lasted: None,
            drawn: false,
        })
        .collect()
}

#[test]
fn milk_at_one_setting_of_nothing_and_above_the_ceiling() {
    let says = |milk: &[MilkAt<Vacuum>], ceiling| milk_by_vacuum(milk, ceiling, &rules()).map(|found| found.says);
    assert_eq!(says(&milk(|_| 180.0, |n| 60.0 + f64::from(n % 5)), None), Some(Says::NeverVaried));
    let nothing = says(&milk(spread, |_| 0.0), None).unwrap();
    assert!(!matches!(nothing, Says::Rises(_) | Says::LessAtHigher(_)), "{nothing:?}");
    let above = milk_by_vacuum(&milk(spread, |n| 60.0 + f64::from(n % 5)), Some(vacuum(100.0)), &rules()).unwrap();
    assert_eq!((above.sessions, above.above_ceiling), (Count::new(0), Count::new(40)));
    assert_eq!(says(&[], None), None);
}

fn set_up(planned: u32, seed: u32) -> SetUp {
    SetUp {
        design: Design::Sessions,
        outcome: Outcome::Amount,
        planned: Count::new(planned),
        about_the_pump: false,
        seed,
    }
}

/// A brings twenty millilitres more than B, to the millilitre.
fn done(set_up: &SetUp, change: impl Fn(usize, &mut Done)) -> Vec<Done> {
    order(set_up.seed, set_up.planned)
        .into_iter()
        .enumerate()
        .map(|(place, drawn)| {
            let mut done = Done {
                session: format!("s{place}"),
                at: NOW.plus(Span::hours(3 * place as i64)),
                place,
                drawn,
                done: Some(drawn),
                pump: Some("p".to_owned()),
                reached: Reached::default(),
            };
            change(place, &mut done);
            let base = 60.0 + f64::from((place as u32 * 7) % 11) + if done.done == Some(Way::A) { 20.0 } else { 0.0 };
            done.reached = Reached::milk_together(Milk { amount: Volume::from_canonical(base), expected: None });
            done
        })
        .collect()
}

#[test]
fn a_seed_of_zero_is_a_seed() {
    let set_up = set_up(40, 0);
    let found = answer(&done(&set_up, |_, _| {}), &set_up, &rules());
    assert_eq!((found.verdict, found.pairs), (Verdict::Better(Way::A), Count::new(20)));
}

#[test]
fn an_order_that_was_not_followed_is_analysed_as_done_and_said() {
    let set_up = set_up(40, 5);
    // Every other pair the other way round: both ways are there, and turned.
    let turned = done(&set_up, |place, done| {
        if place % 4 < 2 {
            done.done = Some(done.drawn.other());
        }
    });
    let found = answer(&turned, &set_up, &rules());
    assert_eq!((found.verdict, found.not_as_drawn), (Verdict::Better(Way::A), Count::new(20)));
    // All the same way: nothing can be compared.
    let one_way = done(&set_up, |_, done| done.done = Some(Way::A));
    let found = answer(&one_way, &set_up, &rules());
    assert_eq!((found.verdict, found.pairs, found.apart), (Verdict::CannotTell, Count::new(0), None));
}

#[test]
fn sessions_that_nobody_knows_of_and_a_pump_that_changed_leave_their_pairs_out() {
    let set_up = set_up(40, 5);
    let unknown = done(&set_up, |place, done| done.done = done.done.filter(|_| place % 8 != 0));
    let found = answer(&unknown, &set_up, &rules());
    assert_eq!((found.pairs, found.not_known), (Count::new(15), Count::new(5)));
    // Changed in the middle of a pair.
    let changed = done(&set_up, |place, done| done.pump = Some(if place < 21 { "p" } else { "q" }.to_owned()));
    assert_eq!(answer(&changed, &set_up, &rules()).pairs, Count::new(19));
    let about = SetUp { about_the_pump: true, ..set_up };
    assert_eq!(answer(&changed, &about, &rules()).pairs, Count::new(20));
}

#[test]
fn one_place_given_out_on_two_phones_counts_once() {
    let set_up = set_up(20, 9);
    let mut twice = done(&set_up, |_, _| {});
    let again: Vec<Done> = twice
        .iter()
        .map(|d| Done { session: format!("{}b", d.session), at: d.at.plus(Span::hours(1)), ..d.clone() })
        .collect();
    let once = answer(&twice, &set_up, &rules());
    twice.extend(again);
    let both = answer(&twice, &set_up, &rules());
    assert_eq!((both.pairs, both.verdict), (once.pairs, once.verdict));
    assert_eq!(closes(&[("a".to_owned(), NOW), ("b".to_owned(), NOW.plus(Span::hours(1)))]), ["b"]);
}

#[test]
fn a_trial_without_sessions_or_with_pain_alone_says_so() {
    let set_up = set_up(40, 3);
    let nothing = answer(&[], &set_up, &rules());
    assert_eq!((nothing.verdict, nothing.p, nothing.more), (Verdict::CannotTellYet, None, None));
    let of_pain = SetUp { outcome: Outcome::Pain, ..set_up };
    let mut without = done(&of_pain, |_, _| {});
    without.iter_mut().for_each(|done| done.reached = Reached::pain(Some(Score::new(0)), Some(Score::new(0))));
    assert_eq!(answer(&without, &of_pain, &rules()).verdict, Verdict::NoDifferenceThatMatters);
    assert_eq!(before_after(&[], &[], Outcome::Amount), None);
}
