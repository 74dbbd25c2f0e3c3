//! Magnitudes without a unit: a pump's level, a pain score, a count.

use serde::{Deserialize, Serialize};

macro_rules! whole {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(u32);
        impl $name {
            /// From a whole number.
            pub const fn new(value: u32) -> Self { Self(value) }
            /// The whole number.
            pub const fn get(self) -> u32 { self.0 }
        }
    };
}

whole! {
    /// A step on the pump's own dial; it has no unit until a gauge gives it one.
    Level
}
whole! {
    /// Pain on the 0 to 10 numeric rating scale, stored raw.
    Score
}
whole! {
    /// How many times something happened.
    Count
}

/// A part of a whole: 0 is none of it, 1 all of it.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Share(f64);

impl Share {
    /// None of it.
    pub const NONE: Self = Self(0.0);
    /// All of it.
    pub const ALL: Self = Self(1.0);

    /// From a fraction; what is no number is none of it.
    pub fn of(fraction: f64) -> Self {
        Self(if fraction.is_finite() { fraction } else { 0.0 })
    }
    /// As a fraction.
    pub const fn fraction(self) -> f64 {
        self.0
    }
    /// As whole per cent, rounded.
    pub fn per_cent(self) -> i64 {
        (self.0 * 100.0).round() as i64
    }
}

/// How far apart two pains are on the 0 to 10 scale, or a mean of several.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Points(f64);

impl Points {
    /// From so many points of the scale.
    pub const fn new(points: f64) -> Self {
        Self(points)
    }
    /// So many points of the scale.
    pub const fn get(self) -> f64 {
        self.0
    }
}
