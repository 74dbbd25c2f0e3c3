//! Sessions as a person would have written them down, in the exchange form.

use drawwell_core::time::{Instant, Moment, Span, Zone};
use serde_json::{json, Map, Value};

/// Lines of an exchange file, as they are written one after the other.
pub struct Written {
    lines: Vec<String>,
    zone: Zone,
}

/// An amount in mL, as it is typed.
pub fn milliliters(value: f64) -> Value {
    json!({ "value": value, "unit": "mL", "typed": value.to_string(), "typed_unit": "mL" })
}

/// A weight in grams, as it is typed.
pub fn grams(value: f64) -> Value {
    json!({ "value": value, "unit": "g", "typed": value.to_string(), "typed_unit": "g" })
}

impl Written {
    /// Nothing yet, in a zone.
    pub fn within(zone: Zone) -> Self {
        Self { lines: vec![r#"{"drawwell":"exchange","version":1}"#.to_owned()], zone }
    }

    /// The zone from here on.
    pub fn travels(&mut self, zone: Zone) {
        self.zone = zone;
    }

    /// A moment, as it is written.
    pub fn moment(&self, at: Instant) -> Value {
        Moment::new(at, self.zone).to_json()
    }

    /// A fact with its fields.
    pub fn fact(&mut self, fact: &str, id: &str, fields: &[(&str, Value)]) -> &mut Self {
        let mut line = Map::new();
        line.insert("fact".to_owned(), json!(fact));
        line.insert("id".to_owned(), json!(id));
        line.extend(fields.iter().map(|(key, value)| ((*key).to_owned(), value.clone())));
        self.lines.push(Value::Object(line).to_string());
        self
    }

    /// A session of a quarter of an hour that ended then.
    pub fn session(&mut self, id: &str, ended: Instant, fields: &[(&str, Value)]) -> &mut Self {
        let started = self.moment(ended.minus(Span::minutes(15)));
        let mut all = vec![("started", started), ("ended", self.moment(ended)), ("settled", json!(true))];
        for usual in [("method", json!("electric_pump")), ("sides", json!("both"))] {
            if !fields.iter().any(|(key, _)| *key == usual.0) {
                all.push(usual);
            }
        }
        all.extend_from_slice(fields);
        self.fact("session", id, &all)
    }

    /// A session of both sides, each with its amount.
    pub fn both(&mut self, id: &str, ended: Instant, left: f64, right: f64) -> &mut Self {
        self.session(id, ended, &[("amount_left", milliliters(left)), ("amount_right", milliliters(right))])
    }

    /// The file.
    pub fn file(&self) -> Vec<u8> {
        self.lines.join("\n").into_bytes()
    }
}
