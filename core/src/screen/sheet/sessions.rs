//! Sessions of the last weeks, read once for pain and settings.

use std::collections::BTreeSet;

use super::span::Stretch;
use crate::record::{text, Fields, Kind, Session};
use crate::screen::View;
use crate::trouble::Trouble;

/// Pain and settings of no more days than this are told: what was set years ago is not
/// how it is done now, and ten years are read as quickly as one month.
pub(super) const MOST_DAYS: u32 = 28;

/// A session with its fields.
pub(super) struct SessionFields {
    pub(super) session: Session,
    pub(super) fields: Fields,
}

/// Sessions that are over, by time.
pub(super) fn read(view: &View<'_>, span: Stretch) -> Result<Vec<SessionFields>, Trouble> {
    let first = view.today().earlier_by(span.days.min(MOST_DAYS));
    let since = first.begins(view.zone, view.settings.day_start);
    let mut found = Vec::new();
    for row in view.journal.of_kind_since(Kind::Session, since)? {
        if row.running || row.at.is_none_or(|at| at > view.now) {
            continue;
        }
        let (_, fields) = view.record(&row.subject)?;
        found.push(SessionFields { session: Session::read(&row.subject, &fields), fields });
    }
    Ok(found)
}

/// What the sessions name in these fields.
pub(super) fn used<'t>(sessions: &'t [SessionFields], keys: &[&str]) -> BTreeSet<&'t str> {
    sessions.iter().flat_map(|told| keys.iter().filter_map(|key| text(&told.fields, key))).collect()
}
