//! Names of things as the person gave them, or what they are where not.

use super::View;
use crate::quantity::{Entered, Length, LengthUnit};
use crate::record::{text, Fields, Kind};
use crate::share::names;
use crate::trouble::Trouble;

impl View<'_> {
    /// What a record is called.
    pub(super) fn name_of(&self, kind: Kind, fields: &Fields) -> String {
        let words = self.words();
        if let Some(name) = text(fields, "name").filter(|n| !n.trim().is_empty()) {
            return names::shown(name);
        }
        match kind {
            Kind::LifeEvent => match text(fields, "what") {
                Some(what) => words.say(&format!("choice-what-{what}")),
                None => words.say("kind-life_event"),
            },
            Kind::Part => match text(fields, "part") {
                Some(part) => words.say(&format!("choice-part-{part}")),
                None => words.say("kind-part"),
            },
            Kind::Flange => match fields.get("size").and_then(Entered::<Length>::from_json) {
                Some(size) => {
                    words.with("flange-of-size", &[("size", words.entered(&size, LengthUnit::Millimeter).into())])
                }
                None => words.say("kind-flange"),
            },
            _ => words.say(&format!("kind-{}", kind.name())),
        }
    }

    /// What the record of an id is called; nothing where it is gone.
    pub(super) fn name_of_id(&self, id: &str) -> Result<Option<String>, Trouble> {
        Ok(self.journal.record(id)?.map(|(kind, fields)| self.name_of(kind, &fields)))
    }

    /// Everything of a kind by id and name.
    pub(crate) fn named(&self, kind: Kind) -> Result<Vec<(String, String)>, Trouble> {
        self.journal
            .of_kind(kind)?
            .into_iter()
            .map(|row| {
                let (_, fields) = self.record(&row.subject)?;
                let name = self.name_of(kind, &fields);
                Ok((row.subject, name))
            })
            .collect()
    }
}
