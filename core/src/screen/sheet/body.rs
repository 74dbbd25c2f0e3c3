//! Temperature and signs at the breast as they were written down within the span.

use super::section::{of_rows, row};
use super::span::Stretch;
use crate::record::{moment, Kind};
use crate::screen::day::{signs, temperature};
use crate::screen::shapes::SheetSection;
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Entries that are told, the latest.
const TOLD: usize = 6;

pub(super) fn told(view: &View<'_>, span: Stretch) -> Result<Option<SheetSection>, Trouble> {
    let words = view.words();
    let since = span.from.begins(view.zone, view.settings.day_start);
    let mut rows = Vec::new();
    for found in view.journal.of_kind_since(Kind::Sign, since)?.into_iter().rev() {
        let (_, fields) = view.record(&found.subject)?;
        let Some(at) = moment(&fields, "at").filter(|at| at.instant() <= view.now) else { continue };
        let day = words.date(LocalDay::of(&at, view.settings.day_start));
        let label = words.with("sheet-at", &[("date", day.into()), ("time", words.clock(&at).into())]);
        let (temperature, signs) = (temperature(view, &fields), signs(view, &fields));
        if !temperature.is_empty() || !signs.is_empty() {
            rows.push(row(label, temperature, signs));
        }
        if rows.len() == TOLD {
            break;
        }
    }
    rows.reverse();
    Ok(of_rows(view, "signs", rows))
}
