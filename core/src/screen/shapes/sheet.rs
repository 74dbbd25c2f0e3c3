//! The visit sheet before it goes out.

use serde::{Deserialize, Serialize};

use super::{Action, FieldRow, PlotPicture, WeeksPicture};

/// The visit sheet, before it goes out: its parts exactly as they go out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SheetScreen {
    pub intro: String,
    /// The name on it, and its paper.
    pub fields: Vec<FieldRow>,
    pub parts: Vec<SheetPart>,
    /// The rules it rests on; they always go along.
    /// Which parts the parent left out, where any are.
    pub left_out: Option<SheetSection>,
    pub sources: SheetSection,
    /// What is said on every sheet.
    pub foot: String,
    /// To hand it over as a PDF.
    pub hand_over: Action,
    pub spoken: String,
}

/// A part of the sheet that can be left out.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SheetPart {
    pub key: String,
    pub title: String,
    pub sections: Vec<SheetSection>,
    /// Whether it is left out: it is then not on the page.
    pub out: bool,
    /// Said of one that is left out, or empty.
    pub said_out: String,
    /// To leave it out, or take it in again.
    pub leave: Action,
}

/// Words, rows and a picture under one title, each where there is one.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SheetSection {
    pub key: String,
    pub title: String,
    /// The word of the moment, such as `Holding`, or empty.
    pub headline: String,
    /// Its figure, or empty.
    pub figure: String,
    /// The range of the figure, and what it rests on, or empty.
    pub caption: String,
    pub lines: Vec<String>,
    pub rows: Vec<SheetRow>,
    pub weeks: Option<WeeksPicture>,
    pub plot: Option<PlotPicture>,
}

/// A line of the sheet.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SheetRow {
    pub label: String,
    /// What stands at its end, or empty.
    pub value: String,
    /// What is said under it, or empty.
    pub note: String,
}
