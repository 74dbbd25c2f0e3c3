//! Tonight: when to express next, and what the night holds.
//!
//! Plan and wells are gathered in [`crate::gather::tonight`]; [`head`] says the next time, [`night`] draws the
//! strip, [`figures`] what the night leaves and brings, [`times`] the times with why then,
//! [`choices`] what a longer sleep costs, [`refill`] how milk comes back, [`back`] what
//! nights were, [`set`] what is set.

mod back;
mod choices;
mod empty_group;
mod figures;
mod head;
mod night;
mod refill;
mod set;
mod times;

use crate::gather::tonight::TonightInputs;
pub(super) use back::{over as nights_back, NIGHTS as NIGHTS_BACK};
pub(crate) use head::reminder_words;

use super::shapes::{Action, Event, Place, Screen, Sign, TonightScreen, Weight};
use super::View;
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Tonight, words.say("place-tonight"), words.date(view.today()))?;
    frame.ask_again_milliseconds = Some(30_000);
    let look = TonightInputs::read(view)?;
    let said = head::render(view, &look);
    let choices = if look.plan.is_none() { vec![set::how_many(view, &look)] } else { Vec::new() };
    let mut sections = Vec::new();
    sections.extend(choices::section(view, &look));
    sections.extend(refill::section(view, &look));
    sections.extend(back::section(view, &look)?);
    sections.push(set::section(view, &look));
    sections.push(set::evidence(view));
    Ok(Screen::Tonight {
        frame,
        tonight: TonightScreen {
            spoken: [&said.headline, &said.figure, &said.caption, &said.why]
                .into_iter()
                .filter(|s| !s.is_empty())
                .cloned()
                .collect::<Vec<_>>()
                .join(", "),
            headline: said.headline,
            figure: said.figure,
            caption: said.caption,
            why: said.why,
            asks: head::asks(view, &look),
            start: look
                .gathered
                .running
                .is_none()
                .then(|| Action::new("start", words.say("start"), Event::Start).weight(Weight::Main).sign(Sign::Start)),
            actions: head::actions(view, &look),
            night: night::picture(view, &look),
            figures: figures::all(view, &look),
            choices,
            times: times::group(view, &look),
            sections,
        },
    })
}
