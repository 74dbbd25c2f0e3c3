//! An amount of milk, which may be known, unknown, or left for later.

use serde_json::{json, Value};

use crate::quantity::{Entered, Volume};

/// What is said of an amount. A field that is missing says nothing at all.
#[derive(Debug, Clone, PartialEq)]
pub enum Amount {
    /// Measured, as typed.
    Known(Entered<Volume>),
    /// Nobody knows, and nobody will.
    Unknown,
    /// To be written down later.
    Later,
}

impl Amount {
    /// The stored form: a quantity, or `{"said": "unknown"}`, `{"said": "later"}`.
    pub fn to_json(&self) -> Value {
        match self {
            Self::Known(entered) => entered.to_json(),
            Self::Unknown => json!({ "said": "unknown" }),
            Self::Later => json!({ "said": "later" }),
        }
    }

    /// Reads the stored form.
    pub fn from_json(value: &Value) -> Option<Self> {
        match value.get("said") {
            Some(said) => match said.as_str()? {
                "unknown" => Some(Self::Unknown),
                "later" => Some(Self::Later),
                _ => None,
            },
            None => Entered::from_json(value).map(Self::Known),
        }
    }

    /// The volume, where it is known.
    pub fn known(&self) -> Option<Volume> {
        match self {
            Self::Known(entered) => Some(entered.quantity()),
            Self::Unknown | Self::Later => None,
        }
    }
}
