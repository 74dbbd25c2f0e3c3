//! By which zone data the projection was built: the days in it follow the wall, and what was
//! kept under older data stands on the wall of the newer.

use rusqlite::{params, Connection, Transaction};

use crate::time::zone_data;
use crate::trouble::Trouble;

/// The step of the schema that makes room for it.
pub(super) fn table(store: &Transaction<'_>) -> Result<(), Trouble> {
    store.execute_batch(
        "CREATE TABLE built(
            only INTEGER PRIMARY KEY CHECK(only = 1),
            zone_data TEXT NOT NULL
        ) STRICT;",
    )?;
    Ok(())
}

/// Says that the projection is by the data of today.
pub(super) fn by_todays_data(store: &Connection) -> Result<(), Trouble> {
    store.execute("INSERT OR REPLACE INTO built(only, zone_data) VALUES (1, ?1)", params![zone_data()])?;
    Ok(())
}
