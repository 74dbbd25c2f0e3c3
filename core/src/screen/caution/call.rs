//! A way to call: the host opens its dialler with the number that the family set. Nothing
//! dials by itself.

use crate::answer::caution::Caution;
use crate::guidance::Urgency;
use crate::record::{text, SETTINGS};
use crate::screen::shapes::{Action, Event, Place, Weight};
use crate::screen::View;
use crate::trouble::Trouble;

/// The numbers that an urgency calls, the first one first, by their field of the settings.
const fn numbers(urgency: Urgency) -> &'static [&'static str] {
    match urgency {
        Urgency::Now => &["emergency_call"],
        Urgency::Today => &["today_call", "out_of_hours_call"],
        Urgency::Soon => &["today_call"],
        Urgency::Consultant => &[],
    }
}

/// The number that is called first, where it was set.
pub(super) fn first(view: &View<'_>, caution: &Caution) -> Result<Vec<Action>, Trouble> {
    let mut found = all(view, caution)?;
    found.retain(|action| matches!(action.event, Event::Call { .. }));
    found.truncate(1);
    Ok(found)
}

/// Every number to call, or where to set it.
pub(super) fn all(view: &View<'_>, caution: &Caution) -> Result<Vec<Action>, Trouble> {
    let words = view.words();
    let numbers = numbers(caution.urgency());
    // Who reads a family's record at a desk does not call with the family's phone.
    if numbers.is_empty() || view.shared.is_some() {
        return Ok(Vec::new());
    }
    let (_, settings) = view.record(SETTINGS)?;
    let mut found: Vec<Action> = numbers
        .iter()
        .filter_map(|which| {
            let number = text(&settings, which).filter(|number| !number.trim().is_empty())?;
            let key = which.replace('_', "-");
            let label = words.with(&format!("call-{key}"), &[("number", number.to_owned().into())]);
            let event = Event::Call { which: (*which).to_owned() };
            Some(Action::new(format!("call-{key}"), label, event).weight(Weight::Main))
        })
        .collect();
    if found.is_empty() {
        let open = Event::Go { place: Place::Entry { id: SETTINGS.to_owned() } };
        found.push(Action::new("set-number", words.say("call-set-number"), open).weight(Weight::Quiet));
    }
    Ok(found)
}
