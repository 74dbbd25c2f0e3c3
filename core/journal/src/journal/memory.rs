//! A store in memory: nothing of it is ever on the disk.

use rusqlite::Connection;

use crate::trouble::Trouble;

/// A store that lies nowhere.
pub(super) fn in_memory() -> Result<Connection, Trouble> {
    let connection = Connection::open_in_memory()?;
    connection.set_prepared_statement_cache_capacity(64);
    Ok(connection)
}
