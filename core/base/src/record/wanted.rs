//! What is wanted of a pump, read from its record. Nothing has to be said.

use super::{flag, text, whole_number, Fields};
use crate::time::Span;

/// How often it will run.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HowOften {
    /// Now and then.
    NowAndThen,
    /// Daily, at work.
    DailyAtWork,
    /// For nearly all of the child's milk.
    NearlyAllMilk,
    /// For a child who is on a neonatal unit for long.
    NeonatalUnit,
}

impl HowOften {
    /// Whether the pump makes up for a child at the breast.
    pub const fn is_most(self) -> bool {
        matches!(self, Self::NearlyAllMilk | Self::NeonatalUnit)
    }

    /// Whether it runs at least daily.
    pub const fn is_daily(self) -> bool {
        !matches!(self, Self::NowAndThen)
    }
}

/// Where it has to run.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MustRun {
    /// From the wall.
    Mains,
    /// From its battery.
    Battery,
    /// In the clothes, with both hands free.
    InClothes,
}

/// What is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Wanted {
    /// How often it will run.
    pub often: Option<HowOften>,
    /// For how long.
    pub planned: Option<Span>,
    /// Both sides at once.
    pub both_at_once: bool,
    /// Where it has to run.
    pub runs: Option<MustRun>,
    /// Nipples are sensitive.
    pub sensitive: bool,
    /// Letdown needs more than usual.
    pub letdown_needs_more: bool,
}

impl Wanted {
    /// Reads what was said.
    pub fn read(fields: &Fields) -> Self {
        Self {
            often: match text(fields, "how_often") {
                Some("now_and_then") => Some(HowOften::NowAndThen),
                Some("daily_at_work") => Some(HowOften::DailyAtWork),
                Some("nearly_all_milk") => Some(HowOften::NearlyAllMilk),
                Some("neonatal_unit") => Some(HowOften::NeonatalUnit),
                _ => None,
            },
            planned: whole_number(fields, "weeks_wanted").map(|weeks| Span::hours(i64::from(weeks) * 7 * 24)),
            both_at_once: flag(fields, "both_at_once"),
            runs: match text(fields, "must_run") {
                Some("mains") => Some(MustRun::Mains),
                Some("battery") => Some(MustRun::Battery),
                Some("in_clothes") => Some(MustRun::InClothes),
                _ => None,
            },
            sensitive: flag(fields, "sensitive_nipples"),
            letdown_needs_more: flag(fields, "letdown_needs_more"),
        }
    }

    /// Whether anything was said.
    pub fn says_something(&self) -> bool {
        *self != Self::default()
    }
}
