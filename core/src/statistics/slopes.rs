//! Single slopes by their rank, out of all slopes between two points, without
//! making them all.
//!
//! How many slopes are below a line's is how many pairs change their order when
//! the points are sorted along that line, which a merge sort counts. A random
//! sample of slopes gives two lines that have the wanted rank between them and
//! little else; again between these; and when few slopes are left they are made
//! (Matoušek, "Randomized optimal algorithm for slope selection", Information
//! Processing Letters 1991;39:183-187; Dillencourt, Mount & Netanyahu, "A
//! randomized algorithm for slope selection", International Journal of
//! Computational Geometry & Applications 1992;2:1-27). Chance, from a generator
//! with a fixed seed, only decides how long it takes.
//!
//! Counting is done in whole numbers, so that ties are ties: places and values are
//! put on grids of powers of two, 120 places together, which holds whole days and
//! any values within 25 figures of each other without rounding.

use std::cmp::Ordering;

use super::{
    inversions::{count, sort_and_tell},
    Point,
};

/// Places of a grid for the two coordinates together, with room for a product.
const PLACES: i32 = 120;

/// A line to count slopes against, just above or just below the slope of a pair.
#[derive(Debug, Clone, Copy)]
struct Cut {
    rise: i128,
    run: i128,
    above: bool,
}

impl Cut {
    const LOWEST: Self = Self { rise: -1, run: 0, above: true };
    const HIGHEST: Self = Self { rise: 1, run: 0, above: false };

    /// Whether only one slope fits between the two.
    fn one_slope_to(self, high: Self) -> bool {
        self.run > 0 && high.run > 0 && self.rise * high.run == high.rise * self.run
    }
}

/// A point on both grids, and as it was.
#[derive(Debug, Clone, Copy)]
struct Spot {
    at: i128,
    height: i128,
    point: Point,
}

impl Spot {
    /// How high it lies above a line of this slope through the origin, times the run.
    fn over(&self, cut: Cut) -> i128 {
        self.height * cut.run - self.at * cut.rise
    }

    fn slope_to(&self, later: &Self) -> f64 {
        (later.point.value - self.point.value) / (later.point.at - self.point.at)
    }
}

/// The slopes between all pairs of points at different places.
pub(super) struct Slopes {
    spots: Vec<Spot>,
    pairs: u64,
}

/// Slopes of some pairs, with what makes a cut of them.
type Sample = Vec<(f64, Cut)>;

/// Where the wanted ranks lie, and how many slopes are below either end.
struct Between {
    low: Cut,
    high: Cut,
    below: u64,
    up_to: u64,
}

impl Slopes {
    /// Of points that are finite.
    pub(super) fn of(points: &[Point]) -> Self {
        let mut points = points.to_vec();
        points.sort_unstable_by(|a, b| a.at.total_cmp(&b.at).then(a.value.total_cmp(&b.value)));
        let (ats, places) = on_grid(points.iter().map(|point| point.at), PLACES / 2);
        let (heights, _) = on_grid(points.iter().map(|point| point.value), PLACES - places);
        let all = |n: usize| (n as u64) * (n as u64).saturating_sub(1) / 2;
        let together: u64 = points.chunk_by(|a, b| a.at == b.at).map(|group| all(group.len())).sum();
        let pairs = all(points.len()) - together;
        let spots = points.into_iter().zip(ats).zip(heights);
        Self { spots: spots.map(|((point, at), height)| Spot { at, height, point }).collect(), pairs }
    }

    /// How many there are.
    pub(super) fn pairs(&self) -> u64 {
        self.pairs
    }

    /// The slopes at these ranges of ranks, counted from 0: the first and the last
    /// of each. Ranges of one or two ranks are what this is made for.
    pub(super) fn at_ranks(&self, ranges: &[(u64, u64)]) -> Option<Vec<(f64, f64)>> {
        if self.pairs <= self.few() {
            let mut all = self.all();
            return ranges.iter().map(|range| pick(&mut all, *range, 0)).collect();
        }
        let mut chance = Chance(0);
        let sample = self.any(&mut chance);
        ranges.iter().map(|range| self.narrow(*range, sample.clone(), &mut chance)).collect()
    }

    /// So many are made rather than looked for.
    fn few(&self) -> u64 {
        (32 * self.spots.len() as u64).max(10_000)
    }

    fn all(&self) -> Vec<f64> {
        let mut all = Vec::new();
        let mut rest = self.spots.as_slice();
        while let Some((first, later)) = rest.split_first() {
            all.extend(later.iter().filter(|it| it.at > first.at).map(|it| first.slope_to(it)));
            rest = later;
        }
        all
    }

    fn sample_size(&self) -> u64 {
        4 * self.spots.len() as u64
    }

    /// Slopes of pairs drawn from all.
    fn any(&self, chance: &mut Chance) -> Sample {
        let n = self.spots.len() as u64;
        let mut spot = || self.spots.get(chance.below(n) as usize);
        (0..self.sample_size()).filter_map(|_| sampled(spot()?, spot()?)).collect()
    }

    fn narrow(&self, ranks: (u64, u64), first: Sample, chance: &mut Chance) -> Option<(f64, f64)> {
        let mut between = Between { low: Cut::LOWEST, high: Cut::HIGHEST, below: 0, up_to: self.pairs };
        let mut sample = first;
        loop {
            let inside = between.up_to - between.below;
            if inside <= self.few() {
                return pick(&mut self.inside(&between), ranks, between.below);
            }
            let last = sample.len().checked_sub(1)?;
            let share = (ranks.0 - between.below) as f64 / inside as f64;
            let place = share * last as f64;
            let reach = 3.0 * (sample.len() as f64 * share * (1.0 - share)).sqrt() + 2.0;
            let mut cuts = Vec::new();
            if place >= reach {
                cuts.push(Cut { above: false, ..nth(&mut sample, (place - reach) as usize)? });
            }
            if place + reach <= last as f64 {
                cuts.push(Cut { above: true, ..nth(&mut sample, (place + reach) as usize)? });
            }
            // Where one slope comes very often the ends may stay: then it is cut out by itself.
            let middle = nth(&mut sample, place as usize)?;
            for cut in cuts {
                if !self.cut(&mut between, cut, ranks) {
                    return self.apart(ranks, sample, chance);
                }
            }
            if between.up_to - between.below > inside / 2 {
                for above in [false, true] {
                    if !self.cut(&mut between, Cut { above, ..middle }, ranks) {
                        return self.apart(ranks, sample, chance);
                    }
                }
            }
            if between.low.one_slope_to(between.high) {
                let slope = self.one_of(&between)?;
                return Some((slope, slope));
            }
            sample = self.some_of(&between, chance);
        }
    }

    /// Each rank by itself, where a cut came between the two.
    fn apart(&self, ranks: (u64, u64), sample: Sample, chance: &mut Chance) -> Option<(f64, f64)> {
        let sample = if sample.len() as u64 * 2 < self.sample_size() { self.any(chance) } else { sample };
        let (low, _) = self.narrow((ranks.0, ranks.0), sample.clone(), chance)?;
        let (high, _) = self.narrow((ranks.1, ranks.1), sample, chance)?;
        Some((low, high))
    }

    /// Moves one end to a cut; `false` where the ranks lie on both sides of it.
    fn cut(&self, between: &mut Between, cut: Cut, ranks: (u64, u64)) -> bool {
        let over = self.spots.iter().map(|spot| spot.over(cut)).collect();
        let margin = i128::from(cut.above);
        // Points at one place are sorted by height, so only equal ones could count.
        let below = count(over, |later, earlier| *later < earlier + margin) - self.twins(cut);
        if below <= ranks.0 {
            if below >= between.below {
                (between.low, between.below) = (cut, below);
            }
        } else if below > ranks.1 {
            if below <= between.up_to {
                (between.high, between.up_to) = (cut, below);
            }
        } else {
            return false;
        }
        true
    }

    /// Pairs of equal points, which a cut that lies above counts though they have no slope.
    fn twins(&self, cut: Cut) -> u64 {
        if !cut.above {
            return 0;
        }
        let equal = self.spots.chunk_by(|a, b| a.at == b.at && a.height == b.height);
        equal.map(|group| group.len() as u64).map(|n| n * (n - 1) / 2).sum()
    }

    /// Calls `found` for the pairs between two cuts: for a point the points before it,
    /// in the order in which they lie along the lower cut.
    fn tell(&self, between: &Between, found: impl FnMut(&[(i128, &Spot)], &(i128, &Spot))) {
        let mut order: Vec<(i128, &Spot)> = self.spots.iter().map(|spot| (spot.over(between.low), spot)).collect();
        // Stable, so that points at one place stay as they are, lower ones first.
        order.sort_by(|a, b| {
            a.0.cmp(&b.0).then(match between.low.above {
                true => b.1.at.cmp(&a.1.at),
                false => a.1.at.cmp(&b.1.at),
            })
        });
        for item in &mut order {
            item.0 = item.1.over(between.high);
        }
        let on_the_line = |later: &Spot, earlier: &Spot| between.high.above && later.at > earlier.at;
        let is_below = |later: &(i128, &Spot), earlier: &(i128, &Spot)| {
            later.0 < earlier.0 || (later.0 == earlier.0 && on_the_line(later.1, earlier.1))
        };
        sort_and_tell(&mut order, is_below, found);
    }

    fn inside(&self, between: &Between) -> Vec<f64> {
        let mut slopes = Vec::new();
        self.tell(between, |before, spot| {
            slopes.extend(before.iter().map(|it| it.1.slope_to(spot.1)));
        });
        slopes
    }

    fn one_of(&self, between: &Between) -> Option<f64> {
        let mut one = None;
        self.tell(between, |before, spot| {
            one = one.or_else(|| before.first().map(|it| it.1.slope_to(spot.1)));
        });
        one
    }

    /// Slopes of pairs drawn from those between two cuts.
    fn some_of(&self, between: &Between, chance: &mut Chance) -> Sample {
        let inside = between.up_to - between.below;
        let mut wanted: Vec<u64> = (0..self.sample_size()).map(|_| chance.below(inside)).collect();
        wanted.sort_unstable();
        let mut wanted = wanted.into_iter().peekable();
        let (mut sample, mut seen) = (Vec::new(), 0);
        self.tell(between, |before, spot| {
            let upto = seen + before.len() as u64;
            while let Some(rank) = wanted.next_if(|rank| *rank < upto) {
                let other = before.get((rank - seen) as usize);
                sample.extend(other.and_then(|other| sampled(other.1, spot.1)));
            }
            seen = upto;
        });
        sample
    }
}

fn sampled(one: &Spot, other: &Spot) -> Option<(f64, Cut)> {
    let (first, later) = match one.at.cmp(&other.at) {
        Ordering::Less => (one, other),
        Ordering::Greater => (other, one),
        Ordering::Equal => return None,
    };
    let cut = Cut { rise: later.height - first.height, run: later.at - first.at, above: false };
    Some((first.slope_to(later), cut))
}

fn nth(sample: &mut Sample, place: usize) -> Option<Cut> {
    (place < sample.len()).then(|| sample.select_nth_unstable_by(place, |a, b| a.0.total_cmp(&b.0)).1 .1)
}

/// The values at two ranks, of which so many are below all that are given.
fn pick(slopes: &mut [f64], ranks: (u64, u64), below: u64) -> Option<(f64, f64)> {
    let mut nth = |rank: u64| {
        let place = usize::try_from(rank.checked_sub(below)?).ok()?;
        (place < slopes.len()).then(|| *slopes.select_nth_unstable_by(place, f64::total_cmp).1)
    };
    Some((nth(ranks.0)?, nth(ranks.1)?))
}

/// Whole numbers in proportion to the values, and how many places they take: as
/// many as the values need, but no more than the given number.
fn on_grid(values: impl Iterator<Item = f64> + Clone, most: i32) -> (Vec<i128>, i32) {
    let used = values.clone().map(taken_apart).filter(|(figures, _)| *figures != 0);
    let length = |figures: i64| (i64::BITS - figures.unsigned_abs().leading_zeros()) as i32;
    let top = used.clone().map(|(figures, power)| power + length(figures)).max().unwrap_or(0);
    let unit = used.map(|(_, power)| power).min().unwrap_or(0).max(top - most);
    let on = |(figures, power): (i64, i32)| match power - unit {
        up @ 0.. => i128::from(figures) << up.min(most),
        down @ -62..=-1 => (i128::from(figures) + (1_i128 << (-down - 1))) >> -down,
        _ => 0,
    };
    (values.map(taken_apart).map(on).collect(), top - unit)
}

/// A finite value as an odd whole number times a power of two; nothing as 0.
fn taken_apart(value: f64) -> (i64, i32) {
    let bits = value.to_bits();
    let raised = ((bits >> 52) & 0x7ff) as i32;
    let fraction = (bits & ((1 << 52) - 1)) as i64;
    let (figures, power) = if raised == 0 { (fraction, -1074) } else { (fraction | 1 << 52, raised - 1075) };
    let even = if figures == 0 { 0 } else { figures.trailing_zeros() };
    let odd = figures >> even;
    (if value < 0.0 { -odd } else { odd }, power + even as i32)
}

/// SplitMix64 (Steele, Lea & Flood 2014).
struct Chance(u64);

impl Chance {
    /// A whole number under a limit, near enough evenly.
    fn below(&mut self, limit: u64) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        let wide = u128::from(mixed ^ (mixed >> 31)) * u128::from(limit);
        (wide >> 64) as u64
    }
}

#[cfg(test)]
mod tests {
    use super::{on_grid, taken_apart, Slopes};
    use crate::statistics::Point;

    fn points(values: impl IntoIterator<Item = (f64, f64)>) -> Vec<Point> {
        values.into_iter().map(|(at, value)| Point { at, value }).collect()
    }

    /// Every slope, in order.
    fn all(points: &[Point]) -> Vec<f64> {
        let mut all = Slopes::of(points).all();
        all.sort_unstable_by(f64::total_cmp);
        all
    }

    fn hold(points: &[Point]) {
        let (slopes, all) = (Slopes::of(points), all(points));
        assert_eq!(slopes.pairs(), all.len() as u64);
        let n = all.len() as u64;
        assert!(n > slopes.few(), "this is to be looked for, not made");
        for rank in [0, 1, n / 50, n / 3, n / 2 - 1, n / 2, n - n / 7, n - 1] {
            let last = (rank + 1).min(n - 1);
            let found = slopes.at_ranks(&[(rank, last)]).unwrap();
            assert_eq!(found, vec![(all[rank as usize], all[last as usize])], "rank {rank} of {n}");
        }
    }

    #[test]
    fn slopes_that_are_all_different() {
        hold(&points((0..400).map(|i| (f64::from(i), (f64::from(i) * 0.7).sin() * 100.0 + f64::from(i * i % 17)))));
    }

    #[test]
    fn slopes_that_come_again_and_again() {
        hold(&points((0..400).map(|i| (f64::from(i), f64::from(i * i % 7)))));
        hold(&points((0..400).map(|i| (f64::from(i), f64::from(i / 2)))));
        hold(&points((0..400).map(|i| (f64::from(i), if i < 300 { 5.0 } else { 7.5 }))));
        hold(&points((0..400).map(|i| (f64::from(i), 3.0))));
    }

    #[test]
    fn points_at_one_place_and_points_that_are_equal() {
        hold(&points((0..600).map(|i| (f64::from(i / 3), f64::from(i * 31 % 11)))));
        hold(&points((0..600).map(|i| (f64::from(i / 300), f64::from(i % 5)))));
    }

    #[test]
    fn places_with_gaps_and_parts() {
        hold(&points((0..400).map(|i| (f64::from(i * i) / 7.0, f64::from(i * 37 % 101) / 3.0))));
    }

    #[test]
    fn the_grid_takes_every_value_as_it_is() {
        assert_eq!(on_grid([0.75, -3.0, 0.0].into_iter(), 60), (vec![3, -12, 0], 4));
        assert_eq!(taken_apart(-12.0), (-3, 2));
        assert_eq!(taken_apart(5e-324), (1, -1074));
        // One that is too small for it is nothing.
        assert_eq!(on_grid([1.0, 1e-30].into_iter(), 60), (vec![1 << 59, 0], 60));
    }
}
