//! The curve, what it is fitted to, and the sums that its fit is made of.

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
pub(super) const BESIDE: usize = 3;

pub(super) const P: usize = BESIDE + 2;

pub(super) type Matrix = [[f64; P]; P];

/// Amounts below this are taken as this: a logarithm needs something.
pub(super) const LEAST: f64 = 0.5;

/// Residuals beyond so many spreads say nothing any more (biweight; 95 % efficient for
/// normal noise: Beaton and Tukey, Technometrics 1974).
pub(super) const BIWEIGHT: f64 = 4.685;

/// Levelling off is looked for within these, per unit of the gap; below nothing it would
/// grow faster and faster, which keeps the estimate of a straight line unbiased.
pub(super) const LEAST_LEVELLING: f64 = -0.25;

pub(super) const MOST_LEVELLING: f64 = 1.2;

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

/// How many times its own pace it grows.
pub fn pace(beside: &[f64; BESIDE], slopes: [f64; BESIDE]) -> f64 {
    beside.iter().zip(slopes).map(|(x, slope)| x * slope).sum::<f64>().exp()
}

pub(super) fn form(matrix: &[[f64; P]; P], left: [f64; P], right: [f64; P]) -> f64 {
    matrix.iter().zip(left).map(|(row, g)| g * row.iter().zip(right).map(|(c, h)| c * h).sum::<f64>()).sum()
}

pub(super) fn weight(off: f64) -> f64 {
    let u = off / BIWEIGHT;
    if u.abs() >= 1.0 {
        0.0
    } else {
        (1.0 - u * u).powi(2)
    }
}
