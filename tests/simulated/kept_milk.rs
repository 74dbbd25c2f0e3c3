//! Laws of kept milk: nothing appears or vanishes, in whatever order phones bring what happened, and
//! what is chosen for an amount is the best there is.

use drawwell_core::answer::keeping::{in_force, keep, use_first, Kept};
use drawwell_core::quantity::{Quantity, Volume};
use drawwell_core::record::{Container, Happened, KeptIn, MilkEvent, Taken};
use drawwell_core::time::{Instant, Moment, Span, Zone};
use proptest::prelude::*;

const NOW: Instant = Instant::from_unix_milliseconds(1_790_000_000_000);

fn moment(hours_ago: i64) -> Moment {
    Moment::new(NOW.minus(Span::hours(hours_ago)), Zone::named("Europe/Berlin").unwrap())
}

fn container(id: &str, amount: Option<f64>, hours_ago: i64) -> Container {
    Container {
        id: id.into(),
        label: None,
        expressed: moment(hours_ago),
        amount: amount.map(Volume::from_canonical),
        kept_in: Some(KeptIn::Fridge),
        room: None,
    }
}

fn happened() -> impl Strategy<Value = Happened> {
    prop_oneof![
        prop::sample::select(KeptIn::ALL.to_vec()).prop_map(Happened::Moved),
        Just(Happened::Thawing),
        Just(Happened::Thawed),
        Just(Happened::Warmed),
        Just(Happened::Begun),
        Just(Happened::FeedEnded),
        prop::sample::select(Taken::ALL.to_vec()).prop_map(Happened::Taken),
    ]
}

fn events() -> impl Strategy<Value = Vec<MilkEvent>> {
    prop::collection::vec((0_i64..300, happened(), prop::option::of(1_u32..900)), 0..14).prop_map(|all| {
        let event = |(n, (hours_ago, what, taken)): (usize, (i64, Happened, Option<u32>))| MilkEvent {
            id: format!("e{n}"),
            container: "c".into(),
            at: moment(hours_ago),
            what,
            taken: taken.map(|tenths| Volume::from_canonical(f64::from(tenths) / 10.0)),
        };
        all.into_iter().enumerate().map(event).collect()
    })
}

fn sum(found: &Kept) -> f64 {
    found.taken.iter().filter_map(|taken| taken.amount).map(|amount| amount.canonical()).sum()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    /// What was filled in and what was taken out too much is what left and what is left.
    #[test]
    fn nothing_appears_and_nothing_vanishes(amount in 1_u32..3000, events in events()) {
        let amount = f64::from(amount) / 10.0;
        let found = keep(&container("c", Some(amount), 320), &events, &in_force(None, None, None), NOW);
        let (left, over) = (found.left.unwrap().canonical(), found.overdrawn.canonical());
        prop_assert!((amount + over - sum(&found) - left).abs() < 1e-9, "{found:?}");
        prop_assert!(left >= 0.0 && over >= 0.0 && (left == 0.0 || over == 0.0));
        prop_assert_eq!(found.is_gone, left == 0.0);
    }

    #[test]
    fn two_phones_say_the_same_whatever_came_first(
        (events, shuffled) in events().prop_flat_map(|all| (Just(all.clone()), Just(all).prop_shuffle())),
    ) {
        let rules = in_force(None, None, None);
        let milk = container("c", Some(120.0), 320);
        prop_assert_eq!(keep(&milk, &events, &rules, NOW), keep(&milk, &shuffled, &rules, NOW));
    }

    /// Of an amount that nobody knows nothing is made up.
    #[test]
    fn what_is_not_known_stays_unknown_until_all_of_it_is_gone(events in events()) {
        let found = keep(&container("c", None, 320), &events, &in_force(None, None, None), NOW);
        prop_assert_eq!(found.left.is_some(), found.is_gone);
        prop_assert_eq!(found.overdrawn.canonical(), 0.0);
    }

    /// Every set by hand: the first to lapse is in it, it holds enough, the least is left over, and of
    /// such it takes what lapses soonest.
    #[test]
    fn what_is_chosen_is_the_best_of_all_sets(
        amounts in prop::collection::vec(1_u32..25, 1..9),
        wished in 1_u32..120,
    ) {
        let all: Vec<Kept> = amounts.iter().enumerate().map(|(n, amount)| {
            let milk = container(&n.to_string(), Some(f64::from(*amount) * 5.0), 90 - n as i64);
            keep(&milk, &[], &in_force(None, None, None), NOW)
        }).collect();
        let kept: Vec<&Kept> = all.iter().collect();
        let wished = wished * 5;
        let found = use_first(&kept, Volume::from_canonical(f64::from(wished)), NOW).unwrap();
        let held = |places: &[usize]| places.iter().map(|place| amounts[*place] * 5).sum::<u32>();
        let everything: Vec<usize> = (0..amounts.len()).collect();
        let best = if held(&everything) <= wished { everything } else {
            (1_u32..1 << amounts.len())
                .map(|set| (0..amounts.len()).filter(|place| set >> place & 1 == 1).collect::<Vec<_>>())
                .filter(|places| places[0] == 0 && held(places) >= wished)
                .min_by_key(|places| (held(places), places.clone()))
                .unwrap()
        };
        let ids: Vec<String> = best.iter().map(ToString::to_string).collect();
        prop_assert_eq!(found.ids, ids);
        prop_assert_eq!(found.together.canonical(), f64::from(held(&best)));
    }
}
