//! Growth that may level off, from what was collected after gaps of many lengths.

mod curve;
mod matrix;
mod walk;

use super::two_sided_t;
use curve::{form, BESIDE, P};
pub use curve::{grown, grown_elasticity, grown_slope, pace, Collected, Saturation};
use walk::Walk;

impl Saturation {
    /// Fits it, robustly: Gauss and Newton's steps with biweights. `spreads` are how far
    /// from nothing each slope ordinarily is, which keeps them from following noise where
    /// there is little to tell them from. A gap that may hide something weighs by the chance
    /// that it is whole: a mixture by expectation and maximisation (Dempster, Laird and
    /// Rubin, J R Stat Soc B 1977). None where there is too little, or nothing that can be
    /// told apart.
    pub fn fit(collected: &[Collected], spreads: [f64; BESIDE]) -> Option<Self> {
        let is_sound = |c: &Collected| {
            let hidden = c.hides.iter().flatten().all(|h| h.is_finite() && *h > 0.0);
            hidden && c.gap.is_finite() && c.gap > 0.0 && c.amount.is_finite() && c.beside.iter().all(|b| b.is_finite())
        };
        if collected.len() < 2 * P || !collected.iter().all(is_sound) {
            return None;
        }
        let free = Walk::over(collected, spreads, None)?;
        if free.at.levelling() >= 0.0 {
            return free.done(None);
        }
        // Nothing grows faster and faster: the line is straight, but its ranges are those
        // of a fit that did not know.
        let straight = Walk::over(collected, spreads, Some(&free))?;
        straight.done(Some(&free))
    }

    /// The same with spreads of its parameters so many times as wide.
    #[must_use]
    pub fn wider(mut self, times: f64) -> Self {
        self.covariance.iter_mut().flatten().for_each(|c| *c *= times * times);
        self
    }

    /// The spread of a sum of the parameters.
    pub fn spread_of(&self, gradient: [f64; P]) -> f64 {
        form(&self.covariance, gradient, gradient).max(0.0).sqrt()
    }

    /// How far below and above its estimate a sum of the parameters may lie, so many spreads
    /// away, knowing that levelling is not below nothing: the ends of the ellipse of the
    /// free fit, cut there.
    pub fn range_of(&self, gradient: [f64; P], reach: f64) -> (f64, f64) {
        const LEVELLING: [f64; P] = [0.0, 0.0, 0.0, 0.0, 1.0];
        let spread = self.spread_of(gradient);
        let of_levelling = self.spread_of(LEVELLING);
        if !(of_levelling > 0.0 && spread > 0.0) {
            return (spread * reach, spread * reach);
        }
        let slope = form(&self.covariance, gradient, LEVELLING) / of_levelling;
        // In spreads of levelling: where the free fit lies, and the best that is allowed.
        let free = self.free_levelling / of_levelling;
        let best = free.max(0.0);
        let reach = reach.hypot(best - free);
        let beside = (spread * spread - slope * slope).max(0.0).sqrt();
        let end = |sign: f64| {
            let unbound = free + sign * reach * slope / spread;
            let at = unbound.max(0.0);
            let left = (reach * reach - (at - free).powi(2)).max(0.0).sqrt();
            slope * (at - best) + sign * left * beside
        };
        ((-end(-1.0)).max(0.0), end(1.0).max(0.0))
    }

    /// How many spreads a range reaches to either side to hold the truth so often.
    pub fn reach(&self, confidence: f64) -> f64 {
        two_sided_t(confidence, self.freedom).unwrap_or(f64::INFINITY)
    }
}
