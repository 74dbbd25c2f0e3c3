//! Laws of what Comfort rests on, against counting by hand and over what chance brings.

use drawwell_core::answer::trial::{order, read_order, write_order, Way};
use drawwell_core::quantity::Count;
use drawwell_core::statistics::{
    non_overlap, paired_range, randomisation, Answered, Assignments, RandomBlock, RisingChance,
};
use proptest::prelude::*;

/// Values on a grid, so that there are ties.
fn values(most: usize) -> impl Strategy<Value = Vec<f64>> {
    prop::collection::vec((-20_i32..20).prop_map(|n| f64::from(n) / 4.0), 1..most)
}

fn answered(most: usize) -> impl Strategy<Value = Vec<Answered>> {
    let one = (0_u32..14, any::<bool>()).prop_map(|(n, yes)| Answered { at: f64::from(n) * 15.0, yes, weight: 1.0 });
    prop::collection::vec(one, 1..most)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 96, failure_persistence: None, ..ProptestConfig::default() })]

    /// Every draw by hand: turn each pair or not.
    #[test]
    fn the_randomisation_test_is_every_draw(of_a in values(9), of_b in values(9)) {
        let pairs: Vec<(f64, f64)> = of_a.iter().copied().zip(of_b).collect();
        let blocks: Vec<RandomBlock> =
            pairs.iter().map(|(a, b)| RandomBlock { first: vec![*a], second: vec![*b] }).collect();
        let found = randomisation(&blocks, 0).unwrap();
        let done: f64 = pairs.iter().map(|(a, _)| a).sum();
        let sums: Vec<f64> = (0..1_u32 << pairs.len())
            .map(|turned| pairs.iter().enumerate().map(|(i, (a, b))| if turned >> i & 1 == 1 { b } else { a }).sum())
            .collect();
        let tail = |far: &dyn Fn(f64) -> bool| sums.iter().filter(|sum| far(**sum)).count() as f64 / sums.len() as f64;
        let by_hand = (2.0 * tail(&|sum| sum <= done + 1e-9).min(tail(&|sum| sum >= done - 1e-9))).min(1.0);
        prop_assert!((found.p - by_hand).abs() < 1e-12, "{} {by_hand}", found.p);
        prop_assert_eq!(found.assignments, Assignments::All);
    }

    /// Where nothing differed, every draw is as far out as the one that was done: also at zero.
    #[test]
    fn what_never_differs_is_no_difference(value in -8_i32..8, pairs in 1_usize..60) {
        let value = f64::from(value);
        let blocks = vec![RandomBlock { first: vec![value], second: vec![value] }; pairs];
        prop_assert_eq!(randomisation(&blocks, 3).unwrap().p, 1.0);
        let zeros = vec![RandomBlock { first: vec![0.0], second: vec![0.0] }; pairs];
        prop_assert_eq!(randomisation(&zeros, 3).unwrap().p, 1.0);
    }

    /// A shift of all values moves the range by as much; turned round it is turned round.
    #[test]
    fn the_range_moves_with_the_values(of in values(16), by in -8_i32..8) {
        let by = f64::from(by) / 2.0;
        let moved: Vec<f64> = of.iter().map(|value| value + by).collect();
        let turned: Vec<f64> = of.iter().map(|value| -value).collect();
        let (here, there, back) = (paired_range(&of, 0.9), paired_range(&moved, 0.9), paired_range(&turned, 0.9));
        prop_assert_eq!(here.is_some(), of.len() >= 5);
        let (Some(here), Some(there), Some(back)) = (here, there, back) else { return Ok(()) };
        prop_assert!((here.low + by - there.low).abs() < 1e-9 && (here.high + by - there.high).abs() < 1e-9);
        prop_assert!((here.low + back.high).abs() < 1e-9 && (here.high + back.low).abs() < 1e-9);
        prop_assert!(here.low <= here.found.shift && here.found.shift <= here.high && here.confidence >= 0.9);
        let surer = paired_range(&of, 0.99);
        prop_assert!(surer.is_none_or(|surer| surer.low <= here.low && here.high <= surer.high));
    }

    /// Counted pair by pair; turned round it is the rest.
    #[test]
    fn overlap_is_counted_pair_by_pair(first in values(20), second in values(20)) {
        let found = non_overlap(&first, &second).unwrap();
        let mut above = 0.0;
        for a in &first {
            for b in &second {
                above += if b > a { 1.0 } else if a == b { 0.5 } else { 0.0 };
            }
        }
        prop_assert_eq!(found.above, above);
        let back = non_overlap(&second, &first).unwrap();
        prop_assert!((found.nap + back.nap - 1.0).abs() < 1e-12 && (found.tau + back.tau).abs() < 1e-12);
    }

    /// It never falls, stays a chance, and meets what is asked where it was answered.
    #[test]
    fn a_rising_chance_never_falls(of in answered(40)) {
        let fit = RisingChance::fit(&of, 10.0, 0.2).unwrap();
        prop_assert!(fit.curve.windows(2).all(|pair| pair[0].0 <= pair[1].0 && pair[0].1 <= pair[1].1 + 1e-12));
        prop_assert!(fit.curve.iter().all(|(_, chance)| (0.0..=1.0).contains(chance)));
        if let Some(met) = fit.meets(0.2) {
            prop_assert!((fit.chance_at(met).unwrap() - 0.2).abs() < 0.2);
            prop_assert!(fit.curve.first().unwrap().0 <= met && met <= fit.curve.last().unwrap().0);
        }
        let (low, high) = (fit.met_by(0.05).unwrap(), fit.met_by(0.95).unwrap());
        prop_assert!(low <= high);
    }

    /// Both ways in each pair, whatever the seed; and kept as it was drawn.
    #[test]
    fn a_drawn_order_has_both_ways_in_each_pair(seed in any::<u32>(), planned in 1_u32..200) {
        let drawn = order(seed, Count::new(planned));
        prop_assert_eq!(drawn.len() as u32, planned.div_ceil(2) * 2);
        prop_assert!(drawn.chunks(2).all(|pair| pair[0] != pair[1]));
        prop_assert_eq!(read_order(&write_order(&drawn)), Some(drawn));
    }
}

/// More draws than can be counted: what stands for them lies near.
#[test]
fn where_draws_are_too_many_a_sample_stands_for_them() {
    let pair = |n: u32| RandomBlock {
        first: vec![f64::from(n % 7) + 0.31 * f64::from(n % 3)],
        second: vec![f64::from(n % 5) * 1.7],
    };
    let few: Vec<RandomBlock> = (0..38).map(pair).collect();
    let many: Vec<RandomBlock> = (0..39).map(pair).collect();
    assert_eq!(randomisation(&few, 1).unwrap().assignments, Assignments::All);
    let found = randomisation(&many, 1).unwrap();
    assert_eq!(found.assignments, Assignments::Drawn(20_000));
    assert!((found.p - randomisation(&many, 2).unwrap().p).abs() < 0.02, "{found:?}");
    assert!(found.p > 0.0);
}

/// Each way comes first about as often.
#[test]
fn coins_are_fair() {
    let first: usize = (0..400).filter(|seed| order(*seed, Count::new(2))[0] == Way::A).count();
    assert!((160..240).contains(&first), "{first}");
}
