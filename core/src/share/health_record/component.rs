//! A field as a component of an observation, or as a property of a device. New fields
//! come with their codes by themselves.

use serde_json::{json, Map, Value};

use super::codes::Code;
use super::value;
use crate::quantity::{AirPressure, Altitude, Length, Mass, Speed, Temperature, Vacuum, Volume};
use crate::record::{Spec, Takes};
use crate::text::Texts;

/// The codes that a field needs: its own, and one for each word it takes.
pub(super) fn codes(spec: &Spec) -> Vec<Code> {
    match spec.takes {
        Takes::Choice(words) => {
            let mut codes = vec![Code::field(spec.key)];
            codes.extend(words.iter().map(|word| Code::choice(spec.key, words, word)));
            codes
        }
        _ if is_component(spec.takes) => vec![Code::field(spec.key)],
        _ => Vec::new(),
    }
}

const fn is_component(takes: Takes) -> bool {
    !matches!(
        takes,
        Takes::Moment
            | Takes::Date
            | Takes::Text { .. }
            | Takes::Phone
            | Takes::Amount
            | Takes::Sizes { .. }
            | Takes::Findings
            | Takes::ClockTime
            | Takes::Zone
            | Takes::Refers(_)
    )
}

/// A value with the name of the member that holds it.
fn said(spec: &Spec, value: &Value, texts: &Texts) -> Option<(&'static str, Value)> {
    let quantity = match spec.takes {
        Takes::Volume { .. } => value::stored::<Volume>(value),
        Takes::Vacuum { .. } => value::stored::<Vacuum>(value),
        Takes::Speed { .. } => value::stored::<Speed>(value),
        Takes::AirPressure { .. } => value::stored::<AirPressure>(value),
        Takes::Altitude { .. } => value::stored::<Altitude>(value),
        Takes::Length { .. } => value::stored::<Length>(value),
        Takes::Mass { .. } => value::stored::<Mass>(value),
        Takes::Temperature { .. } => value::stored::<Temperature>(value),
        Takes::Number { .. } => value.as_f64().map(|number| value::number(number, "1")),
        Takes::Span { .. } => value.as_f64().map(|minutes| value::number(minutes, "min")),
        Takes::Whole { .. } => return value.as_u64().map(|number| ("valueInteger", json!(number))),
        Takes::Flag => return value.as_bool().map(|yes| ("valueBoolean", json!(yes))),
        Takes::Choice(words) => {
            let word = value.as_str().filter(|word| words.contains(word))?;
            return Some(("valueCodeableConcept", Code::choice(spec.key, words, word).concept(texts)));
        }
        _ => None,
    };
    quantity.map(|quantity| ("valueQuantity", quantity))
}

/// A component of an observation.
pub(super) fn component(spec: &Spec, value: &Value, texts: &Texts) -> Option<Value> {
    let (member, value) = said(spec, value, texts)?;
    let mut component = Map::new();
    component.insert("code".to_owned(), Code::field(spec.key).concept(texts));
    component.insert(member.to_owned(), value);
    Some(Value::Object(component))
}

/// A property of a device, which is a quantity or a code.
pub(super) fn property(spec: &Spec, value: &Value, texts: &Texts) -> Option<Value> {
    let kind = Code::field(spec.key).concept(texts);
    match said(spec, value, texts)? {
        ("valueQuantity", quantity) => Some(json!({ "type": kind, "valueQuantity": [quantity] })),
        ("valueInteger", number) => {
            Some(json!({ "type": kind, "valueQuantity": [value::number(number.as_f64()?, "1")] }))
        }
        ("valueCodeableConcept", word) => Some(json!({ "type": kind, "valueCode": [word] })),
        _ => None,
    }
}
