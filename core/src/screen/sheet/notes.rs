//! Notes of the span, in the person's own words.

use super::section::{of_rows, row};
use super::span::Stretch;
use crate::record::{moment, text, Kind};
use crate::screen::shapes::SheetSection;
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Notes that are told, the latest.
const TOLD: usize = 5;

pub(super) fn told(view: &View<'_>, span: Stretch) -> Result<Option<SheetSection>, Trouble> {
    let words = view.words();
    let since = span.from.begins(view.zone, view.settings.day_start);
    let mut rows = Vec::new();
    for found in view.journal.of_kind_since(Kind::Note, since)?.into_iter().rev() {
        let (_, fields) = view.record(&found.subject)?;
        let Some(at) = moment(&fields, "at").filter(|at| at.instant() <= view.now) else { continue };
        let said = text(&fields, "text").unwrap_or_default().trim();
        if !said.is_empty() && rows.len() < TOLD {
            rows.push(row(words.short_date(LocalDay::of(&at, view.settings.day_start)), "", said));
        }
    }
    rows.reverse();
    Ok(of_rows(view, "notes", rows))
}
