//! Nipples measured, and signs of how a flange fits.

use serde_json::Value;

use super::codes::Code;
use super::makes::Makes;
use super::observation::{at, Observation};
use crate::record::{Fields, Kind};

pub(super) fn write(makes: &Makes<'_>, record: &str, fields: &Fields) -> Option<(String, Value)> {
    let fit = Observation::of(makes, Kind::Fit, record, "", Code::thing("nipple-fit").concept(makes.texts()))
        .of_parent()
        .at(at(fields).as_ref())
        .components(Kind::Fit, fields, &[])
        .note(Kind::Fit, fields);
    (!fit.is_bare()).then(|| fit.made())
}
