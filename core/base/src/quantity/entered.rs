//! A quantity as it was entered: canonical value beside the figures typed.

use serde_json::{json, Value};

use super::{parse_decimal, say_decimal, NotANumber, Quantity, Unit};

/// A quantity with the figures and unit it was typed in.
#[derive(Debug, Clone, PartialEq)]
pub struct Entered<Q: Quantity> {
    quantity: Q,
    typed: String,
    unit: Q::Unit,
}

impl<Q: Quantity> Entered<Q> {
    /// Reads what was typed, in the unit it was typed in.
    ///
    /// # Errors
    /// [`NotANumber`] where it is no decimal number.
    pub fn parse(typed: &str, unit: Q::Unit) -> Result<Self, NotANumber> {
        let value = parse_decimal(typed)?;
        Ok(Self { quantity: Q::of(value, unit), typed: typed.trim().to_owned(), unit })
    }

    /// A value that was drawn or stepped rather than typed.
    pub fn of(value: f64, unit: Q::Unit) -> Self {
        Self { quantity: Q::of(value, unit), typed: say_decimal(value, 3), unit }
    }

    /// The magnitude.
    pub fn quantity(&self) -> Q {
        self.quantity
    }

    /// The figures as typed.
    pub fn typed(&self) -> &str {
        &self.typed
    }

    /// The unit it was typed in.
    pub fn unit(&self) -> Q::Unit {
        self.unit
    }

    /// What to show in a unit: as typed where it was typed in it.
    pub fn say_in(&self, unit: Q::Unit) -> String {
        if unit == self.unit {
            self.typed.clone()
        } else {
            say_decimal(self.quantity.in_unit(unit), unit.places())
        }
    }

    /// The stored form: `{"value", "unit", "typed", "typed_unit"}`, canonical first.
    pub fn to_json(&self) -> Value {
        let canonical = Q::Unit::ALL.first().map_or("", |u| u.ucum());
        json!({ "value": self.quantity.canonical(), "unit": canonical, "typed": self.typed, "typed_unit": self.unit.ucum() })
    }

    /// Reads the stored form. `value` in its `unit` is the truth; `typed` may
    /// be missing, and is refused where it says something else: where the value, in
    /// the unit that was typed, is not what was typed to its last figure.
    pub fn from_json(value: &Value) -> Option<Self> {
        let unit = Q::Unit::from_ucum(value.get("unit")?.as_str()?)?;
        let number = value.get("value")?.as_f64().filter(|v| v.is_finite())?;
        let quantity = Q::of(number, unit);
        match (value.get("typed"), value.get("typed_unit")) {
            (Some(typed), Some(typed_unit)) => {
                let entered = Self::parse(typed.as_str()?, Q::Unit::from_ucum(typed_unit.as_str()?)?).ok()?;
                let typed = entered.quantity.in_unit(entered.unit);
                // A hair more: neither number is exact in binary.
                let may_differ = half_of_the_last_figure(&entered.typed) + 1e-6 * typed.abs().max(1.0);
                let apart = (quantity.in_unit(entered.unit) - typed).abs();
                (apart <= may_differ).then_some(Self { quantity, ..entered })
            }
            (None, None) => Some(Self { quantity, typed: say_decimal(number, 6), unit }),
            _ => None,
        }
    }
}

/// Half of one in the last figure of a decimal number: what rounding to it may take away.
fn half_of_the_last_figure(typed: &str) -> f64 {
    let behind = typed.split_once([',', '.']).map_or(0, |(_, part)| part.len());
    0.5 / 10_f64.powi(i32::try_from(behind).unwrap_or(i32::MAX))
}
