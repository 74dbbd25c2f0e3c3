//! A fact as the family would have written it: a kind, a name, and fields.

use drawwell_core::{
    quantity::{
        Entered, Length, LengthUnit, Mass, MassUnit, Speed, SpeedUnit, Temperature, TemperatureUnit, Vacuum,
        VacuumUnit, Volume, VolumeUnit,
    },
    record::{Amount, Fields, Kind},
    time::Moment,
};
use serde_json::{json, Value};

/// One fact.
#[derive(Debug, Clone, PartialEq)]
pub struct Fact {
    /// What kind of fact it is.
    pub kind: Kind,
    /// The name that other facts know it by.
    pub id: String,
    /// What is said of it.
    pub fields: Fields,
}

impl Fact {
    pub(super) fn new(kind: Kind, id: impl Into<String>) -> Self {
        Self { kind, id: id.into(), fields: Fields::new() }
    }

    pub(super) fn says(mut self, key: &str, value: impl Into<Value>) -> Self {
        self.fields.insert(key.to_owned(), value.into());
        self
    }

    pub(super) fn when(self, key: &str, at: &Moment) -> Self {
        self.says(key, at.to_json())
    }

    pub(super) fn milk(self, key: &str, milliliters: f64) -> Self {
        let entered = Entered::<Volume>::of(milliliters, VolumeUnit::Milliliter);
        self.says(key, Amount::Known(entered).to_json())
    }

    pub(super) fn milk_in_ounces(self, key: &str, ounces: f64) -> Self {
        let entered = Entered::<Volume>::of(ounces, VolumeUnit::FluidOunce);
        self.says(key, Amount::Known(entered).to_json())
    }

    pub(super) fn amount_unknown(self, key: &str) -> Self {
        self.says(key, Amount::Unknown.to_json())
    }

    pub(super) fn amount_later(self, key: &str) -> Self {
        self.says(key, Amount::Later.to_json())
    }

    pub(super) fn mass(self, key: &str, grams: f64) -> Self {
        self.says(key, Entered::<Mass>::of(grams, MassUnit::Gram).to_json())
    }

    pub(super) fn length(self, key: &str, millimeters: f64) -> Self {
        self.says(key, Entered::<Length>::of(millimeters, LengthUnit::Millimeter).to_json())
    }

    pub(super) fn vacuum(self, key: &str, millimeters_of_mercury: f64) -> Self {
        self.says(key, vacuum(millimeters_of_mercury).to_json())
    }

    pub(super) fn cycles(self, key: &str, per_minute: f64) -> Self {
        self.says(key, cycles(per_minute).to_json())
    }

    pub(super) fn temperature(self, key: &str, celsius: f64) -> Self {
        self.says(key, Entered::<Temperature>::of(celsius, TemperatureUnit::Celsius).to_json())
    }

    pub(super) fn yes(self, key: &str) -> Self {
        self.says(key, json!(true))
    }
}

pub(super) fn vacuum(millimeters_of_mercury: f64) -> Entered<Vacuum> {
    Entered::of(millimeters_of_mercury, VacuumUnit::MillimeterOfMercury)
}

pub(super) fn cycles(per_minute: f64) -> Entered<Speed> {
    Entered::of(per_minute, SpeedUnit::PerMinute)
}
