//! What the containers hold by now, where a comparison is decided by how soon most of it came.

use crate::gather::so_far::{is_asked, offered, readings};
use crate::quantity::Unit;
use crate::record::{Fields, Session};
use crate::screen::shapes::{Action, ChoiceRow, Event};
use crate::screen::View;
use crate::trouble::Trouble;

/// One tap a reading; none where nothing is decided by it.
pub(super) fn row(view: &View<'_>, session: &Session, fields: &Fields) -> Result<Option<ChoiceRow>, Trouble> {
    if !is_asked(view, fields)? {
        return Ok(None);
    }
    let words = view.words();
    let label = match readings(session).last() {
        Some((at, held)) => {
            words.with("so-far-last", &[("amount", words.volume(*held).into()), ("at", words.running(*at).into())])
        }
        None => words.say("so-far-first"),
    };
    let option = |amount: crate::quantity::Entered<crate::quantity::Volume>| {
        let event = Event::SoFar { typed: amount.typed().to_owned(), unit: amount.unit().ucum().to_owned() };
        let said = words.entered(&amount, amount.unit());
        let spoken = words.with("so-far-spoken", &[("amount", said.clone().into())]);
        Action::new(format!("so-far-{}", amount.typed()), said, event).spoken(spoken)
    };
    let options = offered(view, session)?.into_iter().map(option).collect();
    Ok(Some(ChoiceRow { key: "so-far".to_owned(), label, options }))
}
