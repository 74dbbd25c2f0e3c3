//! A consultant's card.

use serde::{Deserialize, Serialize};

use super::Action;

/// A card to be handed on: as a code to be scanned, and as a line of text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CardScreen {
    pub matrix: Matrix,
    /// Said over `words`.
    pub words_label: String,
    /// Words to compare by voice.
    pub words: String,
    /// Said over `line`.
    pub line_label: String,
    /// The line that the code holds; it can be marked and copied.
    pub line: String,
    pub lines: Vec<String>,
    pub actions: Vec<Action>,
    pub spoken: String,
}

/// A square of dark and light, row by row, its quiet border in it. Drawn dark on light in
/// every palette.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Matrix {
    /// Fields along a side.
    pub size: u32,
    pub dark: Vec<bool>,
}
