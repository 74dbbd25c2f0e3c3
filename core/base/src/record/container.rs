//! Milk that is kept: a container, and everything that happened to it.

use super::{moment, text, Amount, Fields};
use crate::quantity::{Entered, Temperature, Volume};
use crate::time::Moment;

/// Where milk is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum KeptIn {
    /// Out in the room.
    Room,
    /// A cooler with ice packs.
    Cooler,
    /// The fridge.
    Fridge,
    /// The freezer.
    Freezer,
    /// A deep freezer.
    DeepFreezer,
}

impl KeptIn {
    /// Every place, from the warmest.
    pub const ALL: [Self; 5] = [Self::Room, Self::Cooler, Self::Fridge, Self::Freezer, Self::DeepFreezer];

    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Room => "room",
            Self::Cooler => "cooler",
            Self::Fridge => "fridge",
            Self::Freezer => "freezer",
            Self::DeepFreezer => "deep_freezer",
        }
    }

    /// The place of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|place| place.name() == name)
    }

    /// Whether milk freezes there.
    pub const fn freezes(self) -> bool {
        matches!(self, Self::Freezer | Self::DeepFreezer)
    }
}

/// How milk left a container.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Taken {
    /// Given to the child.
    Given,
    /// Given away.
    GivenAway,
    /// Thrown out.
    ThrownOut,
    /// Lost in a power cut.
    LostInPowerCut,
}

impl Taken {
    /// Every way.
    pub const ALL: [Self; 4] = [Self::Given, Self::GivenAway, Self::ThrownOut, Self::LostInPowerCut];

    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Given => "given",
            Self::GivenAway => "given_away",
            Self::ThrownOut => "thrown_out",
            Self::LostInPowerCut => "lost_in_power_cut",
        }
    }
}

/// What happened to a container.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Happened {
    /// It was put somewhere else.
    Moved(KeptIn),
    /// It began to thaw.
    Thawing,
    /// It is fully thawed.
    Thawed,
    /// It was warmed.
    Warmed,
    /// The child began to drink from it.
    Begun,
    /// That feed ended.
    FeedEnded,
    /// Milk was taken out of it.
    Taken(Taken),
}

impl Happened {
    fn read(fields: &Fields) -> Option<Self> {
        Some(match text(fields, "happened")? {
            "moved" => Self::Moved(KeptIn::named(text(fields, "kept_in")?)?),
            "thawing" => Self::Thawing,
            "thawed" => Self::Thawed,
            "warmed" => Self::Warmed,
            "begun" => Self::Begun,
            "feed_ended" => Self::FeedEnded,
            other => Self::Taken(Taken::ALL.into_iter().find(|taken| taken.name() == other)?),
        })
    }

    /// Stable name.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Moved(_) => "moved",
            Self::Thawing => "thawing",
            Self::Thawed => "thawed",
            Self::Warmed => "warmed",
            Self::Begun => "begun",
            Self::FeedEnded => "feed_ended",
            Self::Taken(taken) => taken.name(),
        }
    }
}

/// One thing that happened to a container.
#[derive(Debug, Clone, PartialEq)]
pub struct MilkEvent {
    /// Its id.
    pub id: String,
    /// The container.
    pub container: String,
    /// When.
    pub at: Moment,
    /// What.
    pub what: Happened,
    /// How much was taken out; none where all that was left.
    pub taken: Option<Volume>,
}

impl MilkEvent {
    /// Reads it; none where it can't be read as one.
    pub fn read(id: &str, fields: &Fields) -> Option<Self> {
        Some(Self {
            id: id.to_owned(),
            container: text(fields, "container")?.to_owned(),
            at: moment(fields, "at")?,
            what: Happened::read(fields)?,
            taken: fields.get("taken").and_then(Entered::<Volume>::from_json).map(|typed| typed.quantity()),
        })
    }
}

/// A container of milk as it was filled.
#[derive(Debug, Clone, PartialEq)]
pub struct Container {
    /// Its id.
    pub id: String,
    /// What stands on its label.
    pub label: Option<String>,
    /// When the milk in it was expressed; of several sessions the first.
    pub expressed: Moment,
    /// How much was filled in, where that is known.
    pub amount: Option<Volume>,
    /// Where it was put first.
    pub kept_in: Option<KeptIn>,
    /// How warm the room was, where it stood in one.
    pub room: Option<Temperature>,
}

impl Container {
    /// Reads it; none without the time it was expressed.
    pub fn read(id: &str, fields: &Fields) -> Option<Self> {
        Some(Self {
            id: id.to_owned(),
            label: text(fields, "label").map(str::to_owned),
            expressed: moment(fields, "at")?,
            amount: fields.get("amount").and_then(Amount::from_json).and_then(|amount| amount.known()),
            kept_in: text(fields, "kept_in").and_then(KeptIn::named),
            room: fields.get("room_temperature").and_then(Entered::<Temperature>::from_json).map(|t| t.quantity()),
        })
    }
}
