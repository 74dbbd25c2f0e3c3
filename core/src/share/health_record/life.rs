//! What changed in life, free notes, and questions for the consultant.

use serde_json::{json, Value};

use super::codes::Code;
use super::makes::Makes;
use super::observation::{at, Observation};
use super::value;
use crate::record::choices::LIFE_EVENTS;
use crate::record::{text, Fields, Kind};

/// A change in life.
pub(super) fn event(makes: &Makes<'_>, record: &str, fields: &Fields) -> Option<(String, Value)> {
    let texts = makes.texts();
    let what = text(fields, "what").filter(|word| LIFE_EVENTS.contains(word) && makes.keeps(Kind::LifeEvent, "what"));
    let event = Observation::of(makes, Kind::LifeEvent, record, "", Code::thing("life-event").concept(texts))
        .of_parent()
        .at(at(fields).as_ref())
        .with_any("valueCodeableConcept", what.map(|word| Code::choice("what", LIFE_EVENTS, word).concept(texts)))
        .note(Kind::LifeEvent, fields);
    (!event.is_bare()).then(|| event.made())
}

/// A note.
pub(super) fn note(makes: &Makes<'_>, record: &str, fields: &Fields) -> Option<(String, Value)> {
    words(makes, Kind::Note, record, fields, ("note", "text"))
}

/// A question for the consultant.
pub(super) fn question(makes: &Makes<'_>, record: &str, fields: &Fields) -> Option<(String, Value)> {
    words(makes, Kind::Question, record, fields, ("question", "question"))
}

fn words(
    makes: &Makes<'_>,
    kind: Kind,
    record: &str,
    fields: &Fields,
    (code, field): (&str, &str),
) -> Option<(String, Value)> {
    let said = value::text_of(fields, field).filter(|_| makes.keeps(kind, field))?;
    let words = Observation::of(makes, kind, record, "", Code::thing(code).concept(makes.texts()))
        .of_parent()
        .at(at(fields).as_ref())
        .components(kind, fields, &[])
        .with("valueString", json!(said));
    Some(words.made())
}
