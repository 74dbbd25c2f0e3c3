//! What a field takes, and how its stored form is checked.

use chrono::NaiveDate;
use serde_json::Value;

use super::{Amount, Kind, Sizes};
use crate::quantity::{
    AirPressure, Altitude, Entered, Length, LengthUnit, Mass, Quantity, Rounding, Speed, Temperature, Vacuum, Volume,
};
use crate::time::{parse_clock_time, Moment, Span, Zone};
use crate::trouble::{Detail, Trouble};

/// What a field takes. Bounds are those of plausible typing, never of health.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum FieldType {
    /// A moment: instant, offset and zone.
    Moment,
    /// A calendar date.
    Date,
    /// Text of at most so many characters.
    Text {
        /// Characters.
        most: usize,
    },
    /// A number to call, as it is dialled.
    Phone,
    /// One of these words.
    Choice(&'static [&'static str]),
    /// Yes or no.
    Flag,
    /// An amount of milk: known, unknown, or later.
    Amount,
    /// A volume, in mL between these.
    Volume {
        /// Least, in mL.
        least: f64,
        /// Most, in mL.
        most: f64,
    },
    /// A vacuum, in mmHg below ambient.
    Vacuum {
        /// Least, in mmHg.
        least: f64,
        /// Most, in mmHg.
        most: f64,
    },
    /// Cycles per minute.
    Speed {
        /// Least, in cycles per minute.
        least: f64,
        /// Most, in cycles per minute.
        most: f64,
    },
    /// The pressure of the air, in hPa.
    AirPressure {
        /// Least, in hPa.
        least: f64,
        /// Most, in hPa.
        most: f64,
    },
    /// A height above the sea, in m.
    Altitude {
        /// Least, in m.
        least: f64,
        /// Most, in m.
        most: f64,
    },
    /// Several lengths, in mm.
    Sizes {
        /// Least of each, in mm.
        least: f64,
        /// Most of each, in mm.
        most: f64,
    },
    /// What was found in a file, as the answers to a trace writes it.
    Findings,
    /// A length in mm.
    Length {
        /// Least, in mm.
        least: f64,
        /// Most, in mm.
        most: f64,
    },
    /// A mass in g.
    Mass {
        /// Least, in g.
        least: f64,
        /// Most, in g.
        most: f64,
    },
    /// A temperature in °C.
    Temperature {
        /// Least, in °C.
        least: f64,
        /// Most, in °C.
        most: f64,
    },
    /// A number between these, in the unit of its field.
    Number {
        /// Least.
        least: f64,
        /// Most.
        most: f64,
    },
    /// A whole number between these.
    Whole {
        /// Least.
        least: u32,
        /// Most.
        most: u32,
    },
    /// A length of time, in whole minutes.
    Span {
        /// Least, in minutes.
        least_minutes: u32,
        /// Most, in minutes.
        most_minutes: u32,
    },
    /// A time on the wall, as `22:30`.
    ClockTime,
    /// An IANA zone.
    Zone,
    /// Another record of this kind.
    Refers(Kind),
}

/// What was found in a trace is a summary; anything longer is not one.
const LONGEST_FINDINGS: usize = 200_000;

/// Most milk one amount can hold: beyond it a slip of the finger is likelier.
pub const MOST_AMOUNT_MILLILITERS: f64 = 2000.0;

/// Most that a number to call takes, with what stands between its figures.
pub const LONGEST_PHONE: usize = 40;

/// Whether a text is a number that a dialler takes (RFC 3966, 5.1.1 and 5.1.2: figures, `*`,
/// `#`, a leading `+`, and what stands between them for the eye).
fn dials(text: &str) -> bool {
    let behind = text.strip_prefix('+').unwrap_or(text);
    text.chars().count() <= LONGEST_PHONE
        && behind.chars().filter(char::is_ascii_digit).count() >= 2
        && behind.chars().all(|c| c.is_ascii_digit() || "*# -.()/".contains(c))
}

impl FieldType {
    /// Checks a stored value. The error says what the field takes.
    ///
    /// # Errors
    /// Where it does not take it.
    pub fn check(self, field: &str, value: &Value) -> Result<(), Trouble> {
        match self {
            Self::Moment => Moment::from_json(value).map(drop).map_err(|_| Trouble::bad(field, "bad-moment")),
            Self::Date => value
                .as_str()
                .and_then(|t| NaiveDate::parse_from_str(t, "%Y-%m-%d").ok())
                .map(drop)
                .ok_or_else(|| Trouble::bad(field, "bad-date")),
            Self::Text { most } => check_text(field, value, most),
            Self::Phone => match value.as_str().map(dials) {
                Some(true) => Ok(()),
                _ => Err(Trouble::bad(field, "bad-phone")),
            },
            Self::Choice(words) => match value.as_str() {
                Some(word) if words.contains(&word) => Ok(()),
                _ => Err(Trouble::bad(field, "bad-choice").with("words", Detail::choices(words.iter().copied()))),
            },
            Self::Flag => value.as_bool().map(drop).ok_or_else(|| Trouble::bad(field, "bad-flag")),
            Self::Amount => check_amount(field, value),
            Self::Volume { least, most } => check_quantity::<Volume>(field, value, least, most),
            Self::Vacuum { least, most } => check_quantity::<Vacuum>(field, value, least, most),
            Self::Speed { least, most } => check_quantity::<Speed>(field, value, least, most),
            Self::Length { least, most } => check_quantity::<Length>(field, value, least, most)
                .map_err(|why| asks_for_centimeters(why, value, least, most)),
            Self::AirPressure { least, most } => check_quantity::<AirPressure>(field, value, least, most),
            Self::Altitude { least, most } => check_quantity::<Altitude>(field, value, least, most),
            Self::Sizes { least, most } => match Sizes::from_json(value) {
                Some(sizes) => sizes.check(field, least, most),
                None => Err(Trouble::bad(field, "bad-sizes")),
            },
            Self::Findings => match value.is_object() && value.to_string().len() <= LONGEST_FINDINGS {
                true => Ok(()),
                false => Err(Trouble::bad(field, "bad-findings")),
            },
            Self::Mass { least, most } => check_quantity::<Mass>(field, value, least, most),
            Self::Temperature { least, most } => check_quantity::<Temperature>(field, value, least, most),
            Self::Number { least, most } => match value.as_f64() {
                Some(n) if (least..=most).contains(&n) => Ok(()),
                _ => Err(out_of_range(field, Detail::number(least, 3), Detail::number(most, 3), Detail::Unit(""))),
            },
            Self::Whole { least, most } => match value.as_u64() {
                Some(n) if (u64::from(least)..=u64::from(most)).contains(&n) => Ok(()),
                _ => Err(out_of_range(field, least.into(), most.into(), Detail::Unit(""))),
            },
            Self::Span { least_minutes, most_minutes } => match value.as_u64() {
                Some(n) if (u64::from(least_minutes)..=u64::from(most_minutes)).contains(&n) => Ok(()),
                _ => Err(Trouble::bad(field, "bad-span-range")
                    .with("least", Detail::Span(Span::minutes(i64::from(least_minutes))))
                    .with("most", Detail::Span(Span::minutes(i64::from(most_minutes))))),
            },
            Self::ClockTime => match value.as_str().and_then(parse_clock_time) {
                Some(_) => Ok(()),
                None => Err(Trouble::bad(field, "bad-time")),
            },
            Self::Zone => match value.as_str() {
                Some(name) if Zone::named(name).is_ok() => Ok(()),
                _ => Err(Trouble::bad(field, "bad-zone")),
            },
            Self::Refers(_) => match value.as_str() {
                Some(id) if !id.is_empty() && id.len() <= 128 => Ok(()),
                _ => Err(Trouble::bad(field, "bad-reference")),
            },
        }
    }
}

/// A length outside its bounds that would lie within them in centimetres.
fn asks_for_centimeters(why: Trouble, value: &Value, least: f64, most: f64) -> Trouble {
    let Some(entered) = Entered::<Length>::from_json(value) else { return why };
    let typed = Entered::<Length>::parse(entered.typed(), LengthUnit::Centimeter).map(|e| e.quantity().canonical());
    match (entered.unit(), typed) {
        (LengthUnit::Millimeter, Ok(meant)) if (least..=most).contains(&meant) => {
            Trouble::bad(&why.field, "bad-range-centimeters")
                .with("typed", entered.typed())
                .with("meant", Detail::number(meant, 1))
                .with("least", Detail::number(least, 0))
                .with("most", Detail::number(most, 0))
        }
        _ => why,
    }
}

fn check_text(field: &str, value: &Value, most: usize) -> Result<(), Trouble> {
    match value.as_str() {
        None => Err(Trouble::bad(field, "bad-text")),
        Some(text) if text.chars().count() > most => Err(Trouble::bad(field, "bad-text-long").with("most", most)),
        Some(_) => Ok(()),
    }
}

fn check_amount(field: &str, value: &Value) -> Result<(), Trouble> {
    match Amount::from_json(value) {
        None => Err(Trouble::bad(field, "bad-amount")),
        Some(Amount::Known(entered)) => within::<Volume>(field, &entered, 0.0, MOST_AMOUNT_MILLILITERS),
        Some(Amount::Unknown | Amount::Later) => Ok(()),
    }
}

fn check_quantity<Q: Quantity>(field: &str, value: &Value, least: f64, most: f64) -> Result<(), Trouble> {
    let entered = Entered::<Q>::from_json(value).ok_or_else(|| Trouble::bad(field, "bad-quantity"))?;
    within(field, &entered, least, most)
}

/// Checks an entered quantity against canonical bounds; the error names the
/// bounds in the unit that was typed.
///
/// # Errors
/// Where it lies outside.
pub fn within<Q: Quantity>(field: &str, entered: &Entered<Q>, least: f64, most: f64) -> Result<(), Trouble> {
    let value = entered.quantity().canonical();
    if value.is_finite() && value >= least && value <= most {
        return Ok(());
    }
    let unit = entered.unit();
    // Inward: what is said to be taken is taken.
    let bound = |bound: f64, inward: Rounding| Detail::figure(Q::from_canonical(bound), unit, inward);
    Err(out_of_range(field, bound(least, Rounding::Up), bound(most, Rounding::Down), Detail::unit(unit)))
}

fn out_of_range(field: &str, least: Detail, most: Detail, unit: Detail) -> Trouble {
    Trouble::bad(field, "bad-range").with("least", least).with("most", most).with("unit", unit)
}
