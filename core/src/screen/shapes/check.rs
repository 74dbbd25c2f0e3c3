//! A check with a gauge.

use serde::{Deserialize, Serialize};

use super::{Action, ChoiceRow, DialPicture, FieldRow, ListGroup, Notice};

/// A check with a gauge: what to do, what it shows, what was read.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CheckScreen {
    /// What is read now, such as `Left, reading 2 of 3`; or that all is read.
    pub headline: String,
    /// What to do, step by step, each a short sentence.
    pub steps: Vec<String>,
    /// Where the figure is typed.
    pub reading: FieldRow,
    /// Said over `near`.
    pub near_label: String,
    /// Figures near the last one: one tap writes one down.
    pub near: Vec<Action>,
    /// What was read so far, on the dial.
    pub dial: Option<DialPicture>,
    /// Gentle questions.
    pub asks: Vec<Notice>,
    /// At which level and which side it is read next.
    pub at: Vec<ChoiceRow>,
    /// What was read, the latest first; a row opens to be corrected.
    pub readings: ListGroup,
    /// Gauge, how it was connected, power.
    pub set_up: Vec<FieldRow>,
    /// To what the check says.
    pub done: Action,
    pub spoken: String,
}
