//! One line: a record as a JSON object.

use serde_json::{Map, Value};

use crate::record::{Fields, Kind, MARKS};
use crate::trouble::Trouble;

/// A record read from a line.
#[derive(Debug)]
pub(super) struct Line {
    pub(super) kind: Kind,
    pub(super) id: String,
    pub(super) fields: Fields,
}

const NESTED: &str = "marks";

pub(super) fn write(id: &str, kind: Kind, fields: &Fields) -> String {
    let mut marks = Map::new();
    let mut rest: Vec<(&str, &Value)> = Vec::new();
    for (key, value) in fields {
        match key.strip_prefix(MARKS) {
            Some(name) => drop(marks.insert(name.to_owned(), value.clone())),
            None if key == "kind" => {}
            None => rest.push((key, value)),
        }
    }
    let marks = Value::Object(marks);
    if marks.as_object().is_some_and(|m| !m.is_empty()) {
        rest.push((NESTED, &marks));
        rest.sort_by_key(|(key, _)| *key);
    }
    // By hand, so that `fact` and `id` stand first whatever the map's order.
    let mut out = format!("{{\"fact\":{},\"id\":{}", Value::from(kind.name()), Value::from(id));
    for (key, value) in rest {
        out.push_str(&format!(",{}:{}", Value::from(key), value));
    }
    out.push('}');
    out
}

pub(super) fn read(text: &str) -> Result<Line, Trouble> {
    let value: Value = serde_json::from_str(text)
        .map_err(|e| Trouble::bad("", "line-not-json").with("column", e.column().to_string()))?;
    let Value::Object(map) = value else { return Err(Trouble::bad("", "line-not-object")) };
    let word = |key: &str| map.get(key).and_then(Value::as_str);
    let kind = word("fact").ok_or_else(|| Trouble::bad("fact", "line-no-fact"))?;
    let kind = Kind::named(kind).ok_or_else(|| Trouble::bad("fact", "line-unknown-fact"))?;
    let id = word("id").unwrap_or_default().to_owned();
    let clean = (1..=128).contains(&id.len()) && id.chars().all(|c| c.is_ascii_alphanumeric() || "._:-".contains(c));
    if !clean {
        return Err(Trouble::bad("id", "line-bad-id"));
    }
    if kind.only() != Kind::ALL.iter().find_map(|k| k.only().filter(|only| *only == id)) {
        return Err(Trouble::bad("id", "line-bad-id"));
    }
    let mut fields = Fields::new();
    for (key, value) in map {
        match (key.as_str(), value) {
            ("fact" | "id", _) => {}
            (_, Value::Null) => {}
            (NESTED, Value::Object(marks)) => {
                fields.extend(marks.into_iter().map(|(name, mark)| (format!("{MARKS}{name}"), mark)));
            }
            (NESTED, _) => return Err(Trouble::bad(NESTED, "bad-mark")),
            ("kind", _) => return Err(Trouble::bad("kind", "line-reserved")),
            (name, _) if name.starts_with(MARKS) => return Err(Trouble::bad("marks", "line-reserved")),
            (_, value) => drop(fields.insert(key, value)),
        }
    }
    if fields.get("taken_out").is_some_and(|v| !v.is_boolean()) {
        return Err(Trouble::bad("taken_out", "bad-flag"));
    }
    for (key, value) in &fields {
        crate::record::check::field(kind, key, value)?;
    }
    Ok(Line { kind, id, fields })
}
