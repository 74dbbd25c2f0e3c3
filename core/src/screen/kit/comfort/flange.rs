//! The flange as first suspect: the dial stands at its top in most sessions.

use super::super::pump_words;
use crate::gather::flange_first::flange_first;
use crate::screen::shapes::{Action, Event, Notice, Place, Sign};
use crate::screen::View;
use crate::trouble::Trouble;

/// One line, where it fires.
pub(super) fn line(view: &View<'_>) -> Result<Option<String>, Trouble> {
    Ok(flange_first(view)?.map(|found| {
        let needs = [("top", found.top.get().into()), ("at", found.at_top.get().into()), ("of", found.of.get().into())];
        view.words().with("flange-first", &needs)
    }))
}

/// The same as a question, with what else it may be and the way to the flanges.
pub(in crate::screen::kit) fn notice(view: &View<'_>) -> Result<Option<Notice>, Trouble> {
    let words = view.words();
    let Some(line) = line(view)? else { return Ok(None) };
    let text = [line, words.say("flange-first-beside")].join(" ");
    let open = Action::new("flange-first-fit", words.say("fit-open"), Event::Go { place: Place::Fit }).sign(Sign::Kit);
    Ok(Some(pump_words::notice("flange-first", text, vec![open])))
}
