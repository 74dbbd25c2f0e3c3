//! Draws that follow from a seed, the same on every machine.

/// splitmix64 (Steele, Lea & Flood, OOPSLA 2014; figures as Vigna's splitmix64.c gives them). Any
/// seed is as good as another, nothing too.
#[derive(Debug, Clone)]
pub struct Draws(u64);

impl Draws {
    /// The draws of a seed.
    pub const fn of(seed: u64) -> Self {
        Self(seed)
    }

    /// The next 64 bits.
    pub const fn next_bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// One of two, each as likely.
    pub const fn coin(&mut self) -> bool {
        self.next_bits() >> 63 == 1
    }

    /// A whole number below another; nothing below nothing.
    pub fn below(&mut self, bound: usize) -> usize {
        // Multiply and shift (Lemire 2019): the bias is below one in 2^40 for so few.
        ((u128::from(self.next_bits()) * bound as u128) >> 64) as usize
    }
}

#[cfg(test)]
mod tests {
    use super::Draws;

    /// The first figures for seed 1234567 as Vigna's splitmix64.c gives them.
    #[test]
    fn it_is_splitmix64() {
        let mut draws = Draws::of(1_234_567);
        let figures: Vec<u64> = (0..3).map(|_| draws.next_bits()).collect();
        assert_eq!(figures, [6_457_827_717_110_365_317, 3_203_168_211_198_807_973, 9_817_491_932_198_370_423]);
    }

    #[test]
    fn a_seed_of_nothing_draws_both() {
        let mut draws = Draws::of(0);
        let heads = (0..1000).filter(|_| draws.coin()).count();
        assert!((400..600).contains(&heads), "{heads}");
        assert_eq!(draws.below(0), 0);
        assert!((0..1000).map(|_| draws.below(7)).all(|drawn| drawn < 7));
    }
}
