//! Temperature and signs, as one entry says them. Which there are says the table of kinds.

use super::because::{Because, Where};
use crate::quantity::{Entered, Score, Temperature};
use crate::record::choices::WHERE_ON_BODY;
use crate::record::{moment, text, whole_number, FieldType, Fields, Kind};
use crate::time::Instant;

/// How it is since it was written down before.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SinceBefore {
    /// Better.
    Better,
    /// The same.
    Same,
    /// Worse.
    Worse,
}

/// An entry.
#[derive(Debug, Clone, PartialEq)]
pub struct BodySign {
    /// When.
    pub at: Instant,
    /// What was measured.
    pub temperature: Option<Temperature>,
    /// How much the breast hurts.
    pub breast_pain: Option<Score>,
    /// Signs that are there, by field, with where.
    pub there: Vec<(&'static str, Option<Where>)>,
    /// Signs that were looked for and are not there.
    pub absent: Vec<&'static str>,
    /// Since the entry before.
    pub since_before: Option<SinceBefore>,
}

impl BodySign {
    /// Reads an entry; none without its time.
    pub fn read(fields: &Fields) -> Option<Self> {
        let at = moment(fields, "at")?.instant();
        let (mut there, mut absent) = (Vec::new(), Vec::new());
        for spec in Kind::Sign.fields() {
            match (spec.field_type, fields.get(spec.key)) {
                (FieldType::Flag, Some(serde_json::Value::Bool(true))) => there.push((spec.key, None)),
                (FieldType::Flag, Some(serde_json::Value::Bool(false))) => absent.push(spec.key),
                (FieldType::Choice(words), Some(said)) if words == WHERE_ON_BODY => match said.as_str() {
                    Some("left") => there.push((spec.key, Some(Where::Left))),
                    Some("right") => there.push((spec.key, Some(Where::Right))),
                    Some("both") => there.push((spec.key, Some(Where::Both))),
                    Some("neither") => absent.push(spec.key),
                    _ => {}
                },
                _ => {}
            }
        }
        Some(Self {
            at,
            temperature: fields.get("temperature").and_then(Entered::<Temperature>::from_json).map(|e| e.quantity()),
            breast_pain: whole_number(fields, "breast_pain").map(Score::new),
            there,
            absent,
            since_before: match text(fields, "since_before") {
                Some("better") => Some(SinceBefore::Better),
                Some("same") => Some(SinceBefore::Same),
                Some("worse") => Some(SinceBefore::Worse),
                _ => None,
            },
        })
    }

    /// Those that are there, of the ones that are asked about.
    pub(super) fn among(&self, asked: impl Fn(&str) -> bool) -> Vec<Because> {
        let found = self.there.iter().filter(|(key, _)| asked(key));
        found.map(|(key, side)| Because::Sign(self.at, key, *side)).collect()
    }

    /// Whether any of the ones that are asked about is there.
    pub(super) fn has(&self, asked: impl Fn(&str) -> bool) -> bool {
        self.there.iter().any(|(key, _)| asked(key))
    }

    /// Where one of them is.
    pub(super) fn side_of(&self, sign: &str) -> Option<Where> {
        self.there.iter().find(|(key, _)| *key == sign).and_then(|(_, side)| *side)
    }
}
