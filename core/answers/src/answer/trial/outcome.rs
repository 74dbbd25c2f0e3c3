//! What decides a trial, and what a session reached of it.

use crate::answer::Estimate;
use crate::guidance::ComfortRules;
use crate::quantity::{Points, Quantity, Score, Volume};
use crate::time::Span;

/// What decides, chosen before the first session.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// How much came.
    Amount,
    /// How long until four fifths of it had come.
    TimeToMost,
    /// How much it hurt.
    Pain,
    /// How long until the first letdown.
    Letdown,
}

impl Outcome {
    /// Every outcome with its stable name.
    pub const ALL: [(Self, &'static str); 4] = [
        (Self::Amount, "amount"),
        (Self::TimeToMost, "time_to_most"),
        (Self::Pain, "pain"),
        (Self::Letdown, "letdown"),
    ];

    /// The outcome of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|(_, own)| *own == name).map(|(outcome, _)| outcome)
    }

    /// Whether more of it is better.
    pub(super) const fn more_is_better(self) -> bool {
        matches!(self, Self::Amount)
    }

    /// From where on a difference matters, given what is usual.
    pub(super) fn matters(self, usual: f64, rules: &ComfortRules) -> f64 {
        match self {
            Self::Amount => rules.milk_matters.fraction() * usual,
            Self::Pain => rules.pain_matters.get(),
            Self::TimeToMost | Self::Letdown => minutes(rules.time_matters),
        }
    }

    pub(super) fn apart(self, value: f64, low: f64, high: f64) -> Apart {
        match self {
            Self::Amount => {
                let of = Volume::from_canonical;
                Apart::Milk(Estimate { value: of(value), low: of(low), high: of(high) })
            }
            Self::Pain => {
                Apart::Pain(Estimate { value: Points::new(value), low: Points::new(low), high: Points::new(high) })
            }
            Self::TimeToMost | Self::Letdown => {
                let of = |minutes: f64| Span::milliseconds((minutes * 60_000.0).round() as i64);
                Apart::Time(Estimate { value: of(value), low: of(low), high: of(high) })
            }
        }
    }
}

/// How far two ways lie apart: the first less the second.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Apart {
    /// In milk.
    Milk(Estimate<Volume>),
    /// In time.
    Time(Estimate<Span>),
    /// In pain.
    Pain(Estimate<Points>),
}

/// Milk of a side or of a session, and what was to be expected after that gap at that hour, by
/// the refill curve; none where it can't tell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Milk {
    /// What came.
    pub amount: Volume,
    /// What was to be expected.
    pub expected: Option<Volume>,
}

/// A value with what it is set against.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Value {
    pub(super) value: f64,
    pub(super) expected: Option<f64>,
}

/// What a session reached, on each side and as a whole; none where nobody knows.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Reached {
    pub(super) left: Option<Value>,
    pub(super) right: Option<Value>,
    pub(super) whole: Option<Value>,
}

impl Reached {
    /// Milk of each side; both together only where both are known.
    pub fn milk(left: Option<Milk>, right: Option<Milk>) -> Self {
        let value = |milk: Milk| Value {
            value: milk.amount.canonical(),
            expected: milk.expected.map(Quantity::canonical).filter(|expected| *expected > 0.0),
        };
        let (left, right) = (left.map(value), right.map(value));
        let whole = left.zip(right).map(|(left, right)| Value {
            value: left.value + right.value,
            expected: left.expected.zip(right.expected).map(|(left, right)| left + right),
        });
        Self { left, right, whole }
    }

    /// Milk that was measured from both sides in one, or from the only side there was.
    pub fn milk_together(milk: Milk) -> Self {
        let value = Value { value: milk.amount.canonical(), expected: milk.expected.map(Quantity::canonical) };
        Self { whole: Some(value), ..Self::default() }
    }

    /// Pain of each side; the whole is the greater.
    pub fn pain(left: Option<Score>, right: Option<Score>) -> Self {
        let value = |score: Score| Value { value: f64::from(score.get()), expected: None };
        Self { left: left.map(value), right: right.map(value), whole: left.max(right).map(value) }
    }

    /// Time, which both sides share.
    pub fn time(reached: Option<Span>) -> Self {
        let whole = reached.map(|reached| Value { value: minutes(reached), expected: None });
        Self { whole, ..Self::default() }
    }
}

fn minutes(span: Span) -> f64 {
    span.in_milliseconds() as f64 / 60_000.0
}
