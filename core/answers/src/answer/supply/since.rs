//! Since when: changes of level in the past.

use super::now::{self, Turn};
use super::series::{inflation_of, Series};
use crate::answer::{Estimate, CONFIDENCE};
use crate::guidance::SupplyRules;
use crate::quantity::{Production, Quantity, Share};
use crate::statistics::{robust_pelt, shift, Point};
use crate::time::LocalDay;

/// A change of level.
#[derive(Debug, Clone, PartialEq)]
pub struct Change {
    /// The first day of the new level, as far as can be told.
    pub on: LocalDay,
    /// The earliest day it may have been.
    pub earliest: LocalDay,
    /// The latest.
    pub latest: LocalDay,
    /// The new level less the old (Hodges and Lehmann 1963).
    pub size: Estimate<Production>,
    /// The same as a share of the old level; none where that was nothing.
    pub share: Option<Share>,
}

/// A level lasts at least so many complete days to be one.
pub const SHORTEST_LEVEL: usize = 7;
/// What a further change has to bring, in squared spreads per ln n; 3 is the
/// usual choice for a change of mean at an unknown place.
const PENALTY: f64 = 3.0;
/// So many days to either side confirm a change, and no more.
const CONFIRM: usize = 28;

/// Changes of level, in order (PELT: Killick, Fearnhead, Eckley 2012, with a
/// bounded loss after Fearnhead and Rigaill 2019). Each is told only where the days about it
/// are likelier with a step than without one or on a straight line, as the level that stands
/// is judged ([`now`]); its range of dates comes from there too.
pub fn changes(series: &Series, rules: &SupplyRules) -> Vec<Change> {
    let values = series.values();
    if values.len() < 2 * SHORTEST_LEVEL {
        return Vec::new();
    }
    let first = robust_pelt(&values, PENALTY * (values.len() as f64).ln(), SHORTEST_LEVEL);
    // Days are like the days before within a level: the price goes up by that.
    let inflation = within_levels(series, &first);
    let penalty = PENALTY * (values.len() as f64).ln() * inflation;
    let found = if inflation > 1.0 { robust_pelt(&values, penalty, SHORTEST_LEVEL) } else { first };
    let mut edges = vec![0];
    edges.extend(&found);
    edges.push(values.len());
    edges
        .windows(3)
        .filter_map(|w| {
            let &[from, at, to] = w else { return None };
            let near = (from.max(at.saturating_sub(CONFIRM)), to.min(at + CONFIRM));
            let turn = now::confirmed(series, near.0, near.1, rules)?;
            change(series, [from, at, to], &turn, inflation)
        })
        .collect()
}

fn within_levels(series: &Series, found: &[usize]) -> f64 {
    let points = series.points();
    let mut edges = vec![0];
    edges.extend(found);
    edges.push(points.len());
    let mut left: Vec<Point> = Vec::new();
    for w in edges.windows(2) {
        let &[from, to] = w else { continue };
        let part = points.get(from..to).unwrap_or_default();
        let middle = part.iter().map(|p| p.value).sum::<f64>() / part.len().max(1) as f64;
        left.extend(part.iter().map(|p| Point { at: p.at, value: p.value - middle }));
    }
    inflation_of(&left)
}

fn change(series: &Series, [from, at, to]: [usize; 3], turn: &Turn, inflation: f64) -> Option<Change> {
    let values = series.values();
    let (before, after) = (values.get(from..at)?, values.get(at..to)?);
    let size = shift(before, after, CONFIDENCE, inflation)?;
    let old = before.iter().sum::<f64>() / before.len() as f64;
    Some(Change {
        on: turn.since,
        earliest: turn.earliest,
        latest: turn.latest,
        size: Estimate {
            value: Production::from_canonical(size.shift),
            low: Production::from_canonical(size.low),
            high: Production::from_canonical(size.high),
        },
        share: (old > 0.0).then(|| Share::of(size.shift / old)),
    })
}
