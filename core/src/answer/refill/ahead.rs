//! What planned intervals bring, and what one plan costs against another.

use super::well::{hours, Flattens};
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
        let noise = of_noise.iter().sum::<f64>() * reach * reach;
        let (below, above) = ((below + noise).sqrt(), (above + noise).sqrt());
        let volume = |value: f64| Volume::from_canonical(value.max(0.0));
        Some(Estimate { value: volume(sum), low: volume(sum - below), high: volume(sum + above) })
    }

    /// How much less the second set of intervals brings than the first.
    pub fn less(&self, first: Ahead<'_>, second: Ahead<'_>, zone: Zone) -> Difference {
        let longest = first.iter().chain(second).map(|(from, until)| hours(until.since(*from))).fold(0.0, f64::max);
        let (mut less, mut variance) = (0.0, 0.0);
        let Some(reach) = self.wells.first().map(|w| w.fit.reach(CONFIDENCE)) else { return Difference::CannotTellYet };
        for well in &self.wells {
            if well.flattens == Flattens::CannotTellYet || longest > hours(well.longest) * BEYOND {
                return Difference::CannotTellYet;
            }
            let mut gradient = [0.0; 5];
            for (set, sign) in [(first, 1.0), (second, -1.0)] {
                for (from, until) in set {
                    let mean = well.mean(*from, *until, zone) * sign;
                    less += mean;
                    well.gradient(*from, *until, zone).iter().zip(&mut gradient).for_each(|(g, all)| *all += mean * g);
                }
            }
            // Two plans that fill straight differ by almost nothing: cut at that, the range
            // would hold the truth too seldom.
            variance += well.fit.spread_of(gradient).powi(2);
        }
        let apart = variance.sqrt() * reach;
        Difference::Less(Estimate {
            value: Volume::from_canonical(less),
            low: Volume::from_canonical(less - apart),
            high: Volume::from_canonical(less + apart),
        })
    }
}

/// A gap may be so much longer than the longest that was seen, and no more.
const BEYOND: f64 = 1.1;
