//! By which zone data the projection was built: the days in it follow the wall, and what was
//! kept under older data stands on the wall of the newer.

use rusqlite::{params, Connection, OptionalExtension, Transaction, TransactionBehavior};

use super::projection;
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

/// Builds the projection anew where it is by other data than today's.
pub(super) fn follow_the_data(connection: &mut Connection) -> Result<(), Trouble> {
    let by: Option<String> = connection.query_row("SELECT zone_data FROM built", [], |row| row.get(0)).optional()?;
    if by.as_deref() == Some(zone_data()) {
        return Ok(());
    }
    let store = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
    projection::rebuild(&store)?;
    store.commit()?;
    Ok(())
}
