//! What is said of some days: how much is made now, how that goes, and since when.

use super::began::{began, bent_rather, Began};
use super::course::{course, Course, Heading};
use super::level::{level, widened, Level};
use super::now::{self, TOLD_FROM};
use super::since::{changes, Change};
use super::watch::{drop_of, Drop};
use super::{DayProduction, Of, Series};
use crate::guidance::SupplyRules;
use crate::quantity::{Production, Quantity};
use crate::time::LocalDay;

/// A change that is told with what is made now.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turned {
    /// The first day of the level, as far as can be told.
    pub on: LocalDay,
    /// What was made before.
    pub before: Production,
    /// Whether it is more since.
    pub more: bool,
}

/// What is said of some days.
#[derive(Debug, Clone, PartialEq)]
pub struct Summary {
    /// How much a day now.
    pub level: Level,
    /// The change before that, where there was one of late.
    pub turned: Option<Turned>,
    /// How it goes since it last changed.
    pub course: Result<Course, Level>,
    /// The days that the course is drawn through.
    pub along: Series,
    /// The days that the level is told from.
    pub told: Series,
    /// Changes of level in all the days.
    pub changes: Vec<Change>,
    /// The drop that the watch holds to be real now.
    pub drop: Option<Drop>,
    /// Since when it goes up or down, where it was level before.
    pub began: Option<Began>,
}

/// A change is told with what is made now for so many days.
const TELLS: i64 = now::LOOKS_BACK;

/// Where a change is likelier than none, all that may be is weighed.
const UNSETTLED: f64 = 1.0;

/// Of the days of a span, all of them; `lately` are the last weeks' days, whatever the span.
pub fn summarise(span: &[DayProduction], lately: &[DayProduction], rules: &SupplyRules) -> Summary {
    let all = Series::of(span, Of::Both, rules);
    let changes = changes(&all.clone().to_find_changes(), rules);
    let told_from = TOLD_FROM.min(span.len() as i64).max(1);
    let stands = now::stands(lately, told_from, rules);
    let last = span.last().map(|day| day.day);
    let turn = stands.as_ref().and_then(|stands| stands.turn);
    let drop = turn.zip(last).and_then(|(turn, last)| drop_of(&turn, last, rules));
    let certain = turn.filter(now::Turn::is_certain);
    let by_turn = certain.map(|turn| Turned { on: turn.since, before: turn.before, more: turn.share.fraction() > 0.0 });
    let last_change = changes.last();
    let turned = by_turn.or_else(|| {
        let change = last_change?;
        let share = change.share?.fraction();
        let now = stands.as_ref()?.level.value.canonical();
        Some(Turned { on: change.on, before: Production::from_canonical(now / (1.0 + share)), more: share > 0.0 })
    });
    // A change that came bit by bit is no step.
    let turned = turned.filter(|turned| !bent_rather(&all.clone().by_week_where_long(), turned.on));
    let recent = turned.filter(|turned| last.is_some_and(|last| last.days_since(turned.on) < TELLS));
    let since = |from: Option<LocalDay>| {
        let at = from.map_or(0, |from| span.partition_point(|day| day.day < from));
        span.get(at..).unwrap_or_default()
    };
    let along = Series::of(since(turned.map(|turned| turned.on)), Of::Both, rules).by_week_where_long();
    let course = course(&along, rules);
    let heading = course.as_ref().ok().and_then(|course| course.heading);
    let last_weeks = last.map(|last| last.earlier_by(TOLD_FROM as u32 - 1));
    let told = Series::of(since(last_weeks.max(recent.map(|turned| turned.on))), Of::Both, rules);
    let level = match (level(&all, rules), stands) {
        (Level::Known(_), Some(stands)) => {
            let going = if recent.is_some() { None } else { heading };
            let settled = going.is_none_or(|going| going == Heading::Holding) && stands.odds < UNSETTLED;
            match level(&told, rules) {
                // Nothing speaks for a change: the mean is the best there is.
                Level::Known(mean) if settled && recent.is_none() => Level::Known(mean),
                _ => Level::Known(widened(stands.for_heading(going), told.rests_on.doubtful)),
            }
        }
        (other, _) => other,
    };
    let goes = matches!(heading, Some(Heading::Rising | Heading::Falling)) && recent.is_none();
    let began = if goes { began(&along) } else { None };
    Summary { level, turned: recent, course, along, told, changes, drop, began }
}

impl Summary {
    /// The word for how it goes.
    pub fn heading(&self) -> Option<Heading> {
        self.course.as_ref().ok().and_then(|course| course.heading)
    }
}
