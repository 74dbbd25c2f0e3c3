//! What ordinarily comes from a side after so long, and what does not fit.
//!
//! A session that nobody wrote down hides in a long interval with an ordinary
//! amount. The amount of an interval of length Δ is modelled as
//! ln(V + 3 mL) = α + β ln Δ + noise, β being below 1 because a breast fills
//! ever slower; an interval with a session missing is one of Δ/2 or Δ/3 by
//! amount. The two are a mixture, fitted by expectation maximisation (Dempster,
//! Laird, Rubin 1977), with Huber's weights (1964) against odd amounts. Each day has a level of
//! its own, drawn towards that of all (a mixed model: Laird and Ware, Biometrics 1982), so that
//! days of less milk are not taken for days with sessions missing.

use super::interval::{Interval, IntervalStatus};
use crate::quantity::{Quantity, Volume};
use crate::statistics::{median, quantile};
use crate::time::{Instant, Span};

/// What is thought of an interval.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Judgement {
    /// It fits.
    Fits,
    /// It fits a shorter interval better.
    SessionMissing,
    /// It may fit either.
    Unclear,
    /// It fits nothing near.
    FarOff,
}

/// Amounts are compared as ln(V + this), so that nothing is an amount too.
const OFFSET_MILLILITERS: f64 = 3.0;
/// Intervals that are needed before anything is judged.
const NEEDED: usize = 8;
/// Shorter intervals say little of what an ordinary one holds.
const SHORTEST: Span = Span::minutes(60);
/// An interval is thought of as hiding a session only where it is this many
/// times as long as is usual at its hour.
const LONGER_THAN_USUAL: f64 = 1.2;
/// The usual length is this quantile of the lengths seen: below the median,
/// since every hidden session makes one long interval out of two.
const SHORTEST_PART: f64 = 0.7;
const USUAL_QUANTILE: f64 = 0.3;
/// β and its spread where the intervals are too alike to tell: linear for a
/// while, then levelling off (Daly 1996: linear to about 6 h; Lai 2020: level
/// from 7 h).
const USUAL_BEND: (f64, f64) = (0.75, 0.06);
/// An interval counts where it is whole with this chance.
const COUNTS_FROM: f64 = 0.8;
/// Below this chance it is asked whether a session is missing.
const ASKS_BELOW: f64 = 0.3;
/// An amount this many times what ordinarily comes, or this part of it, is
/// asked about: a slip by a digit is ten times.
const FAR_ABOVE: f64 = 3.5;
const FAR_BELOW: f64 = 0.18;
/// Spread of ln V that a hidden session adds, since it may lie anywhere.
const PLACE_OF_MISSING: f64 = 0.25;
const ROUNDS: usize = 12;
/// Spread of the days' own levels of ln V.
const DAYS_APART: f64 = 0.2;
/// A day beside counts so much for the level of a day.
const BESIDE: f64 = 0.5;
const DAY_HOURS: f64 = 24.0;

/// What ordinarily comes from a side.
#[derive(Debug, Clone, PartialEq)]
pub struct Ordinary {
    fitted: Option<Fitted>,
    usual: Usual,
    levels: Levels,
}

/// How much more ln V is on each day than ordinarily, counted back from the last.
#[derive(Debug, Clone, PartialEq, Default)]
struct Levels {
    last: Option<Instant>,
    by_day: Vec<f64>,
}

impl Levels {
    fn day(&self, at: Instant) -> usize {
        let back = self.last.map_or(0.0, |last| hours(last.since(at)) / DAY_HOURS);
        (back.max(0.0) as usize).min(self.by_day.len().saturating_sub(1))
    }

    fn on(&self, at: Instant) -> f64 {
        self.of_day(self.day(at))
    }

    fn of_day(&self, day: usize) -> f64 {
        self.by_day.get(day).copied().unwrap_or(0.0)
    }

    /// Learns them from what is left over by the line.
    fn learn(&mut self, seen: &[Seen], fitted: &Fitted) {
        let mut sums = vec![(0.0, 0.0); self.by_day.len()];
        for s in seen {
            let off = s.y - fitted.expected(s.x);
            let far = ((off - self.of_day(s.day)) / fitted.sigma).abs();
            let weight = s.whole * if far <= 1.5 { 1.0 } else { 1.5 / far };
            if let Some((sum, all)) = sums.get_mut(s.day) {
                (*sum, *all) = (*sum + weight * off, *all + weight);
            }
        }
        let held = (fitted.sigma / DAYS_APART).powi(2);
        let near = |at: Option<usize>| at.and_then(|at| sums.get(at)).copied().unwrap_or_default();
        for (day, level) in self.by_day.iter_mut().enumerate() {
            let (own, before, after) = (near(Some(day)), near(day.checked_sub(1)), near(Some(day + 1)));
            let sum = own.0 + BESIDE * (before.0 + after.0);
            *level = sum / (own.1 + BESIDE * (before.1 + after.1) + held);
        }
    }
}

#[derive(Debug, Clone, Copy, PartialEq)]
struct Fitted {
    alpha: f64,
    beta: f64,
    sigma: f64,
    /// How often an interval that could hide a session does.
    missing: f64,
}

/// How long intervals usually are, at each hour of the day.
#[derive(Debug, Clone, PartialEq)]
struct Usual {
    by_hour: [f64; HOURS],
    ever: f64,
}

/// Hours of a day.
const HOURS: usize = 24;

impl Usual {
    /// From the middle and length of each interval, in hours.
    fn of(seen: &[(f64, f64)]) -> Self {
        let lengths: Vec<f64> = seen.iter().map(|(_, length)| *length).collect();
        let ever = quantile(&lengths, USUAL_QUANTILE).unwrap_or(DAY_HOURS);
        let mut by_hour = [ever; HOURS];
        let mut over = Vec::with_capacity(seen.len());
        for (hour, usual) in by_hour.iter_mut().enumerate() {
            over.clear();
            over.extend(seen.iter().filter(|(middle, length)| goes_over(*middle, *length, hour)).map(|(_, l)| *l));
            *usual = quantile(&over, USUAL_QUANTILE).unwrap_or(ever);
        }
        Self { by_hour, ever }
    }

    /// The usual length of those that go over an hour of the day.
    fn over(&self, middle: f64) -> f64 {
        self.by_hour.get(middle as usize).copied().unwrap_or(self.ever)
    }

    /// The shorter lengths an interval could hide: what is usual at its hour,
    /// and an even part of it that is not much shorter than any usual one.
    fn shorter(&self, middle: f64, length: f64) -> Shorter {
        let here = self.over(middle);
        let even = [2.0, 3.0].map(|parts| length / parts);
        let even = even.into_iter().filter(|part| *part >= SHORTEST_PART * self.ever);
        let nearest = even.min_by(|a, b| (a / self.ever).ln().abs().total_cmp(&(b / self.ever).ln().abs()));
        [(length >= LONGER_THAN_USUAL * here).then_some(here), nearest].map(|hours| hours.map(f64::ln))
    }
}

/// Lengths that an interval may really have had, as ln of their hours.
type Shorter = [Option<f64>; 2];
const NONE_SHORTER: Shorter = [None, None];

/// Whether an interval goes over the middle of an hour of the day.
fn goes_over(middle: f64, length: f64, hour: usize) -> bool {
    let apart = (middle - (hour as f64 + 0.5)).abs();
    apart.min(DAY_HOURS - apart) <= length / 2.0
}

struct Seen {
    /// ln of its hours.
    x: f64,
    /// ln of its amount.
    y: f64,
    shorter: Shorter,
    whole: f64,
    day: usize,
}

fn hours(span: Span) -> f64 {
    span.in_milliseconds() as f64 / 3_600_000.0
}

/// The hour of the day, by one clock for all, at the middle of an interval.
fn middle(interval: &Interval) -> f64 {
    (interval.from.unix_milliseconds() as f64 / 3_600_000.0 + hours(interval.lasted()) / 2.0).rem_euclid(DAY_HOURS)
}

fn ln_amount(milk: Volume) -> f64 {
    (milk.canonical().max(0.0) + OFFSET_MILLILITERS).ln()
}

fn density(residual: f64, sigma: f64) -> f64 {
    (-0.5 * (residual / sigma).powi(2)).exp() / sigma
}

impl Fitted {
    /// Whether another round would change nothing that matters.
    fn is_near(&self, other: &Self) -> bool {
        let apart =
            [self.alpha - other.alpha, self.beta - other.beta, self.sigma - other.sigma, self.missing - other.missing];
        apart.iter().all(|by| by.abs() < 1e-3)
    }

    fn expected(&self, ln_hours: f64) -> f64 {
        self.alpha + self.beta * ln_hours
    }

    /// The chance that an interval is whole.
    fn whole(&self, ln_hours: f64, y: f64, shorter: Shorter) -> f64 {
        let thought = shorter.iter().flatten().count();
        if thought == 0 {
            return 1.0;
        }
        let one = (1.0 - self.missing) * density(y - self.expected(ln_hours), self.sigma);
        let spread = self.sigma.hypot(PLACE_OF_MISSING);
        let each = self.missing / thought as f64;
        let part: f64 = shorter.iter().flatten().map(|h| each * density(y - self.expected(*h), spread)).sum();
        if one + part > 0.0 {
            one / (one + part)
        } else {
            1.0
        }
    }
}

impl Ordinary {
    /// Learns from the intervals of one side over some days.
    pub fn learn(intervals: &[Interval]) -> Self {
        let known = intervals.iter().filter(|i| i.lasted() >= SHORTEST && i.status != IntervalStatus::TooLong);
        let seen: Vec<(f64, f64)> = known.clone().map(|i| (middle(i), hours(i.lasted()))).collect();
        let usual = Usual::of(&seen);
        let last = known.clone().map(|i| i.until).max();
        let first = known.clone().map(|i| i.until).min();
        let days = last.zip(first).map_or(0, |(last, first)| (hours(last.since(first)) / DAY_HOURS) as usize + 1);
        let mut levels = Levels { last, by_day: vec![0.0; days] };
        let mut seen: Vec<Seen> = known
            .filter_map(|i| {
                let (hours, y) = (hours(i.lasted()), ln_amount(i.milk?));
                // What was answered is known.
                let shorter = if i.is_answered_whole() { NONE_SHORTER } else { usual.shorter(middle(i), hours) };
                let whole = if shorter == NONE_SHORTER { 1.0 } else { 0.7 };
                Some(Seen { x: hours.ln(), y, shorter, whole, day: levels.day(i.until) })
            })
            .collect();
        if seen.len() < NEEDED {
            return Self { fitted: None, usual, levels };
        }
        let amounts: Vec<f64> = seen.iter().map(|s| s.y).collect();
        let level = median(&amounts).unwrap_or(0.0);
        let alpha = level - USUAL_BEND.0 * usual.ever.ln();
        let mut fitted = Fitted { alpha, beta: USUAL_BEND.0, sigma: 0.35, missing: 0.2 };
        for _ in 0..ROUNDS {
            let before = fitted;
            fitted = fit(&seen, &levels, before);
            levels.learn(&seen, &fitted);
            for s in seen.iter_mut().filter(|s| s.shorter != NONE_SHORTER) {
                s.whole = fitted.whole(s.x, s.y - levels.of_day(s.day), s.shorter);
            }
            if fitted.is_near(&before) {
                break;
            }
        }
        Self { fitted: Some(fitted), usual, levels }
    }

    /// How long an interval may really have been, were a session in it not written down.
    pub(crate) fn could_hide(&self, interval: &Interval) -> [Option<Span>; 2] {
        if interval.is_answered_whole() || interval.lasted() < SHORTEST {
            return [None; 2];
        }
        let shorter = self.usual.shorter(middle(interval), hours(interval.lasted()));
        shorter.map(|ln| ln.map(|ln| Span::milliseconds((ln.exp() * 3_600_000.0) as i64)))
    }

    /// What is thought of an interval.
    pub fn judge(&self, interval: &Interval) -> Judgement {
        let (Some(fitted), Some(milk)) = (&self.fitted, interval.milk) else { return Judgement::Fits };
        if interval.lasted() < SHORTEST {
            return Judgement::Fits;
        }
        let (hours, y) = (hours(interval.lasted()), ln_amount(milk) - self.levels.on(interval.until));
        let off = y - fitted.expected(hours.ln());
        if off > FAR_ABOVE.ln().max(4.0 * fitted.sigma) || off < FAR_BELOW.ln().min(-4.0 * fitted.sigma) {
            return Judgement::FarOff;
        }
        match fitted.whole(hours.ln(), y, self.usual.shorter(middle(interval), hours)) {
            whole if whole >= COUNTS_FROM => Judgement::Fits,
            whole if whole >= ASKS_BELOW => Judgement::Unclear,
            _ => Judgement::SessionMissing,
        }
    }
}

/// One round: the line by weighted least squares with the usual bend as prior,
/// the spread, and how often a session is missing.
fn fit(seen: &[Seen], levels: &Levels, before: Fitted) -> Fitted {
    let prior = (before.sigma / USUAL_BEND.1).powi(2);
    let (mut w, mut wx, mut wy, mut wxx, mut wxy) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for s in seen {
        let y = s.y - levels.of_day(s.day);
        let off = ((y - before.alpha - before.beta * s.x) / before.sigma).abs();
        let weight = s.whole * if off <= 1.5 { 1.0 } else { 1.5 / off };
        w += weight;
        wx += weight * s.x;
        wy += weight * y;
        wxx += weight * s.x * s.x;
        wxy += weight * s.x * y;
    }
    if w <= 0.0 {
        return before;
    }
    let (mx, my) = (wx / w, wy / w);
    let (sxx, sxy) = ((wxx - wx * mx).max(0.0) + prior, wxy - wx * my + prior * USUAL_BEND.0);
    let beta = (sxy / sxx).clamp(0.2, 1.1);
    let alpha = my - beta * mx;
    let (mut ss, mut whole, mut missing, mut could) = (0.0, 0.0, 0.0, 0.0);
    let most = (2.5 * before.sigma).powi(2);
    for s in seen {
        let off = s.y - levels.of_day(s.day) - alpha - beta * s.x;
        ss += s.whole * (off * off).min(most);
        whole += s.whole;
        if s.shorter != NONE_SHORTER {
            could += 1.0;
            missing += 1.0 - s.whole;
        }
    }
    Fitted {
        alpha,
        beta,
        sigma: (ss / whole.max(1.0)).sqrt().clamp(0.08, 0.6),
        // As if two of ten had been missing before anything was seen.
        missing: ((missing + 2.0) / (could + 10.0)).clamp(0.02, 0.9),
    }
}
