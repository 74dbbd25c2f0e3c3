//! Comfort in the list of Kit.

use super::super::pump_words::opens;
use crate::record::{text, Kind};
use crate::screen::shapes::{Action, Event, ListGroup, Place, Sign};
use crate::screen::View;
use crate::trouble::Trouble;

/// What leads to comfort, to letdowns and to every comparison.
pub(in crate::screen::kit) fn group(view: &View<'_>) -> Result<ListGroup, Trouble> {
    let words = view.words();
    let lead = |key: &str, title: &str, detail: &str, place: Place| {
        opens(view, key.to_owned(), words.say(title), words.say(detail), place)
    };
    let mut rows = vec![
        lead("comfort", "comfort-title", "comfort-subtitle", Place::Comfort),
        lead("letdown", "letdown-title", "letdown-subtitle", Place::Letdown),
    ];
    for (id, fields) in view.journal.fields_of_kind(Kind::Trial)? {
        let detail = match (text(&fields, "drawn"), text(&fields, "trial_ended")) {
            (_, Some(ended)) => words.say(&format!("choice-trial-ended-{ended}")),
            (Some(_), None) => words.say("trial-runs"),
            (None, None) => words.say("trial-not-begun"),
        };
        let key = format!("open-{id}");
        rows.push(opens(view, key, super::trial_text::title(view, &fields), detail, Place::Trial { id }));
    }
    let add = Event::Add { kind: Kind::Trial.name().to_owned(), days_back: 0 };
    Ok(ListGroup {
        key: "comfort".to_owned(),
        title: words.say("comfort-group"),
        rows,
        empty: String::new(),
        add: vec![Action::new("add-trial", words.say("add-trial"), add).sign(Sign::Add)],
    })
}
