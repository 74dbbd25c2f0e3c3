//! The parent and the children.

use serde_json::{json, Map, Value};

use super::makes::Makes;
use super::{ids, value};
use crate::record::{date, text, Fields, Kind};
use crate::share::names;

/// The parent, with the name that was chosen for the visit and left in, and no other data.
pub(super) fn parent(makes: &Makes<'_>, settings: &Fields) -> (String, Value) {
    let id = ids::parent();
    let mut patient = Map::new();
    patient.insert("resourceType".to_owned(), json!("Patient"));
    patient.insert("id".to_owned(), json!(id));
    if let Some(name) = value::text_of(settings, "sheet_name").filter(|_| makes.keeps(Kind::Settings, "sheet_name")) {
        patient.insert("name".to_owned(), json!([{ "text": names::leaves(&name) }]));
    }
    (ids::url(&id), Value::Object(patient))
}

/// A child: a name only where one was given and left in.
pub(super) fn child(makes: &Makes<'_>, record: &str, fields: &Fields) -> (String, Value) {
    let id = ids::id(Kind::Child.name(), record, "");
    let mut patient = Map::new();
    patient.insert("resourceType".to_owned(), json!("Patient"));
    patient.insert("id".to_owned(), json!(id));
    let kept = |key: &str| makes.keeps(Kind::Child, key);
    if let Some(name) = value::text_of(fields, "name").filter(|_| kept("name")) {
        patient.insert("name".to_owned(), json!([{ "text": names::leaves(&name) }]));
    }
    if let Some(birth) = date(fields, "birth").filter(|_| kept("birth")) {
        patient.insert("birthDate".to_owned(), json!(birth.format("%Y-%m-%d").to_string()));
    }
    let gender = match text(fields, "sex").filter(|_| kept("sex")) {
        Some("girl") => Some("female"),
        Some("boy") => Some("male"),
        _ => None,
    };
    if let Some(gender) = gender {
        patient.insert("gender".to_owned(), json!(gender));
    }
    (ids::url(&id), Value::Object(patient))
}
