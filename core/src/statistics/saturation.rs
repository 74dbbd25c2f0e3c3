//! Growth that may level off, from what was collected after gaps of many lengths.

use super::{median, two_sided_t, TO_SIGMA};

/// What was collected after a gap.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Collected {
    /// How long the gap was.
    pub gap: f64,
    /// How much came; below a half of its unit it is taken as that.
    pub amount: f64,
    /// Up to three things that make it grow faster or slower, on the log scale.
    pub beside: [f64; BESIDE],
}

/// Things beside the gap.
pub(super) const BESIDE: usize = 3;
const P: usize = BESIDE + 2;
/// Amounts below this are taken as this: a logarithm needs something.
pub(super) const LEAST: f64 = 0.5;
/// Residuals beyond so many spreads say nothing any more (biweight; 95 % efficient for
/// normal noise: Beaton and Tukey, Technometrics 1974).
const BIWEIGHT: f64 = 4.685;
const ROUNDS: usize = 30;
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
    /// there is little to tell them from. None where there is too little, or nothing that
    /// can be told apart.
    pub fn fit(collected: &[Collected], spreads: [f64; BESIDE]) -> Option<Self> {
        let n = collected.len();
        if n < 2 * P || collected.iter().any(|c| !(c.gap.is_finite() && c.gap > 0.0 && c.amount.is_finite())) {
            return None;
        }
        if collected.iter().any(|c| c.beside.iter().any(|b| !b.is_finite())) {
            return None;
        }
        let logs: Vec<f64> = collected.iter().map(|c| c.amount.max(LEAST).ln()).collect();
        let rates: Vec<f64> = logs.iter().zip(collected).map(|(log, c)| log - grown(FIRST, c.gap).ln()).collect();
        let free = Self::walk(collected, &logs, &rates, spreads, false)?;
        if free.levelling >= 0.0 {
            return Some(free);
        }
        // Nothing grows faster and faster: the line is straight, but its ranges are those
        // of a fit that did not know.
        let straight = Self::walk(collected, &logs, &rates, spreads, true)?;
        Some(Self { covariance: free.covariance, freedom: free.freedom, free_levelling: free.levelling, ..straight })
    }

    fn walk(
        collected: &[Collected],
        logs: &[f64],
        rates: &[f64],
        spreads: [f64; BESIDE],
        straight: bool,
    ) -> Option<Self> {
        let first = if straight { 0.0 } else { FIRST };
        let mut at = [0.0; P];
        let [log_rate, .., levelling] = &mut at;
        (*log_rate, *levelling) = (median(rates)?, first);
        let mut residuals = residuals(collected, logs, &at);
        let mut noise = spread(&residuals)?;
        let mut normal = Normal::default();
        for _ in 0..ROUNDS {
            normal = Normal::of(collected, &residuals, noise, &at, spreads, straight);
            let step = normal.solve()?;
            let before = at;
            for (value, step) in at.iter_mut().zip(step) {
                *value += step;
            }
            let [.., levelling] = &mut at;
            *levelling = levelling.clamp(LEAST_LEVELLING, MOST_LEVELLING);
            residuals = self::residuals(collected, logs, &at);
            noise = spread(&residuals)?;
            if at.iter().zip(before).all(|(now, before)| (now - before).abs() < 1e-9) {
                break;
            }
        }
        let freedom = (collected.len() - P) as f64;
        let scale = normal.scale(noise, freedom)?;
        let mut covariance = normal.inverse()?;
        covariance.iter_mut().flatten().for_each(|c| *c *= scale * scale);
        let weights: Vec<f64> = residuals.iter().map(|r| weight(r / noise)).collect();
        let all: f64 = weights.iter().sum();
        let [log_rate, a, b, c, levelling] = at;
        let kept = Self {
            log_rate,
            slopes: [a, b, c],
            levelling,
            free_levelling: levelling,
            covariance,
            noise: noise * (collected.len() as f64 / freedom).sqrt(),
            smearing: residuals.iter().zip(&weights).map(|(r, w)| w * r.exp()).sum::<f64>() / all,
            freedom,
            residuals: residuals.iter().zip(&weights).map(|(r, w)| (*w > 0.0).then_some(*r)).collect(),
        };
        (kept.smearing.is_finite() && kept.covariance.iter().flatten().all(|c| c.is_finite())).then_some(kept)
    }

    /// The same with spreads of its parameters so many times as wide.
    #[must_use]
    pub fn wider(mut self, times: f64) -> Self {
        self.covariance.iter_mut().flatten().for_each(|c| *c *= times * times);
        self
    }

    /// The spread of a sum of the parameters.
    pub fn spread_of(&self, gradient: [f64; P]) -> f64 {
        let rows = self.covariance.iter().zip(gradient);
        let variance: f64 = rows.map(|(row, g)| g * row.iter().zip(gradient).map(|(c, h)| c * h).sum::<f64>()).sum();
        variance.max(0.0).sqrt()
    }

    /// How many spreads a range reaches to either side to hold the truth so often.
    pub fn reach(&self, confidence: f64) -> f64 {
        two_sided_t(confidence, self.freedom).unwrap_or(f64::INFINITY)
    }
}

/// Where levelling is looked for first.
const FIRST: f64 = 0.08;

/// How many times its own pace it grows.
pub fn pace(beside: &[f64; BESIDE], slopes: [f64; BESIDE]) -> f64 {
    beside.iter().zip(slopes).map(|(x, slope)| x * slope).sum::<f64>().exp()
}

fn residuals(collected: &[Collected], logs: &[f64], at: &[f64; P]) -> Vec<f64> {
    let [log_rate, a, b, c, levelling] = at;
    let means =
        collected.iter().map(|one| log_rate + grown(*levelling, one.gap * pace(&one.beside, [*a, *b, *c])).ln());
    logs.iter().zip(means).map(|(log, mean)| log - mean).collect()
}

/// The middle of what they are off, as a standard deviation.
fn spread(residuals: &[f64]) -> Option<f64> {
    let off: Vec<f64> = residuals.iter().map(|r| r.abs()).collect();
    median(&off).map(|middle| (middle * TO_SIGMA).max(1e-9)).filter(|s| s.is_finite())
}

fn weight(off: f64) -> f64 {
    let u = off / BIWEIGHT;
    if u.abs() >= 1.0 {
        0.0
    } else {
        (1.0 - u * u).powi(2)
    }
}

/// The normal equations of one step.
#[derive(Default)]
struct Normal {
    matrix: [[f64; P]; P],
    right: [f64; P],
    /// Sums of ψ² and ψ', for the spread of the estimates (Huber, Robust Statistics, 1981, 7.6).
    psi_squared: f64,
    psi_slope: f64,
    weights: f64,
    count: f64,
}

impl Normal {
    fn of(
        collected: &[Collected],
        residuals: &[f64],
        noise: f64,
        at: &[f64; P],
        spreads: [f64; BESIDE],
        straight: bool,
    ) -> Self {
        let [_, a, b, c, levelling] = *at;
        let mut normal = Self::default();
        for (one, residual) in collected.iter().zip(residuals) {
            let off = residual / noise;
            let weight = weight(off);
            let u = off / BIWEIGHT;
            normal.count += 1.0;
            normal.weights += weight;
            normal.psi_squared += (weight * off).powi(2);
            normal.psi_slope += if u.abs() < 1.0 { (1.0 - u * u) * (1.0 - 5.0 * u * u) } else { 0.0 };
            let [x, y, z] = one.beside;
            let gap = one.gap * pace(&one.beside, [a, b, c]);
            let elastic = grown_elasticity(levelling, gap);
            let of_levelling = if straight { 0.0 } else { grown_slope(levelling, gap) };
            let row = [1.0, x * elastic, y * elastic, z * elastic, of_levelling];
            for ((line, right), a) in normal.matrix.iter_mut().zip(&mut normal.right).zip(row) {
                *right += weight * a * residual;
                line.iter_mut().zip(row).for_each(|(cell, b)| *cell += weight * a * b);
            }
        }
        if let (true, [.., [.., cell]]) = (straight, &mut normal.matrix) {
            *cell = 1.0;
        }
        // Slopes are drawn towards nothing as their ordinary spread says.
        for (i, spread) in spreads.iter().enumerate() {
            let pull = (noise / spread).powi(2);
            let slope = at.get(i + 1).copied().unwrap_or(0.0);
            if let Some(cell) = normal.matrix.get_mut(i + 1).and_then(|line| line.get_mut(i + 1)) {
                *cell += pull;
            }
            if let Some(right) = normal.right.get_mut(i + 1) {
                *right -= pull * slope;
            }
        }
        normal
    }

    fn solve(&self) -> Option<[f64; P]> {
        let inverse = self.inverse()?;
        let mut step = [0.0; P];
        for (value, row) in step.iter_mut().zip(inverse) {
            *value = row.iter().zip(self.right).map(|(a, b)| a * b).sum();
        }
        step.iter().all(|s| s.is_finite()).then_some(step)
    }

    /// The noise that the spread of the estimates goes by.
    fn scale(&self, noise: f64, freedom: f64) -> Option<f64> {
        let slope = self.psi_slope / self.count;
        // The matrix holds weights where the formula holds ones.
        let weights = (self.weights / self.count).sqrt();
        let scale = noise * (self.psi_squared / freedom).sqrt() / slope * weights;
        (slope > 0.1 && scale.is_finite()).then_some(scale)
    }

    /// Gauss and Jordan, with the greatest pivot.
    fn inverse(&self) -> Option<[[f64; P]; P]> {
        let mut left = self.matrix;
        let mut right = [[0.0; P]; P];
        for (i, row) in right.iter_mut().enumerate() {
            if let Some(cell) = row.get_mut(i) {
                *cell = 1.0;
            }
        }
        for column in 0..P {
            let size = |row: usize| left.get(row).and_then(|r| r.get(column)).map_or(0.0, |c: &f64| c.abs());
            let pivot = (column..P).max_by(|a, b| size(*a).total_cmp(&size(*b)))?;
            left.swap(column, pivot);
            right.swap(column, pivot);
            let by = left.get(column)?.get(column).copied().filter(|c| c.abs() > 1e-12)?;
            let (own_left, own_right) = (left.get(column)?.map(|c| c / by), right.get(column)?.map(|c| c / by));
            for row in 0..P {
                let (Some(l), Some(r)) = (left.get_mut(row), right.get_mut(row)) else { continue };
                if row == column {
                    (*l, *r) = (own_left, own_right);
                    continue;
                }
                let factor = l.get(column).copied().unwrap_or(0.0);
                l.iter_mut().zip(own_left).for_each(|(cell, own)| *cell -= factor * own);
                r.iter_mut().zip(own_right).for_each(|(cell, own)| *cell -= factor * own);
            }
        }
        Some(right)
    }
}
