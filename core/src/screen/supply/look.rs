//! What there is to say, gathered once.

use super::first_days::{self, FirstDays};
use crate::answer::supply::course::{course, Course};
use crate::answer::supply::level::{level, Level};
use crate::answer::supply::since::{changes, Change};
use crate::answer::supply::watch::{self, Drop};
use crate::answer::supply::{kept, Calendar, DayProduction, Of, Series};
use crate::answer::Estimate;
use crate::guidance::{Rules, SupplyRules};
use crate::quantity::Production;
use crate::record::{Rhythm, RHYTHM, RULES};
use crate::screen::View;
use crate::time::{LocalDay, Moment, Span};
use crate::trouble::Trouble;

/// The spans that can be chosen; 0 is all there are.
pub(super) const SPANS: [u32; 4] = [7, 14, 28, 0];
/// Days that the watch looks at: those of the own level, and those held against it.
const WATCHED_DAYS: u32 = 75;

/// What there is to say of some days.
pub(in crate::screen) struct Look {
    pub(in crate::screen) rules: SupplyRules,
    /// The days of the span, the last of them yesterday.
    pub(in crate::screen) days: Vec<DayProduction>,
    /// Today so far.
    pub(in crate::screen) today: Option<DayProduction>,
    pub(in crate::screen) calendar: Calendar,
    pub(in crate::screen) level: Level,
    pub(in crate::screen) course: Result<Course, Level>,
    pub(in crate::screen) series: Series,
    pub(in crate::screen) changes: Vec<Change>,
    pub(in crate::screen) drop: Option<Drop>,
    /// Whether anything was ever collected.
    pub(in crate::screen) began: Option<LocalDay>,
    /// Whether these are the first days after a birth: told day by day.
    pub(in crate::screen) first_days: Option<FirstDays>,
}

impl Look {
    /// What is made now, where it can be told and is no mean of days that rise.
    pub(in crate::screen) fn now(&self) -> Option<Estimate<Production>> {
        self.level.known().filter(|_| self.first_days.is_none())
    }

    pub(in crate::screen) fn is_empty(&self) -> bool {
        self.began.is_none()
    }

    pub(in crate::screen) fn over(view: &View<'_>, span: u32) -> Result<Self, Trouble> {
        let rules = rules(view)?;
        let beginning = Beginning::of(view)?;
        let (days, today, drop) = match &beginning {
            None => (Vec::new(), None, None),
            Some(beginning) => {
                let (days, today) = gathered(view, beginning, span)?;
                (days, today, beginning.drop(view, &rules)?)
            }
        };
        let series = Series::of(&days, Of::Both, &rules);
        let changes = changes(&series.clone().to_find_changes());
        let series = series.by_week_where_long();
        Ok(Self {
            level: level(&series, &rules),
            course: course(&series, &rules),
            changes,
            drop,
            rules,
            days,
            today,
            calendar: beginning
                .as_ref()
                .map_or(Calendar { start: view.settings.day_start, zone: view.zone }, |b| b.calendar),
            series,
            first_days: first_days::since(view)?,
            began: beginning.map(|b| b.day),
        })
    }
}

/// The first day there is, and how days are cut.
pub(super) struct Beginning {
    calendar: Calendar,
    day: LocalDay,
}

impl Beginning {
    /// How days are cut.
    pub(super) fn calendar(&self) -> Calendar {
        self.calendar
    }

    /// None where nothing was ever collected.
    pub(super) fn of(view: &View<'_>) -> Result<Option<Self>, Trouble> {
        let first = view.journal.first_removal(view.now.plus(Span::milliseconds(1)))?;
        Ok(first.map(|first| {
            let calendar = Calendar { start: view.settings.day_start, zone: first.zone };
            Self { calendar, day: LocalDay::of(&Moment::new(first.at, first.zone), calendar.start) }
        }))
    }

    /// Whole days from the first day to yesterday.
    fn whole_days(&self, view: &View<'_>) -> u32 {
        u32::try_from(view.today().earlier_by(1).days_since(self.day)).unwrap_or(0)
    }

    /// The drop that the watch holds to be real now; the same wherever it is asked for.
    pub(super) fn drop(&self, view: &View<'_>, rules: &SupplyRules) -> Result<Option<Drop>, Trouble> {
        // Less milk is what is wanted while expressing is being ended by plan.
        let ending = Rhythm::read(&view.record(RHYTHM)?.1).ending;
        if ending.is_some_and(|ending| ending.from <= view.today().date()) {
            return Ok(None);
        }
        let yesterday = view.today().earlier_by(1);
        let from = yesterday.earlier_by(WATCHED_DAYS.min(self.whole_days(view)));
        Ok(watch::now(&kept::days(view.journal, from, yesterday, self.calendar)?, rules))
    }
}

/// The days of the span, the last of them yesterday; and today.
fn gathered(
    view: &View<'_>,
    beginning: &Beginning,
    span: u32,
) -> Result<(Vec<DayProduction>, Option<DayProduction>), Trouble> {
    let whole = beginning.whole_days(view);
    let back = if span == 0 { whole } else { whole.min(span - 1) };
    let from = view.today().earlier_by(1).earlier_by(back);
    let mut days = kept::days(view.journal, from, view.today(), beginning.calendar)?;
    let today = days.pop();
    Ok((days, today))
}

/// The rules as they hold for this record.
pub(super) fn rules(view: &View<'_>) -> Result<SupplyRules, Trouble> {
    let fields = view.journal.record(RULES)?.map(|(_, fields)| fields).unwrap_or_default();
    Ok(SupplyRules::read(&Rules::read(&fields)))
}
