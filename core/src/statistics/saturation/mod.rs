//! Growth that may level off, from what was collected after gaps of many lengths.

mod matrix;
mod walk;

use super::two_sided_t;
use walk::Walk;

/// What was collected after a gap.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Collected {
    /// How long the gap was.
    pub gap: f64,
    /// How much came; below a half of its unit it is taken as that.
    pub amount: f64,
    /// Up to three things that make it grow faster or slower, on the log scale.
    pub beside: [f64; BESIDE],
    /// How long the gap may really have been, where something in it was not written down.
    pub hides: [Option<f64>; 2],
}

/// Things beside the gap.
const BESIDE: usize = 3;
const P: usize = BESIDE + 2;
type Matrix = [[f64; P]; P];
/// Amounts below this are taken as this: a logarithm needs something.
const LEAST: f64 = 0.5;
/// Residuals beyond so many spreads say nothing any more (biweight; 95 % efficient for
/// normal noise: Beaton and Tukey, Technometrics 1974).
const BIWEIGHT: f64 = 4.685;
/// Levelling off is looked for within these, per unit of the gap; below nothing it would
/// grow faster and faster, which keeps the estimate of a straight line unbiased.
const LEAST_LEVELLING: f64 = -0.25;
const MOST_LEVELLING: f64 = 1.2;

/// amount = exp(log_rate) · (1 − exp(−levelling · g)) / levelling with g = gap · exp(beside ·
/// slopes), and noise on the log scale: what is beside it makes it grow faster or slower,
/// towards the same level.
#[derive(Debug, Clone, PartialEq)]
pub struct Saturation {
    /// Logarithm of the rate at which it begins.
    pub log_rate: f64,
    /// How much the things beside it make of it.
    pub slopes: [f64; BESIDE],
    /// How fast it levels off, per unit of the gap; 0 is a straight line.
    pub levelling: f64,
    /// The same where growing faster and faster is not ruled out.
    pub free_levelling: f64,
    /// Covariance of (log_rate, slopes, levelling).
    pub covariance: [[f64; P]; P],
    /// Spread of the noise on the log scale.
    pub noise: f64,
    /// Mean of what the noise makes of an amount (Duan, JASA 1983).
    pub smearing: f64,
    /// How many are thought to hide something, as a sum of chances.
    pub hidden: f64,
    /// Degrees of freedom.
    pub freedom: f64,
    /// What each was off, in the order they were given; none where it was too far off to count.
    pub residuals: Vec<Option<f64>>,
}

/// (1 − exp(−k·gap)) / k, which is the gap where k is nothing.
pub fn grown(levelling: f64, gap: f64) -> f64 {
    let x = levelling * gap;
    if x.abs() < 1e-6 {
        gap * (1.0 - x / 2.0)
    } else {
        -(-x).exp_m1() / levelling
    }
}

/// How ln [`grown`] changes with the logarithm of the gap: 1 where it is straight.
pub fn grown_elasticity(levelling: f64, gap: f64) -> f64 {
    let x = levelling * gap;
    if x.abs() < 1e-6 {
        1.0 - x / 2.0
    } else {
        x / x.exp_m1()
    }
}

/// How ln [`grown`] changes with levelling.
pub fn grown_slope(levelling: f64, gap: f64) -> f64 {
    let x = levelling * gap;
    if x.abs() < 1e-3 {
        gap * (-0.5 + x / 12.0)
    } else {
        gap / x.exp_m1() - 1.0 / levelling
    }
}

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

/// How many times its own pace it grows.
pub fn pace(beside: &[f64; BESIDE], slopes: [f64; BESIDE]) -> f64 {
    beside.iter().zip(slopes).map(|(x, slope)| x * slope).sum::<f64>().exp()
}

fn form(matrix: &[[f64; P]; P], left: [f64; P], right: [f64; P]) -> f64 {
    matrix.iter().zip(left).map(|(row, g)| g * row.iter().zip(right).map(|(c, h)| c * h).sum::<f64>()).sum()
}

fn weight(off: f64) -> f64 {
    let u = off / BIWEIGHT;
    if u.abs() >= 1.0 {
        0.0
    } else {
        (1.0 - u * u).powi(2)
    }
}
