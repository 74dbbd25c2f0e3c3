//! Visit: what the consultant gets, what comes back from her, what waits for the next
//! visit; and the way to children, settings and the record as a whole.

mod consent;
mod consultant;
mod dates;
mod questions;
mod sealing;
mod tables;

pub(super) use consent::show as show_consent;
pub(super) use consultant::show as show_consultant;
pub(super) use sealing::{form, typed_row};
pub(super) use sealing::{show as show_sharing, show_sealed};
pub(crate) use sealing::{CARD, OPEN_PASSPHRASE, SEAL_PASSPHRASE};
pub(super) use tables::show as show_tables;

pub(super) use dates::last_before_today;
pub(super) use questions::open as open_questions;

use super::shapes::{Action, Event, Export, ListGroup, ListScreen, Place, Screen, Sign, Weight};
use super::{caution, plan, View};
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let frame = view.frame(&Place::Visit, words.say("place-visit"), words.say("visit-subtitle"))?;
    let mut groups = vec![
        caution::group(view)?,
        sheet(view),
        sealing::group(view)?,
        dates::group(view)?,
        questions::group(view)?,
        files(view),
        consent::group(view)?,
        family(view),
    ];
    groups.extend(super::kit::choice_in_visit(view)?);
    if let Some(plans) = plan::group(view)? {
        groups.insert(1, plans);
    }
    Ok(Screen::List { frame, list: ListScreen { intro: String::new(), groups } })
}

/// The sheet for the next visit.
fn sheet(view: &View<'_>) -> ListGroup {
    let words = view.words();
    ListGroup {
        key: "sheet".to_owned(),
        title: words.say("sheet-heading"),
        rows: Vec::new(),
        empty: String::new(),
        add: vec![Action::new("open-sheet", words.say("sheet-open"), Event::Go { place: Place::Sheet })
            .detail(words.say("sheet-open-detail"))
            .weight(Weight::Main)
            .sign(Sign::Out)],
    }
}

fn files(view: &View<'_>) -> ListGroup {
    let words = view.words();
    ListGroup {
        key: "files".to_owned(),
        title: words.say("visit-files"),
        rows: Vec::new(),
        empty: String::new(),
        add: vec![
            Action::new(
                "hand-over-health-record",
                words.say("hand-over-health-record"),
                Event::Export { what: Export::HealthRecord },
            )
            .detail(words.say("hand-over-health-record-detail"))
            .sign(Sign::Out),
            Action::new("open-tables", words.say("open-tables"), Event::Go { place: Place::Tables })
                .detail(words.say("open-tables-detail"))
                .sign(Sign::Out),
        ],
    }
}

fn family(view: &View<'_>) -> ListGroup {
    let words = view.words();
    let row = view.text_row(words.say("visit-family"), words.say("visit-family-detail"));
    let row = row.opens("open-family", Event::Go { place: Place::Family }).sign(Sign::Family);
    ListGroup {
        key: "family".to_owned(),
        title: words.say("place-family"),
        rows: vec![row],
        empty: String::new(),
        add: Vec::new(),
    }
}
