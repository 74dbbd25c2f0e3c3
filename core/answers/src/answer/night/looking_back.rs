//! What the nights were: the longest gap of each, and whether it was kept within.

use super::frame::Frame;
use super::occurrences::{nights, Stretch};
use crate::answer::supply::intervals::LONGEST_INTERVAL;
use crate::record::Row;
use crate::time::{Instant, Span, Zone};

/// A night that was.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NightThatWas {
    /// The sleep window.
    pub window: Stretch,
    /// The longest time between the ends of two emptyings that reached into it; none where
    /// too little was written down to know.
    pub longest: Option<Span>,
}

impl NightThatWas {
    /// Whether the longest gap was within a limit; none where it is not known.
    pub fn is_within(&self, limit: Span) -> Option<bool> {
        self.longest.map(|longest| longest <= limit)
    }
}

/// The nights that were over an instant ago and that began after another, the last one
/// last. `rows` are the sessions by time, from a day before the first of them on.
pub fn nights_that_were(rows: &[Row], frame: &Frame, since: Instant, now: Instant, zone: Zone) -> Vec<NightThatWas> {
    let ends: Vec<Instant> = rows.iter().filter(|row| !row.running).filter_map(|row| row.until.or(row.at)).collect();
    nights(frame, since, now, zone)
        .into_iter()
        .filter(|window| window.until <= now && window.from >= since)
        .map(|window| NightThatWas { longest: longest(&ends, window), window })
        .collect()
}

fn longest(ends: &[Instant], window: Stretch) -> Option<Span> {
    let before = ends.iter().copied().filter(|at| *at <= window.from).max()?;
    let mut within: Vec<Instant> = ends.iter().copied().filter(|at| window.holds(*at) && *at > window.from).collect();
    within.sort();
    let after = ends.iter().copied().filter(|at| *at >= window.until).min()?;
    let all: Vec<Instant> = std::iter::once(before).chain(within).chain([after]).collect();
    let gaps = all.iter().zip(all.iter().skip(1)).map(|(from, until)| until.since(*from));
    // So long a silence looks the same as sessions that were not written down.
    gaps.max().filter(|longest| *longest <= LONGEST_INTERVAL)
}
