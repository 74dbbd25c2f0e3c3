//! A group of the page with nothing in it.

use crate::screen::shapes::ListGroup;

pub(super) fn empty_group(key: &str) -> ListGroup {
    ListGroup { key: key.to_owned(), title: String::new(), rows: Vec::new(), empty: String::new(), add: Vec::new() }
}
