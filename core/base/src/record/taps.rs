//! Taps along with a pump, one a cycle.

use serde_json::{json, Value};

use crate::time::{Instant, Span};

/// More taps than this nobody makes.
const MOST: usize = 200;

/// Taps in the order they were made: the first, and how long after it each came.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Taps {
    first: Option<Instant>,
    after: Vec<Span>,
}

impl Taps {
    /// Reads the stored form; what cannot be read is no tap.
    pub fn from_json(value: Option<&Value>) -> Self {
        let Some(value) = value else { return Self::default() };
        let first = value.get("first").and_then(Value::as_i64).map(Instant::from_unix_milliseconds);
        let after = value.get("after").and_then(Value::as_array).map(|all| {
            let spans = all.iter().take(MOST).map_while(Value::as_i64).map(Span::milliseconds);
            spans.collect::<Vec<_>>()
        });
        match (first, after) {
            (Some(first), Some(after)) if after.windows(2).all(|pair| pair.first() < pair.last()) => {
                Self { first: Some(first), after }
            }
            _ => Self::default(),
        }
    }

    /// The stored form.
    pub fn to_json(&self) -> Value {
        json!({
            "first": self.first.map(|first| first.unix_milliseconds()),
            "after": self.after.iter().map(|span| span.in_milliseconds()).collect::<Vec<_>>(),
        })
    }

    /// With one more; one that is not later than the last is none, nor one beyond what anybody makes.
    #[must_use]
    pub fn with(mut self, at: Instant) -> Self {
        let Some(first) = self.first else { return Self { first: Some(at), after: vec![Span::milliseconds(0)] } };
        let span = at.since(first);
        if self.after.len() < MOST && self.after.last().is_none_or(|last| span > *last) {
            self.after.push(span);
        }
        self
    }

    /// How long after the first each came, the first with it.
    pub fn spans(&self) -> &[Span] {
        &self.after
    }
}
