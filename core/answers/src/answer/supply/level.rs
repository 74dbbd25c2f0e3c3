//! How much a day, over some days, with its range.

use statrs::distribution::{ContinuousCDF, StudentsT};

use super::series::Series;
use crate::answer::{Estimate, CONFIDENCE};
use crate::guidance::SupplyRules;
use crate::quantity::{Count, Production, Quantity, Share};
use crate::statistics::{mean, standard_deviation};

/// Whether a level can be told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Level {
    /// It can.
    Known(Estimate<Production>),
    /// It needs so many more complete days.
    NeedsDays(Count),
    /// Too many sessions seem to be missing.
    TooMuchMissing,
}

impl Level {
    /// The estimate, where there is one.
    pub fn known(&self) -> Option<Estimate<Production>> {
        match self {
            Self::Known(estimate) => Some(*estimate),
            Self::NeedsDays(_) | Self::TooMuchMissing => None,
        }
    }
}

/// Complete days a level needs.
pub const LEVEL_NEEDS: u32 = 3;
/// A level may be off by this share of the share of intervals in doubt, on
/// top of its spread: measured with families of known truth.
const DOUBT_WIDENS: f64 = 0.18;

/// Whether so many sessions seem to be missing that what is left may mislead:
/// long gaps then pass for ordinary ones.
fn bears_not(series: &Series, rules: &SupplyRules) -> bool {
    let rests = series.rests_on;
    let doubt = rests.doubtful.fraction();
    let complete = f64::from(rests.complete.get()) / f64::from(rests.days.get().max(1));
    let most = rules.bears_doubt.fraction();
    doubt > most || (doubt > most / 2.0 && complete < rules.least_complete.fraction())
}

/// The mean of complete days, its range by Student's t with the spread widened
/// for days that are like the day before.
pub fn level(series: &Series, rules: &SupplyRules) -> Level {
    if bears_not(series, rules) {
        return Level::TooMuchMissing;
    }
    let complete = series.rests_on.complete.get();
    if complete < LEVEL_NEEDS {
        return Level::NeedsDays(Count::new(LEVEL_NEEDS - complete));
    }
    let values = series.values();
    let n = values.len() as f64;
    let (Some(middle), Some(spread)) = (mean(&values), standard_deviation(&values)) else {
        return Level::NeedsDays(Count::new(1));
    };
    let inflation = series.inflation();
    let degrees = (n - 1.0).max(1.0);
    let t = StudentsT::new(0.0, 1.0, degrees).map_or(2.0, |t| t.inverse_cdf(0.5 + CONFIDENCE / 2.0));
    let half = t * spread * (inflation / n).sqrt();
    let by_chance = Estimate {
        value: Production::from_canonical(middle),
        low: Production::from_canonical(middle - half),
        high: Production::from_canonical(middle + half),
    };
    Level::Known(widened(by_chance, series.rests_on.doubtful))
}

/// A range made wider by the share of intervals that may hide a session.
pub(super) fn widened(told: Estimate<Production>, doubtful: Share) -> Estimate<Production> {
    let value = told.value.canonical();
    let by_doubt = DOUBT_WIDENS * doubtful.fraction() * value;
    let below = (value - told.low.canonical()).hypot(by_doubt);
    let above = (told.high.canonical() - value).hypot(by_doubt);
    Estimate {
        low: Production::from_canonical((value - below).max(0.0)),
        high: Production::from_canonical(value + above),
        ..told
    }
}
