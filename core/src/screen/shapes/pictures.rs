//! Dials and plots.

use serde::{Deserialize, Serialize};

use super::{Part, Phase, RibbonPoint, Tick};

/// A dial like the gauge in the hand: 0 is where its sweep begins, 1 where it ends.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DialPicture {
    /// Ranges along the rim.
    pub arcs: Vec<DialArc>,
    /// Readings, each with its error as a wedge.
    pub hands: Vec<DialHand>,
    pub ticks: Vec<Tick>,
    /// What stands in the middle, such as `262`, and under it its unit.
    pub figure: String,
    pub unit: String,
    /// What its signs mean.
    pub legend: String,
    pub spoken: String,
}

/// A range along the rim of a dial.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DialArc {
    pub from: f32,
    pub to: f32,
    pub label: String,
}

/// A reading on a dial: where it points, and the range the truth lies in.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct DialHand {
    pub low: f32,
    pub at: f32,
    pub high: f32,
    /// A letter or a word beside its tip, such as `L`, or empty.
    pub label: String,
}

/// A picture over two axes, each from 0 to 1. Every part of it may be empty.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotPicture {
    /// Ranges along the height, drawn across the whole.
    pub bands: Vec<PlotBand>,
    /// Stretches along the width, such as phases; the word is written at their head.
    pub stretches: Vec<PlotStretch>,
    /// Between lowest and highest at each place, as a trace is drawn.
    pub columns: Vec<PlotColumn>,
    /// Lines with their range.
    pub courses: Vec<PlotCourse>,
    pub points: Vec<PlotPoint>,
    /// Places along the width where something changed.
    pub marks: Vec<Tick>,
    /// Labels along the width.
    pub ticks: Vec<Tick>,
    /// Labels along the height.
    pub scale: Vec<Tick>,
    /// What its signs mean, or empty.
    pub legend: String,
    pub spoken: String,
}

/// Milk that is kept, as it is: a board for each place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ShelfPicture {
    pub boards: Vec<ShelfBoard>,
    /// What its signs mean, or empty.
    pub legend: String,
    pub spoken: String,
}

/// A place where milk is kept, with what is in it: the soonest to lapse in front.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ShelfBoard {
    pub label: String,
    pub bottles: Vec<ShelfBottle>,
    /// How many more there are than are drawn, as it is said, or empty.
    pub more: String,
}

/// A container on a board.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct ShelfBottle {
    /// What stands on its label, or empty.
    pub label: String,
    /// How full it is beside the fullest; none where nobody knows.
    pub full: Option<f32>,
    /// Whether it lapses soon.
    pub soon: bool,
    /// Whether it is past its time, or can't be used.
    pub past: bool,
}

/// A range along the height.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotBand {
    pub low: f32,
    pub high: f32,
    pub label: String,
}

/// A stretch along the width.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotStretch {
    pub from: f32,
    pub to: f32,
    pub phase: Phase,
    pub label: String,
}

/// Lowest and highest at a place along the width.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotColumn {
    pub at: f32,
    pub low: f32,
    pub high: f32,
}

/// A line with its range; dashed where it is drawn on beyond what was seen.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotCourse {
    pub points: Vec<RibbonPoint>,
    pub dashed: bool,
}

/// A point with its range: a round sign for left, a square one for right, a
/// diamond for both or neither; open where it was not read but lies between.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PlotPoint {
    pub at: f32,
    pub low: f32,
    pub middle: f32,
    pub high: f32,
    pub part: Option<Part>,
    pub open: bool,
}
