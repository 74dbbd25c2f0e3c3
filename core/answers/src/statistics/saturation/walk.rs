//! The steps of the fit.

use super::curve::{grown, grown_elasticity, grown_slope, pace, weight, Collected, Saturation};
use super::curve::{Matrix, BESIDE, BIWEIGHT, LEAST, LEAST_LEVELLING, MOST_LEVELLING, P};
use super::matrix::{inverse, sandwich};
use crate::statistics::{median, TO_SIGMA};

const ROUNDS: usize = 40;
/// Where levelling is looked for first.
const FIRST: f64 = 0.08;
/// A step below this changes nothing that matters.
const STILL: f64 = 1e-7;
/// How often a gap that could hide something does, as if so many of ten had.
const HIDDEN_BEFORE: (f64, f64) = (1.0, 10.0);
/// Spread of the logarithm of what came where something is hidden: it may lie anywhere.
const PLACE_OF_HIDDEN: f64 = 0.25;

/// Where a fit is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct At([f64; P]);

impl At {
    pub(super) fn levelling(&self) -> f64 {
        let [.., levelling] = self.0;
        levelling
    }

    fn slopes(&self) -> [f64; BESIDE] {
        let [_, a, b, c, _] = self.0;
        [a, b, c]
    }

    /// Logarithm of what comes after a gap, and how that changes with the parameters.
    fn mean(&self, pace: f64, gap: f64, beside: &[f64; BESIDE]) -> (f64, [f64; P]) {
        let [log_rate, .., levelling] = self.0;
        let gap = gap * pace;
        let [x, y, z] = beside;
        let elastic = grown_elasticity(levelling, gap);
        let gradient = [1.0, x * elastic, y * elastic, z * elastic, grown_slope(levelling, gap)];
        (log_rate + grown(levelling, gap).ln(), gradient)
    }
}

/// One of what was collected, as a fit sees it.
#[derive(Debug, Clone, Copy)]
struct Seen {
    log: f64,
    residual: f64,
    gradient: [f64; P],
    /// Of the shorter gaps it may hide: what it is off, and its gradient.
    hidden: [Option<(f64, [f64; P])>; 2],
    /// The chance that it is whole.
    whole: f64,
    /// How that chance changes with the parameters.
    whole_slope: [f64; P],
}

pub(super) struct Walk<'a> {
    collected: &'a [Collected],
    spreads: [f64; BESIDE],
    is_straight: bool,
    pub(super) at: At,
    seen: Vec<Seen>,
    noise: f64,
    hides: f64,
}

impl<'a> Walk<'a> {
    /// Walks to the fit; to the straight line nearest to a fit that was free.
    pub(super) fn over(collected: &'a [Collected], spreads: [f64; BESIDE], free: Option<&Self>) -> Option<Self> {
        let mut walk = match free {
            Some(free) => {
                let [log_rate, a, b, c, _] = free.at.0;
                let at = At([log_rate, a, b, c, 0.0]);
                Self { at, is_straight: true, seen: free.seen.clone(), ..*free }
            }
            None => Self::begin(collected, spreads)?,
        };
        walk.look();
        for _ in 0..ROUNDS {
            let step = walk.step()?;
            for (value, step) in walk.at.0.iter_mut().zip(step) {
                *value += step;
            }
            let [.., levelling] = &mut walk.at.0;
            *levelling = levelling.clamp(LEAST_LEVELLING, MOST_LEVELLING);
            walk.look();
            walk.weigh()?;
            if step.iter().all(|s| s.abs() < STILL) {
                break;
            }
        }
        Some(walk)
    }

    fn begin(collected: &'a [Collected], spreads: [f64; BESIDE]) -> Option<Self> {
        let logs: Vec<f64> = collected.iter().map(|c| c.amount.max(LEAST).ln()).collect();
        let rates: Vec<f64> = logs.iter().zip(collected).map(|(log, c)| log - grown(FIRST, c.gap).ln()).collect();
        let at = At([median(&rates)?, 0.0, 0.0, 0.0, FIRST]);
        let seen = logs.into_iter().zip(collected).map(|(log, c)| Seen {
            log,
            residual: 0.0,
            gradient: [0.0; P],
            hidden: [None; 2],
            whole: if c.hides == [None; 2] { 1.0 } else { 0.8 },
            whole_slope: [0.0; P],
        });
        let mut walk =
            Self { collected, spreads, is_straight: false, at, seen: seen.collect(), noise: 0.2, hides: 0.1 };
        walk.look();
        walk.noise = walk.spread()?;
        walk.weigh()?;
        Some(walk)
    }

    /// What each is off.
    fn look(&mut self) {
        let slopes = self.at.slopes();
        for (one, seen) in self.collected.iter().zip(&mut self.seen) {
            let pace = pace(&one.beside, slopes);
            let (mean, gradient) = self.at.mean(pace, one.gap, &one.beside);
            (seen.residual, seen.gradient) = (seen.log - mean, gradient);
            for (hidden, gap) in seen.hidden.iter_mut().zip(one.hides) {
                *hidden = gap.map(|gap| {
                    let (mean, gradient) = self.at.mean(pace, gap, &one.beside);
                    (seen.log - mean, gradient)
                });
            }
            if self.is_straight {
                let [.., of_levelling] = &mut seen.gradient;
                *of_levelling = 0.0;
            }
        }
    }

    /// The spread of the noise, and the chance that each is whole.
    fn weigh(&mut self) -> Option<()> {
        self.noise = self.spread()?;
        let noise = self.noise;
        let wide = noise.hypot(PLACE_OF_HIDDEN);
        let (mut hidden, mut could) = HIDDEN_BEFORE;
        for seen in &mut self.seen {
            let count = seen.hidden.iter().flatten().count();
            if count == 0 {
                continue;
            }
            let density = |off: f64, spread: f64| (-0.5 * (off / spread).powi(2)).exp() / spread;
            let whole = (1.0 - self.hides) * density(seen.residual, noise);
            let mut parts = 0.0;
            let mut slope = [0.0; P];
            for (off, gradient) in seen.hidden.iter().flatten() {
                let part = self.hides / count as f64 * density(*off, wide);
                parts += part;
                slope.iter_mut().zip(gradient).for_each(|(all, g)| *all += part * off / (wide * wide) * g);
            }
            if parts + whole < 1e-12 {
                // It is far from either.
                (seen.whole, seen.whole_slope) = (1.0, [0.0; P]);
                continue;
            }
            let chance = whole / (whole + parts);
            seen.whole = chance;
            let by = seen.residual / (noise * noise);
            for ((to, own), of_parts) in seen.whole_slope.iter_mut().zip(seen.gradient).zip(slope) {
                let of_parts = if parts > 0.0 { of_parts / parts } else { 0.0 };
                *to = chance * (1.0 - chance) * (by * own - of_parts);
            }
            hidden += 1.0 - chance;
            could += 1.0;
        }
        self.hides = (hidden / could).clamp(0.01, 0.9);
        Some(())
    }

    /// The middle of what those that are whole are off, as a standard deviation.
    fn spread(&self) -> Option<f64> {
        let mut off: Vec<(f64, f64)> = self.seen.iter().map(|s| (s.residual.abs(), s.whole)).collect();
        off.sort_unstable_by(|a, b| a.0.total_cmp(&b.0));
        let half = off.iter().map(|(_, w)| w).sum::<f64>() / 2.0;
        let mut below = 0.0;
        let middle = off.iter().find(|(_, w)| {
            below += w;
            below >= half
        })?;
        Some((middle.0 * TO_SIGMA).max(1e-9)).filter(|s| s.is_finite())
    }

    fn step(&self) -> Option<[f64; P]> {
        let mut matrix = [[0.0; P]; P];
        let mut right = [0.0; P];
        for seen in &self.seen {
            let weight = seen.whole * weight(seen.residual / self.noise);
            for ((line, right), a) in matrix.iter_mut().zip(&mut right).zip(seen.gradient) {
                *right += weight * a * seen.residual;
                line.iter_mut().zip(seen.gradient).for_each(|(cell, b)| *cell += weight * a * b);
            }
        }
        self.hold(&mut matrix);
        for ((right, spread), slope) in right.iter_mut().skip(1).zip(self.spreads).zip(self.at.slopes()) {
            *right -= (self.noise / spread).powi(2) * slope;
        }
        let inverse = inverse(matrix)?;
        let mut step = [0.0; P];
        for (value, row) in step.iter_mut().zip(inverse) {
            *value = row.iter().zip(right).map(|(a, b)| a * b).sum();
        }
        step.iter().all(|s| s.is_finite()).then_some(step)
    }

    /// Draws slopes towards nothing as their ordinary spread says; a straight line stays one.
    fn hold(&self, matrix: &mut Matrix) {
        for (i, (line, spread)) in matrix.iter_mut().skip(1).zip(self.spreads).enumerate() {
            line.iter_mut().skip(i + 1).take(1).for_each(|cell| *cell += (self.noise / spread).powi(2));
        }
        if let (true, [.., [.., cell]]) = (self.is_straight, matrix) {
            *cell = 1.0;
        }
    }

    fn freedom(&self) -> f64 {
        (self.seen.iter().map(|s| s.whole).sum::<f64>() - P as f64).max(1.0)
    }

    /// How the estimates spread: of equations that weigh each by how far off it is and by
    /// the chance that it is whole (Huber, Robust Statistics, 1981, 6.3 and 7.6).
    fn covariance(&self) -> Option<Matrix> {
        let (mut bread, mut meat) = ([[0.0; P]; P], [[0.0; P]; P]);
        for seen in &self.seen {
            let off = seen.residual / self.noise;
            let weight = weight(off);
            let u2 = (off / BIWEIGHT).powi(2);
            let slope = if u2 < 1.0 { seen.whole * (1.0 - u2) * (1.0 - 5.0 * u2) } else { 0.0 };
            let square = (seen.whole * weight * seen.residual).powi(2);
            let lines = bread.iter_mut().zip(&mut meat).zip(seen.gradient);
            for ((bread, meat), a) in lines {
                for ((to, b), chance) in bread.iter_mut().zip(seen.gradient).zip(seen.whole_slope) {
                    *to += slope * a * b - weight * seen.residual * a * chance;
                }
                meat.iter_mut().zip(seen.gradient).for_each(|(to, b)| *to += square * a * b);
            }
        }
        self.hold(&mut bread);
        let all = self.seen.iter().map(|s| s.whole).sum::<f64>();
        let small = all / self.freedom();
        for (i, (line, spread)) in meat.iter_mut().skip(1).zip(self.spreads).enumerate() {
            line.iter_mut().skip(i + 1).take(1).for_each(|cell| *cell += self.noise.powi(4) / (spread * spread));
        }
        let mut covariance = sandwich(inverse(bread)?, meat);
        covariance.iter_mut().flatten().for_each(|c| *c *= small);
        Some(covariance)
    }

    /// What was found; ranges are those of the free fit.
    pub(super) fn done(&self, free: Option<&Self>) -> Option<Saturation> {
        let free = free.unwrap_or(self);
        let [log_rate, .., levelling] = self.at.0;
        let (mut smeared, mut all) = (0.0, 0.0);
        for seen in &self.seen {
            let weight = seen.whole * weight(seen.residual / self.noise);
            smeared += weight * seen.residual.exp();
            all += weight;
        }
        let freedom = free.freedom();
        let kept = Saturation {
            log_rate,
            slopes: self.at.slopes(),
            levelling,
            free_levelling: free.at.levelling(),
            covariance: free.covariance()?,
            noise: self.noise * ((freedom + P as f64) / freedom).sqrt(),
            smearing: smeared / all,
            hidden: self.seen.iter().map(|s| 1.0 - s.whole).sum(),
            freedom,
            residuals: self.seen.iter().map(|s| self.kept(s)).collect(),
        };
        let sound = kept.smearing.is_finite() && kept.covariance.iter().flatten().all(|c| c.is_finite());
        sound.then_some(kept)
    }

    fn kept(&self, seen: &Seen) -> Option<f64> {
        (seen.whole >= 0.5 && weight(seen.residual / self.noise) > 0.0).then_some(seen.residual)
    }
}
