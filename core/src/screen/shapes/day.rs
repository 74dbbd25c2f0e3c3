//! One local day.

use serde::{Deserialize, Serialize};

use super::{Action, Part, Strip, Tick};

/// One local day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DayScreen {
    /// The day before, which day this is, and the day after.
    pub earlier: Option<Action>,
    pub choice: DayChoice,
    pub later: Option<Action>,
    /// What came, such as `480 mL`.
    pub figure: String,
    /// What is and is not in the figure.
    pub caption: String,
    pub sides: Vec<SideTotal>,
    pub picture: DayPicture,
    pub entries: Vec<EntryRow>,
    /// Said where there is nothing.
    pub empty: String,
    pub add: Vec<Action>,
    pub taken_out_label: String,
    pub taken_out: Vec<EntryRow>,
}

/// Which day is seen, and others to go to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DayChoice {
    /// Today, yesterday, or the date.
    pub text: String,
    /// What a screen reader says while the days are closed.
    pub spoken: String,
    /// What it says while they are open.
    pub spoken_open: String,
    pub days: Vec<Action>,
}

/// What one side gave in a day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SideTotal {
    pub part: Part,
    pub label: String,
    pub text: String,
    /// What is not known of it, or empty.
    pub note: String,
}

/// The day along its clock, 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DayPicture {
    pub bars: Vec<DayBar>,
    pub ticks: Vec<Tick>,
    /// Labels along the height.
    pub scale: Vec<Tick>,
    /// Where the present moment stands, on today.
    pub now: Option<f32>,
    pub spoken: String,
}

/// A session within the day: what each side gave, stacked from the ground.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DayBar {
    pub at: f32,
    /// None where the amount is not known.
    pub left: Option<f32>,
    pub right: Option<f32>,
    pub together: Option<f32>,
    /// Some of it is not known: drawn open at the top.
    pub open: bool,
    /// A feed at the breast, drawn as a mark and not as an amount.
    pub feed: bool,
}

/// A record in a day's list.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct EntryRow {
    pub id: String,
    pub time: String,
    pub title: String,
    pub detail: String,
    /// What came, at the end of the row; or what is not known of it.
    pub amount: String,
    /// What each side gave, where both were used and measured apart; or empty.
    pub sides: String,
    pub strip: Option<Strip>,
    /// A word of care, such as an overlap, or empty.
    pub care: String,
    pub spoken: String,
    pub open: Action,
    pub others: Vec<Action>,
}
