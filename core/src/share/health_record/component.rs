//! A field as a component of an observation, or as a property of a device. New fields
//! come with their codes by themselves.

use serde_json::{json, Map, Value};

use super::codes::Code;
use super::value;
use crate::quantity::{AirPressure, Altitude, Length, Mass, Speed, Temperature, Vacuum, Volume};
use crate::record::{FieldSpec, FieldType};
use crate::text::Texts;

/// The codes that a field needs: its own, and one for each word it takes.
pub(super) fn codes(spec: &FieldSpec) -> Vec<Code> {
    match spec.field_type {
        FieldType::Choice(words) => {
            let mut codes = vec![Code::field(spec.key)];
            codes.extend(words.iter().map(|word| Code::choice(spec.key, words, word)));
            codes
        }
        _ if is_component(spec.field_type) => vec![Code::field(spec.key)],
        _ => Vec::new(),
    }
}

const fn is_component(field_type: FieldType) -> bool {
    !matches!(
        field_type,
        FieldType::Moment
            | FieldType::Date
            | FieldType::Text { .. }
            | FieldType::Phone
            | FieldType::Amount
            | FieldType::Sizes { .. }
            | FieldType::Findings
            | FieldType::ClockTime
            | FieldType::Zone
            | FieldType::Refers(_)
    )
}

/// A value with the name of the member that holds it.
fn coded(spec: &FieldSpec, value: &Value, texts: &Texts) -> Option<(&'static str, Value)> {
    let quantity = match spec.field_type {
        FieldType::Volume { .. } => value::stored::<Volume>(value),
        FieldType::Vacuum { .. } => value::stored::<Vacuum>(value),
        FieldType::Speed { .. } => value::stored::<Speed>(value),
        FieldType::AirPressure { .. } => value::stored::<AirPressure>(value),
        FieldType::Altitude { .. } => value::stored::<Altitude>(value),
        FieldType::Length { .. } => value::stored::<Length>(value),
        FieldType::Mass { .. } => value::stored::<Mass>(value),
        FieldType::Temperature { .. } => value::stored::<Temperature>(value),
        FieldType::Number { .. } => value.as_f64().map(|number| value::number(number, "1")),
        FieldType::Span { .. } => value.as_f64().map(|minutes| value::number(minutes, "min")),
        FieldType::Whole { .. } => return value.as_u64().map(|number| ("valueInteger", json!(number))),
        FieldType::Flag => return value.as_bool().map(|yes| ("valueBoolean", json!(yes))),
        FieldType::Choice(words) => {
            let word = value.as_str().filter(|word| words.contains(word))?;
            return Some(("valueCodeableConcept", Code::choice(spec.key, words, word).concept(texts)));
        }
        _ => None,
    };
    quantity.map(|quantity| ("valueQuantity", quantity))
}

/// A component of an observation.
pub(super) fn component(spec: &FieldSpec, value: &Value, texts: &Texts) -> Option<Value> {
    let (member, value) = coded(spec, value, texts)?;
    let mut component = Map::new();
    component.insert("code".to_owned(), Code::field(spec.key).concept(texts));
    component.insert(member.to_owned(), value);
    Some(Value::Object(component))
}

/// A property of a device, which is a quantity or a code.
pub(super) fn property(spec: &FieldSpec, value: &Value, texts: &Texts) -> Option<Value> {
    let kind = Code::field(spec.key).concept(texts);
    match coded(spec, value, texts)? {
        ("valueQuantity", quantity) => Some(json!({ "type": kind, "valueQuantity": [quantity] })),
        ("valueInteger", number) => {
            Some(json!({ "type": kind, "valueQuantity": [value::number(number.as_f64()?, "1")] }))
        }
        ("valueCodeableConcept", word) => Some(json!({ "type": kind, "valueCode": [word] })),
        _ => None,
    }
}
