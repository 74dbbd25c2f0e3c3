//! A line through a few points, level before the first and after the last.

/// The height at a place along it.
pub(super) fn along(points: &[(f64, f64)], place: f64) -> f64 {
    let mut before: Option<(f64, f64)> = None;
    for &(x, y) in points {
        match before {
            _ if place > x => before = Some((x, y)),
            Some((x0, y0)) => return y0 + (y - y0) * (place - x0) / (x - x0),
            None => return y,
        }
    }
    before.map_or(0.0, |(_, y)| y)
}

#[cfg(test)]
mod tests {
    use super::along;

    #[test]
    fn it_is_level_outside_and_straight_between() {
        let points = [(1.0, 10.0), (3.0, 20.0), (4.0, 0.0)];
        assert_eq!(along(&points, 0.0), 10.0);
        assert_eq!(along(&points, 2.0), 15.0);
        assert_eq!(along(&points, 3.0), 20.0);
        assert_eq!(along(&points, 9.0), 0.0);
    }
}
