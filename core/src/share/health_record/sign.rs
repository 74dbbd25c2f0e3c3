//! Temperature, and signs at the breast.

use serde_json::{json, Value};

use super::codes::{self, Code};
use super::makes::Makes;
use super::observation::{at, Observation};
use super::value;
use crate::quantity::Temperature;
use crate::record::{whole_number, Fields, Kind};

/// The profile that R4 asks of every body temperature.
const PROFILE: &str = "http://hl7.org/fhir/StructureDefinition/bodytemp";

pub(super) fn write(makes: &Makes<'_>, record: &str, fields: &Fields) -> Vec<(String, Value)> {
    let texts = makes.texts();
    let at = at(fields);
    let temperature = fields
        .get("temperature")
        .filter(|_| makes.keeps(Kind::Sign, "temperature"))
        .and_then(value::stored::<Temperature>)
        .map(|temperature| {
            Observation::of(makes, Kind::Sign, record, "temperature", codes::loinc(codes::TEMPERATURE, texts))
                .with("meta", json!({ "profile": [PROFILE] }))
                .with("category", codes::vital_signs())
                .of_parent()
                .at(at.as_ref())
                .with("valueQuantity", temperature)
                .made()
        });
    let signs = Observation::of(makes, Kind::Sign, record, "", Code::thing("breast-signs").concept(texts))
        .of_parent()
        .at(at.as_ref())
        .components(Kind::Sign, fields, &["temperature", "breast_pain"])
        .note(Kind::Sign, fields);
    let pain = whole_number(fields, "breast_pain").filter(|_| makes.keeps(Kind::Sign, "breast_pain")).map(|score| {
        Observation::of(makes, Kind::Sign, record, "pain", codes::loinc(codes::PAIN, texts))
            .of_parent()
            .at(at.as_ref())
            .with("valueQuantity", value::number(f64::from(score), "{score}"))
            .made()
    });
    let signs = (!signs.is_bare()).then(|| signs.made());
    temperature.into_iter().chain(pain).chain(signs).collect()
}
