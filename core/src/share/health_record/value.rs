//! Values as FHIR writes them.

use serde_json::{json, Value};

use super::codes::UCUM;
use crate::quantity::{Entered, Quantity, Unit};
use crate::record::Fields;
use crate::time::Moment;

/// A number in a unit, by its UCUM code. At most four places: what was typed in another
/// unit would else carry figures that nobody read.
pub(super) fn number(value: f64, unit: &str) -> Value {
    let value = (value * 1e4).round() / 1e4;
    json!({ "value": value, "unit": unit, "system": UCUM, "code": unit })
}

/// A measured value in its canonical unit.
pub(super) fn quantity<Q: Quantity>(value: Q) -> Value {
    number(value.canonical(), Q::Unit::ALL.first().map_or("1", |unit| unit.ucum()))
}

/// A stored quantity.
pub(super) fn stored<Q: Quantity>(value: &Value) -> Option<Value> {
    Entered::<Q>::from_json(value).map(|entered| quantity(entered.quantity()))
}

/// A person's text as FHIR can hold it: not blank, and without control characters.
pub(super) fn text(text: Option<&str>) -> Option<String> {
    let clean: String = text?.chars().filter(|c| !c.is_control() || matches!(c, '\n' | '\t')).collect();
    let clean = clean.trim();
    (!clean.is_empty()).then(|| clean.to_owned())
}

/// The text of a field.
pub(super) fn text_of(fields: &Fields, key: &str) -> Option<String> {
    text(crate::record::text(fields, key))
}

/// A moment.
pub(super) fn moment(at: &Moment) -> Value {
    json!(at.to_rfc3339())
}
