//! A field, and what many kinds take alike.

use crate::record::FieldType;

/// A field: its name, what it takes, and the group it is shown in.
#[derive(Debug, Clone, Copy)]
pub struct FieldSpec {
    /// Stable name.
    pub key: &'static str,
    /// What it takes.
    pub field_type: FieldType,
    /// The group of the form it stands in; `""` is not shown.
    pub group: &'static str,
}

pub(super) const fn spec(key: &'static str, field_type: FieldType, group: &'static str) -> FieldSpec {
    FieldSpec { key, field_type, group }
}

pub(super) const NOTE: FieldType = FieldType::Text { most: 4000 };

pub(super) const NAME: FieldType = FieldType::Text { most: 80 };

/// A public key as text: an age recipient, or a minisign key.
pub(super) const KEY: FieldType = FieldType::Text { most: 200 };

pub(super) const PAIN: FieldType = FieldType::Whole { least: 0, most: 10 };

pub(super) const VACUUM: FieldType = FieldType::Vacuum { least: 0.0, most: 760.0 };

pub(super) const SPEED: FieldType = FieldType::Speed { least: 1.0, most: 240.0 };

pub(super) const LEVEL: FieldType = FieldType::Whole { least: 0, most: 99 };

pub(super) const CHILD_MASS: FieldType = FieldType::Mass { least: 200.0, most: 30_000.0 };

pub(super) const fn span(key: &'static str, least_minutes: u32, most_minutes: u32, group: &'static str) -> FieldSpec {
    spec(key, FieldType::Span { least_minutes, most_minutes }, group)
}
