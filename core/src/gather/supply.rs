//! What there is to say, gathered once.

use super::{days, Record};
use crate::answer::supply::began::Began;
use crate::answer::supply::course::Course;
use crate::answer::supply::intervals::{doubles, Twice};
use crate::answer::supply::level::Level;
use crate::answer::supply::quiet_hours::{self, ended_by, QuietHours};
use crate::answer::supply::since::Change;
use crate::answer::supply::summary::{summarise, Summary, Turned};
use crate::answer::supply::watch::{self, Drop};
use crate::answer::supply::{Calendar, DayProduction, Of, Series};
use crate::answer::supply::{Interval, IntervalStatus, Side, Spread};
use crate::answer::Estimate;
use crate::guidance::{NightRules, SupplyRules};
use crate::quantity::Production;
use crate::record::{date, Kind, Removal, Rhythm, RHYTHM};
use crate::time::{LocalDay, Moment, Span};
use crate::trouble::Trouble;

/// Days that the watch looks at, and the level that stands is told from.
const WATCHED_DAYS: u32 = crate::answer::supply::now::LOOKS_BACK as u32;

/// What there is to say of some days.
pub(crate) struct SupplyInputs {
    pub(crate) rules: SupplyRules,
    /// The days of the span, the last of them yesterday.
    pub(crate) days: Vec<DayProduction>,
    /// Today so far.
    pub(crate) today: Option<DayProduction>,
    pub(crate) calendar: Calendar,
    pub(crate) level: Level,
    pub(crate) course: Result<Course, Level>,
    /// All days of the span.
    pub(crate) series: Series,
    /// The days that the level is told from.
    pub(crate) told: Series,
    /// The days that the course is drawn through.
    pub(crate) along: Series,
    /// The change of late that the level is told since.
    pub(crate) turned: Option<Turned>,
    pub(crate) changes: Vec<Change>,
    pub(crate) drop: Option<Drop>,
    /// Since when it goes up or down.
    pub(crate) began_to_go: Option<Began>,
    /// Hours in which nothing is ever written down, and the session that last ended them.
    pub(crate) quiet: Option<Quiet>,
    /// Whether anything was ever collected.
    pub(crate) began: Option<LocalDay>,
    /// Whether these are the first days after a birth: told day by day.
    pub(crate) first_days: Option<FirstDays>,
}

impl SupplyInputs {
    /// What is made now, where it can be told and is no mean of days that rise.
    pub(crate) fn now(&self) -> Option<Estimate<Production>> {
        self.level.known().filter(|_| self.first_days.is_none())
    }

    /// The days that the level is told from, for sides and parts of the day.
    pub(crate) fn days_of_level(&self) -> &[DayProduction] {
        self.days_from(self.told.rests_on.from)
    }

    /// The days that the course is drawn through.
    pub(crate) fn days_along(&self) -> &[DayProduction] {
        self.days_from(self.along.rests_on.from)
    }

    fn days_from(&self, from: LocalDay) -> &[DayProduction] {
        self.days.get(self.days.partition_point(|day| day.day < from)..).unwrap_or_default()
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.began.is_none()
    }

    pub(crate) fn over(record: &Record<'_>, span: u32) -> Result<Self, Trouble> {
        let rules = rules(record)?;
        let beginning = Beginning::of(record)?;
        let (days, today, lately, ends) = match &beginning {
            None => (Vec::new(), None, Vec::new(), false),
            Some(beginning) => {
                let (days, today) = gathered(record, beginning, span)?;
                (days, today, beginning.lately(record)?, ends_by_plan(record)?)
            }
        };
        let Summary { level, turned, course, along, told, changes, drop, began: began_to_go } =
            summarise(&days, &lately, &rules);
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
            quiet: Quiet::of(record)?,
            rules,
            days,
            today,
            calendar: beginning
                .as_ref()
                .map_or(Calendar { start: record.settings.day_start, zone: record.zone }, |b| b.calendar),
            first_days: first_days(record)?,
            began: beginning.map(|b| b.day),
        })
    }
}

/// Hours in which nothing is ever written down.
#[derive(Debug, Clone)]
pub(crate) struct Quiet {
    pub(crate) hours: QuietHours,
    /// The session that last ended them.
    pub(crate) session: String,
    /// Whether it was said that a session is done in them.
    pub(crate) hide_one: bool,
}

/// What is usual is told by so many days, and an answer is kept for so many.
const QUIET_DAYS: i64 = 16;
const ANSWER_DAYS: i64 = 180;

impl Quiet {
    /// None where there are none, or it was said that no session is missed in them.
    fn of(record: &Record<'_>) -> Result<Option<Self>, Trouble> {
        let over = |days: i64| record.journal.removals(record.now.minus(Span::hours(24 * days)), record.now);
        let Some(hours) = quiet_hours::quiet_hours(&over(QUIET_DAYS)?) else { return Ok(None) };
        let all = over(ANSWER_DAYS)?;
        let ended = ended_by(hours, &all).filter(|(_, said)| *said != quiet_hours::LastAnswer::NoneIsMissed);
        let of = |(removal, said): (&Removal, quiet_hours::LastAnswer)| Self {
            hours,
            session: removal.session.clone(),
            hide_one: said == quiet_hours::LastAnswer::OneIsMissed,
        };
        Ok(ended.map(of))
    }
}

/// The first day there is, and how days are cut.
pub(crate) struct Beginning {
    calendar: Calendar,
    day: LocalDay,
}

impl Beginning {
    /// How days are cut.
    pub(crate) fn calendar(&self) -> Calendar {
        self.calendar
    }

    /// None where nothing was ever collected.
    pub(crate) fn of(record: &Record<'_>) -> Result<Option<Self>, Trouble> {
        let first = record.journal.first_removal(record.now.plus(Span::milliseconds(1)))?;
        Ok(first.map(|first| {
            let calendar = Calendar { start: record.settings.day_start, zone: first.zone };
            Self { calendar, day: LocalDay::of(&Moment::new(first.at, first.zone), calendar.start) }
        }))
    }

    /// Whole days from the first day to yesterday.
    fn whole_days(&self, record: &Record<'_>) -> u32 {
        u32::try_from(record.today().earlier_by(1).days_since(self.day)).unwrap_or(0)
    }

    /// The drop that the watch holds to be real now; the same wherever it is asked for.
    pub(crate) fn drop(&self, record: &Record<'_>, rules: &SupplyRules) -> Result<Option<Drop>, Trouble> {
        if ends_by_plan(record)? {
            return Ok(None);
        }
        let days = self.lately(record)?;
        Ok(match record.watched {
            Some(watched) => watched.now(days, rules),
            None => watch::now(&days, rules),
        })
    }

    /// The days that the watch looks at, the last of them yesterday.
    fn lately(&self, record: &Record<'_>) -> Result<Vec<DayProduction>, Trouble> {
        let yesterday = record.today().earlier_by(1);
        let from = yesterday.earlier_by(WATCHED_DAYS.min(self.whole_days(record)));
        days::days(record, from, yesterday, self.calendar)
    }
}

/// Whether expressing is being ended by plan.
fn ends_by_plan(record: &Record<'_>) -> Result<bool, Trouble> {
    let ending = Rhythm::read(&record.record(RHYTHM)?.1).ending;
    Ok(ending.is_some_and(|ending| ending.from <= record.today().date()))
}

/// The days of the span, the last of them yesterday; and today.
fn gathered(
    record: &Record<'_>,
    beginning: &Beginning,
    span: u32,
) -> Result<(Vec<DayProduction>, Option<DayProduction>), Trouble> {
    let whole = beginning.whole_days(record);
    let back = if span == 0 { whole } else { whole.min(span - 1) };
    let from = record.today().earlier_by(1).earlier_by(back);
    let mut days = days::days(record, from, record.today(), beginning.calendar)?;
    let today = days.pop();
    Ok((days, today))
}

/// The rules as they hold for this record.
pub(crate) fn rules(record: &Record<'_>) -> Result<SupplyRules, Trouble> {
    Ok(SupplyRules::read(record.rules()?))
}

/// Works out every day there is, so that it can be kept.
pub(crate) fn work_out_all(record: &Record<'_>) -> Result<(), Trouble> {
    if let Some(beginning) = Beginning::of(record)? {
        gathered(record, &beginning, 0)?;
    }
    Ok(())
}

/// The drop that the watch holds to be real now.
pub(crate) fn drop(record: &Record<'_>) -> Result<Option<Drop>, Trouble> {
    match Beginning::of(record)? {
        Some(beginning) => beginning.drop(record, &rules(record)?),
        None => Ok(None),
    }
}

/// That these are the first days: told day by day, for a mean of a rise says nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct FirstDays {
    /// The latest birth.
    pub(crate) birth: LocalDay,
}

/// Whether these are the first days after the latest birth.
fn first_days(record: &Record<'_>) -> Result<Option<FirstDays>, Trouble> {
    let rules = NightRules::read(record.rules()?);
    let early = |from: LocalDay| Span::hours(24 * record.today().days_since(from)) < rules.early;
    let children = record.journal.fields_of_kind(Kind::Child)?;
    let births = children.iter().filter_map(|(_, fields)| date(fields, "birth")).map(LocalDay::on);
    let latest = births.filter(|birth| *birth <= record.today()).max();
    Ok(latest.filter(|birth| early(*birth)).map(|birth| FirstDays { birth }))
}

/// Asked about no longer than this after it was.
const ASKS_WITHIN: Span = Span::hours(72);

/// No more questions than this at once.
const ASKS: usize = 2;

/// What is ordinary is learnt from so long before.
const LEARNS: Span = Span::hours(24 * 17);

/// What was answered, here or of every night, is not asked about.
fn is_asked(record: &Record<'_>, look: &SupplyInputs, interval: &Interval) -> bool {
    let known = || {
        let in_quiet =
            |quiet: &Quiet| quiet.hide_one && quiet.hours.lie_between(interval.from, interval.until, record.zone);
        interval.is_answered_missing() || look.quiet.as_ref().is_some_and(in_quiet)
    };
    match interval.status {
        IntervalStatus::SessionMissing => !known(),
        IntervalStatus::AmountInDoubt => true,
        IntervalStatus::Counts | IntervalStatus::Unknown | IntervalStatus::TooLong | IntervalStatus::Unclear => false,
    }
}

/// What is asked about, the latest first, and no more than so much at once.
pub(crate) struct Asked {
    /// Intervals that may hide a session, or end in an amount that may be mistyped.
    pub(crate) intervals: Vec<Interval>,
    /// Sessions that may be one written down twice.
    pub(crate) doubles: Vec<(Removal, Removal, Twice)>,
}

impl Asked {
    pub(crate) fn of(record: &Record<'_>, look: &SupplyInputs) -> Result<Self, Trouble> {
        let now = record.now.plus(Span::milliseconds(1));
        let since = record.now.minus(ASKS_WITHIN);
        let removals = record.journal.removals(record.now.minus(LEARNS), now)?;
        let mut spread = Spread::new(&removals, look.calendar);
        let mut intervals: Vec<Interval> = Vec::new();
        for side in Side::BOTH {
            let recent = spread.judged(side, since, now).iter();
            for interval in recent.filter(|interval| is_asked(record, look, interval)) {
                if !intervals.iter().any(|other| other.session == interval.session) {
                    intervals.push(interval.clone());
                }
            }
        }
        intervals.sort_by_key(|i| std::cmp::Reverse(i.until));
        intervals.truncate(ASKS);
        let recent = doubles(&removals).filter(|(_, second, _)| second.at >= since).collect::<Vec<_>>();
        let doubles =
            recent.into_iter().rev().take(ASKS).map(|(first, second, how)| (first.clone(), second.clone(), how));
        Ok(Self { intervals, doubles: doubles.collect() })
    }
}
