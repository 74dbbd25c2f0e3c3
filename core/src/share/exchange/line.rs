//! One line: a record as a JSON object.

use serde_json::{Map, Value};

use crate::limits;
use crate::record::{Fields, Kind};
use crate::trouble::Trouble;

/// A record read from a line.
#[derive(Debug)]
pub(super) struct Line {
    pub(super) kind: Kind,
    pub(super) id: String,
    pub(super) fields: Fields,
}

/// The kinds that gather members under one word, with that word.
fn gathered() -> impl Iterator<Item = (&'static str, &'static str)> {
    Kind::ALL.iter().filter_map(|kind| kind.members())
}

pub(super) fn write(id: &str, kind: Kind, fields: &Fields) -> String {
    let (prefix, word) = kind.members().unzip();
    let mut members = Map::new();
    let mut rest: Vec<(&str, &Value)> = Vec::new();
    for (key, value) in fields {
        match prefix.and_then(|prefix| key.strip_prefix(prefix)) {
            Some(name) => drop(members.insert(name.to_owned(), value.clone())),
            None if key == "kind" => {}
            None => rest.push((key, value)),
        }
    }
    let members = Value::Object(members);
    if let (Some(word), true) = (word, members.as_object().is_some_and(|m| !m.is_empty())) {
        rest.push((word, &members));
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
    let value: Value =
        serde_json::from_str(text).map_err(|e| Trouble::bad("", "line-not-json").with("column", e.column()))?;
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
            ("kind", _) => return Err(Trouble::bad("kind", "line-reserved")),
            (name, value) => match gathered().find(|(prefix, word)| name == *word || name.starts_with(prefix)) {
                Some((_, word)) if name != word => return Err(Trouble::bad(word, "line-reserved")),
                Some((prefix, word)) => match value {
                    Value::Object(members) if kind.members().is_some_and(|(own, _)| own == prefix) => {
                        fields.extend(members.into_iter().map(|(name, member)| (format!("{prefix}{name}"), member)));
                    }
                    _ => return Err(Trouble::bad(word, if word == "marks" { "bad-mark" } else { "bad-reading" })),
                },
                None => drop(fields.insert(key, value)),
            },
        }
    }
    if fields.get("taken_out").is_some_and(|v| !v.is_boolean()) {
        return Err(Trouble::bad("taken_out", "bad-flag"));
    }
    for (key, value) in &fields {
        let long = text.len() > limits::VALUE && value.to_string().len() > limits::VALUE;
        if long || !limits::allow_depth(value) {
            return Err(Trouble::bad(key, "line-too-long"));
        }
        crate::record::check::field(kind, key, value)?;
    }
    Ok(Line { kind, id, fields })
}
