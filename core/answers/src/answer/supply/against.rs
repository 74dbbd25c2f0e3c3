//! Against what a supply is held: the own best fortnight, an aim, published
//! volumes by day; and when an aim would be met. [`super::intake`] is what children drink.

use super::course::Course;
use crate::answer::Estimate;
use crate::guidance::SupplyRules;
use crate::quantity::{Production, Quantity, Share};
use crate::time::LocalDay;

/// Days of a fortnight, and how many of them must be complete.
const FORTNIGHT: i64 = 14;
const OF_A_FORTNIGHT: usize = 10;

/// The best two weeks there were, of complete days in order: their first day
/// and their mean.
pub fn best_fortnight(days: &[(LocalDay, Production)]) -> Option<(LocalDay, Production)> {
    let mut best: Option<(LocalDay, f64)> = None;
    let (mut upto, mut sum) = (0, 0.0);
    for (from, (first, own)) in days.iter().enumerate() {
        while let Some((_, production)) = days.get(upto).filter(|(day, _)| day.days_since(*first) < FORTNIGHT) {
            sum += production.canonical();
            upto += 1;
        }
        let count = upto - from;
        if count >= OF_A_FORTNIGHT {
            let mean = sum / count as f64;
            if best.is_none_or(|(_, so_far)| mean > so_far) {
                best = Some((*first, mean));
            }
        }
        sum -= own.canonical();
    }
    best.map(|(day, mean)| (day, Production::from_canonical(mean)))
}

/// Where a day's volume stands for a mother of a preterm child.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ComingToVolume {
    /// Before the day on which it is judged.
    TooEarly,
    /// At or above the volume.
    Reached,
    /// Between the two bands.
    Between,
    /// Below both.
    Below,
}

/// Judges a day's volume: at or above 500 mL a day by day 14 (Hoban 2018), the
/// band from 350 mL from memory. `day_of_life` counts from birth as day 0.
pub fn coming_to_volume(day_of_life: i64, volume: Production, rules: &SupplyRules) -> ComingToVolume {
    if day_of_life < i64::from(rules.volume_day.get()) {
        ComingToVolume::TooEarly
    } else if volume >= rules.volume_reached {
        ComingToVolume::Reached
    } else if volume >= rules.volume_between {
        ComingToVolume::Between
    } else {
        ComingToVolume::Below
    }
}

/// When an aim would be met on the present course.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Meets {
    /// It is met now.
    Already,
    /// Between these days; the later is open where the slowest course never does.
    Between(LocalDay, Option<LocalDay>),
    /// Not on this course.
    NotOnThisCourse,
    /// The course cannot be told, so neither can this.
    CannotTell,
}

/// No course is drawn out further than this.
const LOOKS_AHEAD_DAYS: f64 = 180.0;

/// When an aim would be met if the course went on.
pub fn meets(aim: Production, level: &Estimate<Production>, course: Option<&Course>, today: LocalDay) -> Meets {
    if level.value >= aim {
        return Meets::Already;
    }
    let Some(course) = course else { return Meets::CannotTell };
    let missing = aim.canonical() - level.value.canonical();
    let days = |a_week: f64| (a_week > 0.0).then(|| missing / a_week * 7.0).filter(|d| *d <= LOOKS_AHEAD_DAYS);
    let ahead = |d: f64| LocalDay::from_number(today.number() + d.ceil() as i32);
    match (days(course.drift.high.canonical()), days(course.drift.low.canonical())) {
        (None, _) => Meets::NotOnThisCourse,
        (Some(soonest), latest) => {
            // A course whose middle does not rise is not on its way there.
            if course.drift.value.canonical() <= 0.0 {
                return Meets::NotOnThisCourse;
            }
            match ahead(soonest) {
                Some(soonest) => Meets::Between(soonest, latest.and_then(ahead)),
                None => Meets::CannotTell,
            }
        }
    }
}

/// A share of something it is held against.
pub fn share_of(part: Production, whole: Production) -> Option<Share> {
    (whole.canonical() > 0.0).then(|| Share::of(part.canonical() / whole.canonical()))
}
