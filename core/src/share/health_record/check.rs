//! What a gauge showed of a pump.

use serde_json::{json, Value};

use super::codes::Code;
use super::makes::Makes;
use super::observation::Observation;
use super::value;
use crate::record::{Fields, GaugeCheck, Kind, Sides};

/// An observation for each reading: of the pump, by the gauge.
pub(super) fn write(makes: &Makes<'_>, record: &str, fields: &Fields) -> Vec<(String, Value)> {
    let texts = makes.texts();
    let check = GaugeCheck::read(record, fields);
    let pump = check.pump.as_deref().and_then(|pump| makes.device(Kind::Pump, pump));
    let gauge = check.gauge.as_deref().and_then(|gauge| makes.device(Kind::Gauge, gauge));
    let told = |(key, reading): &(String, crate::record::Reading)| {
        let level = reading
            .place
            .level
            .map(|level| json!({ "code": Code::field("level").concept(texts), "valueInteger": level.get() }));
        let side = (reading.place.side != Sides::Both).then(|| {
            json!({
                "code": Code::field("side").concept(texts),
                "valueCodeableConcept": Code::side(reading.place.side.name()).concept(texts),
            })
        });
        let set = reading.set.as_ref().map(|set| {
            json!({
                "code": Code::field("set_vacuum").concept(texts),
                "valueQuantity": value::quantity(set.quantity()),
            })
        });
        let without: &[&str] = if set.is_some() { &["set_vacuum"] } else { &[] };
        Observation::of(makes, Kind::Check, record, key, Code::thing("pump-vacuum").concept(texts))
            .with_any("subject", pump.clone())
            .with_any("device", gauge.clone())
            .at(Some(&reading.at))
            .with("valueQuantity", value::quantity(reading.vacuum.quantity()))
            .component(level)
            .component(side)
            .component(set)
            .components(Kind::Check, fields, without)
            .note(Kind::Check, fields)
            .made()
    };
    check.readings.iter().map(told).collect()
}
