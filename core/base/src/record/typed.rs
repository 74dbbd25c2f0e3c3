//! From what was typed to what is stored, for everything but moments.

use serde_json::{json, Value};

use super::{Amount, FieldType, Sizes};
use crate::quantity::{
    parse_decimal, AirPressure, Altitude, Entered, Length, Mass, NotANumber, Quantity, Speed, Temperature, Unit,
    Vacuum, Volume,
};
use crate::time::{parse_clock_time, parse_date, parse_minutes};
use crate::trouble::Trouble;

/// Reads what was typed into a field. `unit` is the UCUM code of the unit that
/// bare numbers are meant in; a unit typed behind the figures goes before it.
///
/// # Errors
/// Where it can't be read as what the field takes.
pub fn read(field: &str, field_type: FieldType, typed: &str, unit: Option<&str>) -> Result<Value, Trouble> {
    let typed = typed.trim();
    let value = match field_type {
        FieldType::Amount => match typed {
            "unknown" => Amount::Unknown.to_json(),
            "later" => Amount::Later.to_json(),
            _ => quantity::<Volume>(field, typed, unit)?,
        },
        FieldType::Volume { .. } => quantity::<Volume>(field, typed, unit)?,
        FieldType::Vacuum { .. } => quantity::<Vacuum>(field, typed, unit)?,
        FieldType::Speed { .. } => quantity::<Speed>(field, typed, unit)?,
        FieldType::Length { .. } => quantity::<Length>(field, typed, unit)?,
        FieldType::AirPressure { .. } => quantity::<AirPressure>(field, typed, unit)?,
        FieldType::Altitude { .. } => quantity::<Altitude>(field, typed, unit)?,
        FieldType::Sizes { .. } => Sizes::parse(field, typed)?.to_json(),
        FieldType::Mass { .. } => quantity::<Mass>(field, typed, unit)?,
        FieldType::Temperature { .. } => quantity::<Temperature>(field, typed, unit)?,
        FieldType::Whole { .. } => match parse_decimal(typed) {
            Ok(number) if number.fract() == 0.0 && (0.0..1e9).contains(&number) => json!(number as u64),
            Ok(_) => {
                field_type.check(field, &Value::Null)?;
                Value::Null
            }
            Err(why) => return Err(not_a_number(field, why)),
        },
        FieldType::Number { .. } => match parse_decimal(typed) {
            Ok(number) => json!(number),
            Err(why) => return Err(not_a_number(field, why)),
        },
        FieldType::Flag => match typed {
            "yes" | "true" => json!(true),
            "no" | "false" => json!(false),
            _ => return Err(Trouble::bad(field, "bad-flag")),
        },
        FieldType::Date => match parse_date(typed) {
            Some(date) => json!(date.format("%Y-%m-%d").to_string()),
            None => return Err(Trouble::bad(field, "bad-date")),
        },
        FieldType::Span { .. } => match parse_minutes(typed) {
            Some(minutes) => json!(minutes),
            None => return Err(Trouble::bad(field, "bad-span")),
        },
        FieldType::ClockTime => match parse_clock_time(typed) {
            Some(time) => json!(time.say()),
            None => return Err(Trouble::bad(field, "bad-time")),
        },
        FieldType::Text { .. } | FieldType::Phone | FieldType::Choice(_) | FieldType::Zone | FieldType::Refers(_) => {
            json!(typed)
        }
        FieldType::Moment => return Err(Trouble::bad(field, "bad-moment")),
        FieldType::Findings => return Err(Trouble::bad(field, "bad-findings")),
    };
    field_type.check(field, &value)?;
    Ok(value)
}

fn not_a_number(field: &str, why: NotANumber) -> Trouble {
    match why {
        NotANumber::NoFigure => Trouble::bad(field, "bad-number"),
        NotANumber::Ambiguous => Trouble::bad(field, "bad-number-ambiguous"),
    }
}

fn quantity<Q: Quantity>(field: &str, typed: &str, unit: Option<&str>) -> Result<Value, Trouble> {
    let split = typed.find(|c: char| c.is_alphabetic() || c == '\u{b0}').unwrap_or(typed.len());
    let (figures, behind) = typed.split_at(split);
    if figures.trim().is_empty() {
        return Err(not_a_number(field, NotANumber::NoFigure));
    }
    let named = match behind.trim() {
        "" => unit.and_then(Q::Unit::from_ucum),
        written => written_unit(written).and_then(Q::Unit::from_ucum),
    };
    let Some(unit) = named else { return Err(Trouble::bad(field, "bad-unit")) };
    let entered = Entered::<Q>::parse(figures, unit).map_err(|why| not_a_number(field, why))?;
    Ok(entered.to_json())
}

/// The UCUM code of a unit as people write it.
fn written_unit(text: &str) -> Option<&'static str> {
    Some(match text.to_ascii_lowercase().replace([' ', '.'], "").as_str() {
        "ml" => "mL",
        "oz" | "floz" => "[foz_us]",
        "mmhg" => "mm[Hg]",
        "kpa" => "kPa",
        "mbar" => "mbar",
        "hpa" => "hPa",
        "cmh2o" | "cmh\u{2082}o" => "cm[H2O]",
        "cm" => "cm",
        "m" => "m",
        "ft" => "[ft_i]",
        "g" => "g",
        "kg" => "kg",
        "lb" | "lbs" => "[lb_av]",
        "mm" => "mm",
        "c" | "\u{b0}c" => "Cel",
        "f" | "\u{b0}f" => "[degF]",
        _ => return None,
    })
}
