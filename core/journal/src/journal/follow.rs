//! After newer zone data the projection is built anew: the days in it follow the wall.

use super::projection;
use crate::time::zone_data;
use crate::trouble::Trouble;
use rusqlite::{Connection, OptionalExtension, TransactionBehavior};

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
