//! The running watch: speaks up when a lasting drop is real.
//!
//! It asks [`super::now`] whether the level that stands is lower than the one before, and speaks
//! where that is so many times as likely as that nothing changed. How many times comes from
//! simulation: the tables stand in docs/supply.md. The method, with its sources, is
//! [`crate::statistics::last_level`]'s.

use super::now::{self, Turn};
use super::{DayProduction, Of, Series};
use crate::guidance::SupplyRules;
use crate::quantity::{Production, Share};
use crate::time::LocalDay;

/// A drop that the watch holds to be real.
#[derive(Debug, Clone, PartialEq)]
pub struct Drop {
    /// The first day below, as far as can be told.
    pub since: LocalDay,
    /// The level before.
    pub before: Production,
    /// The level since.
    pub now: Production,
    /// How much less, as a share of the level before.
    pub share: Share,
}

/// A level that has stood so long is the usual one.
const BECOMES_USUAL: i64 = 28;

/// The drop that a change of level is, as of a day; none where it is more, or long ago, or
/// not likely enough.
pub fn drop_of(turn: &Turn, on: LocalDay, rules: &SupplyRules) -> Option<Drop> {
    let less = turn.share.fraction() < 0.0 && on.days_since(turn.since) < BECOMES_USUAL;
    (less && turn.odds >= rules.watch_decision).then(|| Drop {
        since: turn.since,
        before: turn.before,
        now: turn.now,
        share: Share::of(-turn.share.fraction()),
    })
}

/// What the watch says after each day of a series from an index on, one after the other.
pub fn each<'a>(series: &'a Series, from: usize, rules: &'a SupplyRules) -> impl Iterator<Item = Option<Drop>> + 'a {
    (from..series.days.len()).map(move |upto| {
        let so_far = series.up_to(upto + 1);
        let on = so_far.days.last()?.0;
        drop_of(&now::after(&so_far, now::TOLD_FROM, rules)?.turn?, on, rules)
    })
}

/// The same of all.
pub fn watched(series: &Series, from: usize, rules: &SupplyRules) -> Vec<Option<Drop>> {
    each(series, from, rules).collect()
}

/// What the watch says now.
pub fn now(days: &[DayProduction], rules: &SupplyRules) -> Option<Drop> {
    let on = days.last()?.day;
    drop_of(&now::stands(days, now::TOLD_FROM, rules)?.turn?, on, rules)
}

/// The days that the watch looks at: it makes do with less of a day than a
/// course, and weighs it by what was observed.
pub fn series(days: &[DayProduction], rules: &SupplyRules) -> Series {
    Series::from_share(days, Of::Both, rules.watched_day)
}
