//! The facts in the exchange form, by a second pen.
//!
//! Core has a writer of its own; this one knows only what
//! `demo-data/README.md` says, so that each checks the other.

use drawwell_core::record::{moment, Fields, Kind, MARKS, READINGS};
use serde_json::{Map, Value};

use super::Fact;

/// The whole file: kinds in their order, within a kind by time, then by name.
pub fn file(mut facts: Vec<Fact>) -> String {
    facts.sort_by_key(|fact| {
        let kind = Kind::ALL.iter().position(|kind| *kind == fact.kind);
        let at = fact.kind.time_field().and_then(|key| moment(&fact.fields, key)).map(|at| at.instant());
        (kind, at, fact.id.clone())
    });
    let mut file = String::from("{\"drawwell\":\"exchange\",\"version\":1}\n");
    for fact in &facts {
        file.push_str(&line(fact));
        file.push('\n');
    }
    file
}

fn line(fact: &Fact) -> String {
    let mut line = format!("{{\"fact\":{},\"id\":{}", Value::from(fact.kind.name()), Value::from(fact.id.as_str()));
    for (key, value) in nested(&fact.fields) {
        line.push_str(&format!(",{}:{}", Value::from(key), in_order(&value)));
    }
    line.push('}');
    line
}

/// A session's marks stand together under their own names, and so do the readings
/// of a check.
fn nested(fields: &Fields) -> Fields {
    let mut out = Fields::new();
    for (prefix, word) in [(MARKS, "marks"), (READINGS, "readings")] {
        let members: Map<String, Value> = fields
            .iter()
            .filter_map(|(key, value)| Some((key.strip_prefix(prefix)?.to_owned(), value.clone())))
            .collect();
        if !members.is_empty() {
            out.insert(word.to_owned(), Value::Object(members));
        }
    }
    let alone = fields.iter().filter(|(key, _)| !key.starts_with(MARKS) && !key.starts_with(READINGS));
    out.extend(alone.map(|(key, value)| (key.clone(), value.clone())));
    out
}

/// The value with its members by name, whatever order they were put in.
fn in_order(value: &Value) -> String {
    let Value::Object(map) = value else { return value.to_string() };
    let mut members: Vec<_> = map.iter().collect();
    members.sort_by_key(|(key, _)| *key);
    let members: Vec<String> =
        members.into_iter().map(|(key, value)| format!("{}:{}", Value::from(key.as_str()), in_order(value))).collect();
    format!("{{{}}}", members.join(","))
}
