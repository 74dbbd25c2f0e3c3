//! What was found out, section by section.

use serde::{Deserialize, Serialize};

use super::{Action, DialPicture, FieldRow, ListRow, Notice, PlotPicture, ShelfPicture};

/// What was found out about one thing: a pump, a trace, a fit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct FindingsScreen {
    /// The word of the moment, such as `Meets its range`; or that it cannot be told yet.
    pub headline: String,
    /// The figure of the moment, or empty.
    pub figure: String,
    /// Its range, and what it rests on, or empty.
    pub caption: String,
    pub dial: Option<DialPicture>,
    /// What more there is to say, each a short sentence.
    pub lines: Vec<String>,
    /// Gentle questions.
    pub asks: Vec<Notice>,
    /// What to do from here, the main one first.
    pub actions: Vec<Action>,
    pub sections: Vec<Section>,
    pub spoken: String,
}

/// A part of what was found: words, a picture, fields, rows, each where there is one.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Section {
    pub key: String,
    pub title: String,
    pub lines: Vec<String>,
    pub plot: Option<PlotPicture>,
    pub fields: Vec<FieldRow>,
    pub rows: Vec<ListRow>,
    pub actions: Vec<Action>,
    pub shelf: Option<ShelfPicture>,
}
