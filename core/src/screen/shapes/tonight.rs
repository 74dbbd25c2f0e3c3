//! When to express next, and the night as a picture.

use serde::{Deserialize, Serialize};

use super::{Action, ChoiceRow, ListGroup, Notice, RibbonPoint, Section, Tick};

/// When to express next, and what the night holds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct TonightScreen {
    /// What the figure is, such as `Next session`; or what has to be known first.
    pub headline: String,
    /// The figure of the moment, such as `03:15`, or empty. It stands larger than all else.
    pub figure: String,
    /// In how long, such as `in 2 h 40`.
    pub caption: String,
    /// Why then, in a short sentence, or empty.
    pub why: String,
    /// Gentle questions, and what gives way where not all can be kept.
    pub asks: Vec<Notice>,
    /// The main thing to do, at the foot; none while there is nothing to start.
    pub start: Option<Action>,
    /// Earlier, later, again in a while, leave out: under the thumb.
    pub actions: Vec<Action>,
    /// None where there is no plan.
    pub night: Option<NightPicture>,
    /// What the night leaves and brings, each a figure with its name.
    pub figures: Vec<NightFigure>,
    /// A choice before there is a plan, such as how many sessions a day.
    pub choices: Vec<ChoiceRow>,
    /// The times to come, each with why then.
    pub times: ListGroup,
    /// What a choice costs, how milk comes back, what was, what is set.
    pub sections: Vec<Section>,
    pub spoken: String,
}

/// A figure of the night.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct NightFigure {
    pub key: String,
    /// Such as `Sleep left`.
    pub title: String,
    /// Such as `6 h 10`.
    pub figure: String,
    /// Its range, or what it is made of, or empty.
    pub detail: String,
    pub spoken: String,
}

/// The night from dusk to morning, along a line of time from 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct NightPicture {
    /// Sessions that were and that are to come.
    pub pegs: Vec<Peg>,
    /// What else fills the time: sleep, shifts, breaks, care times, feeds.
    pub stretches: Vec<NightStretch>,
    /// What the breasts hold: it fills between sessions and falls at each. Empty where it cannot be told.
    pub water: Vec<RibbonPoint>,
    /// Where the present moment stands, if within.
    pub now: Option<f32>,
    /// Labels along the line of time.
    pub ticks: Vec<Tick>,
    /// Labels along the height of the water.
    pub scale: Vec<Tick>,
    /// What its signs mean.
    pub legend: String,
    /// Whether that is seen at once: until it has been looked at for a while, and then on a tap.
    pub legend_open: bool,
    /// What a tap on the picture does, for a screen reader.
    pub legend_opens: String,
    pub spoken: String,
}

/// A session in the night's picture.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Peg {
    pub at: f32,
    pub until: f32,
    pub state: PegState,
    /// Its time, such as `03:15`.
    pub label: String,
}

/// What a peg stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum PegState {
    /// It was.
    Done,
    /// The next one.
    Next,
    /// To come.
    Planned,
    /// Set by hand or by a fixed point.
    Fixed,
    /// A feed at the breast.
    Feed,
    /// It was to be and was left out.
    Skipped,
}

/// A stretch of the night.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct NightStretch {
    pub from: f32,
    pub to: f32,
    pub kind: StretchKind,
    /// Such as `4 h 30`, or the name of what it is; may be empty.
    pub label: String,
}

/// What a stretch of the night is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum StretchKind {
    /// The sleep window that was chosen: the ground under the sleep.
    Window,
    /// Sleep that is left between sessions.
    Sleep,
    /// No session can be then.
    Busy,
    /// A session is to be then.
    Wanted,
    /// A feed.
    Feed,
}
