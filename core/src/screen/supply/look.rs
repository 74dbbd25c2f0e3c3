//! What there is to say, gathered once.

use super::first_days::{self, FirstDays};
use crate::answer::supply::began::Began;
use crate::answer::supply::course::Course;
use crate::answer::supply::level::Level;
use crate::answer::supply::quiet_hours::{self, ended_by, QuietHours};
use crate::answer::supply::said::{said, Said, Turned};
use crate::answer::supply::since::Change;
use crate::answer::supply::watch::{self, Drop};
use crate::answer::supply::{kept, Calendar, DayProduction, Of, Series};
use crate::answer::Estimate;
use crate::guidance::{Rules, SupplyRules};
use crate::quantity::Production;
use crate::record::{Removal, Rhythm, RHYTHM, RULES};
use crate::screen::View;
use crate::time::{LocalDay, Moment, Span};
use crate::trouble::Trouble;

/// The spans that can be chosen; 0 is all there are.
pub(super) const SPANS: [u32; 4] = [7, 14, 28, 0];
/// Days that the watch looks at, and the level that stands is told from.
const WATCHED_DAYS: u32 = crate::answer::supply::now::LOOKS_BACK as u32;

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
    /// All days of the span.
    pub(in crate::screen) series: Series,
    /// The days that the level is told from.
    pub(in crate::screen) told: Series,
    /// The days that the course is drawn through.
    pub(in crate::screen) along: Series,
    /// The change of late that the level is told since.
    pub(in crate::screen) turned: Option<Turned>,
    pub(in crate::screen) changes: Vec<Change>,
    pub(in crate::screen) drop: Option<Drop>,
    /// Since when it goes up or down.
    pub(in crate::screen) began_to_go: Option<Began>,
    /// Hours in which nothing is ever written down, and the session that last ended them.
    pub(in crate::screen) quiet: Option<Quiet>,
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

    /// The days that the level is told from, for sides and parts of the day.
    pub(in crate::screen) fn days_told(&self) -> &[DayProduction] {
        self.days_from(self.told.rests_on.from)
    }

    /// The days that the course is drawn through.
    pub(in crate::screen) fn days_along(&self) -> &[DayProduction] {
        self.days_from(self.along.rests_on.from)
    }

    fn days_from(&self, from: LocalDay) -> &[DayProduction] {
        self.days.get(self.days.partition_point(|day| day.day < from)..).unwrap_or_default()
    }

    pub(in crate::screen) fn is_empty(&self) -> bool {
        self.began.is_none()
    }

    pub(in crate::screen) fn over(view: &View<'_>, span: u32) -> Result<Self, Trouble> {
        let rules = rules(view)?;
        let beginning = Beginning::of(view)?;
        let (days, today, lately, ends) = match &beginning {
            None => (Vec::new(), None, Vec::new(), false),
            Some(beginning) => {
                let (days, today) = gathered(view, beginning, span)?;
                (days, today, beginning.lately(view)?, ends_by_plan(view)?)
            }
        };
        let Said { level, turned, course, along, told, changes, drop, began: began_to_go } =
            said(&days, &lately, &rules);
        Ok(Self {
            level,
            turned,
            course,
            along,
            told,
            changes,
            began_to_go,
            // Less milk is what is wanted while expressing is being ended by plan.
            drop: drop.filter(|_| !ends),
            series: Series::of(&days, Of::Both, &rules),
            quiet: Quiet::of(view)?,
            rules,
            days,
            today,
            calendar: beginning
                .as_ref()
                .map_or(Calendar { start: view.settings.day_start, zone: view.zone }, |b| b.calendar),
            first_days: first_days::since(view)?,
            began: beginning.map(|b| b.day),
        })
    }
}

/// Hours in which nothing is ever written down.
#[derive(Debug, Clone)]
pub(in crate::screen) struct Quiet {
    pub(in crate::screen) hours: QuietHours,
    /// The session that last ended them.
    pub(in crate::screen) session: String,
    /// Whether it was said that a session is done in them.
    pub(in crate::screen) hide_one: bool,
}

/// What is usual is told by so many days, and an answer is kept for so many.
const QUIET_DAYS: i64 = 16;
const ANSWER_DAYS: i64 = 180;

impl Quiet {
    /// None where there are none, or it was said that no session is missed in them.
    fn of(view: &View<'_>) -> Result<Option<Self>, Trouble> {
        let over = |days: i64| view.journal.removals(view.now.minus(Span::hours(24 * days)), view.now);
        let Some(hours) = quiet_hours::quiet_hours(&over(QUIET_DAYS)?) else { return Ok(None) };
        let all = over(ANSWER_DAYS)?;
        let ended = ended_by(hours, &all).filter(|(_, said)| *said != quiet_hours::Said::NoneIsMissed);
        let of = |(removal, said): (&Removal, quiet_hours::Said)| Self {
            hours,
            session: removal.session.clone(),
            hide_one: said == quiet_hours::Said::OneIsMissed,
        };
        Ok(ended.map(of))
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
        if ends_by_plan(view)? {
            return Ok(None);
        }
        Ok(watch::now(&self.lately(view)?, rules))
    }

    /// The days that the watch looks at, the last of them yesterday.
    fn lately(&self, view: &View<'_>) -> Result<Vec<DayProduction>, Trouble> {
        let yesterday = view.today().earlier_by(1);
        let from = yesterday.earlier_by(WATCHED_DAYS.min(self.whole_days(view)));
        kept::days(view.journal, from, yesterday, self.calendar)
    }
}

/// Whether expressing is being ended by plan.
fn ends_by_plan(view: &View<'_>) -> Result<bool, Trouble> {
    let ending = Rhythm::read(&view.record(RHYTHM)?.1).ending;
    Ok(ending.is_some_and(|ending| ending.from <= view.today().date()))
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
