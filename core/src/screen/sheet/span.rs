//! The days a sheet is about.

use crate::screen::visit::last_before_today;
use crate::screen::View;
use crate::time::{LocalDay, Moment};
use crate::trouble::Trouble;

/// So many days where there was no visit.
const WITHOUT_A_VISIT: u32 = 14;

/// The days a sheet is about: from the last visit, or the last fourteen, to today.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stretch {
    /// The first day.
    pub(super) from: LocalDay,
    /// Whole days, the last of them yesterday: what the screens are asked for.
    pub(super) days: u32,
    /// Whether it begins with a visit.
    pub(super) since_visit: bool,
}

impl Stretch {
    /// A visit of today is the one the sheet is for. What lies before the first day of
    /// the record is no day that was not observed.
    pub(super) fn of(view: &View<'_>) -> Result<Self, Trouble> {
        let today = view.today();
        let visit = last_before_today(view)?.map(|at| LocalDay::of(&at, view.settings.day_start));
        let asked = visit.unwrap_or_else(|| today.earlier_by(WITHOUT_A_VISIT));
        let begin = view.journal.first_removal(view.now)?.map(|first| {
            LocalDay::of(&Moment::new(first.at, first.zone), view.settings.day_start).min(today.earlier_by(1))
        });
        let from = begin.map_or(asked, |begin| asked.max(begin));
        let days = u32::try_from(today.days_since(from)).unwrap_or(1).max(1);
        Ok(Self { from, days, since_visit: visit == Some(from) })
    }

    /// The same in words.
    pub(super) fn render(self, view: &View<'_>) -> String {
        let words = view.words();
        let key = if self.since_visit { "sheet-span-visit" } else { "sheet-span" };
        words.with(
            key,
            &[
                ("from", words.plain_date(self.from.date()).into()),
                ("to", words.plain_date(view.today().date()).into()),
            ],
        )
    }

    /// Whether a date lies in it.
    pub(super) fn holds(self, day: LocalDay, view: &View<'_>) -> bool {
        (self.from..=view.today()).contains(&day)
    }
}
