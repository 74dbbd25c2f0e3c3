//! A sign, arranged for two taps: what is only there or not stands first, all of it at once.

use super::shapes::{Action, Event, FieldGroup, FieldKind, FieldRow};
use super::View;
use crate::record::{flag, FieldSpec, FieldType, Fields, Kind};

/// The order of its groups: what cannot wait, then what is measured and seen; when it was is right as it stands.
const ORDER: &[&str] = &["at-once", "body", "breast", "when", "note"];

/// The groups of a sign's form: flags gathered into one row of answers, and the rest in its order.
pub(super) fn arranged(view: &View<'_>, id: &str, fields: &Fields, mut groups: Vec<FieldGroup>) -> Vec<FieldGroup> {
    let flags: Vec<&FieldSpec> =
        Kind::Sign.fields().iter().filter(|spec| matches!(spec.field_type, FieldType::Flag)).collect();
    for group in &mut groups {
        group.rows.retain(|row| !flags.iter().any(|spec| spec.key == row.field));
    }
    groups.push(FieldGroup {
        key: "at-once".to_owned(),
        title: view.words().say("group-at-once"),
        rows: vec![row(view, id, fields, &flags)],
    });
    groups.sort_by_key(|group| ORDER.iter().position(|key| *key == group.key));
    groups
}

/// Each flag an answer of its own; a second tap makes it say nothing again.
fn row(view: &View<'_>, id: &str, fields: &Fields, flags: &[&FieldSpec]) -> FieldRow {
    let words = view.words();
    let label = words.say("field-at-once");
    let name = |spec: &FieldSpec| words.say(&format!("field-{}", spec.key.replace('_', "-")));
    let options: Vec<Action> = flags
        .iter()
        .map(|spec| {
            let (id, field, chosen) = (id.to_owned(), spec.key.to_owned(), flag(fields, spec.key));
            let event = match chosen {
                true => Event::Clear { id, field },
                false => Event::Enter { id, field, typed: "yes".to_owned() },
            };
            Action::new(format!("{}-yes", spec.key), name(spec), event).chosen(chosen)
        })
        .collect();
    let said: Vec<String> = options.iter().filter(|o| o.chosen).map(|o| o.label.clone()).collect();
    let value = said.join(", ");
    let told = if said.is_empty() { words.say("field-says-nothing") } else { value.clone() };
    FieldRow {
        id: id.to_owned(),
        field: "at-once".to_owned(),
        spoken: words.with("field-spoken", &[("field", label.clone().into()), ("value", told.into())]),
        label,
        kind: FieldKind::Choice,
        value,
        unit: String::new(),
        hint: String::new(),
        options,
        less: None,
        more: None,
        clear: None,
        done: None,
    }
}
