//! Student's t.

use statrs::distribution::{Continuous, ContinuousCDF, Normal, StudentsT};
use statrs::function::gamma::ln_gamma;

/// Beyond so many degrees of freedom it is the normal law to eight figures.
const AS_NORMAL: f64 = 1e8;
/// Up to here the sum in closed form is shorter than the general way.
const IN_CLOSED_FORM: f64 = 100.0;

/// Student's t of so many degrees of freedom.
#[derive(Debug, Clone, Copy)]
pub(super) struct Student {
    law: Law,
    freedom: f64,
    /// The density at nothing.
    peak: f64,
}

#[derive(Debug, Clone, Copy)]
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
            _ => self.peak * (1.0 + t * t / self.freedom).powf(-(self.freedom + 1.0) / 2.0),
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

/// The distribution function for whole degrees of freedom, as a sum of powers of
/// cos(atan(t / √ν)) (Abramowitz & Stegun, Handbook of Mathematical Functions, 1964,
/// 26.7.3 and 26.7.4).
fn in_closed_form(freedom: u32, t: f64) -> f64 {
    let angle = (t / f64::from(freedom).sqrt()).atan();
    let (sine, cosine) = angle.sin_cos();
    let odd = freedom % 2 == 1;
    let mut term = if odd { cosine } else { 1.0 };
    let mut sum = if freedom == 1 { 0.0 } else { term };
    let mut k = if odd { 2 } else { 1 };
    while k < freedom.saturating_sub(2) {
        term *= cosine * cosine * f64::from(k) / f64::from(k + 1);
        sum += term;
        k += 2;
    }
    let inside = if odd { (angle + sine * sum) * std::f64::consts::FRAC_2_PI } else { sine * sum };
    ((1.0 + inside) / 2.0).clamp(0.0, 1.0)
}

/// How far from the middle, either way, the given share of Student's t lies:
/// 4.303 for 0.95 and two degrees of freedom.
pub fn two_sided_t(confidence: f64, degrees_of_freedom: f64) -> Option<f64> {
    let inside = confidence > 0.0 && confidence < 1.0 && degrees_of_freedom > 0.0;
    let found = inside.then(|| StudentsT::new(0.0, 1.0, degrees_of_freedom).ok()).flatten()?;
    Some(found.inverse_cdf(0.5 + confidence / 2.0)).filter(|t| t.is_finite())
}
