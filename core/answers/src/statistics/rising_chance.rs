//! A chance that never falls as something rises, from yes and no.

use super::normal::below;
use super::point::all_finite;
use super::rising::rising;

/// At a place it was yes or no.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Answered {
    /// The place.
    pub at: f64,
    /// Yes.
    pub yes: bool,
    /// How much it counts.
    pub weight: f64,
}

/// A chance that rises over places.
#[derive(Debug, Clone, PartialEq)]
pub struct RisingChance {
    /// Places in order, each with its chance.
    pub curve: Vec<(f64, f64)>,
    /// Where chance meets what was asked for, and how likely it is that it does by there: places
    /// in order with their share, together all.
    crossing: Vec<(f64, f64)>,
}

/// Beside what was answered stand so many answers of the smooth law.
const LENT: f64 = 12.0;
/// The smooth law's middles lie this many to the range of places, and beyond by as much again.
const MIDDLES: usize = 60;
/// Its spreads, in the least width that is told apart.
const SPREADS: [f64; 5] = [0.5, 1.0, 2.0, 4.0, 8.0];
/// And what is answered yes for no cause.
const FLOORS: [f64; 3] = [0.005, 0.03, 0.1];

/// One law: a middle, a spread, a floor.
#[derive(Debug, Clone, Copy)]
struct Law {
    middle: f64,
    spread: f64,
    floor: f64,
}

impl Law {
    fn chance(&self, at: f64) -> f64 {
        self.floor + (1.0 - self.floor) * below((at - self.middle) / self.spread)
    }

    /// Where it meets a chance; far below where its floor is over it.
    fn meets(&self, chance: f64) -> f64 {
        let over = (chance - self.floor) / (1.0 - self.floor);
        match over > 0.0 {
            true => self.middle + self.spread * super::normal::at_below(over),
            false => f64::NEG_INFINITY,
        }
    }
}

impl RisingChance {
    /// Fits a rising chance; `width` is what two places must differ by to be told apart, and
    /// `chance` the one whose place is asked for.
    ///
    /// Two steps. Laws of a normal tolerance (Finney, Probit Analysis, 1971: middle, spread, and
    /// a floor of answers that have another cause), each weighed by how well it fits, make a
    /// smooth curve and say where it meets the chance. That curve lends a dozen answers, spread
    /// over the places as the answers are, and the rising values nearest to both are taken (pool
    /// adjacent violators; for such data the likeliest rising chance: Ayer et al., Annals of
    /// Mathematical Statistics 1955;26:641-647). Between pools it runs straight from middle to
    /// middle (Oron & Flournoy, Statistics in Biopharmaceutical Research 2017;9:258-267). So a
    /// few answers follow the law, and many follow themselves.
    pub fn fit(answered: &[Answered], width: f64, chance: f64) -> Option<Self> {
        let places = gathered(answered)?;
        let (low, high) = (places.first()?.at, places.last()?.at);
        if !(width > 0.0 && width.is_finite() && chance > 0.0 && chance < 1.0) {
            return None;
        }
        let reach = (high - low).max(4.0 * width);
        let step = 3.0 * reach / MIDDLES as f64;
        let middles = (0..=MIDDLES).map(|i| step.mul_add(i as f64, low - reach));
        let laws: Vec<Law> = middles
            .flat_map(|middle| {
                SPREADS.iter().flat_map(move |spread| {
                    FLOORS.iter().map(move |floor| Law { middle, spread: spread * width, floor: *floor })
                })
            })
            .collect();
        let fits: Vec<f64> = laws.iter().map(|law| likelihood(law, &places)).collect();
        let best = fits.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let weights: Vec<f64> = fits.iter().map(|fit| (fit - best).exp()).collect();
        let all: f64 = weights.iter().sum();
        let smooth = |at: f64| laws.iter().zip(&weights).map(|(law, w)| w * law.chance(at)).sum::<f64>() / all;
        let mut crossing: Vec<(f64, f64)> =
            laws.iter().zip(&weights).map(|(law, weight)| (law.meets(chance), weight / all)).collect();
        crossing.sort_unstable_by(|a, b| a.0.total_cmp(&b.0));
        Some(Self { curve: drawn(&places, smooth), crossing })
    }

    /// Where the curve meets a chance, between the places that were answered at; none where it
    /// lies over it from the first, or under it to the last.
    pub fn meets(&self, chance: f64) -> Option<f64> {
        let over = self.curve.iter().position(|(_, height)| *height > chance)?;
        let (at, height) = self.curve.get(over)?;
        let (before, lower) = self.curve.get(over.checked_sub(1)?)?;
        let share = if height > lower { (chance - lower) / (height - lower) } else { 1.0 };
        Some(before + (at - before) * share.clamp(0.0, 1.0))
    }

    /// The place under which, by the laws, the asked chance is met so likely. May lie beyond
    /// what was answered at.
    pub fn met_by(&self, likely: f64) -> Option<f64> {
        let mut so_far = 0.0;
        self.crossing.iter().find_map(|(at, share)| {
            so_far += share;
            (so_far >= likely).then_some(*at)
        })
    }

    /// The chance at a place: that of the nearest where it lies outside.
    pub fn chance_at(&self, at: f64) -> Option<f64> {
        let above = self.curve.partition_point(|(place, _)| *place < at);
        match (above.checked_sub(1).and_then(|i| self.curve.get(i)), self.curve.get(above)) {
            (Some((low, from)), Some((high, to))) if high > low => Some(from + (to - from) * (at - low) / (high - low)),
            (_, Some((_, height))) | (Some((_, height)), None) => Some(*height),
            (None, None) => None,
        }
    }
}

/// What was answered at one place.
#[derive(Debug, Clone, Copy)]
struct Place {
    at: f64,
    yes: f64,
    all: f64,
}

fn gathered(answered: &[Answered]) -> Option<Vec<Place>> {
    let sound = |a: &Answered| all_finite(&[a.at, a.weight]) && a.weight > 0.0;
    if answered.is_empty() || !answered.iter().all(sound) {
        return None;
    }
    let mut ordered = answered.to_vec();
    ordered.sort_unstable_by(|a, b| a.at.total_cmp(&b.at));
    let places = ordered.chunk_by(|a, b| a.at == b.at).filter_map(|same| {
        let yes = same.iter().filter(|a| a.yes).map(|a| a.weight).sum();
        Some(Place { at: same.first()?.at, yes, all: same.iter().map(|a| a.weight).sum() })
    });
    Some(places.collect())
}

fn likelihood(law: &Law, places: &[Place]) -> f64 {
    let of = |place: &Place| {
        let chance = law.chance(place.at).clamp(1e-9, 1.0 - 1e-9);
        place.yes * chance.ln() + (place.all - place.yes) * (1.0 - chance).ln()
    };
    places.iter().map(of).sum()
}

/// The rising curve through what was answered and what the smooth law lends.
fn drawn(places: &[Place], smooth: impl Fn(f64) -> f64) -> Vec<(f64, f64)> {
    let answers: f64 = places.iter().map(|place| place.all).sum();
    let lent = LENT / answers;
    let values: Vec<(f64, f64)> = places
        .iter()
        .map(|place| {
            let weight = place.all * (1.0 + lent);
            ((place.yes + lent * place.all * smooth(place.at)) / weight, weight)
        })
        .collect();
    let heights = rising(&values);
    let each: Vec<(f64, f64, f64)> =
        places.iter().zip(heights).map(|(place, height)| (place.at, height, place.all)).collect();
    let mut curve: Vec<(f64, f64)> = Vec::with_capacity(each.len() + 2);
    for pool in each.chunk_by(|a, b| a.1 == b.1) {
        let weight: f64 = pool.iter().map(|(_, _, weight)| weight).sum();
        let middle = pool.iter().map(|(at, _, weight)| at * weight).sum::<f64>() / weight;
        curve.extend(pool.first().map(|(_, height, _)| (middle, *height)));
    }
    // To both ends, as high as the pool there.
    if let (Some(first), Some(head)) = (each.first(), curve.first().copied()) {
        if first.0 < head.0 {
            curve.insert(0, (first.0, head.1));
        }
    }
    if let (Some(last), Some(tail)) = (each.last(), curve.last().copied()) {
        if last.0 > tail.0 {
            curve.push((last.0, tail.1));
        }
    }
    curve
}
