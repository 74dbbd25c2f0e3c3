//! After this device's clock was far ahead: what it said then would win over everything that is
//! said without knowing of it, for as long as the clock was ahead. So it is said again, with
//! today's stamp, as changes that replace those.

use rusqlite::{params, Connection};

use super::Stamp;
use crate::limits;
use crate::time::Instant;
use crate::trouble::Trouble;

/// No clock that is right shows less: 2026-01-01.
const SANE: Instant = Instant::from_unix_milliseconds(1_767_225_600_000);

/// What is stamped more than a day ahead of now, and so to be said again: records and fields.
pub(super) fn to_say_again(store: &Connection, now: Instant) -> Result<Vec<(String, String)>, Trouble> {
    if now.since(SANE).in_milliseconds() < 0 {
        return Ok(Vec::new());
    }
    let latest = Stamp::at(now.plus(limits::AHEAD));
    let mut statement = store.prepare_cached(
        "SELECT field.subject, field.field FROM field JOIN device ON device.name = field.device
         JOIN change ON change.row = device.number << 40 | field.device_seq WHERE change.stamp > ?1",
    )?;
    let fields = statement.query_map(params![latest.raw()], |row| Ok((row.get(0)?, row.get(1)?)))?;
    Ok(fields.collect::<Result<_, _>>()?)
}
