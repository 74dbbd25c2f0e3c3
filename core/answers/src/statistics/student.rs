//! Student's t.

use statrs::distribution::{Continuous, ContinuousCDF, Normal, StudentsT};
use statrs::function::gamma::ln_gamma;

use super::normal::two_sided_z;

/// Beyond so many degrees of freedom it is the normal law to eight figures.
const AS_NORMAL: f64 = 1e8;
/// Up to here the sum in closed form is shorter than the general way.
const IN_CLOSED_FORM: f64 = 100.0;

/// Student's t of so many degrees of freedom.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Student {
    law: Law,
    freedom: f64,
    /// The density at nothing.
    peak: f64,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Law {
    /// Whole degrees of freedom.
    Closed(u32),
    General(StudentsT),
    Normal(Normal),
}

impl Student {
    pub(super) fn of(freedom: f64) -> Option<Self> {
        let law = if freedom >= AS_NORMAL {
            Law::Normal(Normal::new(0.0, 1.0).ok()?)
        } else if freedom.fract() == 0.0 && (1.0..=IN_CLOSED_FORM).contains(&freedom) {
            Law::Closed(freedom as u32)
        } else {
            Law::General(StudentsT::new(0.0, 1.0, freedom).ok()?)
        };
        let half = freedom / 2.0;
        let peak = (ln_gamma(half + 0.5) - ln_gamma(half)).exp() / (freedom * std::f64::consts::PI).sqrt();
        Some(Self { law, freedom, peak })
    }

    pub(super) fn below(&self, t: f64) -> f64 {
        match &self.law {
            Law::Closed(freedom) => in_closed_form(*freedom, t),
            Law::General(law) => law.cdf(t),
            Law::Normal(law) => law.cdf(t),
        }
    }

    fn density(&self, t: f64) -> f64 {
        match &self.law {
            Law::Normal(law) => law.pdf(t),
            Law::Closed(freedom) => self.peak * cosine(self.freedom, t).powi(*freedom as i32 + 1),
            Law::General(_) => self.peak * (1.0 + t * t / self.freedom).powf(-(self.freedom + 1.0) / 2.0),
        }
    }

    /// The integral of the distribution function up to t:
    /// t F(t) + (ν + t²) / (ν - 1) f(t), for ν > 1.
    pub(super) fn below_summed(&self, t: f64) -> f64 {
        let share = match self.law {
            Law::Normal(_) => 1.0,
            _ => (self.freedom + t * t) / (self.freedom - 1.0),
        };
        t * self.below(t) + share * self.density(t)
    }
}

/// cos(atan(t / √ν)).
fn cosine(freedom: f64, t: f64) -> f64 {
    1.0 / (1.0 + t * t / freedom).sqrt()
}

/// The distribution function for whole degrees of freedom, as a sum of powers of
/// cos(atan(t / √ν)) (Abramowitz & Stegun, Handbook of Mathematical Functions, 1964,
/// 26.7.3 and 26.7.4).
fn in_closed_form(freedom: u32, t: f64) -> f64 {
    let root = f64::from(freedom).sqrt();
    let cosine = cosine(f64::from(freedom), t);
    let sine = t / root * cosine;
    let odd = freedom % 2 == 1;
    let mut term = if odd { cosine } else { 1.0 };
    let mut sum = if freedom == 1 { 0.0 } else { term };
    let mut k = if odd { 2 } else { 1 };
    while k < freedom.saturating_sub(2) {
        term *= cosine * cosine * f64::from(k) / f64::from(k + 1);
        sum += term;
        k += 2;
    }
    let inside = match odd {
        true => ((t / root).atan() + sine * sum) * std::f64::consts::FRAC_2_PI,
        false => sine * sum,
    };
    ((1.0 + inside) / 2.0).clamp(0.0, 1.0)
}

/// From so many degrees of freedom on the expansion has ten figures, and is one step
/// where the general way searches without end.
const EXPANDED_FROM: f64 = 400.0;

/// t from z by its expansion in 1 / ν (Abramowitz & Stegun, 1964, 26.7.5).
fn expanded(z: f64, freedom: f64) -> f64 {
    let odd = |of: [f64; 5]| of.iter().rev().fold(0.0, |sum, factor| sum * z * z + factor) * z;
    let terms = [
        odd([1.0, 1.0, 0.0, 0.0, 0.0]) / 4.0,
        odd([3.0, 16.0, 5.0, 0.0, 0.0]) / 96.0,
        odd([-15.0, 17.0, 19.0, 3.0, 0.0]) / 384.0,
        odd([-945.0, -1920.0, 1482.0, 776.0, 79.0]) / 92_160.0,
    ];
    z + terms.iter().rev().fold(0.0, |sum, term| (sum + term) / freedom)
}

/// How far from the middle, either way, the given share of Student's t lies:
/// 4.303 for 0.95 and two degrees of freedom.
pub fn two_sided_t(confidence: f64, degrees_of_freedom: f64) -> Option<f64> {
    let inside = confidence > 0.0 && confidence < 1.0 && degrees_of_freedom > 0.0;
    if !inside {
        return None;
    }
    if degrees_of_freedom > EXPANDED_FROM {
        return Some(expanded(two_sided_z(confidence)?, degrees_of_freedom)).filter(|t| t.is_finite());
    }
    let below = 0.5 + confidence / 2.0;
    let rough = StudentsT::new(0.0, 1.0, degrees_of_freedom).ok()?.inverse_cdf(below);
    // One step of Newton's makes of its eight figures all there are.
    let student = Student::of(degrees_of_freedom)?;
    let found = rough - (student.below(rough) - below) / student.density(rough);
    Some(found).filter(|t| t.is_finite())
}
