//! What came, set against everything else that makes it more or less.

use chrono::Timelike;

use crate::answer::comfort::Axis;
use crate::answer::supply::Side;
use crate::quantity::{Quantity, Volume};
use crate::statistics::{median, quantile, Observed, Regression};
use crate::time::{Moment, Span};

/// What came on a side, or on both in one, at a setting.
#[derive(Debug, Clone, PartialEq)]
pub struct MilkAt<Q> {
    /// The session.
    pub session: String,
    /// When it began.
    pub at: Moment,
    /// The side; none where both were measured in one.
    pub side: Option<Side>,
    /// What was set by hand.
    pub setting: Q,
    /// What came.
    pub milk: Volume,
    /// What was to be expected by the refill curve, where it can tell.
    pub expected: Option<Volume>,
    /// Since the emptying before.
    pub gap: Span,
    /// How long it took.
    pub lasted: Option<Span>,
    /// Whether a trial drew how it was done.
    pub drawn: bool,
}

/// Less than this is read as this: of nothing there is no logarithm.
const LEAST_MILK: f64 = 1.0;
/// Values further from the fit than so many spreads are left out once: slips.
const SLIP: f64 = 3.5;
/// The length counts where all but one in ten say it.
const SAYS_LENGTH: f64 = 0.9;

/// Sessions of a day are off alike: so many lags are looked at.
const LAGS: usize = 8;

/// The fit: what the setting makes of the logarithm of what comes.
pub(super) struct Adjusted {
    pub(super) fit: Regression,
    pub(super) low: f64,
    pub(super) middle: f64,
    pub(super) high: f64,
    /// Terms before those of the setting.
    before: usize,
    /// How much wider ranges are than noise by itself makes them.
    pub(super) wider: f64,
    /// Sessions in order of time, with setting and what was left.
    pub(super) sessions: Vec<(f64, f64)>,
}

impl Adjusted {
    /// Least squares of the logarithm on what was to be expected (or the gap), the side, the time
    /// of day, the length, the order, and the setting with its square.
    pub(super) fn of<Q: Axis>(milk: &[&MilkAt<Q>]) -> Option<Self> {
        let settings: Vec<f64> = milk.iter().map(|m| m.setting.number()).collect();
        let (low, high) = (quantile(&settings, 0.1)?, quantile(&settings, 0.9)?);
        let middle = low.midpoint(high);
        let half = (high - low) / 2.0;
        if half < Q::WIDTH / 2.0 {
            return None;
        }
        let columns = told_apart(beside(milk));
        let before = columns.len();
        let rows = |kept: &[usize]| -> Vec<Observed> {
            let row = |i: usize| {
                let m = milk.get(i)?;
                let place = (m.setting.number() - middle) / half;
                let mut beside: Vec<f64> = columns.iter().filter_map(|column| column.get(i).copied()).collect();
                beside.extend([place, place * place]);
                Some(Observed { beside, value: m.milk.canonical().max(LEAST_MILK).ln() })
            };
            kept.iter().filter_map(|i| row(*i)).collect()
        };
        let all: Vec<usize> = (0..milk.len()).collect();
        let rough = Regression::fit(&rows(&all))?;
        let sizes: Vec<f64> = rough.residuals.iter().map(|left| left.abs()).collect();
        let far = SLIP * crate::statistics::TO_SIGMA * median(&sizes)?;
        let near = all.iter().zip(&rough.residuals).filter(|(_, left)| left.abs() <= far.max(1e-9));
        let kept: Vec<usize> = near.map(|(i, _)| *i).collect();
        let fit = Regression::fit(&rows(&kept))?;
        let told: Vec<(&MilkAt<Q>, f64)> =
            kept.iter().zip(&fit.residuals).filter_map(|(i, left)| Some((*milk.get(*i)?, *left))).collect();
        let sessions = by_session(&told);
        let wider = (alike_within(&told) * alike_along(&sessions)).sqrt();
        Some(Self { fit, low, middle, high, before, wider, sessions })
    }

    fn contrast(&self, from: f64, to: f64) -> Vec<f64> {
        let half = (self.high - self.low) / 2.0;
        let (from, to) = ((from - self.middle) / half, (to - self.middle) / half);
        let mut of = vec![0.0; self.before];
        of.extend([to - from, to * to - from * from]);
        of
    }

    /// How much more comes at one setting than at another, on the log scale, with its range.
    pub(super) fn apart(&self, from: f64, to: f64, confidence: f64) -> Option<(f64, f64, f64)> {
        let of = self.contrast(from, to);
        let value = self.fit.combined(&of);
        let reach = self.fit.reach(confidence)? * self.fit.error_of(&of) * self.wider;
        Some((value, value - reach, value + reach))
    }
}

/// What stands beside: a column each, the first of ones.
fn beside<Q: Axis>(milk: &[&MilkAt<Q>]) -> Vec<Vec<f64>> {
    let of = |what: &dyn Fn(&MilkAt<Q>) -> f64| milk.iter().map(|m| what(m)).collect::<Vec<f64>>();
    let hours = |span: Span| (span.in_milliseconds() as f64 / 3_600_000.0).max(0.05);
    let all_expected = milk.iter().all(|m| m.expected.is_some_and(|e| e.canonical() > 0.0));
    let turn =
        |m: &MilkAt<Q>| f64::from(m.at.on_the_wall().num_seconds_from_midnight()) / 86_400.0 * std::f64::consts::TAU;
    let first = milk.iter().map(|m| m.at.instant()).min();
    let day = |m: &MilkAt<Q>| first.map_or(0.0, |first| hours(m.at.instant().since(first)) / 24.0);
    let mut columns = vec![
        of(&|_| 1.0),
        of(&|m| f64::from(u8::from(m.side == Some(Side::Right)))),
        of(&|m| f64::from(u8::from(m.side.is_none()))),
        match all_expected {
            true => of(&|m| m.expected.map_or(0.0, |e| e.canonical().max(LEAST_MILK).ln())),
            false => of(&|m| hours(m.gap).ln()),
        },
        of(&|m| turn(m).cos()),
        of(&|m| turn(m).sin()),
        of(&day),
    ];
    let lengths: Vec<f64> = milk.iter().filter_map(|m| m.lasted).map(|lasted| hours(lasted).ln()).collect();
    if lengths.len() as f64 >= SAYS_LENGTH * milk.len() as f64 {
        let usual = median(&lengths).unwrap_or(0.0);
        columns.push(of(&|m| m.lasted.map_or(usual, |lasted| hours(lasted).ln())));
    }
    columns
}

/// Columns that are not the same all along.
fn told_apart(columns: Vec<Vec<f64>>) -> Vec<Vec<f64>> {
    let varies = |column: &[f64]| {
        let first = column.first().copied().unwrap_or(0.0);
        column.iter().any(|value| (value - first).abs() > 1e-6)
    };
    let kept = columns.into_iter().enumerate().filter(|(place, column)| *place == 0 || varies(column));
    kept.map(|(_, column)| column).collect()
}

fn by_session<Q: Axis>(told: &[(&MilkAt<Q>, f64)]) -> Vec<(f64, f64)> {
    let mut ordered: Vec<&(&MilkAt<Q>, f64)> = told.iter().collect();
    ordered.sort_by(|a, b| (a.0.at.instant(), &a.0.session).cmp(&(b.0.at.instant(), &b.0.session)));
    let sessions = ordered.chunk_by(|a, b| a.0.session == b.0.session).map(|of| {
        let n = of.len() as f64;
        (of.iter().map(|(m, _)| m.setting.number()).sum::<f64>() / n, of.iter().map(|(_, left)| left).sum::<f64>() / n)
    });
    sessions.collect()
}

/// Two sides of one session are off alike: together they say less than two.
fn alike_within<Q: Axis>(told: &[(&MilkAt<Q>, f64)]) -> f64 {
    let mut ordered: Vec<&(&MilkAt<Q>, f64)> = told.iter().collect();
    ordered.sort_by(|a, b| a.0.session.cmp(&b.0.session));
    let (mut both, mut squares, mut paired) = (0.0, 0.0, 0.0);
    for pair in ordered.chunk_by(|a, b| a.0.session == b.0.session) {
        if let [(_, one), (_, other)] = pair {
            both += one * other;
            squares += (one * one + other * other) / 2.0;
            paired += 2.0;
        }
    }
    let alike = if squares > 0.0 { (both / squares).clamp(0.0, 1.0) } else { 0.0 };
    1.0 + alike * paired / (told.len() as f64).max(1.0)
}

/// Sessions are like those before, and so are settings: 1 + 2 Σ r q over a day's lags, r of what is
/// left and q of settings (as for a slope over an autocorrelated course; Bartlett 1935).
fn alike_along(sessions: &[(f64, f64)]) -> f64 {
    let settings: Vec<f64> = sessions.iter().map(|(setting, _)| *setting).collect();
    let left: Vec<f64> = sessions.iter().map(|(_, left)| *left).collect();
    let sum: f64 = (1..=LAGS).map(|lag| (correlated(&settings, lag) * correlated(&left, lag)).max(0.0)).sum();
    1.0 + 2.0 * sum
}

fn correlated(values: &[f64], lag: usize) -> f64 {
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n.max(1.0);
    let squares: f64 = values.iter().map(|v| (v - mean).powi(2)).sum();
    let both: f64 = values.iter().zip(values.iter().skip(lag)).map(|(a, b)| (a - mean) * (b - mean)).sum();
    if squares > 0.0 {
        both / squares
    } else {
        0.0
    }
}
