//! Which of a family's pumps a part of a plan is about: offered by name, or typed.

use crate::record::{text, Fields, Kind};
use crate::screen::shapes::{Action, Event};
use crate::screen::View;
use crate::trouble::Trouble;

/// The field that a pump's name stands in.
pub(in crate::screen) const FIELD: &str = "pump_name";

/// The pumps of the family's record, each to be named by a tap; none where it can't be read.
pub(in crate::screen) fn offered(view: &View<'_>, id: &str, part: &Fields) -> Vec<Action> {
    view.in_family(|family| of_family(family, id, part)).unwrap_or_default()
}

fn of_family(family: &View<'_>, id: &str, part: &Fields) -> Result<Vec<Action>, Trouble> {
    let mut found = Vec::new();
    for row in family.journal.of_kind(Kind::Pump)? {
        let (_, fields) = family.record(&row.subject)?;
        let Some(name) = text(&fields, "name").map(str::trim).filter(|name| !name.is_empty()) else { continue };
        let chosen = text(part, FIELD) == Some(name);
        let (id, field) = (id.to_owned(), FIELD.to_owned());
        let event = match chosen {
            true => Event::Clear { id, field },
            false => Event::Enter { id, field, typed: name.to_owned() },
        };
        found.push(Action::new(format!("name-{}", row.subject), name, event).chosen(chosen));
    }
    Ok(found)
}
