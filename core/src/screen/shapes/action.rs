//! What can be pressed.

use serde::{Deserialize, Serialize};

use super::Event;

/// Something the shell lets the person do: a word, and what to send.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Action {
    /// Stable name of this action on its screen, for tests.
    pub key: String,
    /// The word on it.
    pub label: String,
    /// A smaller line under the word, or empty.
    pub detail: String,
    /// What a screen reader says.
    pub spoken: String,
    /// What to send when it is tapped.
    pub event: Event,
    /// How it stands among its neighbours.
    pub weight: Weight,
    /// The sign drawn on it.
    pub sign: Sign,
    /// Chosen now, where it is one of several.
    pub chosen: bool,
    /// Whether it can be tapped.
    pub open: bool,
}

/// How strongly an action is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Weight {
    /// The one thing to do.
    Main,
    /// An ordinary control.
    Plain,
    /// A line of text.
    Quiet,
    /// Asks for care: takes something out.
    Careful,
}

/// A small drawn sign; each has one meaning everywhere.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Sign {
    None,
    Now,
    Day,
    Tonight,
    Supply,
    Kit,
    Visit,
    Family,
    Start,
    Finish,
    Rest,
    Letdown,
    Stronger,
    Softer,
    Faster,
    Slower,
    Hurts,
    Undo,
    Redo,
    Add,
    Earlier,
    Later,
    Back,
    Unknown,
    Caution,
    Out,
    In,
    /// Leave one out.
    Skip,
    /// Again in a while.
    Snooze,
    Calendar,
    /// How things are wanted.
    Settings,
    /// What a word or a picture means.
    Help,
}
