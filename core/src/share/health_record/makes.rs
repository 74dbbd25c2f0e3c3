//! What resources are made with.

use super::ids;
use crate::record::Kind;
use crate::share::parts::LeftOut;
use crate::text::Texts;
use serde_json::{json, Value};
use std::collections::BTreeSet;

/// What resources are made with.
pub(super) struct Makes<'r> {
    pub(super) left_out: &'r LeftOut,
    pub(super) texts: &'r Texts,
    pub(super) children: BTreeSet<String>,
    pub(super) devices: BTreeSet<(Kind, String)>,
}

impl Makes<'_> {
    /// The sentences.
    pub(super) fn texts(&self) -> &Texts {
        self.texts
    }

    /// Whether a field goes out.
    pub(super) fn keeps(&self, kind: Kind, field: &str) -> bool {
        self.left_out.lets(kind, field)
    }

    /// Names the parent.
    pub(super) fn parent(&self) -> Value {
        json!({ "reference": ids::url(&ids::parent()) })
    }

    /// Names a child: this one, or the only one there is; else says that it was not said.
    pub(super) fn child(&self, record: Option<&str>) -> Value {
        let only = || self.children.first().filter(|_| self.children.len() == 1).map(String::as_str);
        match record.filter(|id| self.children.contains(*id)).or_else(only) {
            Some(child) => json!({ "reference": ids::url(&ids::id(Kind::Child.name(), child, "")) }),
            None => json!({ "display": self.texts.say("code-some-child") }),
        }
    }

    /// Names a device that is in the file.
    pub(super) fn device(&self, kind: Kind, record: &str) -> Option<Value> {
        let there = self.devices.contains(&(kind, record.to_owned()));
        there.then(|| json!({ "reference": ids::url(&ids::device(kind, record)) }))
    }
}
