//! Milk given by bottle, tube or cup.

use serde_json::Value;

use super::codes::{self, Code};
use super::makes::Makes;
use super::observation::{at, Observation};
use crate::record::{text, Amount, FieldType, Fields, Kind};

pub(super) fn write(makes: &Makes<'_>, record: &str, fields: &Fields) -> (String, Value) {
    let texts = makes.texts();
    let way = match Kind::Feed.field("way").map(|spec| spec.field_type) {
        Some(FieldType::Choice(words)) => text(fields, "way")
            .filter(|word| words.contains(word) && makes.keeps(Kind::Feed, "way"))
            .map(|word| Code::choice("way", words, word).concept(texts)),
        _ => None,
    };
    let feed = Observation::of(makes, Kind::Feed, record, "", Code::thing("milk-given").concept(texts))
        .of_child(fields)
        .at(at(fields).as_ref())
        .with_any("method", way)
        .components(Kind::Feed, fields, &["way"])
        .note(Kind::Feed, fields);
    match makes.keeps(Kind::Feed, "amount") {
        true => feed.amount(fields.get("amount").and_then(Amount::from_json).as_ref()),
        false => feed.with("dataAbsentReason", codes::absent("masked")),
    }
    .made()
}
