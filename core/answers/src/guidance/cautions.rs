//! The rules of cautions, typed, and where each caution comes from.

use super::{Advice, CautionSource, Urgency};

use super::{tables::Tables, Rules};
use crate::quantity::{Count, Quantity, Score, Share, Temperature};
use crate::time::Span;

/// The limits from which a caution is given.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CautionRules {
    /// With any sign at the breast.
    pub breast_fever: Temperature,
    /// With a red, hot or painful place.
    pub fever_with_place: Temperature,
    /// By itself, within [`Self::after_birth`].
    pub fever_after_birth: Temperature,
    /// By itself, later.
    pub fever_later: Temperature,
    /// So long after a birth a fever by itself is read more strictly.
    pub after_birth: Span,
    /// Signs that last this long without getting better.
    pub no_better_after: Span,
    /// A temperature and a sign no further apart than this are read together.
    pub signs_together: Span,
    /// How long what was written down stands.
    pub signs_hold: Span,
    /// Pain from here on is severe.
    pub severe_pain: Score,
    /// Pain that rises by this within a session.
    pub pain_rise: Score,
    /// So many sessions after each other with severe pain.
    pub pain_sessions: Count,
    /// Pain from here on, in [`Self::pain_often_in`] of the latest [`Self::pain_often_of`] sessions.
    pub pain_often: Score,
    /// In so many of them.
    pub pain_often_in: Count,
    /// So many latest sessions.
    pub pain_often_of: Count,
    /// Pain of the breast itself, from here on.
    pub breast_pain_high: Score,
    /// The first day of life on which swelling of both sides is usual.
    pub engorged_from: Count,
    /// The last.
    pub engorged_to: Count,
    /// Blood from one side for longer than this.
    pub blood_lasts: Span,
    /// A pull so much below the lower end of its range.
    pub pump_far_below: Share,
}

impl CautionRules {
    /// Reads them from the table.
    pub fn read(rules: &Rules) -> Self {
        let temperature = |key: &str| Temperature::from_canonical(rules.value(key));
        let hours = |key: &str| Span::minutes((rules.value(key) * 60.0).round() as i64);
        let days = |key: &str| Span::minutes((rules.value(key) * 24.0 * 60.0).round() as i64);
        let count = |key: &str| Count::new(rules.value(key).ceil() as u32);
        let score = |key: &str| Score::new(rules.value(key).ceil() as u32);
        Self {
            breast_fever: temperature("breast_fever"),
            fever_with_place: temperature("fever_with_place"),
            fever_after_birth: temperature("fever_after_birth"),
            fever_later: temperature("fever_later"),
            after_birth: days("after_birth"),
            no_better_after: hours("no_better_after"),
            signs_together: hours("signs_together"),
            signs_hold: hours("signs_hold"),
            severe_pain: score("severe_pain"),
            pain_rise: score("pain_rise"),
            pain_sessions: count("pain_sessions"),
            pain_often: score("pain_often"),
            pain_often_in: count("pain_often_in"),
            pain_often_of: count("pain_often_of"),
            breast_pain_high: score("breast_pain_high"),
            engorged_from: count("engorged_from"),
            engorged_to: count("engorged_to"),
            blood_lasts: days("blood_lasts"),
            pump_far_below: Share::of(rules.value("pump_far_below") / 100.0),
        }
    }
}

impl Advice {
    /// The one of this name.
    pub fn named(key: &str) -> Option<&'static Self> {
        Tables::shipped().advice.iter().find(|advice| advice.key == key)
    }
}

impl CautionSource {
    /// All there are, the most urgent first.
    pub fn all() -> &'static [Self] {
        &Tables::shipped().cautions
    }

    /// The one of this name.
    pub fn named(key: &str) -> Option<&'static Self> {
        Self::all().iter().find(|c| c.key == key)
    }

    /// Whether it waits for somebody to say what came of it, instead of lapsing: it is urgent,
    /// and rests on what was written down at one time.
    pub fn urgency_waits(&self) -> bool {
        self.urgency < Urgency::Consultant
    }

    /// Whether it is about this field of a sign.
    pub fn is_about(&self, sign: &str) -> bool {
        self.signs.iter().any(|own| own == sign)
    }
}
