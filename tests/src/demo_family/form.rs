//! The facts in the exchange form, by a second pen.
//!
//! Core has a writer of its own; this one knows only what
//! `demo-data/README.md` says, so that each checks the other.

use drawwell_core::record::{moment, Fields, Kind, MARKS};
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

/// A session's marks stand together, under their own names.
fn nested(fields: &Fields) -> Fields {
    let mut out = Fields::new();
    let mut marks = Map::new();
    for (key, value) in fields {
        match key.strip_prefix(MARKS) {
            Some(name) => drop(marks.insert(name.to_owned(), value.clone())),
            None => drop(out.insert(key.clone(), value.clone())),
        }
    }
    if !marks.is_empty() {
        out.insert("marks".to_owned(), Value::Object(marks));
    }
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
