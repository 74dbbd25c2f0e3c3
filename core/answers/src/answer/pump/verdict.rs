//! Whether a pull meets a range, how sure that is, and what would settle it.

use super::gauge_error::of_class;
use super::{GaugeError, Limits, Pull, Repeat};
use crate::quantity::{Count, Quantity, Share, Vacuum};
use crate::record::choices::CLASSES;

/// What can be said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// It lies within.
    Meets,
    /// It lies below.
    Below,
    /// It lies above.
    Above,
    /// This gauge and these readings do not tell.
    CannotTell,
}

/// What would settle it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Settles {
    /// Nothing has to.
    Nothing,
    /// So many more readings, if they are as those before.
    MoreReadings(Count),
    /// A gauge of this class (EN 837-1) and the same span.
    BetterGauge(f64),
    /// Neither would: it stands right at the limit.
    Neither,
}

/// A verdict with the chances it rests on (JCGM 106:2012, 7 and 8: the chance that
/// the true value conforms, every true value being as likely before as any other).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Judged {
    /// What can be said.
    pub verdict: Verdict,
    /// The chance that the true highest vacuum lies within.
    pub meets: Share,
    /// That it lies below.
    pub below: Share,
    /// That it lies above.
    pub above: Share,
    /// What would settle it.
    pub settles: Settles,
}

/// More readings than this nobody takes.
const MOST_READINGS: u32 = 20;

fn chances(pull: &Pull, limits: &Limits) -> (f64, f64) {
    let below = limits.low.map_or(0.0, |low| pull.law.chance_below(low.canonical()));
    let above = limits.high.map_or(0.0, |high| 1.0 - pull.law.chance_below(high.canonical()));
    (below, above)
}

fn verdict(pull: &Pull, limits: &Limits, sure: Share) -> (Verdict, f64, f64) {
    let (below, above) = chances(pull, limits);
    let verdict = match sure.fraction() {
        sure if 1.0 - below - above >= sure => Verdict::Meets,
        sure if below >= sure => Verdict::Below,
        sure if above >= sure => Verdict::Above,
        _ => Verdict::CannotTell,
    };
    (verdict, below, above)
}

/// Judges a pull. A verdict is given from the chance `sure` on; `span` is the
/// gauge's, to say which better gauge would settle it.
pub fn judge(pull: &Pull, limits: &Limits, sure: Share, span: Option<Vacuum>) -> Judged {
    let (found, below, above) = verdict(pull, limits, sure);
    Judged {
        verdict: found,
        meets: Share::of((1.0 - below - above).max(0.0)),
        below: Share::of(below),
        above: Share::of(above),
        settles: match found {
            Verdict::CannotTell => settles(pull, limits, sure, span),
            _ => Settles::Nothing,
        },
    }
}

fn settles(pull: &Pull, limits: &Limits, sure: Share, span: Option<Vacuum>) -> Settles {
    let decides = |repeat: Repeat, readings: u32, error: GaugeError| {
        Pull::with(pull.law.middle(), Count::new(readings), repeat, error)
            .is_some_and(|pull| verdict(&pull, limits, sure).0 != Verdict::CannotTell)
    };
    let now = pull.readings.get();
    let with_more = (now + 1..=MOST_READINGS.max(now + 1)).find(|readings| {
        let freedom = Count::new(pull.repeat.freedom.get() + readings - now);
        decides(Repeat { freedom, ..pull.repeat }, *readings, pull.error)
    });
    if let Some(readings) = with_more {
        return Settles::MoreReadings(Count::new(readings - now));
    }
    let classes = CLASSES.iter().rev().filter_map(|class| class.parse::<f64>().ok());
    let better = span.and_then(|span| {
        classes
            .map(|class| (class, of_class(class, span)))
            .filter(|(_, greatest)| *greatest < pull.error.greatest)
            .find(|(_, greatest)| decides(pull.repeat, now, GaugeError { greatest: *greatest, ..pull.error }))
    });
    better.map_or(Settles::Neither, |(class, _)| Settles::BetterGauge(class))
}
