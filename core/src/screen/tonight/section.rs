//! A section of the page, and one with nothing in it.

use crate::screen::shapes::{ListGroup, Section};

pub(super) fn section(key: &str, title: String) -> Section {
    Section {
        key: key.to_owned(),
        title,
        lines: Vec::new(),
        plot: None,
        fields: Vec::new(),
        rows: Vec::new(),
        actions: Vec::new(),
    }
}

pub(super) fn empty_group(key: &str) -> ListGroup {
    ListGroup { key: key.to_owned(), title: String::new(), rows: Vec::new(), empty: String::new(), add: Vec::new() }
}
