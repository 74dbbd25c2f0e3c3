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

use super::{inversions::sort_and_tell, Point};

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
    const LOWEST: Self = Self { rise: -1, run: 0, above: false };
    const HIGHEST: Self = Self { rise: 1, run: 0, above: false };

    /// Whether only one slope fits between the two.
    fn one_slope_to(self, high: Self) -> bool {
        self.run > 0 && high.run > 0 && self.rise * high.run == high.rise * self.run
    }
}

/// A point on both grids.
#[derive(Debug, Clone, Copy)]
struct Spot {
    at: i128,
    height: i128,
}

impl Spot {
    /// How high it lies above a line of this slope through the origin, times the run.
    fn over(&self, cut: Cut) -> i128 {
        self.height * cut.run - self.at * cut.rise
    }
}

/// A point, and nearly how high it lies above a line.
#[derive(Debug, Clone, Copy)]
struct Item {
    over: f64,
    point: usize,
}

/// The slopes between all pairs of points at different places.
pub(super) struct Slopes {
    points: Vec<Point>,
    spots: Vec<Spot>,
    /// Place and height of the spots again, rounded.
    nearly: Vec<(f64, f64)>,
    pairs: u64,
    /// The greatest place and height on the grids, either way.
    farthest: (f64, f64),
}

/// Slopes of some pairs, and the earlier and the later point of each.
type Sample = Vec<(f64, u32, u32)>;

/// Where the wanted ranks lie, and how many slopes are below either end.
#[derive(Clone)]
struct Between {
    low: Cut,
    high: Cut,
    below: u64,
    up_to: u64,
    /// The points as they lie along the lower end.
    order: Vec<Item>,
    /// The slopes themselves, where they were few when the upper end was found.
    made: Option<Vec<f64>>,
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
        let farthest = |of: &[i128]| of.iter().map(|it| it.unsigned_abs()).max().unwrap_or(0) as f64;
        let farthest = (farthest(&ats), farthest(&heights));
        let spots: Vec<Spot> = ats.into_iter().zip(heights).map(|(at, height)| Spot { at, height }).collect();
        let nearly = spots.iter().map(|spot| (spot.at as f64, spot.height as f64)).collect();
        Self { points, spots, nearly, pairs, farthest }
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
        let order = (0..self.points.len()).map(|point| Item { over: 0.0, point }).collect();
        let (low, high) = (Cut::LOWEST, Cut::HIGHEST);
        let mut between = Between { low, high, below: 0, up_to: self.pairs, order, made: None };
        let mut sample = self.any(&mut chance);
        // What surrounds all of them first, which is little more than what surrounds one.
        let first = ranges.iter().map(|range| range.0).min()?;
        let last = ranges.iter().map(|range| range.1).max()?;
        for cut in self.around(&between, &mut sample, (first, last))? {
            self.cut(&mut between, cut, (first, last));
        }
        let mut sample = self.some_of(&between, &mut chance);
        ranges.iter().map(|range| self.narrow(*range, between.clone(), &mut sample, &mut chance)).collect()
    }

    /// So many are made rather than looked for.
    fn few(&self) -> u64 {
        (8 * self.points.len() as u64).max(10_000)
    }

    fn sample_size(&self) -> u64 {
        2 * self.points.len() as u64
    }

    fn all(&self) -> Vec<f64> {
        let mut all = Vec::new();
        let mut rest = self.points.as_slice();
        while let Some((first, later)) = rest.split_first() {
            all.extend(later.iter().filter(|it| it.at > first.at).map(|it| slope(first, it)));
            rest = later;
        }
        all
    }

    /// Slopes of pairs drawn from all.
    fn any(&self, chance: &mut Chance) -> Sample {
        let n = self.points.len() as u64;
        let mut two = || (chance.below(n) as usize, chance.below(n) as usize);
        let draw = |_| {
            let (one, other) = two();
            self.sampled(one.min(other), one.max(other))
        };
        (0..self.sample_size()).filter_map(draw).collect()
    }

    /// Nothing where both lie at one place.
    fn sampled(&self, earlier: usize, later: usize) -> Option<(f64, u32, u32)> {
        let (first, second) = (self.points.get(earlier)?, self.points.get(later)?);
        let found = (slope(first, second), u32::try_from(earlier).ok()?, u32::try_from(later).ok()?);
        (first.at < second.at).then_some(found)
    }

    /// The slope of a sample at a place in order.
    fn nth(&self, sample: &mut Sample, place: usize) -> Option<Cut> {
        if place >= sample.len() {
            return None;
        }
        let (_, (_, earlier, later), _) = sample.select_nth_unstable_by(place, |a, b| a.0.total_cmp(&b.0));
        let (first, second) = (self.spots.get(*earlier as usize)?, self.spots.get(*later as usize)?);
        Some(Cut { rise: second.height - first.height, run: second.at - first.at, above: false })
    }

    /// Cuts that very likely have the ranks between them, and little more.
    fn around(&self, between: &Between, sample: &mut Sample, ranks: (u64, u64)) -> Option<Vec<Cut>> {
        let inside = (between.up_to - between.below) as f64;
        let last = sample.len().checked_sub(1)? as f64;
        let place = |rank: u64| {
            let share = (rank - between.below) as f64 / inside;
            (share * last, 3.0 * (last * share * (1.0 - share)).sqrt() + 2.0)
        };
        let ((first, before), (second, after)) = (place(ranks.0), place(ranks.1));
        let mut cuts = Vec::new();
        if first >= before {
            cuts.push(Cut { above: false, ..self.nth(sample, (first - before) as usize)? });
        }
        if second + after <= last {
            cuts.push(Cut { above: true, ..self.nth(sample, (second + after) as usize)? });
        }
        Some(cuts)
    }

    fn narrow(
        &self,
        ranks: (u64, u64),
        mut between: Between,
        given: &mut Sample,
        chance: &mut Chance,
    ) -> Option<(f64, f64)> {
        let mut own: Option<Sample> = None;
        loop {
            let sample = own.as_mut().unwrap_or(&mut *given);
            let inside = between.up_to - between.below;
            if inside <= self.few() {
                let below = between.below;
                return pick(&mut self.inside(between), ranks, below);
            }
            let whole = between.clone();
            let mut cuts = self.around(&between, sample, ranks)?;
            if !cuts.iter().all(|cut| self.cut(&mut between, *cut, ranks)) {
                return self.apart(ranks, whole, sample, chance);
            }
            if between.up_to - between.below > inside / 2 {
                // The ends may stay where one slope comes very often: it is cut out by itself then.
                let share = (ranks.0 - whole.below) as f64 / inside as f64;
                let place = (share * (sample.len() - 1) as f64) as usize;
                let middle = self.nth(sample, place)?;
                cuts = [false, true].map(|above| Cut { above, ..middle }).to_vec();
                if !cuts.iter().all(|cut| self.cut(&mut between, *cut, ranks)) {
                    return self.apart(ranks, whole, sample, chance);
                }
            }
            if between.low.one_slope_to(between.high) {
                let slope = self.one_of(&between)?;
                return Some((slope, slope));
            }
            if between.up_to - between.below > self.few() {
                own = Some(self.some_of(&between, chance));
            }
        }
    }

    /// Each rank by itself, where a cut came between the two.
    fn apart(&self, ranks: (u64, u64), whole: Between, sample: &mut Sample, chance: &mut Chance) -> Option<(f64, f64)> {
        let (low, _) = self.narrow((ranks.0, ranks.0), whole.clone(), sample, chance)?;
        let (high, _) = self.narrow((ranks.1, ranks.1), whole, sample, chance)?;
        Some((low, high))
    }

    /// Moves one end to a cut; `false` where ranks lie on both sides of it.
    fn cut(&self, between: &mut Between, cut: Cut, ranks: (u64, u64)) -> bool {
        let few = between.below + self.few();
        let (mut below, mut made) = (between.below, Vec::new());
        let order = self.sort_along(cut, &between.order, |before, item| {
            below += before.len() as u64;
            // A cut from above may be the last.
            if cut.above && below <= few {
                self.make(before, item, &mut made);
            }
        });
        if below <= ranks.0 {
            (between.low, between.below, between.order, between.made) = (cut, below, order, None);
        } else if below > ranks.1 {
            (between.high, between.up_to, between.made) = (cut, below, (below <= few && cut.above).then_some(made));
        }
        below <= ranks.0 || below > ranks.1
    }

    /// Sorts the points along a cut. Calls `found` with each point that thereby comes
    /// before others, and these: they are the pairs whose slope lies below the cut and
    /// not below the one along which the points lay before.
    ///
    /// The order is that of whole numbers. Floating point decides where it can't be
    /// wrong: each height is off by less than five roundings of its terms.
    fn sort_along(&self, cut: Cut, order: &[Item], found: impl FnMut(&[Item], &Item)) -> Vec<Item> {
        let slope = if cut.run == 0 { f64::INFINITY } else { cut.rise as f64 / cut.run as f64 };
        let place = |item: &Item| {
            let over = self.nearly.get(item.point).map_or(0.0, |(at, height)| height - slope * at);
            Item { over, ..*item }
        };
        let mut items: Vec<Item> = order.iter().map(place).collect();
        let doubt = 16.0 * f64::EPSILON * (self.farthest.1 + slope.abs() * self.farthest.0);
        let is_below = |later: &Item, earlier: &Item| {
            let apart = later.over - earlier.over;
            if apart.abs() > doubt {
                apart < 0.0
            } else {
                self.is_below(cut, later.point, earlier.point)
            }
        };
        sort_and_tell(&mut items, is_below, found);
        items
    }

    /// Whether a later point lies below an earlier one along a cut. Points on a line of the
    /// cut's slope are turned round where the cut lies above it.
    #[cold]
    #[inline(never)]
    fn is_below(&self, cut: Cut, later: usize, earlier: usize) -> bool {
        match (self.spots.get(later), self.spots.get(earlier)) {
            (Some(later), Some(earlier)) => match (later.over(cut) - earlier.over(cut), cut.above) {
                (0, true) => later.at > earlier.at,
                (0, false) => later.at < earlier.at,
                (apart, _) => apart < 0,
            },
            _ => false,
        }
    }

    fn inside(&self, between: Between) -> Vec<f64> {
        between.made.unwrap_or_else(|| {
            let mut slopes = Vec::new();
            self.sort_along(between.high, &between.order, |before, item| self.make(before, item, &mut slopes));
            slopes
        })
    }

    /// The slopes from each of these points to another.
    #[inline(never)]
    fn make(&self, before: &[Item], item: &Item, slopes: &mut Vec<f64>) {
        if let Some(later) = self.points.get(item.point) {
            let earlier = before.iter().filter_map(|it| self.points.get(it.point));
            slopes.extend(earlier.map(|earlier| slope(earlier, later)));
        }
    }

    fn one_of(&self, between: &Between) -> Option<f64> {
        let mut one = None;
        self.sort_along(between.high, &between.order, |before, item| {
            one = one.or_else(|| self.sampled(before.first()?.point, item.point));
        });
        one.map(|(slope, ..)| slope)
    }

    /// Slopes of pairs drawn from those between two cuts.
    fn some_of(&self, between: &Between, chance: &mut Chance) -> Sample {
        let inside = between.up_to - between.below;
        // One out of every run of equal length: as good as any, and in order already.
        let step = (inside / self.sample_size()).max(1);
        let mut wanted = (0..inside / step).map(|run| run * step + chance.below(step)).peekable();
        let (mut sample, mut seen) = (Vec::new(), 0);
        self.sort_along(between.high, &between.order, |before, item| {
            let upto = seen + before.len() as u64;
            while let Some(rank) = wanted.next_if(|rank| *rank < upto) {
                let earlier = before.get((rank - seen) as usize);
                sample.extend(earlier.and_then(|earlier| self.sampled(earlier.point, item.point)));
            }
            seen = upto;
        });
        sample
    }
}

fn slope(earlier: &Point, later: &Point) -> f64 {
    (later.value - earlier.value) / (later.at - earlier.at)
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
