//! Small matrices.

use super::curve::{form, Matrix, P};

/// Gauss and Jordan, with the greatest pivot.
pub(super) fn inverse(mut left: Matrix) -> Option<Matrix> {
    let mut right = [[0.0; P]; P];
    for (i, row) in right.iter_mut().enumerate() {
        row.iter_mut().skip(i).take(1).for_each(|cell| *cell = 1.0);
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

/// bread · meat · breadᵀ.
pub(super) fn sandwich(bread: Matrix, meat: Matrix) -> Matrix {
    let mut out = [[0.0; P]; P];
    for (line, left) in out.iter_mut().zip(&bread) {
        for (cell, right) in line.iter_mut().zip(&bread) {
            *cell = form(&meat, *left, *right);
        }
    }
    out
}
