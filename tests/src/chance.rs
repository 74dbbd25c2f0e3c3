//! Chance that falls the same way every time.

/// splitmix64: ten lines, the same figures on every machine.
pub struct Chance(u64);

impl Chance {
    /// A stream of its own for one purpose on one day, so that a change to
    /// one day leaves the others as they were.
    pub fn on(day: i64, purpose: &str) -> Self {
        let mut seed = 0x4472_6177_7765_6c6c_u64 ^ day.unsigned_abs().wrapping_mul(0x9e37_79b9_7f4a_7c15);
        for byte in purpose.bytes() {
            seed = Self(seed ^ u64::from(byte)).next();
        }
        Self(seed)
    }

    /// A stream of this seed.
    pub fn seeded(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ 0x4472_6177_7765_6c6c)
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// From 0 up to, but never, 1.
    pub fn unit(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Anything between the two.
    pub fn between(&mut self, least: f64, most: f64) -> f64 {
        least + (most - least) * self.unit()
    }

    /// Near the middle mostly, and never farther from it than three spreads.
    pub fn around(&mut self, middle: f64, spread: f64) -> f64 {
        let sum: f64 = (0..3).map(|_| self.between(-1.0, 1.0)).sum();
        middle + sum * spread
    }

    /// A whole number between the two, both included.
    pub fn whole(&mut self, least: i64, most: i64) -> i64 {
        least + (self.unit() * (most - least + 1) as f64) as i64
    }

    /// From the normal distribution with mean 0 and spread 1 (Box and Muller 1958).
    pub fn normal(&mut self) -> f64 {
        let (radius, turn) = (1.0 - self.unit(), self.unit());
        (-2.0 * radius.ln()).sqrt() * (std::f64::consts::TAU * turn).cos()
    }

    /// Whether something happens that happens so often.
    pub fn happens(&mut self, share: f64) -> bool {
        self.unit() < share
    }
}

#[cfg(test)]
mod tests {
    use super::Chance;

    /// The first figures for seed 1234567 as Vigna's splitmix64.c gives them.
    #[test]
    fn it_is_splitmix64() {
        let mut chance = Chance(1_234_567);
        let figures: Vec<u64> = (0..3).map(|_| chance.next()).collect();
        assert_eq!(figures, [6_457_827_717_110_365_317, 3_203_168_211_198_807_973, 9_817_491_932_198_370_423]);
    }
}
