//! A section of a page with nothing in it yet.

use super::shapes::Section;

/// A section by its key and title, to be filled: `Section { lines, ..section(key, title) }`.
pub(super) fn section(key: &str, title: String) -> Section {
    Section {
        key: key.to_owned(),
        title,
        lines: Vec::new(),
        plot: None,
        shelf: None,
        fields: Vec::new(),
        rows: Vec::new(),
        actions: Vec::new(),
    }
}
