//! How one cycle of a pump goes: from 0 to 1 and back. None of them is what the answer fits
//! (a level, a line, a parabola), and each is drawn out by chance.

use crate::chance::Chance;

/// The course of one cycle, over the share of its period that has gone by.
#[derive(Debug, Clone, Copy)]
pub enum Wave {
    /// A piston on a crank.
    RaisedCosine,
    /// Filled and emptied through a narrow tube: each edge runs out exponentially.
    Exponential {
        /// Shares of the period.
        rise: f64,
        /// Held for so long.
        hold: f64,
        /// And down.
        fall: f64,
        /// How often it falls to a third on its way.
        pace: f64,
    },
    /// Pulled evenly, let go at once, with a tip as round as a membrane's.
    Saw {
        /// Shares of the period.
        rise: f64,
        /// The last part of the rise, which is round.
        tip: f64,
        /// And down.
        fall: f64,
    },
    /// Held by a valve, with quick even edges.
    Plateau {
        /// Shares of the period.
        rise: f64,
        /// Held for so long.
        hold: f64,
        /// And down.
        fall: f64,
    },
}

/// Names of them, in order.
pub const WAVES: [&str; 4] = ["raised cosine", "exponential edges", "saw", "held plateau"];

impl Wave {
    /// One of a kind, by its place in [`WAVES`].
    pub fn of(kind: usize, chance: &mut Chance) -> Self {
        match kind % WAVES.len() {
            0 => Self::RaisedCosine,
            1 => Self::Exponential {
                rise: chance.between(0.28, 0.38),
                hold: chance.between(0.12, 0.25),
                fall: chance.between(0.2, 0.3),
                pace: chance.between(3.0, 5.0),
            },
            2 => Self::Saw {
                rise: chance.between(0.45, 0.6),
                tip: chance.between(0.08, 0.12),
                fall: chance.between(0.12, 0.2),
            },
            _ => Self::Plateau {
                rise: chance.between(0.1, 0.16),
                hold: chance.between(0.3, 0.45),
                fall: chance.between(0.1, 0.16),
            },
        }
    }

    /// What it is called.
    pub fn name(self) -> &'static str {
        let [cosine, exponential, saw, plateau] = WAVES;
        match self {
            Self::RaisedCosine => cosine,
            Self::Exponential { .. } => exponential,
            Self::Saw { .. } => saw,
            Self::Plateau { .. } => plateau,
        }
    }

    /// The height at a share of the period; its highest is 1.
    pub fn at(self, share: f64) -> f64 {
        let run_out = |gone: f64, pace: f64| (1.0 - (-pace * gone.clamp(0.0, 1.0)).exp()) / (1.0 - (-pace).exp());
        let even = |gone: f64| {
            let gone = gone.clamp(0.0, 1.0);
            gone * gone * (3.0 - 2.0 * gone)
        };
        match self {
            Self::RaisedCosine => (1.0 - (std::f64::consts::TAU * share).cos()) / 2.0,
            Self::Exponential { rise, hold, fall, pace } => {
                run_out(share / rise, pace) - run_out((share - rise - hold) / fall, pace)
            }
            Self::Saw { rise, tip, fall } => {
                // A straight pull that ends in a quarter of a circle's worth of sine.
                let straight = rise - tip;
                let slope = 1.0 / (straight + tip * std::f64::consts::FRAC_2_PI);
                if share < straight {
                    slope * share
                } else if share < rise {
                    let turn = (share - straight) / tip * std::f64::consts::FRAC_PI_2;
                    slope * (straight + tip * std::f64::consts::FRAC_2_PI * turn.sin())
                } else {
                    1.0 - even((share - rise) / fall)
                }
            }
            Self::Plateau { rise, hold, fall } => even(share / rise) - even((share - rise - hold) / fall),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Wave, WAVES};
    use crate::chance::Chance;

    #[test]
    fn every_wave_begins_and_ends_at_rest_and_reaches_one() {
        let mut chance = Chance::seeded(1);
        for kind in 0..WAVES.len() {
            for _ in 0..20 {
                let wave = Wave::of(kind, &mut chance);
                let highest = (0..=10_000).map(|n| wave.at(f64::from(n) / 10_000.0)).fold(0.0, f64::max);
                assert!((highest - 1.0).abs() < 1e-6, "{wave:?} reaches {highest}");
                assert!(wave.at(0.0).abs() < 1e-9 && wave.at(1.0).abs() < 1e-9, "{wave:?}");
            }
        }
    }
}
