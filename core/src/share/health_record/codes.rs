//! Codes: LOINC's, and our own for what LOINC has no code for that we found.

use serde_json::{json, Value};

use crate::record::{FieldSpec, Kind};
use crate::text::Texts;

/// LOINC.
pub const LOINC: &str = "http://loinc.org";
/// Our own code system: a name that claims no domain and needs no registry (RFC 4122).
pub const OWN: &str = "urn:uuid:8c1f7f0e-2b64-4d5a-9f0b-6e3c1d7a4b92";
/// UCUM.
pub(super) const UCUM: &str = "http://unitsofmeasure.org";
const CATEGORY: &str = "http://terminology.hl7.org/CodeSystem/observation-category";
const ABSENT: &str = "http://terminology.hl7.org/CodeSystem/data-absent-reason";

/// Body temperature.
pub(super) const TEMPERATURE: (&str, &str) = ("8310-5", "code-temperature");
/// Body weight.
pub(super) const WEIGHT: (&str, &str) = ("29463-7", "code-weight");
/// Pain severity, 0 to 10 verbal numeric rating, reported.
pub(super) const PAIN: (&str, &str) = ("72514-3", "code-pain");
/// Breastfeeding status.
pub(super) const FEEDING: (&str, &str) = ("63895-7", "code-feeding");
/// Its answer: currently breastfeeding.
pub(super) const FEEDING_NOW: (&str, &str) = ("LA29252-6", "code-feeding-now");

/// A code of our own, with the sentence that names it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Code {
    pub(super) code: String,
    pub(super) sentence: String,
}

impl Code {
    /// What something is, by one of the words above.
    pub(super) fn thing(code: &str) -> Self {
        Self { code: code.to_owned(), sentence: format!("code-{code}") }
    }

    /// A field.
    pub(super) fn field(key: &str) -> Self {
        let key = key.replace('_', "-");
        Self { sentence: format!("field-{key}"), code: key }
    }

    /// A word that a field takes.
    pub(super) fn choice(field: &str, words: &[&str], word: &str) -> Self {
        // Where on the body it is, is said in one way for all signs.
        let group = if words.contains(&"neither") { "breast".to_owned() } else { field.replace('_', "-") };
        let said: String = word.chars().filter(|c| c.is_ascii_alphanumeric() || *c == '_').collect();
        Self { code: format!("{group}-{}", word.replace('_', "-")), sentence: format!("choice-{group}-{said}") }
    }

    /// A side of the body.
    pub(super) fn side(side: &str) -> Self {
        Self { code: format!("side-{side}"), sentence: format!("choice-side-{side}") }
    }

    /// A phase of a session.
    pub(super) fn phase(phase: &str) -> Self {
        Self { code: format!("phase-{phase}"), sentence: format!("phase-{phase}") }
    }

    /// As a CodeableConcept.
    pub(super) fn concept(&self, texts: &Texts) -> Value {
        let text = texts.say(&self.sentence);
        json!({ "coding": [{ "system": OWN, "code": self.code, "display": text }], "text": text })
    }
}

/// A code of LOINC as a CodeableConcept. LOINC's own display is not repeated: the text is
/// ours.
pub(super) fn loinc((code, sentence): (&str, &str), texts: &Texts) -> Value {
    json!({ "coding": [{ "system": LOINC, "code": code }], "text": texts.say(sentence) })
}

/// The category of vital signs.
pub(super) fn vital_signs() -> Value {
    json!([{ "coding": [{ "system": CATEGORY, "code": "vital-signs" }] }])
}

/// Why there is no value: `unknown`, `temp-unknown` where it is to come later, `masked`
/// where it was left out.
pub(super) fn absent(code: &str) -> Value {
    json!({ "coding": [{ "system": ABSENT, "code": code }] })
}

/// Whether a field can be said by a code of its own.
pub(super) fn stands_in(kind: Kind, spec: &FieldSpec) -> bool {
    let written = matches!(
        kind,
        Kind::Session
            | Kind::Feed
            | Kind::Sign
            | Kind::Fit
            | Kind::Check
            | Kind::LifeEvent
            | Kind::Question
            | Kind::Child
            | Kind::Pump
            | Kind::Gauge
    );
    written && !spec.group.is_empty()
}
