//! What there is to say, gathered once.

use crate::answer::supply::course::{course, Course};
use crate::answer::supply::level::{level, Level};
use crate::answer::supply::since::{changes, Change};
use crate::answer::supply::watch::{self, Drop};
use crate::answer::supply::{kept, Calendar, DayProduction, Of, Series};
use crate::guidance::{Rules, SupplyRules};
use crate::record::RULES;
use crate::screen::View;
use crate::time::{LocalDay, Span};
use crate::trouble::Trouble;

/// The spans that can be chosen; 0 is all there are.
pub(super) const SPANS: [u32; 4] = [7, 14, 28, 0];
/// Days before the span that the watch needs for the parent's own level.
const WATCH_LOOKS_BACK: u32 = 75;

/// What there is to say of some days.
pub(super) struct Look {
    pub(super) rules: SupplyRules,
    /// The days of the span, the last of them yesterday.
    pub(super) days: Vec<DayProduction>,
    /// Today so far.
    pub(super) today: Option<DayProduction>,
    pub(super) calendar: Calendar,
    pub(super) level: Level,
    pub(super) course: Result<Course, Level>,
    pub(super) series: Series,
    pub(super) changes: Vec<Change>,
    pub(super) drop: Option<Drop>,
    /// Whether anything was ever collected.
    pub(super) began: Option<LocalDay>,
}

impl Look {
    pub(super) fn is_empty(&self) -> bool {
        self.began.is_none()
    }

    pub(super) fn over(view: &View<'_>, span: u32) -> Result<Self, Trouble> {
        let rules = rules(view)?;
        let start = view.settings.day_start;
        let ends = view.journal.first_and_last_removal(view.now.plus(Span::milliseconds(1)))?;
        let calendar = Calendar { start, zone: ends.as_ref().map_or(view.zone, |(first, _)| first.zone) };
        let began =
            ends.map(|(first, _)| LocalDay::of(&crate::time::Moment::new(first.at, first.zone), calendar.start));
        let (days, before, today) = match began {
            None => (Vec::new(), Vec::new(), None),
            Some(began) => gathered(view, began, span, calendar)?,
        };
        let series = Series::of(&days, Of::Both, &rules);
        let changes = changes(&series.clone().to_find_changes());
        let series = series.by_week_where_long();
        let watched: Vec<DayProduction> = before
            .iter()
            .chain(days.iter().skip(days.len().saturating_sub(WATCH_LOOKS_BACK as usize)))
            .copied()
            .collect();
        Ok(Self {
            level: level(&series, &rules),
            course: course(&series, &rules),
            changes,
            drop: watch::now(&watched, &rules),
            rules,
            days,
            today,
            calendar,
            series,
            began,
        })
    }
}

type Gathered = (Vec<DayProduction>, Vec<DayProduction>, Option<DayProduction>);

/// The days of the span, those before it that the watch needs, and today.
fn gathered(view: &View<'_>, began: LocalDay, span: u32, calendar: Calendar) -> Result<Gathered, Trouble> {
    let today = view.today();
    let yesterday = today.earlier_by(1);
    let whole = u32::try_from(yesterday.days_since(began)).unwrap_or(0);
    let from = yesterday.earlier_by(if span == 0 { whole } else { whole.min(span - 1) });
    let first = from.min(yesterday.earlier_by(WATCH_LOOKS_BACK.min(whole)));
    let mut days = kept::days(view.journal, first, today, calendar)?;
    let now = days.pop();
    let at = days.partition_point(|d| d.day < from);
    let rest = days.split_off(at);
    Ok((rest, days, now))
}

/// The rules as they hold for this record.
pub(super) fn rules(view: &View<'_>) -> Result<SupplyRules, Trouble> {
    let fields = view.journal.record(RULES)?.map(|(_, fields)| fields).unwrap_or_default();
    Ok(SupplyRules::read(&Rules::read(&fields)))
}
