//! What is read off a trace: numbers in the file's own unit, and its times.
//!
//! The unit of a trace stands beside it and can be corrected afterwards, so nothing
//! here is turned into mmHg before somebody asks.

use crate::quantity::{Leak, Quantity, Unit, Vacuum, VacuumUnit};

macro_rules! measured {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            /// From the figure.
            pub const fn new(value: f64) -> Self { Self(value) }
            /// The figure.
            pub const fn get(self) -> f64 { self.0 }
        }
    };
}

measured! {
    /// A pressure in the trace's own unit, positive below ambient.
    AsRead
}
measured! {
    /// A change of pressure by the second, in the trace's own unit.
    AsReadPerSecond
}
measured! {
    /// A change of pressure by the minute, in the trace's own unit.
    AsReadPerMinute
}
measured! {
    /// Seconds within a trace, to the microsecond.
    Seconds
}

impl AsRead {
    /// The vacuum, if that was the trace's unit.
    pub fn vacuum(self, unit: VacuumUnit) -> Vacuum {
        Vacuum::of(self.0, unit)
    }
}

impl AsReadPerSecond {
    /// How fast it leaks or changes, if that was the trace's unit.
    pub fn leak(self, unit: VacuumUnit) -> Leak {
        let (factor, _) = unit.factor_and_zero();
        Leak::from_canonical(self.0 * factor)
    }
}

impl AsReadPerMinute {
    /// By how much vacuum it changes in a minute, if that was the trace's unit.
    pub fn vacuum_in_a_minute(self, unit: VacuumUnit) -> Vacuum {
        Vacuum::of(self.0, unit)
    }
}
