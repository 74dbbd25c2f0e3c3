//! What can be written down.
//!
//! In: a kind of record, a field, and what was typed. Out: the stored value, or
//! a [`Trouble`](crate::trouble::Trouble) that says why not. Nothing here is
//! computed from other facts. Read [`kinds`] first: it is the table of every
//! kind and field, with the words of its [`choices`]; [`field_type`] says what a field takes; [`session`] reads a
//! session's fields as a session.

pub mod ambient;
pub mod amount;
pub mod check;
pub mod choices;
pub mod consent;
pub mod container;
pub mod field_type;
pub mod fixed_point;
pub mod gauge;
pub mod host_defaults;
mod kind;
pub mod kinds;
pub mod mark;
pub mod plan_change;
pub mod plan_part;
pub mod reading;
pub mod removal;
pub mod rhythm;
pub mod row;
pub mod run;
pub mod session;
pub mod settings;
pub mod sizes;
pub mod typed;
mod typed_unit;

pub use amount::Amount;
pub use consent::ConsentScope;
pub use container::{Container, Happened, KeptIn, MilkEvent, Taken};
pub use field_type::FieldType;
pub use fixed_point::{FixedPoint, PointKind, SessionIn};
pub use gauge::{Gauge, GaugeCheck};
pub use host_defaults::HostDefaults;
pub use kind::Kind;
pub use kinds::FieldSpec;
pub use mark::{Mark, MarkKind};
pub use plan_change::{Done as PlanDone, PlanChange};
pub use reading::{Place as ReadingPlace, Reading};
pub use removal::{Answered, Milk, Removal};
pub use rhythm::{Block, Ending, Reminding, Rhythm};
pub use row::Row;
pub use run::Run;
pub use session::{opposite, Dials, Session, Setting, Sides};
pub use settings::Settings;
pub use sizes::Sizes;
pub use typed_unit::{typed_unit, vacuum_unit, DATE_OF};

use serde_json::Value;
use std::collections::BTreeMap;

/// A record's fields by name, as folded from its changes. A field that says
/// nothing is not in it.
pub type Fields = BTreeMap<String, Value>;

/// Prefix of the fields that hold a check's readings.
pub const READINGS: &str = "readings/";

/// Prefix of the fields that hold a session's marks.
pub const MARKS: &str = "marks/";

/// The field that says what a consultant calls a family.
pub const NAME_OF_CASE: &str = "name";

/// The subject that holds the settings.
pub const SETTINGS: &str = "settings";

/// The subject that holds rules that were set to another value.
pub const RULES: &str = "rules";

/// The subject that holds how sessions are to fall over a day.
pub const RHYTHM: &str = "rhythm";

/// The subject that holds the rules by which milk is kept.
pub const KEEPING: &str = "keeping";

/// The text in a field, if it is text.
pub fn text<'a>(fields: &'a Fields, key: &str) -> Option<&'a str> {
    fields.get(key).and_then(Value::as_str)
}

/// Whether a flag is set.
pub fn flag(fields: &Fields, key: &str) -> bool {
    fields.get(key).and_then(Value::as_bool).unwrap_or(false)
}

/// The whole number in a field.
pub fn whole_number(fields: &Fields, key: &str) -> Option<u32> {
    fields.get(key).and_then(Value::as_u64).and_then(|n| u32::try_from(n).ok())
}

/// The length of time in a field.
pub fn span(fields: &Fields, key: &str) -> Option<crate::time::Span> {
    whole_number(fields, key).map(|minutes| crate::time::Span::minutes(i64::from(minutes)))
}

/// The time of day in a field.
pub fn clock_time(fields: &Fields, key: &str) -> Option<crate::time::ClockTime> {
    text(fields, key).and_then(crate::time::parse_clock_time)
}

/// The date in a field.
pub fn date(fields: &Fields, key: &str) -> Option<chrono::NaiveDate> {
    text(fields, key).and_then(|d| chrono::NaiveDate::parse_from_str(d, "%Y-%m-%d").ok())
}

/// The moment in a field.
pub fn moment(fields: &Fields, key: &str) -> Option<crate::time::Moment> {
    fields.get(key).and_then(|v| crate::time::Moment::from_json(v).ok())
}
