//! The renderer: core's visit sheet, set by the typesetter.

use chrono::{Datelike, Timelike};
use drawwell_core::time::Moment;
use drawwell_sheet::Made;

/// Sets a sheet: a [`drawwell_core::app::SheetRenderer`].
pub(crate) fn set(data: &str, at: &Moment) -> Result<Vec<u8>, String> {
    let wall = at.on_the_wall();
    // Month, day, hour, minute and second fit, and the year of a moment that can be told does.
    let small = |value: u32| u8::try_from(value).unwrap_or(0);
    let made = Made {
        year: wall.year(),
        month: small(wall.month()),
        day: small(wall.day()),
        hour: small(wall.hour()),
        minute: small(wall.minute()),
        second: small(wall.second()),
        offset_minutes: at.offset_seconds() / 60,
    };
    drawwell_sheet::set(data, made).map_err(|why| why.to_string())
}
