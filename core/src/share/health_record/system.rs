//! Our own code system: every code of it, each once.

use super::codes::{stands_in, Code, OWN};
use super::{component, ids};
use crate::record::Kind;
use crate::text::Texts;
use serde_json::{json, Value};

/// What observations, devices and documents are.
const THINGS: &[&str] = &[
    "expressed-milk",
    "expressed-milk-left",
    "expressed-milk-right",
    "feed-at-breast",
    "milk-given",
    "breast-signs",
    "nipple-fit",
    "pump-vacuum",
    "life-event",
    "note",
    "question",
    "birth",
    "phase",
    "pump",
    "gauge",
    "visit-sheet",
];

/// Every code of our own, each once, in a fixed order.
fn all() -> Vec<Code> {
    let mut all: Vec<Code> = THINGS.iter().map(|thing| Code::thing(thing)).collect();
    // What a reading of a gauge says beside its vacuum.
    all.extend(["level", "side"].map(Code::field));
    all.extend(["left", "right", "both"].map(Code::side));
    all.extend(["letdown", "expression", "rest"].map(Code::phase));
    for kind in Kind::ALL {
        for spec in kind.fields().iter().filter(|spec| stands_in(*kind, spec)) {
            all.extend(component::codes(spec));
        }
    }
    let mut seen = std::collections::BTreeSet::new();
    all.retain(|code| seen.insert(code.code.clone()));
    all
}

/// The code system, whole, as a resource.
pub(super) fn system(texts: &Texts) -> (String, Value) {
    let id = ids::id("code-system", "", "");
    let all = all();
    let concepts: Vec<Value> =
        all.iter().map(|code| json!({ "code": code.code, "display": texts.say(&code.sentence) })).collect();
    let system = json!({
        "resourceType": "CodeSystem",
        "id": id,
        "url": OWN,
        "version": env!("CARGO_PKG_VERSION"),
        "name": "DrawwellCodes",
        "title": texts.say("code-system"),
        "status": "active",
        "caseSensitive": true,
        "content": "complete",
        "count": all.len(),
        "concept": concepts,
    });
    (ids::url(&id), system)
}
