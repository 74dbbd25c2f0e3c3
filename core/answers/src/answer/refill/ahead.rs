//! What planned intervals bring, and what one plan costs against another.

use super::well::{gradient_of, hours, mean_of, Flattens, Well};
use super::Refill;
use crate::answer::estimate::{Estimate, CONFIDENCE};
use crate::quantity::{Quantity, Volume};
use crate::time::{Instant, Zone};

/// Intervals to come: each from one emptying to the next.
pub type Ahead<'a> = &'a [(Instant, Instant)];

/// What one set of intervals brings less than another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Difference {
    /// So much less; below nothing it is more.
    Less(Estimate<Volume>),
    /// The record cannot tell: it does not hold gaps this long, or too few.
    CannotTellYet,
}

impl Refill {
    /// What a set of intervals brings, all wells together, with the range that holds it
    /// nine times in ten. None where there is no well.
    pub fn brings(&self, ahead: Ahead<'_>, zone: Zone) -> Option<Estimate<Volume>> {
        let reach = self.wells.first()?.fit.reach(CONFIDENCE);
        let (mut sum, mut below, mut above) = (0.0, 0.0, 0.0);
        let mut of_noise = vec![0.0; ahead.len()];
        for well in &self.wells {
            let mut gradient = [0.0; 5];
            for ((from, until), noise) in ahead.iter().zip(&mut of_noise) {
                let mean = well.mean(*from, *until, zone);
                sum += mean;
                well.gradient(*from, *until, zone).iter().zip(&mut gradient).for_each(|(g, all)| *all += mean * g);
                // Both sides of a session are off alike, in part.
                let own: f64 = well.fit.noise * mean;
                *noise = own * own + *noise + 2.0 * self.alike * own * f64::sqrt(*noise);
            }
            let (low, high) = well.fit.range_of(gradient, reach);
            (below, above) = (below + low * low, above + high * high);
        }
        // What a day makes more or less, all its intervals share.
        let along = self.wells.iter().map(|well| well.along).fold(0.0, f64::max);
        let each: f64 = of_noise.iter().sum();
        let together = of_noise.iter().map(|noise| noise.sqrt()).sum::<f64>().powi(2);
        let noise = ((1.0 - along) * each + along * together) * (reach * UNEVEN).powi(2);
        let (below, above) = ((below + noise).sqrt(), (above + noise).sqrt());
        let volume = |value: f64| Volume::from_canonical(value.max(0.0));
        Some(Estimate { value: volume(sum), low: volume(sum - below), high: volume(sum + above) })
    }

    /// How much less the second set of intervals brings than the first.
    pub fn less(&self, first: Ahead<'_>, second: Ahead<'_>, zone: Zone) -> Difference {
        let longest = first.iter().chain(second).map(|(from, until)| hours(until.since(*from))).fold(0.0, f64::max);
        let Some(reach) = self.wells.first().map(|w| w.fit.reach(CONFIDENCE)) else { return Difference::CannotTellYet };
        let beyond = |well: &Well| longest > hours(well.longest) * BEYOND;
        if self.wells.iter().any(|well| well.flattens == Flattens::CannotTellYet || beyond(well)) {
            return Difference::CannotTellYet;
        }
        // With each share that may be left behind: the range reaches over all of them.
        let shares = self.wells.iter().map(|well| well.carried.len()).min().unwrap_or(0);
        let all: Vec<(f64, f64)> = (0..=shares).map(|share| self.less_with(share, first, second, zone)).collect();
        let low = all.iter().map(|(less, spread)| less - spread * reach).fold(f64::INFINITY, f64::min);
        let high = all.iter().map(|(less, spread)| less + spread * reach).fold(f64::NEG_INFINITY, f64::max);
        let value = all.iter().map(|(less, _)| less).sum::<f64>() / all.len() as f64;
        // Another law of filling makes a difference otherwise large.
        let (low, high) = (value - (value - low).hypot(LAW * value), value + (high - value).hypot(LAW * value));
        Difference::Less(Estimate {
            value: Volume::from_canonical(value),
            low: Volume::from_canonical(low),
            high: Volume::from_canonical(high),
        })
    }

    /// How much less, and its spread, where so much is left behind: 0 is nothing.
    fn less_with(&self, share: usize, first: Ahead<'_>, second: Ahead<'_>, zone: Zone) -> (f64, f64) {
        let (mut less, mut variance) = (0.0, 0.0);
        for well in &self.wells {
            let fit = share.checked_sub(1).and_then(|at| well.carried.get(at)).unwrap_or(&well.fit);
            let mut gradient = [0.0; 5];
            for (set, sign) in [(first, 1.0), (second, -1.0)] {
                for (from, until) in set {
                    let mean = mean_of(fit, *from, *until, zone) * sign;
                    less += mean;
                    gradient_of(fit, *from, *until, zone)
                        .iter()
                        .zip(&mut gradient)
                        .for_each(|(g, all)| *all += mean * g);
                }
            }
            // Two plans that fill straight differ by almost nothing: cut at that, the range
            // would hold the truth too seldom.
            variance += fit.spread_of(gradient).powi(2);
        }
        (less, variance.sqrt())
    }
}

/// What comes is off by more now and then than a normal law says; and what a choice costs may
/// be so much of itself more or less by another law of filling. Both measured with families of
/// a second simulator.
const UNEVEN: f64 = 1.1;
const LAW: f64 = 0.7;
/// A gap may be so much longer than the longest that was seen, and no more.
const BEYOND: f64 = 1.1;
