//! A measured value and the law of what it may truly be.

use super::student::Student;

/// A value read several times from an instrument with errors of its own: its mean,
/// less or more by each of two rectangular errors and by a scaled Student's t.
///
/// That is the law which JCGM 101:2008 (6.4.2, 6.4.9) gives to a quantity known by n
/// readings (mean + s/√n times t on n - 1 degrees of freedom) from an instrument
/// whose error lies anywhere within ±a (a class), read to ±d/2 (a resolution). It is
/// worked out by integration and not taken for normal, so that a chance read off it
/// (JCGM 106:2012, 7) is as large as it says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Uncertain {
    middle: f64,
    half_widths: [f64; 2],
    standard_error: f64,
    student: Student,
}

/// Places and weights of Gauss and Legendre's rule of sixteen points, one half of them
/// (Abramowitz & Stegun, 1964, table 25.4).
const HALF_RULE: [(f64, f64); 8] = [
    (0.0950125098376374, 0.1894506104550685),
    (0.2816035507792589, 0.1826034150449236),
    (0.4580167776572274, 0.1691565193950026),
    (0.6178762444026438, 0.1495959888165768),
    (0.755404408355003, 0.1246289712555339),
    (0.8656312023878318, 0.0951585116824929),
    (0.9445750230732326, 0.0622535239386478),
    (0.9894009349916499, 0.0271524594117541),
];
/// A spread smaller than this share of the rest is no longer told apart from none.
const LEAST_SPREAD: f64 = 1e-7;
/// A quantile stands where the chance is met to this.
const NEAR_ENOUGH: f64 = 1e-10;
/// Steps until a quantile stands, at most.
const MOST_STEPS: usize = 60;

impl Uncertain {
    /// Of a mean, the two half widths, the standard error of the mean and its degrees
    /// of freedom, more than one. None where a number is not finite or below nothing.
    pub fn new(middle: f64, half_widths: [f64; 2], standard_error: f64, degrees_of_freedom: f64) -> Option<Self> {
        let [a, b] = half_widths;
        let sound = [middle, a, b, standard_error, degrees_of_freedom].iter().all(|number| number.is_finite());
        if !(sound && a >= 0.0 && b >= 0.0 && standard_error >= 0.0 && degrees_of_freedom > 1.0) {
            return None;
        }
        let student = Student::of(degrees_of_freedom)?;
        Some(Self { middle, half_widths: [a.max(b), a.min(b)], standard_error, student })
    }

    /// The mean.
    pub fn middle(&self) -> f64 {
        self.middle
    }

    /// The combined standard uncertainty: u² = a²/3 + b²/3 + s² (GUM, JCGM 100:2008,
    /// 4.3.7 and 5.1.2).
    pub fn standard_uncertainty(&self) -> f64 {
        let [a, b] = self.half_widths;
        (a * a / 3.0 + b * b / 3.0 + self.standard_error * self.standard_error).sqrt()
    }

    /// The chance that the true value lies below.
    pub fn chance_below(&self, value: f64) -> f64 {
        let [wide, narrow] = self.half_widths;
        let scale = self.standard_error.max(LEAST_SPREAD * (wide + narrow)).max(f64::MIN_POSITIVE);
        let student = &self.student;
        let apart = value - self.middle;
        let over_wide = |apart: f64| match wide > 0.0 {
            true => {
                scale * (student.below_summed((apart + wide) / scale) - student.below_summed((apart - wide) / scale))
                    / (2.0 * wide)
            }
            false => student.below(apart / scale),
        };
        let chance = match narrow > 0.0 {
            true => {
                let pair = |(at, weight): &(f64, f64)| {
                    weight * (over_wide(apart + at * narrow) + over_wide(apart - at * narrow))
                };
                HALF_RULE.iter().map(pair).sum::<f64>() / 2.0
            }
            false => over_wide(apart),
        };
        chance.clamp(0.0, 1.0)
    }

    /// The value below which the truth lies with this chance: regula falsi after
    /// Dowell and Jarratt (BIT 1971;11:168-174, the Illinois method).
    pub fn quantile(&self, chance: f64) -> Option<f64> {
        if !(chance > 0.0 && chance < 1.0) {
            return None;
        }
        let unit = self.standard_uncertainty().max(f64::MIN_POSITIVE);
        let off = |value: f64| self.chance_below(value) - chance;
        let mut reach = unit;
        let (mut low, mut high) = (self.middle - reach, self.middle + reach);
        let (mut off_low, mut off_high) = (off(low), off(high));
        while off_low > 0.0 || off_high < 0.0 {
            reach *= 2.0;
            if !reach.is_finite() {
                return None;
            }
            (low, high) = (self.middle - reach, self.middle + reach);
            (off_low, off_high) = (off(low), off(high));
        }
        for _ in 0..MOST_STEPS {
            if off_low == 0.0 || high - low <= unit * 1e-9 {
                return Some(low);
            }
            let next = (low * off_high - high * off_low) / (off_high - off_low);
            let next = if next > low && next < high { next } else { low + (high - low) / 2.0 };
            let off_next = off(next);
            if off_next.abs() < NEAR_ENOUGH {
                return Some(next);
            }
            if off_next < 0.0 {
                (low, off_low) = (next, off_next);
                off_high /= 2.0;
            } else {
                (high, off_high) = (next, off_next);
                off_low /= 2.0;
            }
        }
        Some(low + (high - low) / 2.0)
    }

    /// The range that holds the truth with this chance, the same to either side.
    pub fn range(&self, confidence: f64) -> Option<(f64, f64)> {
        let reach = self.quantile((1.0 + confidence) / 2.0)? - self.middle;
        Some((self.middle - reach, self.middle + reach))
    }
}
