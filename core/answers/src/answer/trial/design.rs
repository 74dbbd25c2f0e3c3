//! How a trial is set up, and its order.

use crate::answer::trial::Outcome;
use crate::quantity::Count;
use crate::statistics::Draws;

/// One of two ways.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// The first.
    A,
    /// The second.
    B,
}

impl Way {
    /// The other one.
    pub const fn other(self) -> Self {
        match self {
            Self::A => Self::B,
            Self::B => Self::A,
        }
    }

    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::A => "a",
            Self::B => "b",
        }
    }

    /// The way of this name.
    pub fn named(name: &str) -> Option<Self> {
        [Self::A, Self::B].into_iter().find(|way| way.name() == name)
    }
}

/// How two ways are compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Design {
    /// A side each in one session, swapped by the draw. Letdown is common to both sides (Prime et
    /// al., Int Breastfeed J 2009;4:10), so that what a session makes more or less falls out.
    Sides,
    /// A session each, two by two in drawn order.
    Sessions,
}

/// What was fixed before the first session.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct SetUp {
    /// How they are compared.
    pub design: Design,
    /// What decides.
    pub outcome: Outcome,
    /// Sessions planned; an odd one more is no pair.
    pub planned: Count,
    /// Whether the ways differ in the pump: else a pair on two pumps says nothing.
    pub about_the_pump: bool,
    /// What it was drawn from.
    pub seed: u32,
}

/// The order that a seed draws: two by two, and a coin for which of the two comes first. A session
/// each has its way there; of a side each it is that of the left.
pub fn order(seed: u32, planned: Count) -> Vec<Way> {
    let mut draws = Draws::of(u64::from(seed));
    let pairs = planned.get().div_ceil(2);
    (0..pairs)
        .flat_map(|_| {
            let first = if draws.coin() { Way::A } else { Way::B };
            [first, first.other()]
        })
        .collect()
}

/// The order as it is kept: a letter a session.
pub fn write_order(order: &[Way]) -> String {
    order.iter().map(|way| way.name()).collect()
}

/// The order as it was kept. None where a letter is neither.
pub fn read_order(kept: &str) -> Option<Vec<Way>> {
    kept.chars().map(|letter| Way::named(letter.encode_utf8(&mut [0; 4]))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_pair_has_both_ways_and_seeds_differ() {
        for seed in [0, 1, 2026, u32::MAX] {
            let drawn = order(seed, Count::new(40));
            assert_eq!(drawn.len(), 40);
            assert!(drawn.chunks(2).all(|pair| pair[0] == pair[1].other()), "{seed}");
            assert!(drawn.chunks(2).any(|pair| pair[0] == Way::A) && drawn.chunks(2).any(|pair| pair[0] == Way::B));
            assert_eq!(read_order(&write_order(&drawn)), Some(drawn));
        }
        assert_ne!(order(1, Count::new(40)), order(2, Count::new(40)));
        assert_eq!(order(7, Count::new(5)).len(), 6);
        assert_eq!(read_order("abx"), None);
    }

    /// What a seed draws is kept in records: it may not change. Worked out by an independent
    /// splitmix64 in Python.
    #[test]
    fn a_seed_draws_the_same_for_good() {
        assert_eq!(write_order(&order(0, Count::new(16))), EXPECTED_OF_NOTHING);
        assert_eq!(write_order(&order(1_234_567, Count::new(16))), EXPECTED_OF_A_SEED);
    }

    const EXPECTED_OF_NOTHING: &str = "abbabaabbababaab";
    const EXPECTED_OF_A_SEED: &str = "babaabbaabbaabba";
}
