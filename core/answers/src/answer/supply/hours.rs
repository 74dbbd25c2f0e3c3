//! How fast milk is made at each hour of the day.

use super::day::Calendar;
use super::intervals::{Interval, IntervalStatus};
use crate::quantity::{Production, Quantity};
use crate::statistics::quantile;
use crate::time::{Moment, Span, Zone};

/// One hour of the day: the middle of the days, and where half of them lie.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hour {
    /// The middle.
    pub middle: Production,
    /// A quarter of the days lie below this.
    pub low: Production,
    /// A quarter lie above this.
    pub high: Production,
}

/// Days an hour needs before it is shown.
const NEEDS: usize = 3;

/// Each hour from the hour at which days begin, both sides together; none
/// where too few days say anything of it. `sides` are the judged intervals of
/// the sides that give milk.
pub fn by_hour(sides: &[&[Interval]], calendar: Calendar) -> Vec<Option<Hour>> {
    let mut rates: Vec<Vec<Vec<f64>>> = vec![vec![Vec::new(); sides.len()]; 24];
    for (which, intervals) in sides.iter().enumerate() {
        for interval in *intervals {
            let (IntervalStatus::Counts, Some(milk)) = (interval.status, interval.milk) else { continue };
            let hours = interval.lasted().in_milliseconds() as f64 / 3_600_000.0;
            let rate = milk.canonical() / hours * 24.0;
            let mut at = interval.from.plus(Span::minutes(30));
            while at < interval.until {
                let hour = hour_of(at, calendar.zone, calendar.start.hour());
                if let Some(seen) = rates.get_mut(hour).and_then(|h| h.get_mut(which)) {
                    seen.push(rate);
                }
                at = at.plus(Span::hours(1));
            }
        }
    }
    rates.iter().map(|sides| hour(sides)).collect()
}

fn hour_of(at: crate::time::Instant, zone: Zone, start: u32) -> usize {
    use chrono::Timelike;
    let wall = Moment::new(at, zone).on_the_wall().hour();
    ((wall + 24 - start) % 24) as usize
}

fn hour(sides: &[Vec<f64>]) -> Option<Hour> {
    let mut sums = [0.0; 3];
    for seen in sides.iter() {
        if seen.len() < NEEDS {
            return None;
        }
        for (sum, p) in sums.iter_mut().zip([0.25, 0.5, 0.75]) {
            *sum += quantile(seen, p)?;
        }
    }
    let [low, middle, high] = sums.map(Production::from_canonical);
    (!sides.is_empty()).then_some(Hour { middle, low, high })
}
