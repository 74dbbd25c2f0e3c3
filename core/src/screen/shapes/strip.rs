//! A session as it ran.

use serde::{Deserialize, Serialize};

/// A session as it ran, along a line of time from 0 to 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Strip {
    pub bands: Vec<Band>,
    /// Letdowns that were seen or felt.
    pub notches: Vec<Notch>,
    /// The setting as a step line: from each point on, this height.
    pub vacuum: Vec<StepPoint>,
    pub cycles: Vec<StepPoint>,
    pub pains: Vec<PainMark>,
    pub ticks: Vec<Tick>,
    /// What its lines and signs are, in a line; or empty.
    pub key: String,
    pub spoken: String,
}

/// A phase within a strip.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Band {
    pub from: f32,
    pub to: f32,
    pub phase: Phase,
    pub label: String,
}

/// The phases of a session.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Phase {
    /// Not said.
    Unsaid,
    Letdown,
    Expression,
    Rest,
}

/// A letdown within a strip.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Notch {
    pub at: f32,
    pub label: String,
}

/// A point of a step line.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct StepPoint {
    pub at: f32,
    pub height: f32,
    pub label: String,
}

/// Pain within a strip; the height is the score out of ten, none if unsaid.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PainMark {
    pub at: f32,
    pub height: Option<f32>,
    /// Whether the setting was turned down for it.
    pub turned_down: bool,
    pub label: String,
}

/// A label along a line of time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Tick {
    pub at: f32,
    pub label: String,
}
