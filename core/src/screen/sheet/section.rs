//! A section of the sheet, built.

use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::View;

/// A section that says nothing yet.
pub(super) fn section(view: &View<'_>, key: &str) -> SheetSection {
    SheetSection {
        key: key.to_owned(),
        title: view.words().say(&format!("sheet-section-{key}")),
        headline: String::new(),
        figure: String::new(),
        caption: String::new(),
        lines: Vec::new(),
        rows: Vec::new(),
        weeks: None,
        plot: None,
    }
}

/// A label, what stands at the end of its line, and what is said under it.
pub(super) fn row(label: impl Into<String>, value: impl Into<String>, note: impl Into<String>) -> SheetRow {
    SheetRow { label: label.into(), value: value.into(), note: note.into() }
}

/// A section with these rows; none without any.
pub(super) fn of_rows(view: &View<'_>, key: &str, rows: Vec<SheetRow>) -> Option<SheetSection> {
    (!rows.is_empty()).then(|| SheetSection { rows, ..section(view, key) })
}
