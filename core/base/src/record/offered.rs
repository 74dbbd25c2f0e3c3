//! A pump that is offered, read from its record: the figures of its technical sheet as typed.

use serde_json::Value;

use super::{text, whole_number, Fields};
use crate::quantity::{Count, Entered, Mass, Quantity, Speed, Vacuum};

/// What a technical sheet states of one figure.
#[derive(Debug, Clone, PartialEq)]
pub struct Stated<Q: Quantity> {
    /// From here on, where it says so.
    pub low: Option<Entered<Q>>,
    /// Up to here. A sheet that names one figure names this one.
    pub high: Option<Entered<Q>>,
}

impl<Q: Quantity> Stated<Q> {
    /// From the two fields that hold it.
    pub fn read(fields: &Fields, low: &str, high: &str) -> Self {
        let end = |key: &str| fields.get(key).and_then(Entered::<Q>::from_json);
        Self { low: end(low), high: end(high) }
    }

    /// Its lower end.
    pub fn least(&self) -> Option<Q> {
        self.low.as_ref().map(Entered::quantity)
    }

    /// Its upper end.
    pub fn most(&self) -> Option<Q> {
        self.high.as_ref().map(Entered::quantity)
    }

    /// Whether it states anything.
    pub fn is_stated(&self) -> bool {
        self.low.is_some() || self.high.is_some()
    }
}

/// The highest vacuum that a pump's record states.
pub fn stated_vacuum(fields: &Fields) -> Stated<Vacuum> {
    Stated::read(fields, "maximum_vacuum_low", "maximum_vacuum_high")
}

/// The cycles that it states.
pub fn stated_cycles(fields: &Fields) -> Stated<Speed> {
    Stated::read(fields, "cycles_low", "cycles_high")
}

/// Whether vacuum and cycles are set apart from each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SettingsApart {
    /// Each by itself.
    Apart,
    /// Only together.
    Together,
    /// Only the vacuum can be set.
    VacuumOnly,
    /// Neither can be set.
    Neither,
}

impl SettingsApart {
    /// What a pump's record says.
    pub fn read(fields: &Fields) -> Option<Self> {
        Some(match text(fields, "settings_apart")? {
            "apart" => Self::Apart,
            "together" => Self::Together,
            "vacuum_only" => Self::VacuumOnly,
            "none" => Self::Neither,
            _ => return None,
        })
    }
}

/// How a pump is offered.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum OfferedHow {
    /// New.
    New,
    /// Second-hand.
    SecondHand,
    /// Borrowed.
    Borrowed,
    /// Rented.
    Rented,
}

/// A pump that is offered.
#[derive(Debug, Clone, PartialEq)]
pub struct Offered {
    /// What it is called to be: `personal`, `hospital` or `hand`.
    pub grade: Option<String>,
    /// How it is offered.
    pub how: Option<OfferedHow>,
    /// The highest vacuum that is stated.
    pub vacuum: Stated<Vacuum>,
    /// The cycles that are stated.
    pub cycles: Stated<Speed>,
    /// Whether vacuum and cycles are set apart.
    pub apart: Option<SettingsApart>,
    /// Steps of its vacuum.
    pub levels: Option<Count>,
    /// A stimulation phase of its own.
    pub stimulation: Option<bool>,
    /// Both sides at once.
    pub both_at_once: Option<bool>,
    /// It runs from the wall.
    pub mains: Option<bool>,
    /// It runs from a battery.
    pub battery: Option<bool>,
    /// It is worn in the clothes.
    pub in_clothes: Option<bool>,
    /// It is made for several people.
    pub for_several: Option<bool>,
    /// Milk cannot reach its motor.
    pub closed: Option<bool>,
    /// Months of warranty on its motor.
    pub warranty_months: Option<Count>,
    /// What it weighs.
    pub weight: Option<Entered<Mass>>,
    /// Whether it has a price, and the currency of it.
    pub price: Option<Price>,
    /// Whether it was chosen (true) or set aside (false).
    pub chosen: Option<bool>,
    /// The person said that its figures are right as typed.
    pub are_right: bool,
}

/// A price as it was typed.
#[derive(Debug, Clone, PartialEq)]
pub struct Price {
    /// The figure.
    pub figure: Value,
    /// Three letters of ISO 4217, where they were said.
    pub currency: Option<String>,
}

impl Offered {
    /// Reads a record.
    pub fn read(fields: &Fields) -> Self {
        let said = |key: &str| fields.get(key).and_then(Value::as_bool);
        let power = text(fields, "power");
        let runs = |on: &str| power.map(|power| power == on || power == "both");
        Self {
            grade: text(fields, "grade").map(str::to_owned),
            how: match text(fields, "offered_how") {
                Some("new") => Some(OfferedHow::New),
                Some("second_hand") => Some(OfferedHow::SecondHand),
                Some("borrowed") => Some(OfferedHow::Borrowed),
                Some("rented") => Some(OfferedHow::Rented),
                _ => None,
            },
            vacuum: stated_vacuum(fields),
            cycles: stated_cycles(fields),
            apart: SettingsApart::read(fields),
            levels: whole_number(fields, "levels").map(Count::new),
            stimulation: said("stimulation_phase"),
            both_at_once: text(fields, "sides_at_once").map(|sides| sides == "both"),
            mains: runs("mains"),
            battery: runs("battery"),
            in_clothes: said("in_clothes"),
            for_several: text(fields, "made_for").map(|of| of == "several"),
            closed: text(fields, "milk_path").map(|path| path == "closed"),
            warranty_months: whole_number(fields, "motor_warranty").map(Count::new),
            weight: fields.get("pump_weight").and_then(Entered::<Mass>::from_json),
            price: fields.get("price").filter(|price| price.is_number()).map(|price| Price {
                figure: price.clone(),
                currency: text(fields, "currency").map(str::to_ascii_uppercase),
            }),
            chosen: match text(fields, "decided") {
                Some("chosen") => Some(true),
                Some("set_aside") => Some(false),
                _ => None,
            },
            are_right: super::flag(fields, "figures_are_right"),
        }
    }

    /// Whether somebody had it before, or has it beside.
    pub fn is_shared(&self) -> bool {
        matches!(self.how, Some(OfferedHow::SecondHand | OfferedHow::Borrowed | OfferedHow::Rented))
    }

    /// Whether others ran its motor for hours that nobody stated.
    pub fn had_before(&self) -> bool {
        matches!(self.how, Some(OfferedHow::SecondHand | OfferedHow::Borrowed))
    }
}
