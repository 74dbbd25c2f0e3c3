//! Temperature and signs of an entry in words. Which there are says the table of kinds, so
//! that a new field is told by itself.

use super::{field_row, View};
use crate::guidance::CautionSource;
use crate::quantity::{Entered, Temperature};
use crate::record::choices::WHERE_ON_BODY;
use crate::record::{text, FieldSpec, FieldType, Fields, Kind};
use crate::trouble::Trouble;

/// What an entry says beside its temperature.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub(super) struct Signs {
    /// What is there, the most urgent first.
    pub(super) there: Vec<String>,
    /// What was looked for and is not there.
    pub(super) absent: Vec<String>,
    /// What else it says: how it is since before.
    pub(super) beside: Vec<String>,
    /// The person's own words.
    pub(super) note: String,
}

impl Signs {
    /// In lines; the person's own words only where they may go along.
    pub(super) fn lines(self, view: &View<'_>, with_note: bool) -> Vec<String> {
        let mut lines = Vec::new();
        if !self.there.is_empty() {
            lines.push(self.there.join(", "));
        }
        lines.extend(self.beside);
        if !self.absent.is_empty() {
            lines.push(view.words().with("sign-not-there", &[("signs", self.absent.join(", ").into())]));
        }
        if with_note && !self.note.is_empty() {
            lines.push(self.note);
        }
        lines
    }
}

/// The temperature of an entry; empty where none was measured.
pub(super) fn temperature(view: &View<'_>, fields: &Fields) -> String {
    match fields.get("temperature").and_then(Entered::<Temperature>::from_json) {
        Some(t) => view.words().entered(&t, view.settings.temperature),
        None => String::new(),
    }
}

/// The name of a sign.
pub(super) fn name(view: &View<'_>, key: &str) -> String {
    view.words().say(&format!("field-{}", key.replace('_', "-")))
}

/// How urgent what a sign makes is: the place of its first caution in the table.
pub(super) fn rank(key: &str) -> usize {
    CautionSource::all().iter().position(|source| source.is_about(key)).unwrap_or(usize::MAX)
}

/// What an entry says.
pub(super) fn of(view: &View<'_>, fields: &Fields) -> Result<Signs, Trouble> {
    let words = view.words();
    let mut said = Signs::default();
    let mut there: Vec<(usize, String)> = Vec::new();
    for spec in Kind::Sign.fields().iter().filter(|spec| spec.key != "temperature" && !is_its_time(spec)) {
        let Some(value) = fields.get(spec.key) else { continue };
        let name = name(view, spec.key);
        match spec.field_type {
            FieldType::Flag if value.as_bool() == Some(true) => there.push((rank(spec.key), name)),
            FieldType::Flag => said.absent.push(name),
            FieldType::Choice(choices) if choices == WHERE_ON_BODY => match value.as_str() {
                Some("neither") => said.absent.push(name),
                Some(side) => {
                    let side = words.say(&format!("choice-breast-{side}"));
                    let sign = words.with("sign-on-side", &[("sign", name.into()), ("side", side.into())]);
                    there.push((rank(spec.key), sign));
                }
                None => {}
            },
            FieldType::Text { .. } => said.note = text(fields, spec.key).unwrap_or_default().trim().to_owned(),
            _ => {
                let rows = field_row::rows(view, "", Kind::Sign, spec, fields)?;
                let figures = rows.into_iter().filter(|row| !row.value.is_empty());
                for row in figures {
                    let own = format!("sign-{}", spec.key.replace('_', "-"));
                    let line = match words.has(&own) {
                        true => words.with(&own, &[("value", row.value.into())]),
                        false => {
                            words.with("field-spoken", &[("field", row.label.into()), ("value", row.value.into())])
                        }
                    };
                    match rank(spec.key) {
                        usize::MAX => said.beside.push(line),
                        rank => there.push((rank, line)),
                    }
                }
            }
        }
    }
    there.sort_by_key(|(rank, _)| *rank);
    said.there = there.into_iter().map(|(_, sign)| sign).collect();
    Ok(said)
}

fn is_its_time(spec: &FieldSpec) -> bool {
    Some(spec.key) == Kind::Sign.time_field()
}
