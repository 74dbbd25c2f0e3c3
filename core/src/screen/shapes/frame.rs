//! What stands around every screen, and how it looks.

use serde::{Deserialize, Serialize};

use super::Action;

/// What surrounds every screen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Frame {
    pub title: String,
    /// The line under the title, or empty.
    pub subtitle: String,
    /// The places at the foot of the screen, the present one chosen.
    pub places: Vec<Action>,
    pub back: Option<Action>,
    pub undo: Option<Action>,
    pub redo: Option<Action>,
    pub notices: Vec<Notice>,
    pub look: Appearance,
    /// Whether the language that is shown is read from right to left, whatever the device's own is.
    pub right_to_left: bool,
    /// The ways to what words that stand on it mean.
    pub terms: Vec<Action>,
    /// Ask for this screen again after so long, where it moves by itself.
    pub ask_again_milliseconds: Option<u32>,
}

/// A quiet line above the screen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Notice {
    /// Stable name of this notice.
    pub key: String,
    pub tone: Tone,
    pub text: String,
    pub spoken: String,
    pub actions: Vec<Action>,
}

/// How a notice is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Tone {
    /// What is so all the time: a thin strip over the screen.
    Strip,
    /// For information.
    Quiet,
    /// A gentle question.
    Asks,
    /// Something went wrong or needs care.
    Caution,
}

/// How the person wants it drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Appearance {
    pub hand: Hand,
    pub palette: Palette,
}

/// The hand that holds the phone.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Hand {
    Right,
    Left,
}

/// The palette that was asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Palette {
    /// As the device is set.
    AsDevice,
    Light,
    Night,
}
