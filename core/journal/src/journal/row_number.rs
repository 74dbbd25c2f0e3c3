//! Where a change stands in its table: the number of its device here, and its
//! own number there, in one integer. So a change is found by its name without
//! an index beside the table, and a device's changes lie together in order.

use rusqlite::{params, Connection, OptionalExtension};

use super::Dot;
use crate::trouble::Trouble;

/// Bits for the number of a change within its device.
const SEQUENCE_BITS: u32 = 40;

/// Row of a device's change.
pub(super) const fn row(device_number: i64, sequence: i64) -> i64 {
    device_number << SEQUENCE_BITS | sequence
}

/// The device number a row belongs to, and the number of its change there.
pub(super) const fn parts(row: i64) -> (i64, i64) {
    (row >> SEQUENCE_BITS, row & ((1 << SEQUENCE_BITS) - 1))
}

/// The number of a device that has been heard of here.
pub(super) fn of_device(store: &Connection, name: &str) -> Result<Option<i64>, Trouble> {
    let found = store
        .prepare_cached("SELECT number FROM device WHERE name = ?1")?
        .query_row(params![name], |r| r.get(0))
        .optional()?;
    Ok(found)
}

/// The number of a device; one that was not heard of before gets the next.
pub(super) fn of_any_device(store: &Connection, name: &str) -> Result<i64, Trouble> {
    if let Some(number) = of_device(store, name)? {
        return Ok(number);
    }
    store.prepare_cached("INSERT INTO device(name) VALUES (?1)")?.execute(params![name])?;
    Ok(store.last_insert_rowid())
}

/// The row of a change, where its device has been heard of.
pub(super) fn of(store: &Connection, dot: &Dot) -> Result<Option<i64>, Trouble> {
    Ok(of_device(store, &dot.device)?.map(|number| row(number, dot.sequence)))
}
