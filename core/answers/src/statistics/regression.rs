//! Least squares of several things at once, and what a combination of them is.

use super::point::all_finite;
use super::student::Student;

/// A row: what stands beside a value, and the value.
#[derive(Debug, Clone, PartialEq)]
pub struct Observed {
    /// What stands beside it, one number a term.
    pub beside: Vec<f64>,
    /// The value.
    pub value: f64,
}

/// A fit.
#[derive(Debug, Clone, PartialEq)]
pub struct Regression {
    /// What each term makes.
    pub terms: Vec<f64>,
    /// What is left of each value, in the order they came.
    pub residuals: Vec<f64>,
    /// Values less terms.
    pub freedom: f64,
    /// The spread of what is left.
    pub spread: f64,
    inverse: Vec<Vec<f64>>,
}

/// A pivot smaller than this share of what the term was is none.
const ALIKE: f64 = 1e-10;

impl Regression {
    /// Ordinary least squares by the normal equations (Gauss and Jordan). None where there are
    /// too few, where a term is made of others, or a number is not finite.
    pub fn fit(observed: &[Observed]) -> Option<Self> {
        let terms = observed.first()?.beside.len();
        let sound = observed.iter().all(|o| o.beside.len() == terms && all_finite(&o.beside) && o.value.is_finite());
        let freedom = observed.len().checked_sub(terms).filter(|left| *left > 0)? as f64;
        if !sound || terms == 0 {
            return None;
        }
        let sum = |of: &dyn Fn(&Observed) -> f64| observed.iter().map(of).sum::<f64>();
        let at = |o: &Observed, i: usize| o.beside.get(i).copied().unwrap_or(0.0);
        let normal: Vec<Vec<f64>> =
            (0..terms).map(|i| (0..terms).map(|j| sum(&|o| at(o, i) * at(o, j))).collect()).collect();
        let right: Vec<f64> = (0..terms).map(|i| sum(&|o| at(o, i) * o.value)).collect();
        let inverse = inverted(normal)?;
        let terms: Vec<f64> = inverse.iter().map(|row| dot(row, &right)).collect();
        let residuals: Vec<f64> = observed.iter().map(|o| o.value - dot(&terms, &o.beside)).collect();
        let spread = (dot(&residuals, &residuals) / freedom).sqrt();
        all_finite(&terms).then_some(Self { terms, residuals, freedom, spread, inverse })
    }

    /// A sum of terms, so much of each.
    pub fn combined(&self, of: &[f64]) -> f64 {
        dot(&self.terms, of)
    }

    /// The standard error of that sum.
    pub fn error_of(&self, of: &[f64]) -> f64 {
        let inner: Vec<f64> = self.inverse.iter().map(|row| dot(row, of)).collect();
        self.spread * dot(&inner, of).max(0.0).sqrt()
    }

    /// How many standard errors hold a sum so surely, both ways (Student's t).
    pub fn reach(&self, confidence: f64) -> Option<f64> {
        super::student::two_sided_t(confidence, self.freedom)
    }

    /// The chance, to one side, of a sum so many standard errors below nothing.
    pub fn chance_below(&self, errors: f64) -> Option<f64> {
        Some(Student::of(self.freedom)?.below(errors))
    }
}

fn dot(one: &[f64], other: &[f64]) -> f64 {
    one.iter().zip(other).map(|(a, b)| a * b).sum()
}

fn inverted(mut left: Vec<Vec<f64>>) -> Option<Vec<Vec<f64>>> {
    let size = left.len();
    let mut right: Vec<Vec<f64>> =
        (0..size).map(|row| (0..size).map(|column| f64::from(u8::from(row == column))).collect()).collect();
    let scales: Vec<f64> = left.iter().enumerate().map(|(i, row)| row.get(i).copied().unwrap_or(0.0)).collect();
    for (column, scale) in scales.iter().enumerate() {
        let pivot = left
            .get(column)?
            .get(column)
            .copied()
            .filter(|pivot| *pivot > ALIKE * scale.abs().max(f64::MIN_POSITIVE))?;
        let own_left: Vec<f64> = left.get(column)?.iter().map(|cell| cell / pivot).collect();
        let own_right: Vec<f64> = right.get(column)?.iter().map(|cell| cell / pivot).collect();
        for (place, (l, r)) in left.iter_mut().zip(&mut right).enumerate() {
            if place == column {
                (*l, *r) = (own_left.clone(), own_right.clone());
                continue;
            }
            let factor = l.get(column).copied().unwrap_or(0.0);
            l.iter_mut().zip(&own_left).for_each(|(cell, own)| *cell -= factor * own);
            r.iter_mut().zip(&own_right).for_each(|(cell, own)| *cell -= factor * own);
        }
    }
    Some(right)
}
