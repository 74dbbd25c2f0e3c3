//! Student's t. The distribution is the one of the crate `statrs`.

use statrs::distribution::{Continuous, ContinuousCDF, StudentsT};

/// Student's t of so many degrees of freedom.
#[derive(Debug, Clone, Copy)]
pub(super) struct Student {
    law: StudentsT,
    freedom: f64,
}

impl Student {
    pub(super) fn of(freedom: f64) -> Option<Self> {
        StudentsT::new(0.0, 1.0, freedom).ok().map(|law| Self { law, freedom })
    }

    pub(super) fn below(&self, t: f64) -> f64 {
        self.law.cdf(t)
    }

    /// The integral of the distribution function up to t:
    /// t F(t) + (ν + t²) / (ν - 1) f(t), for ν > 1.
    pub(super) fn below_summed(&self, t: f64) -> f64 {
        // Beyond here the density has no figures left, and t² times it is noise.
        if t < -1e9 {
            return 0.0;
        }
        t * self.law.cdf(t) + (self.freedom + t * t) / (self.freedom - 1.0) * self.law.pdf(t)
    }
}

/// How far from the middle, either way, the given share of Student's t lies:
/// 4.303 for 0.95 and two degrees of freedom.
pub fn two_sided_t(confidence: f64, degrees_of_freedom: f64) -> Option<f64> {
    let inside = confidence > 0.0 && confidence < 1.0 && degrees_of_freedom > 0.0;
    let found = inside.then(|| StudentsT::new(0.0, 1.0, degrees_of_freedom).ok()).flatten()?;
    Some(found.inverse_cdf(0.5 + confidence / 2.0)).filter(|t| t.is_finite())
}
