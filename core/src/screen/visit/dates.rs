//! The visit that was last, and the one that is to be.

use super::super::shapes::{Action, Event, ListGroup, ListRow, Place, Sign};
use super::super::View;
use crate::record::Row;
use crate::record::{moment, text, Kind};
use crate::time::{LocalDay, Moment};
use crate::trouble::Trouble;

/// A visit that was written down.
#[derive(Debug, Clone)]
pub(crate) struct Visit {
    /// Its record.
    pub(crate) id: String,
    /// When.
    pub(crate) at: Moment,
    note: String,
}

/// The last visit before the present, and the next from it on.
pub(crate) fn around_now(view: &View<'_>) -> Result<(Option<Visit>, Option<Visit>), Trouble> {
    let mut all = Vec::new();
    for row in view.journal.of_kind(Kind::Visit)? {
        all.extend(read(view, row)?);
    }
    let last = all.iter().filter(|v: &&Visit| v.at.instant() <= view.now).max_by_key(|v| v.at.instant()).cloned();
    let next = all.into_iter().filter(|v| v.at.instant() > view.now).min_by_key(|v| v.at.instant());
    Ok((last, next))
}

/// The last visit before today: one of today is the one that is prepared for.
pub(in crate::screen) fn last_before_today(view: &View<'_>) -> Result<Option<Moment>, Trouble> {
    let mut last: Option<Moment> = None;
    for row in view.journal.of_kind(Kind::Visit)? {
        let found = read(view, row)?.map(|visit| visit.at);
        let found = found.filter(|at| LocalDay::of(at, view.settings.day_start) < view.today());
        last = last.into_iter().chain(found).max_by_key(Moment::instant);
    }
    Ok(last)
}

fn read(view: &View<'_>, row: Row) -> Result<Option<Visit>, Trouble> {
    let (_, fields) = view.record(&row.subject)?;
    let note = text(&fields, "note").unwrap_or_default().to_owned();
    Ok(moment(&fields, "at").map(|at| Visit { id: row.subject, at, note }))
}

pub(super) fn group(view: &View<'_>) -> Result<ListGroup, Trouble> {
    let words = view.words();
    let (last, next) = around_now(view)?;
    let rows: Vec<ListRow> = [(next, "visit-next"), (last, "visit-last")]
        .into_iter()
        .filter_map(|(visit, key)| visit.map(|visit| row(view, &visit, key)))
        .collect();
    Ok(ListGroup {
        key: "visits".to_owned(),
        title: words.say("visits-title"),
        empty: if rows.is_empty() { words.say("visits-none") } else { String::new() },
        rows,
        add: vec![Action::new(
            "add-visit",
            words.say("add-visit"),
            Event::Add { kind: Kind::Visit.name().to_owned(), days_back: 0 },
        )
        .sign(Sign::Add)],
    })
}

fn row(view: &View<'_>, visit: &Visit, key: &str) -> ListRow {
    let words = view.words();
    let day = LocalDay::of(&visit.at, view.settings.day_start);
    let when = format!("{}, {}", words.date(day), words.clock(&visit.at));
    let detail = [when, visit.note.clone()].into_iter().filter(|s| !s.is_empty()).collect::<Vec<_>>().join(" \u{b7} ");
    let open = Event::Go { place: Place::Entry { id: visit.id.clone() } };
    view.text_row(words.say(key), detail).opens(format!("open-{}", visit.id), open)
}
