//! A child's weight.

use serde_json::{json, Value};

use super::codes;
use super::makes::Makes;
use super::observation::{at, Observation};
use super::value;
use crate::quantity::Mass;
use crate::record::{Fields, Kind};

/// The profile that R4 asks of every body weight.
const PROFILE: &str = "http://hl7.org/fhir/StructureDefinition/bodyweight";

pub(super) fn write(makes: &Makes<'_>, record: &str, fields: &Fields) -> (String, Value) {
    let weight = fields.get("weight").and_then(value::stored::<Mass>);
    let observation = Observation::of(makes, Kind::Weight, record, "", codes::loinc(codes::WEIGHT, makes.texts()))
        .with("meta", json!({ "profile": [PROFILE] }))
        .with("category", codes::vital_signs())
        .of_child(fields)
        .at(at(fields).as_ref())
        .note(Kind::Weight, fields);
    match weight {
        Some(weight) => observation.with("valueQuantity", weight),
        None => observation.with("dataAbsentReason", codes::absent("unknown")),
    }
    .made()
}
