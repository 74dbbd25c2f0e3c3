//! Pumps, and the gauges that they are checked with.

use serde_json::{json, Map, Value};

use super::codes::{self, Code};
use super::makes::Makes;
use super::{component, ids, value};
use crate::record::{Fields, Kind};

/// A pump or a gauge, with what its maker says of it.
pub(super) fn device(makes: &Makes<'_>, kind: Kind, record: &str, fields: &Fields) -> (String, Value) {
    let id = ids::device(kind, record);
    let mut device = Map::new();
    let mut put = |member: &str, value: Value| drop(device.insert(member.to_owned(), value));
    put("resourceType", json!("Device"));
    put("id", json!(id));
    put("type", Code::thing(kind.name()).concept(makes.texts()));
    if let Some(name) = value::text_of(fields, "name").filter(|_| makes.keeps(kind, "name")) {
        put("deviceName", json!([{ "name": name, "type": "user-friendly-name" }]));
    }
    if let Some(serial) = value::text_of(fields, "serial").filter(|_| makes.keeps(kind, "serial")) {
        put("serialNumber", json!(serial));
    }
    if let Some(note) = value::text_of(fields, "note").filter(|_| makes.keeps(kind, "note")) {
        put("note", json!([{ "text": note }]));
    }
    let properties: Vec<Value> = kind
        .fields()
        .iter()
        .filter(|spec| codes::stands_in(kind, spec) && makes.keeps(kind, spec.key))
        .filter_map(|spec| component::property(spec, fields.get(spec.key)?, makes.texts()))
        .collect();
    if !properties.is_empty() {
        put("property", Value::Array(properties));
    }
    (ids::url(&id), Value::Object(device))
}
