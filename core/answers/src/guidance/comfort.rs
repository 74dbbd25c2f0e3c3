//! The rules that Comfort goes by, typed.

use super::Rules;
use crate::quantity::{Count, Points, Quantity, Score, Share, Speed, Vacuum};
use crate::time::Span;

/// The rules of comfort, letdowns and trials.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ComfortRules {
    /// Most people express comfortably in here: shown behind, never an aim.
    pub comfortable: (Vacuum, Vacuum),
    /// Pain from here on is discomfort.
    pub discomfort_from: Score,
    /// Discomfort in at most this share of sessions is rare.
    pub rare: Share,
    /// So many sessions tell a comfortable vacuum.
    pub sessions: Count,
    /// A search goes up by so much.
    pub search_step: Vacuum,
    /// A search for a speed goes up by so much.
    pub search_speed_step: Speed,
    /// A search ends, and the pump rests, from this pain on.
    pub search_pain: Score,
    /// So many sessions tell milk against vacuum.
    pub milk_sessions: Count,
    /// A difference in milk matters from this share on.
    pub milk_matters: Share,
    /// A difference in pain matters from so many points on.
    pub pain_matters: Points,
    /// A difference in time matters from here on.
    pub time_matters: Span,
    /// Over all looks at a trial, the chance of a difference that is none.
    pub trial_false: Share,
    /// So many sessions are planned for a trial where nothing else is said.
    pub trial_planned: Count,
    /// A trial stops when pain lies so much over what it was.
    pub trial_pain_rise: Score,
    /// So many of the latest sessions at the highest level, and the flange is looked at.
    pub suspect_in: Count,
    /// Out of so many.
    pub suspect_of: Count,
    /// How long a letdown phase usually lasts.
    pub stimulation: (Span, Span),
    /// How long an expression phase usually lasts.
    pub expression: (Span, Span),
    /// How many letdowns a session usually has.
    pub letdowns: (Count, Count),
}

impl ComfortRules {
    /// Reads them from the table.
    pub fn read(rules: &Rules) -> Self {
        let vacuum = |key: &str| Vacuum::from_canonical(rules.value(key));
        let whole = |key: &str| rules.value(key).round() as u32;
        let (count, score) = (|key: &str| Count::new(whole(key)), |key: &str| Score::new(whole(key)));
        let share = |key: &str| Share::of(rules.value(key) / 100.0);
        let minutes = |key: &str| Span::milliseconds((rules.value(key) * 60_000.0).round() as i64);
        Self {
            comfortable: (vacuum("comfortable_low"), vacuum("comfortable_high")),
            discomfort_from: score("discomfort_from"),
            rare: share("discomfort_rare"),
            sessions: count("comfort_sessions"),
            search_step: vacuum("search_step"),
            search_speed_step: Speed::from_canonical(rules.value("search_speed_step")),
            search_pain: score("search_pain"),
            milk_sessions: count("milk_sessions"),
            milk_matters: share("milk_matters"),
            pain_matters: Points::new(rules.value("pain_matters")),
            time_matters: minutes("minutes_matter"),
            trial_false: share("trial_false"),
            trial_planned: count("trial_planned"),
            trial_pain_rise: score("trial_pain_rise"),
            suspect_in: count("suspect_in"),
            suspect_of: count("suspect_of"),
            stimulation: (minutes("stimulation_low"), minutes("stimulation_high")),
            expression: (minutes("expression_low"), minutes("expression_high")),
            letdowns: (count("letdowns_low"), count("letdowns_high")),
        }
    }
}
