//! A field, and what many kinds take alike.

use crate::record::Takes;

/// A field: its name, what it takes, and the group it is shown in.
#[derive(Debug, Clone, Copy)]
pub struct Spec {
    /// Stable name.
    pub key: &'static str,
    /// What it takes.
    pub takes: Takes,
    /// The group of the form it stands in; `""` is not shown.
    pub group: &'static str,
}

pub(super) const fn spec(key: &'static str, takes: Takes, group: &'static str) -> Spec {
    Spec { key, takes, group }
}

pub(super) const NOTE: Takes = Takes::Text { most: 4000 };

pub(super) const NAME: Takes = Takes::Text { most: 80 };

/// A public key as text: an age recipient, or a minisign key.
pub(super) const KEY: Takes = Takes::Text { most: 200 };

pub(super) const PAIN: Takes = Takes::Whole { least: 0, most: 10 };

pub(super) const VACUUM: Takes = Takes::Vacuum { least: 0.0, most: 760.0 };

pub(super) const SPEED: Takes = Takes::Speed { least: 1.0, most: 240.0 };

pub(super) const LEVEL: Takes = Takes::Whole { least: 0, most: 99 };

pub(super) const CHILD_MASS: Takes = Takes::Mass { least: 200.0, most: 30_000.0 };

pub(super) const fn span(key: &'static str, least_minutes: u32, most_minutes: u32, group: &'static str) -> Spec {
    spec(key, Takes::Span { least_minutes, most_minutes }, group)
}
