//! Least squares of a few dozen unknowns.

/// The normal equations, as far as they are known.
pub(super) struct Squares {
    size: usize,
    matrix: Vec<f64>,
    right: Vec<f64>,
}

/// What keeps an unknown that nothing speaks of at nothing.
const RIDGE: f64 = 1e-9;

impl Squares {
    pub(super) fn of(size: usize) -> Self {
        let mut matrix = vec![0.0; size * size];
        matrix.iter_mut().step_by(size + 1).for_each(|value| *value = RIDGE);
        Self { size, matrix, right: vec![0.0; size] }
    }

    /// That some unknowns, each times its share, come to a value; None is one that is nothing.
    pub(super) fn take(&mut self, terms: &[(Option<usize>, f64)], value: f64, weight: f64) {
        let known = || terms.iter().filter_map(|(at, share)| Some(((*at)?, *share)));
        for (row, share) in known() {
            if let Some(right) = self.right.get_mut(row) {
                *right += weight * share * value;
            }
            for (column, other) in known() {
                if let Some(cell) = self.matrix.get_mut(row * self.size + column) {
                    *cell += weight * share * other;
                }
            }
        }
    }

    /// The unknowns, by Cholesky's decomposition (Golub & Van Loan, Matrix Computations, 4.2).
    pub(super) fn solved(mut self) -> Option<Vec<f64>> {
        let n = self.size;
        for row in 0..n {
            for column in 0..=row {
                let known: f64 = (0..column).map(|k| self.cell(row, k) * self.cell(column, k)).sum();
                let left = self.cell(row, column) - known;
                let value = if row == column { left.sqrt() } else { left / self.cell(column, column) };
                if !value.is_finite() || (row == column && value <= 0.0) {
                    return None;
                }
                *self.matrix.get_mut(row * n + column)? = value;
            }
        }
        for row in 0..n {
            let known: f64 = (0..row).map(|k| self.cell(row, k) * self.at(k)).sum();
            *self.right.get_mut(row)? = (self.at(row) - known) / self.cell(row, row);
        }
        for row in (0..n).rev() {
            let known: f64 = (row + 1..n).map(|k| self.cell(k, row) * self.at(k)).sum();
            *self.right.get_mut(row)? = (self.at(row) - known) / self.cell(row, row);
        }
        Some(self.right)
    }

    fn cell(&self, row: usize, column: usize) -> f64 {
        self.matrix.get(row * self.size + column).copied().unwrap_or(0.0)
    }

    fn at(&self, row: usize) -> f64 {
        self.right.get(row).copied().unwrap_or(0.0)
    }
}

#[cfg(test)]
mod tests {
    use super::Squares;

    #[test]
    fn three_points_on_no_line_have_the_line_between_them() {
        // y = a + b x through (0, 1), (1, 3), (2, 4), worked out by hand: a = 7/6, b = 3/2.
        let mut squares = Squares::of(2);
        for (x, y) in [(0.0, 1.0), (1.0, 3.0), (2.0, 4.0)] {
            squares.take(&[(Some(0), 1.0), (Some(1), x), (None, 5.0)], y, 1.0);
        }
        let found = squares.solved().unwrap();
        assert!((found[0] - 7.0 / 6.0).abs() < 1e-6 && (found[1] - 1.5).abs() < 1e-6, "{found:?}");
    }
}
