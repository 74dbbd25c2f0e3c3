//! The dimensions and their units.

use serde::{Deserialize, Serialize};

/// A unit of one dimension, named by its UCUM code.
pub trait Unit: Copy + Eq + std::fmt::Debug + 'static {
    /// Every unit of the dimension, canonical first.
    const ALL: &'static [Self];
    /// The UCUM code, such as `mL` or `[foz_us]`.
    fn ucum(self) -> &'static str;
    /// One of this unit in the canonical unit, and the canonical value of zero.
    fn factor_and_zero(self) -> (f64, f64);
    /// Decimal places a person reads.
    fn places(self) -> usize;
    /// The unit with this UCUM code.
    fn from_ucum(code: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|u| u.ucum() == code)
    }
}

/// A measured magnitude, held in its canonical unit.
pub trait Quantity: Copy + PartialEq + std::fmt::Debug + Sized {
    /// The units of this dimension.
    type Unit: Unit;
    /// From a value in the canonical unit.
    fn from_canonical(value: f64) -> Self;
    /// The value in the canonical unit.
    fn canonical(self) -> f64;
    /// From a value in any unit of the dimension.
    fn of(value: f64, unit: Self::Unit) -> Self {
        let (factor, zero) = unit.factor_and_zero();
        Self::from_canonical(value * factor + zero)
    }
    /// The value in any unit of the dimension.
    fn in_unit(self, unit: Self::Unit) -> f64 {
        let (factor, zero) = unit.factor_and_zero();
        (self.canonical() - zero) / factor
    }
}

macro_rules! dimension {
    ($(#[$doc:meta])* $name:ident in $unit:ident {
        $($(#[$unit_doc:meta])* $variant:ident = $code:literal, $factor:expr, $zero:expr, $places:expr;)+
    }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl Quantity for $name {
            type Unit = $unit;
            fn from_canonical(value: f64) -> Self { Self(value) }
            fn canonical(self) -> f64 { self.0 }
        }

        #[doc = concat!("Units of [`", stringify!($name), "`].")]
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
        pub enum $unit { $($(#[$unit_doc])* #[serde(rename = $code)] $variant,)+ }

        impl Unit for $unit {
            const ALL: &'static [Self] = &[$(Self::$variant),+];
            fn ucum(self) -> &'static str { match self { $(Self::$variant => $code),+ } }
            fn factor_and_zero(self) -> (f64, f64) { match self { $(Self::$variant => ($factor, $zero)),+ } }
            fn places(self) -> usize { match self { $(Self::$variant => $places),+ } }
        }
    };
}

dimension! {
    /// A volume of milk.
    Volume in VolumeUnit {
        /// Millilitre.
        Milliliter = "mL", 1.0, 0.0, 0;
        /// US fluid ounce: 231 cubic inches / 128 (UCUM).
        FluidOunce = "[foz_us]", 29.573_529_562_5, 0.0, 1;
    }
}

dimension! {
    /// A vacuum: how far below ambient, as a positive magnitude.
    Vacuum in VacuumUnit {
        /// Millimetre of mercury.
        MillimeterOfMercury = "mm[Hg]", 1.0, 0.0, 0;
        /// Kilopascal; UCUM sets mm[Hg] at 133.322 Pa exactly.
        Kilopascal = "kPa", 1000.0 / 133.322, 0.0, 1;
        /// Millibar, which is a hectopascal.
        Millibar = "mbar", 100.0 / 133.322, 0.0, 0;
        /// Centimetre of water: UCUM has m[H2O] at 9.80665 kPa.
        CentimeterOfWater = "cm[H2O]", 98.0665 / 133.322, 0.0, 0;
    }
}

dimension! {
    /// How a pump's vacuum changes: mmHg by the month.
    Wear in WearUnit {
        /// Millimetre of mercury a month of 30.4375 days (UCUM `mo`).
        MillimeterOfMercuryPerMonth = "mm[Hg]/mo", 1.0, 0.0, 1;
        /// Kilopascal a month.
        KilopascalPerMonth = "kPa/mo", 1000.0 / 133.322, 0.0, 2;
    }
}

dimension! {
    /// How fast vacuum rises, falls or leaks: mmHg by the second.
    Leak in LeakUnit {
        /// Millimetre of mercury a second.
        MillimeterOfMercuryPerSecond = "mm[Hg]/s", 1.0, 0.0, 1;
        /// Kilopascal a second.
        KilopascalPerSecond = "kPa/s", 1000.0 / 133.322, 0.0, 2;
    }
}

dimension! {
    /// The pressure of the air around.
    AirPressure in AirPressureUnit {
        /// Hectopascal.
        Hectopascal = "hPa", 1.0, 0.0, 0;
        /// Millimetre of mercury.
        MillimeterOfMercury = "mm[Hg]", 1.333_22, 0.0, 0;
        /// Kilopascal.
        Kilopascal = "kPa", 10.0, 0.0, 1;
    }
}

dimension! {
    /// A height above the sea.
    Altitude in AltitudeUnit {
        /// Metre.
        Meter = "m", 1.0, 0.0, 0;
        /// International foot.
        Foot = "[ft_i]", 0.3048, 0.0, 0;
    }
}

dimension! {
    /// How fast the pump cycles.
    Speed in SpeedUnit {
        /// Cycles per minute.
        PerMinute = "/min", 1.0, 0.0, 0;
    }
}

dimension! {
    /// The mass of a child, or of milk that was weighed.
    Mass in MassUnit {
        /// Gram.
        Gram = "g", 1.0, 0.0, 0;
        /// Kilogram.
        Kilogram = "kg", 1000.0, 0.0, 3;
        /// Avoirdupois pound.
        Pound = "[lb_av]", 453.592_37, 0.0, 2;
        /// Avoirdupois ounce: not a fluid ounce.
        Ounce = "[oz_av]", 28.349_523_125, 0.0, 1;
    }
}

dimension! {
    /// A body temperature.
    Temperature in TemperatureUnit {
        /// Degree Celsius.
        Celsius = "Cel", 1.0, 0.0, 1;
        /// Degree Fahrenheit.
        Fahrenheit = "[degF]", 5.0 / 9.0, -32.0 * 5.0 / 9.0, 1;
    }
}

dimension! {
    /// A length, such as a flange's inner diameter.
    Length in LengthUnit {
        /// Millimetre.
        Millimeter = "mm", 1.0, 0.0, 0;
        /// Centimetre.
        Centimeter = "cm", 10.0, 0.0, 1;
    }
}

dimension! {
    /// How much milk is made: a rate, as a volume over a day of 24 hours.
    Production in ProductionUnit {
        /// Millilitre per day.
        MilliliterPerDay = "mL/d", 1.0, 0.0, 0;
        /// Millilitre per hour.
        MilliliterPerHour = "mL/h", 24.0, 0.0, 1;
        /// US fluid ounce per day.
        FluidOuncePerDay = "[foz_us]/d", 29.573_529_562_5, 0.0, 1;
    }
}

dimension! {
    /// How a production changes: mL per day, per week.
    Drift in DriftUnit {
        /// Millilitre per day per week.
        MilliliterPerDayPerWeek = "mL/d/wk", 1.0, 0.0, 0;
        /// US fluid ounce per day per week.
        FluidOuncePerDayPerWeek = "[foz_us]/d/wk", 29.573_529_562_5, 0.0, 1;
    }
}
