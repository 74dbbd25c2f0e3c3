//! Questions that wait for the next visit.

use super::super::shapes::{Action, Event, ListGroup, Place, Sign, Weight};
use super::super::View;
use crate::record::{flag, text, Kind};
use crate::trouble::Trouble;

/// Questions that were written down and not answered, each with its record, in order.
pub(crate) fn open(view: &View<'_>) -> Result<Vec<(String, String)>, Trouble> {
    let mut found = Vec::new();
    for row in view.journal.of_kind(Kind::Question)? {
        let (_, fields) = view.record(&row.subject)?;
        let question = text(&fields, "question").unwrap_or_default().trim().to_owned();
        if !flag(&fields, "answered") {
            found.push((row.subject, question));
        }
    }
    Ok(found)
}

pub(super) fn group(view: &View<'_>) -> Result<ListGroup, Trouble> {
    let words = view.words();
    let rows: Vec<_> = open(view)?
        .into_iter()
        .map(|(id, question)| {
            let title = if question.is_empty() { words.say("kind-question") } else { question };
            let mut row = view.text_row(title.clone(), String::new());
            let open = Event::Go { place: Place::Entry { id: id.clone() } };
            row.open = Some(Action::new(format!("open-{id}"), title.clone(), open).spoken(title).weight(Weight::Quiet));
            row
        })
        .collect();
    Ok(ListGroup {
        key: "questions".to_owned(),
        title: words.say("questions-title"),
        empty: if rows.is_empty() { words.say("questions-none") } else { String::new() },
        rows,
        add: vec![Action::new(
            "add-question",
            words.say("add-question"),
            Event::Add { kind: Kind::Question.name().to_owned(), days_back: 0 },
        )
        .sign(Sign::Add)],
    })
}
