//! The readings of a check, as rows of its form.

use super::shapes::{Action, Event, FieldKind, FieldRow, Sign, Weight};
use super::View;
use crate::record::{Fields, GaugeCheck, Sides, READINGS};

/// Each reading with its figure; it can be corrected and made to say nothing.
pub(super) fn rows(view: &View<'_>, id: &str, fields: &Fields) -> Vec<FieldRow> {
    let words = view.words();
    GaugeCheck::read(id, fields)
        .readings
        .into_iter()
        .map(|(field, reading)| {
            let side = words.say(match reading.place.side {
                Sides::Left => "side-left",
                Sides::Right => "side-right",
                Sides::Both => "side-one-port",
            });
            let level = match reading.place.level {
                Some(level) => words.with("setting-level", &[("level", level.get().into())]),
                None => words.say("level-highest"),
            };
            let label = words.with("reading-label", &[("side", side.into()), ("level", level.into())]);
            let name = field.trim_start_matches(READINGS).to_owned();
            let unit = reading.vacuum.unit();
            let said = words.entered(&reading.vacuum, unit);
            let step = |key: &str, steps: i32, sign: Sign| {
                Action::new(
                    format!("{key}-{name}"),
                    words.say(&format!("step-{key}")),
                    Event::Step { id: id.to_owned(), field: field.clone(), steps },
                )
                .spoken(words.with(&format!("step-{key}-spoken"), &[("field", label.clone().into())]))
                .sign(sign)
            };
            FieldRow {
                id: id.to_owned(),
                kind: FieldKind::Number,
                value: reading.vacuum.typed().to_owned(),
                unit: words.unit(unit),
                hint: words.clock(&reading.at),
                options: Vec::new(),
                less: Some(step("less", -1, Sign::Softer)),
                more: Some(step("more", 1, Sign::Stronger)),
                clear: Some(
                    Action::new(
                        format!("clear-{name}"),
                        words.say("take-mark-out"),
                        Event::Clear { id: id.to_owned(), field: field.clone() },
                    )
                    .spoken(words.with("take-mark-out-spoken", &[("what", label.clone().into())]))
                    .weight(Weight::Quiet),
                ),
                done: None,
                spoken: words.with("field-spoken", &[("field", label.clone().into()), ("value", said.into())]),
                field,
                label,
            }
        })
        .collect()
}
