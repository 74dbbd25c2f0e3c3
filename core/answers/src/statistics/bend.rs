//! Where a level series begins to go straight up or down.

use super::point::{all_finite, Point};
use super::student::two_sided_t;

/// A bend: level before it, straight after it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bend {
    /// Where, likeliest.
    pub at: f64,
    /// The first place where it may well have been.
    pub earliest: f64,
    /// The last.
    pub latest: f64,
    /// The level before it.
    pub level: f64,
    /// The gain after it, for each unit of the place.
    pub slope: f64,
    /// The sum of squares that it leaves.
    pub squares: f64,
}

/// Points to either side of a bend that it takes to be one.
const EACH_SIDE: usize = 3;

/// The bend of a series: least squares of y = a + b · max(0, x − τ), τ at each of the whole
/// places from the first point on (Hinkley, "Inference in two-phase regression", JASA
/// 1971;66:736-743; from memory).
///
/// The range holds every τ whose squares are within t² s² of the least, t two-sided Student's
/// of n − 3 degrees of freedom (Feder, "On asymptotic distribution theory in segmented
/// regression problems", Ann Stat 1975;3:49-83: where the two parts meet, as they do here, the
/// likelihood ratio is asymptotically χ² of one degree; from memory). Where neighbours resemble
/// each other the bound is multiplied by `variance_inflation`.
///
/// A range that begins at the first point says that the whole series may well go straight.
/// None of fewer than seven points, or where nothing is finite.
pub fn bend(points: &[Point], confidence: f64, variance_inflation: f64) -> Option<Bend> {
    let n = points.len();
    let (first, last) = (points.first()?.at, points.get(n.checked_sub(EACH_SIDE)?)?.at);
    let values: Vec<f64> = points.iter().flat_map(|p| [p.at, p.value]).collect();
    let places = 0.0..=MOST_PLACES;
    if n < 2 * EACH_SIDE + 1 || !all_finite(&values) || first == last || !places.contains(&(last - first)) {
        return None;
    }
    let places = (0..).map(|step| first + f64::from(step)).take_while(|at| *at <= last);
    let fits: Vec<Bend> = places.filter_map(|at| fit(points, at)).collect();
    let best = fits.iter().copied().min_by(|a, b| a.squares.total_cmp(&b.squares))?;
    let freedom = (n - 3) as f64;
    let t = two_sided_t(confidence, freedom)?;
    let bound = best.squares * (1.0 + t * t * variance_inflation.max(1.0) / freedom);
    let may_be = |fit: &&Bend| fit.squares <= bound;
    let earliest = fits.iter().find(may_be)?.at;
    let latest = fits.iter().rev().find(may_be)?.at;
    Some(Bend { earliest, latest, ..best })
}

/// Ten years of days: no series is longer.
const MOST_PLACES: f64 = 4000.0;

/// With the bend at one place: what fits best, and the squares that it leaves.
fn fit(points: &[Point], at: f64) -> Option<Bend> {
    let n = points.len() as f64;
    let after = |p: &Point| (p.at - at).max(0.0);
    let mean_x = points.iter().map(after).sum::<f64>() / n;
    let mean_y = points.iter().map(|p| p.value).sum::<f64>() / n;
    let xx: f64 = points.iter().map(|p| (after(p) - mean_x).powi(2)).sum();
    let xy: f64 = points.iter().map(|p| (after(p) - mean_x) * (p.value - mean_y)).sum();
    let slope = if xx > 0.0 { xy / xx } else { return None };
    let level = mean_y - slope * mean_x;
    let squares: f64 = points.iter().map(|p| (p.value - level - slope * after(p)).powi(2)).sum();
    squares.is_finite().then_some(Bend { at, earliest: at, latest: at, level, slope, squares })
}
