//! One column: its name, what it holds, and where a row has it.

use crate::quantity::{AirPressure, Altitude, Length, Mass, Quantity, Speed, Temperature, Unit, Vacuum, Volume};
use crate::record::field_type::MOST_AMOUNT_MILLILITERS;
use crate::record::{FieldSpec, FieldType, Kind};

/// Where a row has the value of a column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum From {
    /// The record's id.
    Id,
    /// The name of one member of the record.
    Member,
    /// A field, as it is.
    Field(&'static str),
    /// The zone of a moment.
    Zone(&'static str),
    /// Whether an amount is known.
    Said(&'static str),
    /// What the record that a field names is called.
    NameOf(&'static str),
    /// How long a session lasted, in minutes.
    Lasted,
    /// The highest pain that was said of a session.
    HighestPain,
}

/// What the cells of a column hold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Holds {
    /// An id or a name; any text.
    Text,
    /// One of these words.
    Words(&'static [&'static str]),
    /// Yes or no.
    Flag,
    /// A whole number between these.
    Whole { least: u32, most: u32 },
    /// A number in a unit (UCUM), between these.
    Number { unit: &'static str, least: f64, most: f64 },
    /// A date.
    Date,
    /// A date and time with its offset (RFC 3339).
    Moment,
    /// A time of day.
    ClockTime,
}

/// A column.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Column {
    /// Its name, with its unit behind.
    pub(super) name: String,
    /// Key of the sentence that names it for a person.
    pub(super) title: String,
    /// What it holds.
    pub(super) holds: Holds,
    /// Where a row has it.
    pub(super) from: From,
    /// What it takes in the record, to read it by.
    pub(super) field_type: FieldType,
    /// Every row has it.
    pub(super) required: bool,
}

/// What is said of an amount.
const SAID: &[&str] = &["known", "unknown", "later"];
/// A day has so many minutes: no session is longer.
const DAY_MINUTES: f64 = 1440.0;

const TEXT: FieldType = FieldType::Text { most: 128 };

impl Column {
    fn new(name: &str, title: String, holds: Holds, from: From, field_type: FieldType) -> Self {
        Self { name: name.to_owned(), title, holds, from, field_type, required: false }
    }

    /// The id of the record, or of the record a row is a part of.
    pub(super) fn id(name: &str) -> Self {
        let title = "csv-id".to_owned();
        Self { required: true, ..Self::new(name, title, Holds::Text, From::Id, TEXT) }
    }

    /// The name of a member.
    pub(super) fn member(name: &str) -> Self {
        let title = "csv-member".to_owned();
        Self { required: true, ..Self::new(name, title, Holds::Text, From::Member, TEXT) }
    }

    /// How long a session lasted.
    pub(super) fn lasted() -> Self {
        let holds = Holds::Number { unit: "min", least: 0.0, most: DAY_MINUTES };
        Self::new("lasted_min", "csv-lasted".to_owned(), holds, From::Lasted, TEXT)
    }

    /// The highest pain of a session.
    pub(super) fn highest_pain() -> Self {
        let holds = Holds::Whole { least: 0, most: 10 };
        Self::new("pain_highest", "csv-pain-highest".to_owned(), holds, From::HighestPain, TEXT)
    }

    /// The columns of a field: a moment also has its zone, an amount what is said of it, a
    /// reference the name of what it refers to.
    pub(super) fn of(spec: &FieldSpec) -> Vec<Self> {
        let key = spec.key;
        let title = format!("field-{}", key.replace('_', "-"));
        let field = |holds: Holds| Self::new(key, title.clone(), holds, From::Field(key), spec.field_type);
        let beside = |end: &str, holds: Holds, from: From| {
            Self::new(&format!("{key}_{end}"), format!("csv-{end}"), holds, from, spec.field_type)
        };
        match spec.field_type {
            FieldType::Moment => {
                vec![field(Holds::Moment), beside("zone", Holds::Text, From::Zone(key))]
            }
            FieldType::Amount => vec![
                measured::<Volume>(field(Holds::Text), 0.0, MOST_AMOUNT_MILLILITERS),
                beside("said", Holds::Words(SAID), From::Said(key)),
            ],
            FieldType::Refers(kind) if kind.field("name").is_some() => {
                vec![field(Holds::Text), beside("name", Holds::Text, From::NameOf(key))]
            }
            FieldType::Volume { least, most } => vec![measured::<Volume>(field(Holds::Text), least, most)],
            FieldType::Vacuum { least, most } => vec![measured::<Vacuum>(field(Holds::Text), least, most)],
            FieldType::Speed { least, most } => vec![measured::<Speed>(field(Holds::Text), least, most)],
            FieldType::AirPressure { least, most } => vec![measured::<AirPressure>(field(Holds::Text), least, most)],
            FieldType::Altitude { least, most } => vec![measured::<Altitude>(field(Holds::Text), least, most)],
            FieldType::Length { least, most } => vec![measured::<Length>(field(Holds::Text), least, most)],
            FieldType::Mass { least, most } => vec![measured::<Mass>(field(Holds::Text), least, most)],
            FieldType::Temperature { least, most } => vec![measured::<Temperature>(field(Holds::Text), least, most)],
            FieldType::Number { least, most } => vec![field(Holds::Number { unit: "1", least, most })],
            FieldType::Whole { least, most } => vec![field(Holds::Whole { least, most })],
            FieldType::Span { least_minutes, most_minutes } => {
                let (least, most) = (f64::from(least_minutes), f64::from(most_minutes));
                let mut column = field(Holds::Number { unit: "min", least, most });
                column.name.push_str("_min");
                vec![column]
            }
            FieldType::Choice(words) => vec![field(Holds::Words(words))],
            FieldType::Flag => vec![field(Holds::Flag)],
            FieldType::Date => vec![field(Holds::Date)],
            FieldType::ClockTime => vec![field(Holds::ClockTime)],
            FieldType::Text { .. }
            | FieldType::Phone
            | FieldType::Zone
            | FieldType::Refers(_)
            | FieldType::Sizes { .. } => {
                vec![field(Holds::Text)]
            }
            // What was found in a file is no cell.
            FieldType::Findings => Vec::new(),
        }
    }

    /// The field of a record that it comes from; none for ids.
    pub(super) fn field(&self) -> Option<&'static str> {
        match self.from {
            From::Field(key) | From::Zone(key) | From::Said(key) | From::NameOf(key) => Some(key),
            From::HighestPain => Some(crate::record::MARKS),
            From::Lasted => Some("ended"),
            From::Id | From::Member => None,
        }
    }

    /// The kind it refers to, where the name of that is in it.
    pub(super) fn names(&self) -> Option<Kind> {
        match (self.from, self.field_type) {
            (From::NameOf(_), FieldType::Refers(kind)) => Some(kind),
            _ => None,
        }
    }
}

fn measured<Q: Quantity>(column: Column, least: f64, most: f64) -> Column {
    let unit = Q::Unit::ALL.first().map_or("", |unit| unit.ucum());
    let name = format!("{}_{}", column.name, ending(unit));
    Column { name, holds: Holds::Number { unit, least, most }, ..column }
}

/// A unit as the end of a name: letters, figures and `_` alone.
fn ending(unit: &str) -> String {
    match unit {
        "/min" => "per_min".to_owned(),
        _ => unit.chars().filter(char::is_ascii_alphanumeric).collect::<String>().to_ascii_lowercase(),
    }
}
