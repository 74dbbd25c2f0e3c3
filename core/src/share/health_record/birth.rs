//! What a child was at birth.

use serde_json::{json, Value};

use super::codes::Code;
use super::makes::Makes;
use super::observation::Observation;
use crate::record::{date, Fields, Kind};

pub(super) fn write(makes: &Makes<'_>, record: &str, fields: &Fields) -> Option<(String, Value)> {
    let code = Code::thing("birth").concept(makes.texts());
    let born = date(fields, "birth").filter(|_| makes.keeps(Kind::Child, "birth"));
    let birth = Observation::of(makes, Kind::Child, record, "birth", code)
        .with("subject", makes.child(Some(record)))
        .with_any("effectiveDateTime", born.map(|day| json!(day.format("%Y-%m-%d").to_string())))
        .components(Kind::Child, fields, &["sex"]);
    (!birth.is_bare()).then(|| birth.made())
}
