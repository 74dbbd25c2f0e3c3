//! After a session: where all of its milk goes, in one container, with one tap.

use super::text::name;
use crate::answer::keeping::State;
use crate::gather::keeping::{not_kept_yet, of_session, KeptMilk};
use crate::quantity::Quantity;
use crate::record::{text, KeptIn, Session};
use crate::screen::shapes::{Action, ChoiceRow, Event, Place, Weight};
use crate::screen::View;
use crate::time::Span;
use crate::trouble::Trouble;

/// Places that are offered with one tap.
const OFFERED: [KeptIn; 3] = [KeptIn::Fridge, KeptIn::Freezer, KeptIn::Room];
/// A bottle of this long before is offered to pour to.
const SAME_DAY: Span = Span::hours(24);

/// Where it goes, or where it went.
pub(in crate::screen) fn row(view: &View<'_>, session: &Session) -> Result<ChoiceRow, Trouble> {
    let words = view.words();
    let row = |label: String, options: Vec<Action>| ChoiceRow { key: "keep".to_owned(), label, options };
    let open = not_kept_yet(view, session)?.filter(|amount| amount.canonical() > 0.0);
    let filled = of_session(view, &session.id)?;
    if open.is_none() {
        let options = filled.iter().map(|(id, fields)| {
            let go = Event::Go { place: Place::Container { id: id.clone() } };
            Action::new(format!("open-{id}"), name(view, text(fields, "label")), go).weight(Weight::Quiet)
        });
        return Ok(row(words.say("keep-kept"), options.collect()));
    }
    let into = |place: KeptIn| {
        let event = Event::KeepMilk { session: session.id.clone(), kept_in: place.name().to_owned() };
        let label = words.say(&format!("choice-kept-in-{}", place.name()));
        let spoken = words.with("keep-spoken", &[("place", label.clone().into())]);
        Action::new(format!("keep-{}", place.name()), label, event).spoken(spoken)
    };
    let mut options: Vec<Action> = OFFERED.into_iter().map(into).collect();
    if let Some(latest) = KeptMilk::read(view)?.kept.iter().rev().find(|one| {
        one.state == State::Fresh
            && one.is_usable(view.now)
            && !one.is_begun
            && one.taken.is_empty()
            && one.left.is_some()
            && view.now.since(one.expressed) <= SAME_DAY
    }) {
        let event = Event::PourInto { session: session.id.clone(), container: latest.id.clone() };
        let bottle = name(view, latest.label.as_deref());
        let label = words.with("keep-pour", &[("bottle", bottle.clone().into())]);
        let spoken = words.with("keep-pour-spoken", &[("bottle", bottle.into())]);
        options.push(Action::new("keep-pour", label, event).spoken(spoken));
    }
    Ok(row(words.say("keep-label"), options))
}
