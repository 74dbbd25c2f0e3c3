//! One well: a side, or both where they were measured together.

use chrono::Timelike;

use crate::answer::estimate::{Estimate, CONFIDENCE};
use crate::answer::supply::{Interval, IntervalStatus, Side};
use crate::quantity::{Count, Production, Quantity, Volume};
use crate::statistics::{grown, grown_elasticity, grown_slope, pace, Collected, Saturation};
use crate::time::{Instant, Moment, Span, Zone};

/// Whose well it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WellOf {
    /// One side's.
    Side(Side),
    /// Both together: they were measured in one.
    Together,
}

/// Whether refilling slows, as far as the record can tell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Flattens {
    /// It flattens to this.
    At(Estimate<Volume>),
    /// There is no sign of slowing up to a gap this long.
    NoSignUpTo(Span),
    /// The record cannot tell yet.
    CannotTellYet,
}

/// How a well fills again.
#[derive(Debug, Clone, PartialEq)]
pub struct Well {
    /// Whose it is.
    pub of: WellOf,
    /// How fast it fills just after an emptying, as it is now.
    pub rate: Estimate<Production>,
    /// Whether the rate is told closely.
    pub rate_is_close: bool,
    /// Whether it slows.
    pub flattens: Flattens,
    /// Intervals it rests on.
    pub intervals: Count,
    /// Days they reach over.
    pub days: Count,
    /// The longest gap that is seen often enough.
    pub longest: Span,
    pub(super) fit: Saturation,
    /// The same, were a share of each session's milk left behind to come with the next.
    pub(super) carried: Vec<Saturation>,
    /// How alike the noise of one interval and the next is.
    pub(super) along: f64,
}

/// Shares that a session may leave behind, beside none. From memory: expressing leaves some
/// of what is there (Kent and others, Breastfeeding Medicine 2008; children leave about a
/// quarter: Daly, Owens and Hartmann, Exp Physiol 1993). What stays comes after the next gap,
/// which bends a curve as levelling does, so a level is told only where it stands with any.
const LEFT_BEHIND: [f64; 2] = [0.15, 0.32];

/// The level may drift by so much a day ordinarily, on the log scale.
const DRIFT_SPREAD: f64 = 0.008;
/// The time of day makes so much ordinarily, on the log scale.
const HOUR_SPREAD: f64 = 0.12;
/// Fewer intervals than this tell nothing.
pub const LEAST_INTERVALS: usize = 20;
/// A gap is seen often enough with this many as long.
const OFTEN: usize = 5;
/// The rate is told closely with a spread below this, on the log scale: within a tenth in
/// 95 of 100.
const CLOSE_RATE: f64 = 0.06;
/// The level it flattens to is told with a spread below this: within a fifth in 95 of 100.
const CLOSE_LEVEL: f64 = 0.11;
const FEW_FOR_LEVEL: f64 = 40.0;
/// Without gaps as long as this, what bends the curve is mostly sessions that were not
/// written down: filling is straight to about 6 h (Daly et al., Exp Physiol 1996;81:861-875).
const LONG: Span = Span::minutes(270);
/// No sign of slowing: at the longest gap no more than this is lost, at the end of the range.
const LITTLE_SLOWING: f64 = 0.2;
/// Ranges are so much wider than noise alone makes them, and the more so the larger the
/// share of gaps is that may hide a session: what was not written down is never told apart
/// wholly. Measured with families of known truth.
const WIDER: f64 = 1.05;
const WIDER_BY_HIDDEN: f64 = 5.0;
/// A record whose gaps are no longer than this cannot show levelling: filling is straight
/// to about 6 h (Daly et al., Exp Physiol 1996;81:861-875), and less than half of that
/// shows nothing of it.
const LEAST_LONGEST: Span = Span::minutes(180);

pub(super) fn hours(span: Span) -> f64 {
    span.in_milliseconds() as f64 / 3_600_000.0
}

/// The mean of cos and sin of the time of day over an interval.
fn time_of_day(from: Instant, until: Instant, zone: Zone) -> [f64; 2] {
    let wall = Moment::new(from, zone).on_the_wall();
    let turn = std::f64::consts::TAU / 24.0;
    let begins = (f64::from(wall.num_seconds_from_midnight()) / 3600.0) * turn;
    let width = hours(until.since(from)) * turn;
    if width.abs() < 1e-9 {
        return [begins.cos(), begins.sin()];
    }
    let ends = begins + width;
    [(ends.sin() - begins.sin()) / width, (begins.cos() - ends.cos()) / width]
}

/// An interval, and what else is known of it.
#[derive(Debug, Clone)]
pub struct FillInterval {
    /// The interval, judged.
    pub interval: Interval,
    /// The clock on the wall at its end.
    pub zone: Zone,
    /// How long it may really have been, were a session in it not written down.
    pub could_hide: [Option<Span>; 2],
}

impl FillInterval {
    /// Whether it tells of how a well fills. What is unclear does, as far as it is whole by
    /// the curve itself: to leave it out would leave out what is low after long gaps.
    pub(super) fn counts(&self) -> bool {
        let stands = matches!(self.interval.status, IntervalStatus::Counts | IntervalStatus::Unclear);
        stands && self.interval.milk.is_some() && self.interval.until > self.interval.from
    }

    fn collected(&self, now: Instant) -> Collected {
        let interval = &self.interval;
        let [cos, sin] = time_of_day(interval.from, interval.until, self.zone);
        Collected {
            gap: hours(interval.lasted()),
            amount: interval.milk.map_or(0.0, Quantity::canonical),
            beside: [hours(interval.until.since(now)) / 24.0, cos, sin],
            hides: self.could_hide.map(|span| span.map(hours)),
        }
    }
}

impl Well {
    /// Fits a well to intervals, as it is at an instant. None where too few count.
    pub fn fit(of: WellOf, told: &[FillInterval], now: Instant) -> Option<Self> {
        let counted: Vec<&FillInterval> = told.iter().filter(|t| t.counts()).collect();
        if counted.len() < LEAST_INTERVALS {
            return None;
        }
        let collected: Vec<Collected> = counted.iter().map(|t| t.collected(now)).collect();
        let spreads = [DRIFT_SPREAD, HOUR_SPREAD, HOUR_SPREAD];
        let fit = Saturation::fit(&collected, spreads)?;
        let carried: Vec<Saturation> = LEFT_BEHIND
            .iter()
            .filter_map(|share| Saturation::fit(&without_carried(&counted, &collected, &fit, *share), spreads))
            .collect();
        let missing = told.iter().filter(|t| t.interval.status == IntervalStatus::SessionMissing).count();
        let hidden = (fit.hidden + missing as f64) / (collected.len() + missing) as f64;
        let wider = |fit: Saturation| fit.wider(WIDER + WIDER_BY_HIDDEN * hidden);
        let (fit, carried) = (wider(fit), carried.into_iter().map(wider).collect::<Vec<_>>());
        let all_fitted = carried.len() == LEFT_BEHIND.len();
        let whole = counted.iter().zip(&fit.residuals).filter(|(_, off)| off.is_some());
        let mut gaps: Vec<i64> = whole.map(|(t, _)| t.interval.lasted().in_minutes()).collect();
        gaps.sort_unstable();
        let longest = Span::minutes(gaps.len().checked_sub(OFTEN).and_then(|at| gaps.get(at)).copied().unwrap_or(0));
        let first = counted.iter().map(|t| t.interval.from).min().unwrap_or(now);
        let reach = fit.reach(CONFIDENCE);
        let rate = rates(&fit, &carried, reach);
        let spread = (rate.high.canonical() / rate.low.canonical()).ln() / (2.0 * reach);
        Some(Self {
            of,
            rate,
            rate_is_close: all_fitted && longest >= LONG && spread <= CLOSE_RATE,
            flattens: if all_fitted {
                flattens_with_any(&fit, &carried, longest, reach)
            } else {
                Flattens::CannotTellYet
            },
            intervals: Count::new(counted.len() as u32),
            days: Count::new((hours(now.since(first)) / 24.0).ceil().max(0.0) as u32),
            longest,
            along: along(&fit.residuals),
            fit,
            carried,
        })
    }

    /// Whether the rate lies within what was published for one breast: up to this.
    pub fn is_within(&self, highest: Production) -> bool {
        let breasts = if self.of == WellOf::Together { 2.0 } else { 1.0 };
        self.rate.low.canonical() <= highest.canonical() * breasts
    }

    /// What an emptying at the end of an interval brings, in the mean.
    pub fn expected(&self, from: Instant, until: Instant, zone: Zone) -> Volume {
        Volume::from_canonical(self.mean(from, until, zone))
    }

    pub(super) fn mean(&self, from: Instant, until: Instant, zone: Zone) -> f64 {
        mean_of(&self.fit, from, until, zone)
    }

    /// How the logarithm of the mean changes with the parameters.
    pub(super) fn gradient(&self, from: Instant, until: Instant, zone: Zone) -> [f64; 5] {
        gradient_of(&self.fit, from, until, zone)
    }

    /// What would have come without slowing, less what does; nothing where it cannot be told.
    pub fn lost(&self, from: Instant, until: Instant, zone: Zone) -> Volume {
        let gap = paced_gap(&self.fit, from, until, zone);
        let lost = match self.flattens {
            Flattens::At(_) => first_rate(&self.fit) * (gap - grown(self.fit.levelling, gap)).max(0.0),
            _ => 0.0,
        };
        Volume::from_canonical(lost)
    }
}

/// The rate at which it fills at first, mL/h.
fn first_rate(fit: &Saturation) -> f64 {
    fit.log_rate.exp() * fit.smearing
}

/// Hours as they count at the pace of the time of day.
fn paced_gap(fit: &Saturation, from: Instant, until: Instant, zone: Zone) -> f64 {
    let [cos, sin] = time_of_day(from, until, zone);
    hours(until.since(from)).max(0.0) * pace(&[0.0, cos, sin], fit.slopes)
}

/// What an emptying at the end of an interval brings by a fit, in the mean.
pub(super) fn mean_of(fit: &Saturation, from: Instant, until: Instant, zone: Zone) -> f64 {
    first_rate(fit) * grown(fit.levelling, paced_gap(fit, from, until, zone))
}

/// How its logarithm changes with the parameters.
pub(super) fn gradient_of(fit: &Saturation, from: Instant, until: Instant, zone: Zone) -> [f64; 5] {
    let [cos, sin] = time_of_day(from, until, zone);
    let gap = paced_gap(fit, from, until, zone).max(1e-6);
    let elastic = grown_elasticity(fit.levelling, gap);
    [1.0, 0.0, cos * elastic, sin * elastic, grown_slope(fit.levelling, gap)]
}

/// What was collected, less what is thought to have been left by the session before, as if
/// all of it had been taken.
fn without_carried(told: &[&FillInterval], collected: &[Collected], fit: &Saturation, share: f64) -> Vec<Collected> {
    let expected =
        |c: &Collected| (fit.log_rate.exp() * fit.smearing) * grown(fit.levelling, c.gap * pace(&c.beside, fit.slopes));
    let mut middle: Vec<f64> = collected.iter().map(expected).collect();
    middle.sort_unstable_by(f64::total_cmp);
    let usual = middle.get(middle.len() / 2).copied().unwrap_or(0.0);
    let mut before: Option<(Instant, f64)> = None;
    let each = told.iter().zip(collected).map(|(told, c)| {
        let came = before.filter(|(at, _)| *at == told.interval.from).map_or(usual, |(_, came)| came);
        before = Some((told.interval.until, expected(c)));
        Collected { amount: (c.amount - share * came) / (1.0 - share), ..*c }
    });
    each.collect()
}

/// The rate, and the range that it lies in whatever share is left behind.
fn rates(fit: &Saturation, carried: &[Saturation], reach: f64) -> Estimate<Production> {
    let of = |fit: &Saturation| {
        let (below, above) = fit.range_of(RATE, reach);
        let log = fit.log_rate + fit.smearing.ln();
        (log - below, log, log + above)
    };
    let all = || std::iter::once(fit).chain(carried).map(of);
    let low = all().map(|(low, ..)| low).fold(f64::INFINITY, f64::min);
    let high = all().map(|(.., high)| high).fold(f64::NEG_INFINITY, f64::max);
    let by_the_day = |log: f64| Production::from_canonical(log.exp() * 24.0);
    Estimate { value: by_the_day(of(fit).1), low: by_the_day(low), high: by_the_day(high) }
}

/// How alike neighbours among what intervals are off are, none below nothing: what a day makes
/// more or less.
fn along(residuals: &[Option<f64>]) -> f64 {
    let (mut both, mut squares, mut count) = (0.0, 0.0, 0.0);
    for pair in residuals.windows(2) {
        if let [Some(one), Some(other)] = pair {
            both += one * other;
            squares += (one * one + other * other) / 2.0;
            count += 1.0;
        }
    }
    if count >= LEAST_INTERVALS as f64 / 2.0 && squares > 0.0 {
        (both / squares).clamp(0.0, MOST_ALONG)
    } else {
        0.0
    }
}

/// Intervals of a day are not held to be more alike than this.
const MOST_ALONG: f64 = 0.8;

/// A level only where it is told with any share left behind, and is the same within its range.
fn flattens_with_any(fit: &Saturation, carried: &[Saturation], longest: Span, reach: f64) -> Flattens {
    let mut all = Vec::with_capacity(1 + carried.len());
    for one in std::iter::once(fit).chain(carried) {
        match flattens(one, longest, reach) {
            // What is left behind bends a curve more, and never less.
            Flattens::NoSignUpTo(gap) if all.is_empty() => return Flattens::NoSignUpTo(gap),
            Flattens::At(level) => all.push(level),
            _ => return Flattens::CannotTellYet,
        }
    }
    let edge = |of: &dyn Fn(&Estimate<Volume>) -> f64, pick: fn(f64, f64) -> f64, from: f64| {
        all.iter().map(of).fold(from, pick)
    };
    let low = LAW * edge(&|level| level.low.canonical(), f64::min, f64::INFINITY);
    let high = edge(&|level| level.high.canonical(), f64::max, 0.0);
    let log = all.iter().map(|level| level.value.canonical().ln()).sum::<f64>() / all.len().max(1) as f64;
    if !(low > 0.0 && (high / low).ln() <= WIDEST_LEVEL) {
        return Flattens::CannotTellYet;
    }
    let volume = Volume::from_canonical;
    Flattens::At(Estimate { value: volume(log.exp() * LAW.sqrt()), low: volume(low), high: volume(high) })
}

/// Another law of filling, one that turns sooner, flattens to so much of what this one does:
/// measured with families of a second simulator.
const LAW: f64 = 0.78;
/// A level is told where its range, with any share left behind, is no wider than this on the
/// log scale.
const WIDEST_LEVEL: f64 = 0.75;

const RATE: [f64; 5] = [1.0, 0.0, 0.0, 0.0, 0.0];
const LEVELLING: [f64; 5] = [0.0, 0.0, 0.0, 0.0, 1.0];

fn flattens(fit: &Saturation, longest: Span, reach: f64) -> Flattens {
    let spread = fit.spread_of(LEVELLING);
    let (low, high) = (fit.free_levelling - reach * spread, fit.free_levelling + reach * spread);
    if low > 0.0 {
        // ln C = ln r − ln k.
        let level_spread = fit.spread_of([1.0, 0.0, 0.0, 0.0, -1.0 / fit.levelling]);
        // Of few, the spread itself is not known well.
        let at_most = level_spread * (1.0 + FEW_FOR_LEVEL / fit.freedom).sqrt();
        if at_most > CLOSE_LEVEL || longest < LONG {
            return Flattens::CannotTellYet;
        }
        let log = fit.log_rate - fit.levelling.ln() + fit.smearing.ln();
        let level = |log: f64| Volume::from_canonical(log.exp());
        let apart = reach * level_spread;
        return Flattens::At(Estimate { value: level(log), low: level(log - apart), high: level(log + apart) });
    }
    let gap = hours(longest);
    let most_lost = 1.0 - grown(high.max(0.0), gap) / gap.max(1e-9);
    if longest >= LEAST_LONGEST && most_lost <= LITTLE_SLOWING {
        Flattens::NoSignUpTo(longest)
    } else {
        Flattens::CannotTellYet
    }
}
