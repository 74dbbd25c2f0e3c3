//! Before, in and after a session.

use serde::{Deserialize, Serialize};

use super::{Action, FieldRow, Part, Strip, Tick};

/// The first screen over an empty record.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct WelcomeScreen {
    pub headline: String,
    pub lines: Vec<String>,
    pub actions: Vec<Action>,
}

/// Before a session: how long each side has rested, and what to start.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ReadyScreen {
    /// The figure of the moment, such as `3 h 10`.
    pub figure: String,
    /// What the figure is, such as `since the last session`.
    pub caption: String,
    /// What to do first, while nothing was ever logged; or empty.
    pub lead: String,
    /// How long each side has rested.
    pub rests: Vec<Rest>,
    pub set_up: SetUpLine,
    pub start: Action,
    /// For a session that is over already.
    pub just_pumped: Action,
    /// What today holds so far.
    pub today: Action,
    /// How the person wants things.
    pub settings: Action,
    /// Other things to write down from here.
    pub add: Vec<Action>,
    pub spoken: String,
}

/// How long one side has rested, as an arc on the face of a clock.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Rest {
    pub part: Part,
    pub label: String,
    /// How long, such as `2 h 40 min`; empty where it is not known.
    pub text: String,
    /// From when to now, in turns of the face from its top; none where it is not known, and more
    /// than one turn where it is more than twelve hours.
    pub arc: Option<Arc>,
    pub spoken: String,
}

/// A stretch of time on the face of a clock, in turns from the top.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Arc {
    pub from: f32,
    /// Never before `from`; a turn more than `from` is all around.
    pub to: f32,
}

/// How the next session is done: one line, and behind it the rows that change it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SetUpLine {
    /// Such as `Both · Heron`.
    pub text: String,
    /// What a tap on the line does, for the voice.
    pub spoken: String,
    /// The same while the rows are open.
    pub spoken_open: String,
    /// Whether the rows begin open: nothing was ever chosen.
    pub open: bool,
    /// Rows of choices: sides, method, pump.
    pub rows: Vec<ChoiceRow>,
}

/// One question a page, with what can be answered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct QuestionScreen {
    pub headline: String,
    /// What is said below it, or empty.
    pub line: String,
    /// What can be answered, each one tap.
    pub answers: Vec<Action>,
    /// Leave it open.
    pub skip: Option<Action>,
}

/// One side's column of water.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Column {
    pub part: Part,
    pub label: String,
    /// What is written on it, such as `3 h 10` or `60 mL`.
    pub text: String,
    /// Height of the water line, 0 to 1; none where it is not known.
    pub height: Option<f32>,
    /// A second, fainter line, such as what it was last time.
    pub ghost: Option<f32>,
    pub spoken: String,
}

/// A row of choices under one label.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ChoiceRow {
    pub key: String,
    pub label: String,
    pub options: Vec<Action>,
}

/// While a session runs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RunningScreen {
    /// Elapsed time, such as `12:34`.
    pub figure: String,
    /// The phase it is in, and how long.
    pub caption: String,
    /// What can be tapped, in the first session; or empty.
    pub lead: String,
    pub strip: Strip,
    /// Pairs of less and more about a value between them.
    pub dials: Vec<Dial>,
    /// Letdown, phase, rest, it hurts.
    pub marks: Vec<Action>,
    /// After `it hurts`: whether it was turned down, which side, how much. Below the dials, which
    /// stay where they are.
    pub pain: Vec<ChoiceRow>,
    pub finish: Action,
    pub spoken: String,
}

/// A value with less on one side and more on the other.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Dial {
    pub key: String,
    pub label: String,
    pub value: String,
    /// Where the value is only what it was last time: one tap on it says that it is so.
    pub as_last_time: Option<Action>,
    pub spoken: String,
    pub less: Action,
    pub more: Action,
}

/// After a session: what came.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct AmountsScreen {
    pub session: String,
    pub headline: String,
    pub caption: String,
    /// How the amounts are given, after the first session; or empty.
    pub lead: String,
    pub columns: Vec<AmountColumn>,
    /// Labels along the height of the columns.
    pub scale: Vec<Tick>,
    /// Each side, or together.
    pub together: ChoiceRow,
    /// Where all of it is kept, in one container; empty where nothing can be.
    pub keep: ChoiceRow,
    pub done: Action,
    pub later: Action,
    pub spoken: String,
}

/// What a column reads at a height.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Reading {
    pub at: f32,
    pub label: String,
    /// The bare figure, as it is sent when the thumb lets go here.
    pub typed: String,
}

/// A column whose water line the thumb draws up.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct AmountColumn {
    pub column: Column,
    /// What the column reads at each height it can stand at, from the ground
    /// up, so that the thumb sees the amount while it still draws.
    pub readings: Vec<Reading>,
    /// The unit of the readings, by its UCUM code.
    pub unit: String,
    /// The same to type.
    pub typing: FieldRow,
    pub less: Action,
    pub more: Action,
    /// The same by a fine step, for a thumb that holds.
    pub less_fine: Action,
    pub more_fine: Action,
    pub unknown: Action,
}
