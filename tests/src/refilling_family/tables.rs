//! How often the refill curve is right.

use drawwell_core::answer::refill::{from_removals::of_removals, Difference, Flattens, Refill, Well, WellOf};
use drawwell_core::answer::supply::Side;
use drawwell_core::quantity::Quantity;
use drawwell_core::time::{Instant, Span, Zone};

use super::{some_family, Breast, RefillingFamily};
use crate::chance::Chance;
use crate::simulated_family::Simulator;
use crate::tired_family;

/// Families to be met.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sort {
    /// Every breast flattens, to the milk of 2.5 to 14 hours.
    Flatten,
    /// None ever does.
    Straight,
    /// They flatten, but no gap is longer than by day.
    NoLongGaps,
    /// They flatten, and 8 % is left in the breast in the middle, which comes next time.
    LittleLeftBehind,
    /// The same with 20 %.
    LeftBehind,
}

impl Sort {
    /// All of them.
    pub const ALL: [Self; 5] =
        [Self::Flatten, Self::Straight, Self::NoLongGaps, Self::LittleLeftBehind, Self::LeftBehind];

    /// A family of this sort.
    pub fn some(self, chance: &mut Chance) -> RefillingFamily {
        let family = some_family(chance, self == Self::Straight);
        match self {
            Self::Flatten | Self::Straight => family,
            Self::NoLongGaps => {
                let sessions = family.sessions.max(8);
                RefillingFamily { sessions, night: 24.0 / f64::from(sessions), ..family }
            }
            Self::LittleLeftBehind => RefillingFamily { left_behind: 0.08, ..family },
            Self::LeftBehind => RefillingFamily { left_behind: 0.2, ..family },
        }
    }
}

/// How often of how many.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Share {
    /// How often.
    pub hits: u32,
    /// Of how many.
    pub of: u32,
}

impl Share {
    fn count(&mut self, hit: bool) {
        self.of += 1;
        self.hits += u32::from(hit);
    }

    /// As a part of 1; none of none.
    pub fn part(self) -> Option<f64> {
        (self.of > 0).then(|| f64::from(self.hits) / f64::from(self.of))
    }
}

/// What became of many families.
#[derive(Debug, Clone, Default)]
pub struct Row {
    /// Wells whose rate is told closely.
    pub rate_told: Share,
    /// Of those, within a tenth of the truth.
    pub rate_near: Share,
    /// Ranges of the rate that hold it, of all wells.
    pub rate_held: Share,
    /// Wells that are told to flatten.
    pub level_told: Share,
    /// Of those that do, within a fifth of the truth.
    pub level_near: Share,
    /// Of those that do, ranges that hold it.
    pub level_held: Share,
    /// Wells without a sign of slowing.
    pub no_sign: Share,
    /// Wells that lose more than a fourth over the gap up to which no sign was seen.
    pub wrongly_no_sign: Share,
    /// Ranges of a night's milk that hold what comes.
    pub night_held: Share,
    /// Sum of what a night's milk is off, of 1.
    night_off: f64,
    /// Differences between two nights that are told.
    pub less_told: Share,
    /// Of those, ranges that hold the truth.
    pub less_held: Share,
}

impl Row {
    /// How far a night's milk is off in the mean, of 1.
    pub fn night_bias(&self) -> f64 {
        self.night_off / f64::from(self.night_held.of.max(1))
    }

    /// So many families of a sort, looked at after so many days.
    pub fn of(by: Simulator, sort: Sort, days: u32, families: u64) -> Self {
        let mut row = Self::default();
        for seed in 0..families {
            let mut chance = Chance::seeded(seed * 7 + u64::from(days));
            let family = sort.some(&mut chance);
            if by == Simulator::Second {
                row.live_on(&family, days, &mut chance);
                continue;
            }
            let record = family.record(days, &mut chance);
            let refill = of_removals(&record.removals, record.now, record.calendar);
            for well in &refill.wells {
                row.count(well, &family);
            }
            if refill.wells.len() == family.breasts.len() {
                row.look_ahead(&refill, &family, record.now, &mut chance);
            }
        }
        row
    }

    /// A family of the second sort: what comes is what it then does.
    fn live_on(&mut self, family: &RefillingFamily, days: u32, chance: &mut Chance) {
        let (record, living) = tired_family::refill::record(family, days, chance);
        let refill = of_removals(&record.removals, record.now, record.calendar);
        for well in &refill.wells {
            self.count(well, family);
        }
        if refill.wells.len() != family.breasts.len() {
            return;
        }
        let long = family.night * 0.95;
        let (one, two) = ([long, (12.0 - long) / 2.0, (12.0 - long) / 2.0], [4.0, 4.0, 4.0]);
        let less = refill.less(&lay(record.now, &two), &lay(record.now, &one), Zone::UTC);
        self.less_told.count(less != Difference::CannotTellYet);
        if let Difference::Less(less) = less {
            let truth = living.brings(&two) - living.brings(&one);
            self.less_held.count((less.low.canonical()..=less.high.canonical()).contains(&truth));
        }
        let gaps = [2.5, 3.0, family.night * 0.9];
        if let Some(brings) = refill.brings(&lay(record.now, &gaps), Zone::UTC) {
            self.night_off += brings.value.canonical() / living.brings(&gaps) - 1.0;
            let came = living.lives_on(&gaps, chance);
            self.night_held.count((brings.low.canonical()..=brings.high.canonical()).contains(&came));
        }
    }

    fn count(&mut self, well: &Well, family: &RefillingFamily) {
        let [left, right] = family.breasts;
        let breast: Breast = match well.of {
            WellOf::Side(Side::Left) => left,
            WellOf::Side(Side::Right) => right,
            WellOf::Together => return,
        };
        let [low, value, high] = [well.rate.low, well.rate.value, well.rate.high].map(|r| r.canonical() / 24.0);
        self.rate_held.count((low..=high).contains(&breast.rate));
        self.rate_told.count(well.rate_is_close);
        if well.rate_is_close {
            self.rate_near.count((value / breast.rate - 1.0).abs() <= 0.1);
        }
        self.level_told.count(matches!(well.flattens, Flattens::At(_)));
        self.no_sign.count(matches!(well.flattens, Flattens::NoSignUpTo(_)));
        match (well.flattens, breast.capacity) {
            (Flattens::At(level), Some(capacity)) => {
                let [low, value, high] = [level.low, level.value, level.high].map(Quantity::canonical);
                self.level_near.count((value / capacity - 1.0).abs() <= 0.2);
                self.level_held.count((low..=high).contains(&capacity));
            }
            (Flattens::NoSignUpTo(gap), _) => {
                let gap = gap.in_minutes() as f64 / 60.0;
                self.wrongly_no_sign.count(breast.holds(gap, 1.0) < 0.75 * breast.rate * gap);
            }
            _ => {}
        }
    }

    fn look_ahead(&mut self, refill: &Refill, family: &RefillingFamily, now: Instant, chance: &mut Chance) {
        let ahead = lay(now, &[2.5, 3.0, family.night * 0.9]);
        if let Some(brings) = refill.brings(&ahead, Zone::UTC) {
            let mean = truly(family, &ahead, now, || 1.0);
            let sigma = (1.0 + family.noise * family.noise).ln().sqrt();
            let came = truly(family, &ahead, now, || (sigma * chance.normal() - sigma * sigma / 2.0).exp());
            self.night_off += brings.value.canonical() / mean - 1.0;
            self.night_held.count((brings.low.canonical()..=brings.high.canonical()).contains(&came));
        }
        let long = family.night * 0.95;
        let (one, two) = (lay(now, &[long, (12.0 - long) / 2.0, (12.0 - long) / 2.0]), lay(now, &[4.0, 4.0, 4.0]));
        let less = refill.less(&two, &one, Zone::UTC);
        self.less_told.count(less != Difference::CannotTellYet);
        if let Difference::Less(less) = less {
            let truth = truly(family, &two, now, || 1.0) - truly(family, &one, now, || 1.0);
            self.less_held.count((less.low.canonical()..=less.high.canonical()).contains(&truth));
        }
    }
}

/// Gaps one after the other.
fn lay(now: Instant, gaps: &[f64]) -> Vec<(Instant, Instant)> {
    let mut at = now;
    let mut next = |gap: &f64| {
        let from = at;
        at = at.plus(Span::milliseconds((gap * 3_600_000.0) as i64));
        (from, at)
    };
    gaps.iter().map(&mut next).collect()
}

/// What intervals really bring.
fn truly(family: &RefillingFamily, ahead: &[(Instant, Instant)], now: Instant, mut noise: impl FnMut() -> f64) -> f64 {
    let each = ahead.iter().flat_map(|(from, until)| family.breasts.map(|b| family.truly(&b, *from, *until, now)));
    each.map(|mean| mean * noise()).sum()
}
