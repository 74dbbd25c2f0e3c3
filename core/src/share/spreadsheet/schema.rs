//! What a table's columns hold, as a Table Schema (Frictionless Data, Table Schema 1.0).

use serde_json::{json, Map, Value};

use super::column::{Column, Holds};
use super::Table;
use crate::share::parts::LeftOut;
use crate::text::Texts;

/// The Table Schema of a table. Beside what the standard knows each column with a unit
/// says it by its UCUM code under `unit`.
pub fn schema(table: Table, left_out: &LeftOut, texts: &Texts) -> Value {
    let fields: Vec<Value> = table.columns(left_out).iter().map(|column| field(column, texts)).collect();
    json!({ "fields": fields, "missingValues": [""], "primaryKey": table.key() })
}

fn field(column: &Column, texts: &Texts) -> Value {
    let mut field = Map::new();
    let mut bounds = Map::new();
    let mut put = |key: &str, value: Value| drop(field.insert(key.to_owned(), value));
    put("name", json!(column.name));
    put("title", json!(texts.say(&column.title)));
    let kind = match column.holds {
        Holds::Text => "string",
        Holds::Words(words) => {
            bounds.insert("enum".to_owned(), json!(words));
            "string"
        }
        Holds::Flag => {
            put("trueValues", json!(["true"]));
            put("falseValues", json!(["false"]));
            "boolean"
        }
        Holds::Whole { least, most } => {
            bounds.insert("minimum".to_owned(), json!(least));
            bounds.insert("maximum".to_owned(), json!(most));
            "integer"
        }
        Holds::Number { unit, least, most } => {
            put("unit", json!(unit));
            bounds.insert("minimum".to_owned(), json!(least));
            bounds.insert("maximum".to_owned(), json!(most));
            "number"
        }
        Holds::Date => "date",
        Holds::Moment => "datetime",
        Holds::ClockTime => {
            put("format", json!("%H:%M"));
            "time"
        }
    };
    put("type", json!(kind));
    if column.required {
        bounds.insert("required".to_owned(), json!(true));
    }
    if !bounds.is_empty() {
        put("constraints", Value::Object(bounds));
    }
    Value::Object(field)
}
