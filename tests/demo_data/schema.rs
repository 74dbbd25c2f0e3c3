//! The schema says what core's tables say: every field, every word, every bound.

use std::{collections::BTreeSet, fs};

use drawwell_core::record::{field_type::LONGEST_PHONE, FieldType, Kind};
use drawwell_tests::{demo_family, place::demo_data};
use jsonschema::Validator;
use serde_json::{json, Value};

pub(crate) fn document() -> Value {
    serde_json::from_str(&fs::read_to_string(demo_data("exchange.schema.json")).unwrap()).unwrap()
}

pub(crate) fn validator() -> Validator {
    jsonschema::draft202012::new(&document()).unwrap()
}

#[test]
fn it_is_a_schema() {
    jsonschema::draft202012::meta::validate(&document()).unwrap();
}

#[test]
fn every_line_of_the_family_is_valid() {
    let validator = validator();
    for (number, line) in demo_family::file(demo_family::facts()).lines().enumerate() {
        let line: Value = serde_json::from_str(line).unwrap();
        let wrong: Vec<String> = validator.iter_errors(&line).map(|error| error.to_string()).collect();
        assert!(wrong.is_empty(), "line {}: {wrong:?}", number + 1);
    }
}

#[test]
fn it_has_every_kind_of_fact_and_every_field_and_no_other() {
    let document = document();
    for kind in Kind::ALL {
        let fields = document["$defs"][kind.name()]["properties"].as_object().unwrap();
        let described: BTreeSet<&str> = fields.keys().map(String::as_str).collect();
        let mut known: BTreeSet<&str> = kind.fields().iter().map(|field| field.key).collect();
        known.extend(["fact", "id", "taken_out"]);
        known.extend(kind.members().map(|(_, word)| word));
        assert_eq!(described, known, "{}", kind.name());
    }
    assert_eq!(document["oneOf"].as_array().unwrap().len(), Kind::ALL.len() + 1);
}

#[test]
fn each_field_takes_what_core_takes() {
    let document = document();
    for kind in Kind::ALL {
        for field in kind.fields() {
            let described = &document["$defs"][kind.name()]["properties"][field.key];
            let name = format!("{}.{}", kind.name(), field.key);
            assert!(described["description"].is_string(), "{name} says what it is");
            assert_takes(&document, described, field.field_type, &name);
        }
    }
}

fn assert_takes(document: &Value, described: &Value, takes: FieldType, name: &str) {
    let refers = |to: &str| assert_eq!(described["$ref"], format!("#/$defs/{to}"), "{name}");
    match takes {
        FieldType::Moment => refers("moment"),
        FieldType::Date => refers("date"),
        FieldType::Amount => refers("amount"),
        FieldType::Zone => refers("zone"),
        FieldType::Refers(_) => refers("reference"),
        FieldType::Flag => assert_eq!(described["type"], json!(["boolean", "null"]), "{name}"),
        FieldType::Text { most } => assert_eq!(described["maxLength"], json!(most), "{name}"),
        FieldType::Phone => assert_eq!(described["maxLength"], json!(LONGEST_PHONE), "{name}"),
        FieldType::Choice(words) => {
            let mut all: Vec<Value> = words.iter().map(|word| json!(word)).collect();
            all.push(Value::Null);
            assert_eq!(described["enum"], Value::Array(all), "{name}");
        }
        FieldType::Whole { least, most } => {
            assert_eq!((&described["minimum"], &described["maximum"]), (&json!(least), &json!(most)), "{name}");
        }
        FieldType::Number { least, most } => {
            assert_eq!((&described["minimum"], &described["maximum"]), (&json!(least), &json!(most)), "{name}");
        }
        FieldType::Findings => refers("findings"),
        FieldType::ClockTime => refers("clock_time"),
        FieldType::Span { least_minutes, most_minutes } => {
            let bounds = (&json!(least_minutes), &json!(most_minutes));
            assert_eq!((&described["minimum"], &described["maximum"]), bounds, "{name}");
        }
        FieldType::Sizes { least, most } => {
            let items = &described["items"];
            assert_eq!((&items["minimum"], &items["maximum"]), (&json!(least), &json!(most)), "{name}");
        }
        FieldType::AirPressure { least, most }
        | FieldType::Altitude { least, most }
        | FieldType::Volume { least, most }
        | FieldType::Vacuum { least, most }
        | FieldType::Speed { least, most }
        | FieldType::Length { least, most }
        | FieldType::Mass { least, most }
        | FieldType::Temperature { least, most } => {
            let to = described["$ref"].as_str().unwrap().trim_start_matches("#/$defs/");
            let quantity = &document["$defs"][to]["anyOf"][1];
            let value = match &quantity["oneOf"] {
                Value::Null => &quantity["properties"]["value"],
                units => &units[0]["properties"]["value"],
            };
            let bound = |key: &str| value[key].as_f64();
            assert_eq!((bound("minimum"), bound("maximum")), (Some(least), Some(most)), "{name}");
        }
    }
}
