//! How the next session would be done.

use super::Record;
use crate::record::{Kind, Sides};
use crate::trouble::Trouble;

/// How the next session would be done.
pub(crate) struct SetUp {
    pub(crate) method: String,
    pub(crate) sides: Sides,
    pub(crate) pump: Option<String>,
}

impl SetUp {
    /// As chosen; else as it was last time; else an electric pump on both sides.
    pub(crate) fn next(record: &Record<'_>) -> Result<Self, Trouble> {
        let last = match record.journal.latest_sessions(record.now, 1)?.first() {
            Some(row) => Some(record.session(&row.subject)?),
            None => None,
        };
        let method = record
            .settings
            .next_method
            .clone()
            .or_else(|| last.as_ref().and_then(|s| s.method.clone()))
            .unwrap_or_else(|| "electric_pump".to_owned());
        let sides = record.settings.next_sides.or_else(|| last.as_ref().map(|s| s.sides)).unwrap_or(Sides::Both);
        let pumps = record.journal.of_kind(Kind::Pump)?;
        let there = |id: &String| pumps.iter().any(|known| known.subject == *id);
        let pump = record
            .settings
            .next_pump
            .clone()
            .filter(there)
            .or_else(|| last.and_then(|s| s.pump).filter(there))
            .or_else(|| pumps.first().map(|first| first.subject.clone()));
        let pump = pump.filter(|_| method.ends_with("_pump"));
        Ok(Self { method, sides, pump })
    }
}
