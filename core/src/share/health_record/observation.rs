//! What all observations have in common.

use serde_json::{json, Map, Value};

use super::makes::Makes;
use super::{codes, component, ids, value};
use crate::record::{moment, text, Amount, Fields, Kind};
use crate::time::Moment;

/// An observation being made.
pub(super) struct Observation<'m, 'r> {
    makes: &'m Makes<'r>,
    id: String,
    members: Map<String, Value>,
    components: Vec<Value>,
}

impl<'m, 'r> Observation<'m, 'r> {
    /// Of a record, or a part of it, with its code.
    pub(super) fn of(makes: &'m Makes<'r>, kind: Kind, record: &str, part: &str, code: Value) -> Self {
        let id = ids::id(kind.name(), record, part);
        let mut members = Map::new();
        members.insert("resourceType".to_owned(), json!("Observation"));
        members.insert("id".to_owned(), json!(id));
        members.insert("status".to_owned(), json!("final"));
        members.insert("code".to_owned(), code);
        members.insert("performer".to_owned(), json!([makes.parent()]));
        Self { makes, id, members, components: Vec::new() }
    }

    /// Says something of it.
    pub(super) fn with(mut self, member: &str, value: impl Into<Value>) -> Self {
        self.members.insert(member.to_owned(), value.into());
        self
    }

    /// Says something of it where there is anything to say.
    pub(super) fn with_any(self, member: &str, value: Option<Value>) -> Self {
        match value {
            Some(value) => self.with(member, value),
            None => self,
        }
    }

    /// It was observed at a moment.
    pub(super) fn at(self, at: Option<&Moment>) -> Self {
        self.with_any("effectiveDateTime", at.map(value::moment))
    }

    /// It was observed from one moment to another.
    pub(super) fn within(self, from: Option<&Moment>, until: Option<&Moment>) -> Self {
        match (from, until) {
            (Some(from), Some(until)) => {
                self.with("effectivePeriod", json!({ "start": value::moment(from), "end": value::moment(until) }))
            }
            (from, until) => self.at(from.or(until)),
        }
    }

    /// It was of the parent.
    pub(super) fn of_parent(self) -> Self {
        let parent = self.makes.parent();
        self.with("subject", parent)
    }

    /// It was of a child: the one the record names, else the only one there is.
    pub(super) fn of_child(self, fields: &Fields) -> Self {
        let child = self.makes.child(text(fields, "child"));
        self.with("subject", child)
    }

    /// Its value is an amount of milk. What nobody knows, or will know later, is said so.
    pub(super) fn amount(self, amount: Option<&Amount>) -> Self {
        let (member, value) = amount_member(amount);
        self.with(member, value)
    }

    /// A component beside it.
    pub(super) fn component(mut self, component: Option<Value>) -> Self {
        self.components.extend(component);
        self
    }

    /// A component for each field of the record that is kept and can be one.
    pub(super) fn components(mut self, kind: Kind, fields: &Fields, without: &[&str]) -> Self {
        for spec in kind.fields().iter().filter(|spec| codes::stands_in(kind, spec)) {
            if without.contains(&spec.key) || !self.makes.keeps(kind, spec.key) {
                continue;
            }
            let said = fields.get(spec.key).and_then(|value| component::component(spec, value, self.makes.texts()));
            self.components.extend(said);
        }
        self
    }

    /// The note that was written beside it.
    pub(super) fn note(self, kind: Kind, fields: &Fields) -> Self {
        let note = value::text_of(fields, "note").filter(|_| self.makes.keeps(kind, "note"));
        self.with_any("note", note.map(|text| json!([{ "text": text }])))
    }

    /// Whether it says nothing but what it is.
    pub(super) fn is_bare(&self) -> bool {
        let says = |member: &String| {
            member.starts_with("value") || matches!(member.as_str(), "dataAbsentReason" | "note" | "bodySite")
        };
        self.components.is_empty() && !self.members.keys().any(says)
    }

    /// The resource, with how others name it.
    pub(super) fn made(mut self) -> (String, Value) {
        if !self.components.is_empty() {
            self.members.insert("component".to_owned(), Value::Array(self.components));
        }
        (ids::url(&self.id), Value::Object(self.members))
    }
}

/// An amount as the member that says it.
pub(super) fn amount_member(amount: Option<&Amount>) -> (&'static str, Value) {
    match amount {
        Some(Amount::Known(entered)) => ("valueQuantity", value::quantity(entered.quantity())),
        Some(Amount::Later) => ("dataAbsentReason", codes::absent("temp-unknown")),
        Some(Amount::Unknown) | None => ("dataAbsentReason", codes::absent("unknown")),
    }
}

/// When a record was.
pub(super) fn at(fields: &Fields) -> Option<Moment> {
    moment(fields, "at")
}
