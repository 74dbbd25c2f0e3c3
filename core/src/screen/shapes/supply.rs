//! How much milk is made.

use serde::{Deserialize, Serialize};

use super::{Action, ChoiceRow, Column, ListGroup, ListRow, Notice, Tick};

/// How much milk is made, whether that holds, and since when not.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SupplyScreen {
    /// The word of the moment, such as `Holding`; or that it cannot be told yet.
    pub headline: String,
    /// How much a day, such as `about 640 mL a day`, or empty.
    pub figure: String,
    /// The range of the figure, and what it rests on.
    pub caption: String,
    /// What more there is to say, each a short sentence.
    pub lines: Vec<String>,
    /// Gentle questions: a session may be missing, an amount may be mistyped.
    pub asks: Vec<Notice>,
    /// Over how many days.
    pub spans: ChoiceRow,
    pub weeks: WeeksPicture,
    /// When it changed, the latest first.
    pub changes: Vec<ChangeNote>,
    /// Left and right.
    pub sides: Vec<SideCourse>,
    pub hours: HoursPicture,
    /// Morning, afternoon, evening, night.
    pub parts: ListGroup,
    /// Against what it is held.
    pub against: ListGroup,
    /// The way to what lies behind this; none where there is nothing.
    pub behind: Option<Action>,
    /// The way to milk that is kept.
    pub kept: Option<Action>,
    pub spoken: String,
}

/// Production over days or weeks, along a line of time from 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct WeeksPicture {
    pub bars: Vec<ProductionBar>,
    /// The course with its range; empty where it cannot be told.
    pub ribbon: Vec<RibbonPoint>,
    /// Where it changed.
    pub breaks: Vec<BreakMark>,
    /// An aim that was set.
    pub aim: Option<Tick>,
    /// What its signs mean, or empty.
    pub legend: String,
    /// Labels along the line of time.
    pub ticks: Vec<Tick>,
    /// Labels along the height.
    pub scale: Vec<Tick>,
    pub spoken: String,
}

/// One day, or one week: from and to along the line of time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ProductionBar {
    pub from: f32,
    pub to: f32,
    /// What was made, scaled to 24 h; none where nothing is known.
    pub height: Option<f32>,
    /// What was collected by the clock, a mark within or above the bar.
    pub by_the_clock: Option<f32>,
    /// The share that was observed, 0 to 1: the rest is drawn hatched.
    pub observed: f32,
    /// Whether it counts towards the course.
    pub counts: bool,
}

/// A point of the course: its height, and the range it may lie in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct RibbonPoint {
    pub at: f32,
    pub low: f32,
    pub middle: f32,
    pub high: f32,
}

/// A change of level: somewhere between two points.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct BreakMark {
    pub from: f32,
    pub to: f32,
    pub label: String,
}

/// A change, told: when, how much, and what else changed then.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ChangeNote {
    pub key: String,
    pub title: String,
    pub detail: String,
    /// Said over `beside`: what else changed then, not that it was the cause.
    pub beside_label: String,
    pub beside: Vec<ListRow>,
    pub spoken: String,
}

/// One side: its water line, its word, its course.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct SideCourse {
    pub column: Column,
    pub headline: String,
    pub detail: String,
    pub weeks: WeeksPicture,
}

/// How fast milk is made at each hour of the day, from 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HoursPicture {
    pub title: String,
    /// What its signs mean.
    pub legend: String,
    pub bars: Vec<HourBar>,
    pub ticks: Vec<Tick>,
    pub scale: Vec<Tick>,
    pub spoken: String,
}

/// One hour of the day: the middle of the days, and where half of them lie.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct HourBar {
    pub from: f32,
    pub to: f32,
    pub height: Option<f32>,
    pub low: f32,
    pub high: f32,
}
