//! The curve by which a session's level is so many mmHg.

use super::kit::gauge_of;
use super::Record;
use crate::answer::pump::levels::{LevelCurve, LevelPull};
use crate::quantity::Level;
use crate::record::gauge::{AtOnce, Connected, SetUp};
use crate::record::{whole_number, GaugeCheck, Kind, Session, Sides};
use crate::time::Instant;
use crate::trouble::Trouble;

/// Checks that a session looks back over for its curve.
const LOOKED_AT: u32 = 12;

/// How alike a check was to a session: at the breast before dead-headed, and as many
/// sides at once.
fn likeness(set_up: &SetUp, sides: Sides) -> u8 {
    let wanted = if sides == Sides::Both { AtOnce::Both } else { AtOnce::One };
    2 * u8::from(set_up.connected == Some(Connected::WithFlange)) + u8::from(set_up.at_once == Some(wanted))
}

/// The curve that held for a session at an instant; none where no check was made
/// with that pump by then.
pub(super) fn curve_of(record: &Record<'_>, session: &Session, at: Instant) -> Result<Option<LevelCurve>, Trouble> {
    let Some(pump) = session.pump.as_deref() else { return Ok(None) };
    let Some((_, fields)) = record.journal.record(pump)? else { return Ok(None) };
    let last = whole_number(&fields, "levels").map(Level::new);
    let mut checks = Vec::new();
    for row in record.journal.naming(Kind::Check, "pump", pump, at, LOOKED_AT)? {
        let (_, fields) = record.record(&row.subject)?;
        checks.push(GaugeCheck::read(&row.subject, &fields));
    }
    // The likest first, and of such the latest; the first that makes a curve holds.
    checks.sort_by_key(|check| std::cmp::Reverse(likeness(&check.set_up, session.sides)));
    for check in checks {
        let Some(gauge) = gauge_of(record, &check)? else { continue };
        if let Some(curve) = LevelCurve::of(&check, &gauge, last, session.sides) {
            return Ok(Some(curve));
        }
    }
    Ok(None)
}

/// What a session's level pulled, by the curve of its time.
///
/// # Errors
/// Where the store can't be read.
pub fn level_in_vacuum(
    record: &Record<'_>,
    session: &Session,
    at: Instant,
) -> Result<impl Fn(Level) -> Option<LevelPull>, Trouble> {
    let curve = curve_of(record, session, at)?;
    Ok(move |level| curve.as_ref().and_then(|curve| curve.at(level)))
}
