//! Several lengths in one field, such as the flange sizes in stock.

use serde_json::{json, Value};

use crate::quantity::{parse_decimal, say_decimal, Length, LengthUnit, Quantity};
use crate::trouble::{Detail, Trouble};

/// Most sizes in one field.
const MOST: usize = 60;

/// Lengths in rising order, each once.
#[derive(Debug, Clone, PartialEq)]
pub struct Sizes(Vec<Length>);

impl Sizes {
    /// Reads what was typed: figures in mm, apart by spaces or semicolons, or
    /// by commas with a space behind.
    ///
    /// # Errors
    /// Where one of them is no number.
    pub fn parse(field: &str, typed: &str) -> Result<Self, Trouble> {
        let spaced = typed.replace(", ", " ").replace("mm", " ");
        let figures: Result<Vec<f64>, _> = spaced
            .split([' ', ';', '/', '\t'])
            .map(|part| part.trim().trim_end_matches(','))
            .filter(|part| !part.is_empty())
            .map(parse_decimal)
            .collect();
        match figures {
            Ok(figures) if !figures.is_empty() => Ok(Self::of(figures)),
            _ => Err(Trouble::bad(field, "bad-sizes")),
        }
    }

    fn of(mut millimeters: Vec<f64>) -> Self {
        millimeters.sort_by(f64::total_cmp);
        millimeters.dedup();
        Self(millimeters.into_iter().map(Length::from_canonical).collect())
    }

    /// The lengths, the least first.
    pub fn lengths(&self) -> &[Length] {
        &self.0
    }

    /// The stored form: numbers in mm.
    pub fn to_json(&self) -> Value {
        json!(self.0.iter().map(|size| size.canonical()).collect::<Vec<_>>())
    }

    /// Reads the stored form.
    pub fn from_json(value: &Value) -> Option<Self> {
        let numbers: Option<Vec<f64>> = value.as_array()?.iter().map(Value::as_f64).collect();
        Some(Self::of(numbers?))
    }

    /// As it is read and typed: `15 17 19`.
    pub fn say(&self) -> String {
        self.0.iter().map(|size| say_decimal(size.canonical(), 1)).collect::<Vec<_>>().join(" ")
    }

    /// Checks each against bounds in mm.
    ///
    /// # Errors
    /// Where one lies outside.
    pub fn check(&self, field: &str, least: f64, most: f64) -> Result<(), Trouble> {
        let within = |size: &Length| (least..=most).contains(&size.canonical());
        match !self.0.is_empty() && self.0.len() <= MOST && self.0.iter().all(within) {
            true => Ok(()),
            false => Err(Trouble::bad(field, "bad-range")
                .with("least", Detail::number(least, 1))
                .with("most", Detail::number(most, 1))
                .with("unit", Detail::unit(LengthUnit::Millimeter))),
        }
    }
}
