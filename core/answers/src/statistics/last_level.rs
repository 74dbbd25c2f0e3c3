//! Where a series stands now: the level since it last changed, and when that was.
//!
//! A series is cut into levels at unknown places, each day a change with the same small
//! chance; all ways to cut it are summed exactly (Barry and Hartigan, JASA 1993;88:309-319;
//! Fearnhead and Liu, J R Stat Soc B 2007;69:589-605; known as Bayesian on-line change
//! points: Adams and MacKay, arXiv:0710.3742, 2007). Beside it stands a straight line; the
//! two are weighed by their evidence (Hoeting, Madigan, Raftery and Volinsky, Statistical
//! Science 1999;14:382-401). Neighbours resemble each other (an autoregression of the first
//! order), and how much, and how they spread, is summed over a grid.

use super::{mean, median, TO_SIGMA};

/// One value of the series.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Value {
    /// Where it lies, a whole number; values are in order, and no two at one place.
    pub at: f64,
    /// The value.
    pub value: f64,
    /// Variance that this one has beside what all have.
    pub doubt: f64,
}

/// What is thought before anything is seen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Beforehand {
    /// The chance of a change at each value.
    pub change: f64,
    /// How far levels lie from the middle of all.
    pub levels: f64,
    /// The chance of a straight line instead.
    pub line: f64,
    /// How steep lines are, for each unit of the place.
    pub slopes: f64,
}

/// A guess and its variance.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Guess {
    /// The middle.
    pub middle: f64,
    /// The variance.
    pub variance: f64,
}

/// What is thought of the last level.
#[derive(Debug, Clone, PartialEq)]
pub struct LastLevel {
    /// The chance that it began with each value.
    pub began: Vec<f64>,
    /// What it is then.
    pub levels: Vec<Guess>,
    /// What the level before it was, where it began with that value.
    pub before: Vec<f64>,
    /// The chance of a straight line.
    pub line: f64,
    /// Where that line is at the last value.
    pub line_ends: Guess,
    /// What it gains for each unit of the place.
    pub line_slope: Guess,
    /// How values spread about their level.
    pub spread: f64,
}

/// Likeness of neighbours one unit apart that are summed over, and what each weighs.
const MEMORIES: [(f64, f64); 4] = [(-0.3, 0.1), (0.05, 0.3), (0.25, 0.35), (0.5, 0.25)];
/// Spreads that are summed over, as parts of what neighbours say.
const SPREADS: [(f64, f64); 3] = [(0.75, 0.3), (1.0, 0.4), (1.35, 0.3)];
/// A value farther from the middle of its neighbours than so many spreads is drawn there.
const FARTHEST: f64 = 3.0;
/// Neighbours to each side that say so.
const NEIGHBOURS: usize = 3;
/// Levels are thought to lie apart by at least so many spreads.
const LEVELS_APART: f64 = 2.0;
/// No spread is thought to be smaller.
const LEAST_SPREAD: f64 = 0.02;

/// Sums of a level: its precision and its weighted sum, and the logarithm of how likely
/// what was seen is.
#[derive(Debug, Clone, Copy)]
struct Sums {
    precision: f64,
    weighted: f64,
    rest: f64,
}

impl Sums {
    fn new(middle: f64, spread: f64) -> Self {
        let precision = 1.0 / (spread * spread);
        let weighted = middle * precision;
        Self { precision, weighted, rest: 0.5 * precision.ln() - 0.5 * middle * middle * precision }
    }

    fn add(&mut self, term: &Term) {
        self.precision += term.slope * term.slope / term.variance;
        self.weighted += term.slope * term.value / term.variance;
        self.rest += term.rest;
    }

    fn evidence(&self) -> f64 {
        self.rest - 0.5 * self.precision.ln() + 0.5 * self.weighted * self.weighted / self.precision
    }

    fn guess(&self) -> Guess {
        Guess { middle: self.weighted / self.precision, variance: 1.0 / self.precision }
    }
}

/// A value as an equation of its level: value = slope · level + noise of this variance.
#[derive(Debug, Clone, Copy)]
struct Term {
    value: f64,
    slope: f64,
    /// How the line's gain enters: its place, as the level's slope does.
    place: f64,
    variance: f64,
    /// −(ln variance + value² / variance) / 2.
    rest: f64,
}

impl Term {
    fn new(value: f64, slope: f64, place: f64, variance: f64) -> Self {
        Self { value, slope, place, variance, rest: -0.5 * (variance.ln() + value * value / variance) }
    }
}

/// ln(eᵃ + eᵇ), and how much of that the second is.
fn with(a: f64, b: f64) -> (f64, f64) {
    if b == f64::NEG_INFINITY {
        return (a, 0.0);
    }
    if a == f64::NEG_INFINITY {
        return (b, 1.0);
    }
    let less = (-(a - b).abs()).exp();
    let all = 1.0 + less;
    (a.max(b) + all.ln(), if b >= a { 1.0 / all } else { less / all })
}

fn both(a: f64, b: f64) -> f64 {
    with(a, b).0
}

/// What is thought of the last level. A level that began before `recent` is told from the
/// values since then. None of fewer than three values.
pub fn last_level(values: &[Value], recent: usize, beforehand: &Beforehand) -> Option<LastLevel> {
    let n = values.len();
    let sound = values.iter().all(|v| v.at.is_finite() && v.value.is_finite() && v.doubt >= 0.0);
    if n < 3 || !sound {
        return None;
    }
    let spread = spread(values)?;
    let drawn = drawn_near(values, spread);
    let middle = median(&drawn)?;
    // Where values spread much, a level of its own for each of the last would cost nothing.
    let beforehand = &Beforehand { levels: beforehand.levels.max(LEVELS_APART * spread), ..*beforehand };
    let recent = recent.min(n - 1);
    let mut all: Vec<(f64, LastLevel)> = Vec::with_capacity(MEMORIES.len() * SPREADS.len());
    for (memory, likely) in MEMORIES {
        for (times, as_likely) in SPREADS {
            let one = Setting { memory, spread: spread * times, middle };
            let (evidence, found) = one.look(values, &drawn, recent, beforehand)?;
            all.push((evidence + f64::ln(likely * as_likely), found));
        }
    }
    let best = all.iter().map(|(evidence, _)| *evidence).fold(f64::NEG_INFINITY, f64::max);
    let total: f64 = all.iter().map(|(evidence, _)| (evidence - best).exp()).sum();
    let mut found = LastLevel {
        began: vec![0.0; n],
        levels: vec![Guess::default(); n],
        before: vec![0.0; n],
        line: 0.0,
        line_ends: Guess::default(),
        line_slope: Guess::default(),
        spread: 0.0,
    };
    let mut squares = vec![0.0; n];
    let mut ends = (0.0, 0.0);
    let mut slopes = (0.0, 0.0);
    for (evidence, one) in &all {
        let weight = (evidence - best).exp() / total;
        found.line += weight * one.line;
        found.spread += weight * one.spread;
        let line = weight * one.line;
        ends.0 += line * one.line_ends.middle;
        ends.1 += line * (one.line_ends.variance + one.line_ends.middle.powi(2));
        slopes.0 += line * one.line_slope.middle;
        slopes.1 += line * (one.line_slope.variance + one.line_slope.middle.powi(2));
        let into = found.began.iter_mut().zip(&mut found.levels).zip(&mut found.before).zip(&mut squares);
        let from = one.began.iter().zip(&one.levels).zip(&one.before);
        for ((((chance, level), before), square), ((began, guess), was)) in into.zip(from) {
            let share = weight * began;
            *chance += share;
            level.middle += share * guess.middle;
            *before += share * was;
            *square += share * (guess.variance + guess.middle * guess.middle);
        }
    }
    let into = found.began.iter().zip(&mut found.levels).zip(&mut found.before).zip(squares);
    for (((chance, level), before), square) in into {
        if *chance > 1e-12 {
            level.middle /= chance;
            *before /= chance;
            level.variance = (square / chance - level.middle.powi(2)).max(0.0);
        }
    }
    let of_line = |(sum, square): (f64, f64), chance: f64| {
        let middle = sum / chance;
        Guess { middle, variance: (square / chance - middle * middle).max(0.0) }
    };
    if found.line > 1e-12 {
        (found.line_ends, found.line_slope) = (of_line(ends, found.line), of_line(slopes, found.line));
    }
    let sound = found.began.iter().all(|c| c.is_finite()) && found.levels.iter().all(|l| l.middle.is_finite());
    (sound && found.line.is_finite() && found.line_ends.middle.is_finite()).then_some(found)
}

/// How values spread about their level, from how neighbours differ, which a change hardly touches.
fn spread(values: &[Value]) -> Option<f64> {
    let steps: Vec<f64> = values.windows(2).filter_map(|w| Some((w.get(1)?.value - w.first()?.value).abs())).collect();
    // About nothing, which is their middle: days that go up and down by turns have no other.
    let of_steps = median(&steps)? * TO_SIGMA;
    let of_steps = if of_steps > 0.0 { of_steps } else { mean(&steps)? };
    // Neighbours that are a little alike differ a little less.
    Some((of_steps / std::f64::consts::SQRT_2 * 1.1).max(LEAST_SPREAD))
}

/// The values, those far from the middle of their neighbours drawn nearer.
fn drawn_near(values: &[Value], spread: f64) -> Vec<f64> {
    let bare: Vec<f64> = values.iter().map(|v| v.value).collect();
    (0..bare.len())
        .zip(&bare)
        .map(|(i, value)| {
            let near = bare.get(i.saturating_sub(NEIGHBOURS)..(i + NEIGHBOURS + 1).min(bare.len())).unwrap_or_default();
            let middle = median(near).unwrap_or(*value);
            value.clamp(middle - FARTHEST * spread, middle + FARTHEST * spread)
        })
        .collect()
}

/// One likeness of neighbours and one spread.
struct Setting {
    memory: f64,
    spread: f64,
    middle: f64,
}

impl Setting {
    /// The values as equations: each where it is the first of its level, and where not.
    fn terms(&self, values: &[Value], drawn: &[f64]) -> (Vec<Term>, Vec<Term>) {
        let own = self.spread * self.spread;
        let last = values.last().map_or(0.0, |v| v.at);
        let seen = || values.iter().zip(drawn);
        let first = seen().map(|(v, y)| Term::new(*y, 1.0, v.at - last, own + v.doubt)).collect();
        let mut next: Vec<Term> = Vec::with_capacity(values.len());
        let mut before: Option<(&Value, f64)> = None;
        for (v, y) in seen() {
            let (like, apart, doubt) = match before {
                Some((b, was)) => {
                    // What of the value before is its own doubt says nothing of this one.
                    let like = self.memory.powi((v.at - b.at).max(0.0).round() as i32) * own / (own + b.doubt);
                    (like, (was, b.at - last), own * (1.0 - like * like * (own + b.doubt) / own))
                }
                None => (0.0, (0.0, 0.0), own),
            };
            let place = (v.at - last) - like * apart.1;
            next.push(Term::new(y - like * apart.0, 1.0 - like, place, doubt.max(1e-9) + v.doubt));
            before = Some((v, *y));
        }
        (first, next)
    }

    fn look(&self, values: &[Value], drawn: &[f64], recent: usize, b: &Beforehand) -> Option<(f64, LastLevel)> {
        let n = values.len();
        let (first, next) = self.terms(values, drawn);
        let (stays, changes) = ((1.0 - b.change).ln(), b.change.ln());
        // ln of the chance of what was seen before each value, a level beginning there.
        let mut begins = vec![f64::NEG_INFINITY; n + 1];
        *begins.first_mut()? = 0.0;
        let mut ends = vec![f64::NEG_INFINITY; n];
        let mut levels = vec![Guess::default(); n];
        // Mean of the level before, weighed by the chance of its own beginning.
        let mut was = vec![0.0; n + 1];
        for start in 0..n {
            let at = *begins.get(start)?;
            let mut sums = Sums::new(self.middle, b.levels);
            sums.add(first.get(start)?);
            let mut stayed = 0.0;
            let later = next.get(start + 1..)?.iter().map(Some).chain([None]);
            for (place, term) in (start + 1..).zip(later) {
                if place < n {
                    let here = at + sums.evidence() + stayed + changes;
                    let so_far = begins.get_mut(place)?;
                    let (sum, share) = with(*so_far, here);
                    *so_far = sum;
                    let mean = was.get_mut(place)?;
                    *mean += share * (sums.weighted / sums.precision - *mean);
                }
                if let Some(term) = term {
                    sums.add(term);
                    stayed += stays;
                }
            }
            *ends.get_mut(start)? = at + sums.evidence() + stayed;
            *levels.get_mut(start)? = sums.guess();
        }
        let kept = *levels.get(recent)?;
        levels.iter_mut().take(recent).for_each(|level| *level = kept);
        let cut = ends.iter().copied().fold(f64::NEG_INFINITY, both) + (1.0 - b.line).ln();
        let (line, line_ends, line_slope) = self.line(&first, &next, b)?;
        let line = line + b.line.ln();
        let evidence = both(cut, line);
        let total = (1.0 - b.line).ln();
        Some((
            evidence,
            LastLevel {
                began: ends.iter().map(|end| (end + total - evidence).exp()).collect(),
                levels,
                before: was.into_iter().take(n).collect(),
                line: (line - evidence).exp(),
                line_ends,
                line_slope,
                spread: self.spread,
            },
        ))
    }

    /// A straight line through all: ln of how likely what was seen is, where it ends, and
    /// its gain.
    fn line(&self, first: &[Term], next: &[Term], b: &Beforehand) -> Option<(f64, Guess, Guess)> {
        let (of_level, of_slope) = (1.0 / b.levels.powi(2), 1.0 / b.slopes.powi(2));
        let (mut aa, mut ab, mut bb) = (of_level, 0.0, of_slope);
        let (mut ay, mut by) = (self.middle * of_level, 0.0);
        let mut rest = 0.5 * (of_level.ln() + of_slope.ln()) - 0.5 * self.middle * self.middle * of_level;
        for term in first.iter().take(1).chain(next.iter().skip(1)) {
            aa += term.slope * term.slope / term.variance;
            ab += term.slope * term.place / term.variance;
            bb += term.place * term.place / term.variance;
            ay += term.slope * term.value / term.variance;
            by += term.place * term.value / term.variance;
            rest += term.rest;
        }
        let size = aa * bb - ab * ab;
        if !(size > 0.0 && size.is_finite()) {
            return None;
        }
        let (level, slope) = ((bb * ay - ab * by) / size, (aa * by - ab * ay) / size);
        let evidence = rest - 0.5 * size.ln() + 0.5 * (level * ay + slope * by);
        Some((evidence, Guess { middle: level, variance: bb / size }, Guess { middle: slope, variance: aa / size }))
    }
}

impl LastLevel {
    /// The chance that it began with a value of at least this index.
    pub fn began_from(&self, index: usize) -> f64 {
        self.began.iter().skip(index).sum()
    }

    /// Below which value it now stands with this chance.
    pub fn quantile(&self, chance: f64) -> Option<f64> {
        let parts = || {
            let cut = self.began.iter().copied().zip(self.levels.iter().copied());
            cut.chain([(self.line, self.line_ends)]).filter(|(weight, _)| *weight > 1e-9)
        };
        let below = |at: f64| {
            parts()
                .map(|(weight, g)| weight * super::normal::below((at - g.middle) / g.variance.sqrt().max(1e-9)))
                .sum::<f64>()
        };
        let reach = |sign: f64| parts().map(move |(_, g)| g.middle + sign * 6.0 * g.variance.sqrt());
        let (mut low, mut high) =
            (reach(-1.0).fold(f64::INFINITY, f64::min), reach(1.0).fold(f64::NEG_INFINITY, f64::max));
        if !(low.is_finite() && high.is_finite()) {
            return None;
        }
        for _ in 0..48 {
            let middle = (low + high) / 2.0;
            if below(middle) < chance {
                low = middle;
            } else {
                high = middle;
            }
        }
        Some((low + high) / 2.0)
    }

    /// Where it stands now, in the mean of all that is thought.
    pub fn now(&self) -> f64 {
        let cut: f64 = self.began.iter().zip(&self.levels).map(|(chance, level)| chance * level.middle).sum();
        cut + self.line * self.line_ends.middle
    }
}
