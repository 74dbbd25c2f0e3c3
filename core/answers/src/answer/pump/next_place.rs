//! Where the gauge is read next.

use crate::quantity::Level;
use crate::record::{text, whole_number, Fields, GaugeCheck, ReadingPlace, Sides};

/// Readings of a place before the guide goes on to the next.
pub const READINGS_A_SIDE: usize = 3;

/// Where the gauge is read next, and how often it was read there: at the level that was
/// chosen, the side that was chosen first, then the other.
pub fn next_place(check: &GaugeCheck, fields: &Fields) -> (ReadingPlace, usize) {
    let level = whole_number(fields, "next_level").map(Level::new);
    let sides: &[Sides] = match text(fields, "next_side") {
        Some("right") => &[Sides::Right, Sides::Left],
        Some("both") => &[Sides::Both],
        _ => &[Sides::Left, Sides::Right],
    };
    let read = |side: Sides| {
        let place = ReadingPlace { level, side };
        (place, check.readings.iter().filter(|(_, reading)| reading.place == place).count())
    };
    let waits = sides.iter().map(|side| read(*side)).find(|(_, count)| *count < READINGS_A_SIDE);
    let first = sides.first().copied().unwrap_or(Sides::Left);
    waits.unwrap_or_else(|| read(first))
}
