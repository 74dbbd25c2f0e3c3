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
