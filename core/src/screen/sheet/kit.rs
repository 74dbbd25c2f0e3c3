//! Pumps, flanges and parts in use, as Kit lists them.

use super::section::{of_rows, row};
use super::sessions::{used, SessionFields};
use crate::record::{date, text, Kind};
use crate::screen::kit::detail;
use crate::screen::shapes::SheetSection;
use crate::screen::View;
use crate::trouble::Trouble;

/// Where sessions name what they were done with, the rest is not told.
pub(super) fn render(view: &View<'_>, sessions: &[SessionFields]) -> Result<Option<SheetSection>, Trouble> {
    let pumps = used(sessions, &["pump"]);
    let flanges = used(sessions, &["flange_left", "flange_right"]);
    let mut rows = Vec::new();
    for kind in [Kind::Pump, Kind::Flange, Kind::Part] {
        for found in view.journal.of_kind(kind)? {
            let (_, fields) = view.record(&found.subject)?;
            // What is no longer in use is told among what changed.
            let until = date(&fields, "until").is_some_and(|until| until < view.today().date());
            let named = match kind {
                Kind::Pump => pumps.is_empty() || pumps.contains(found.subject.as_str()),
                Kind::Flange => flanges.is_empty() || flanges.contains(found.subject.as_str()),
                _ => pumps.is_empty() || text(&fields, "pump").is_none_or(|pump| pumps.contains(pump)),
            };
            if named && !until {
                rows.push(row(view.name_of(kind, &fields), "", detail(view, kind, &fields)?));
            }
        }
    }
    Ok(of_rows(view, "kit", rows))
}
