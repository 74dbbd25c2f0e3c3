//! The rules that Tonight goes by, typed, and the evidence on how often.

use super::Evidence;

use super::{tables::Tables, Rules};
use crate::quantity::{Count, Share};
use crate::time::Span;

/// The rules of the night's plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NightRules {
    /// The longest gap, where none was set.
    pub longest: Span,
    /// The same in the first days.
    pub longest_early: Span,
    /// How long those are, from birth.
    pub early: Span,
    /// Fewer sessions a day than this are noted.
    pub least_sessions: Count,
    /// The same in the first days.
    pub least_sessions_early: Count,
    /// How long it takes to be asleep again.
    pub asleep_again: Span,
    /// How long a session takes, where the record does not say.
    pub usual_length: Span,
    /// After a delay sessions follow no closer than this share of their usual interval.
    pub catches_up: Share,
    /// A session is late after this.
    pub late_after: Span,
}

impl NightRules {
    /// Reads them from the table.
    pub fn read(rules: &Rules) -> Self {
        let minutes = |key: &str, each: f64| Span::minutes((rules.value(key) * each).round() as i64);
        Self {
            longest: minutes("longest_gap", 60.0),
            longest_early: minutes("longest_gap_early", 60.0),
            early: minutes("early_days", 1440.0),
            least_sessions: Count::new(rules.value("least_sessions").round() as u32),
            least_sessions_early: Count::new(rules.value("least_sessions_early").round() as u32),
            asleep_again: minutes("asleep_again", 1.0),
            usual_length: minutes("usual_length", 1.0),
            catches_up: Share::of(rules.value("catches_up") / 100.0),
            late_after: minutes("late_after", 1.0),
        }
    }
}

impl Evidence {
    /// All there is, as it is shipped.
    pub fn on_sessions_a_day() -> &'static [Self] {
        &Tables::shipped().evidence
    }
}

/// The rules of how milk comes back.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RefillRules {
    /// The highest rate that was published for one breast.
    pub highest_rate: crate::quantity::Production,
}

impl RefillRules {
    /// Reads them from the table.
    pub fn read(rules: &Rules) -> Self {
        use crate::quantity::{Production, Quantity};
        Self { highest_rate: Production::from_canonical(rules.value("highest_rate") * 24.0) }
    }
}
