//! Rows that open.

use serde::{Deserialize, Serialize};

use super::Action;

/// Groups of rows that open.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ListScreen {
    pub intro: String,
    pub groups: Vec<ListGroup>,
}

/// Rows that belong together.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ListGroup {
    pub key: String,
    pub title: String,
    pub rows: Vec<ListRow>,
    /// Said where there is no row.
    pub empty: String,
    pub add: Vec<Action>,
}

/// A row of a list.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ListRow {
    pub title: String,
    pub detail: String,
    /// What is always there, said softest; or empty.
    pub aside: String,
    pub spoken: String,
    /// What a tap on it does, if anything.
    pub open: Option<Action>,
}
