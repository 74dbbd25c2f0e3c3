//! Which containers of milk still hold something, kept ready: ten years of empty ones are not read.

use rusqlite::{params, Connection, Transaction};

use super::fields_read::records;
use super::Journal;
use crate::record::{flag, text, Fields, Happened, Kind, MilkEvent};
use crate::trouble::Trouble;

/// The step of the schema that makes room for them.
pub(super) fn table(store: &Transaction<'_>) -> Result<(), Trouble> {
    store.execute_batch(
        "CREATE TABLE milk_event(
            subject TEXT NOT NULL PRIMARY KEY,
            container TEXT NOT NULL,
            empties INTEGER NOT NULL
        ) STRICT, WITHOUT ROWID;
        CREATE INDEX milk_event_by_container ON milk_event(container, empties);",
    )?;
    Ok(())
}

/// Brings an event up to date: whose it is, and whether it takes all that is left.
pub(super) fn keep(store: &Connection, subject: &str, fields: &Fields) -> Result<(), Trouble> {
    let is_one = text(fields, "kind") == Some(Kind::MilkEvent.name()) && !flag(fields, "taken_out");
    match MilkEvent::read(subject, fields).filter(|_| is_one) {
        None => {
            store.prepare_cached("DELETE FROM milk_event WHERE subject = ?1")?.execute(params![subject])?;
        }
        Some(event) => {
            let empties = matches!(event.what, Happened::Taken(_)) && event.taken.is_none();
            store
                .prepare_cached("INSERT OR REPLACE INTO milk_event(subject, container, empties) VALUES (?1, ?2, ?3)")?
                .execute(params![subject, event.container, empties])?;
        }
    }
    Ok(())
}

impl Journal {
    /// The containers of which nobody took all that was left, by id, in order of when their milk was
    /// expressed. One that was emptied bit by bit is among them.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn containers_not_emptied(&self) -> Result<Vec<String>, Trouble> {
        let mut statement = self.connection.prepare_cached(
            "SELECT subject FROM record WHERE kind = ?1 AND taken_out = 0 AND NOT EXISTS
                 (SELECT 1 FROM milk_event WHERE container = record.subject AND empties = 1)
             ORDER BY at, subject",
        )?;
        let found = statement.query_map(params![Kind::Container.name()], |row| row.get(0))?;
        Ok(found.collect::<Result<_, _>>()?)
    }

    /// The fields of those containers, in the same order.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn fields_of_containers_not_emptied(&self) -> Result<Vec<(String, Fields)>, Trouble> {
        let mut statement = self.connection.prepare_cached(
            "SELECT record.subject, field.field, field.value FROM record JOIN field ON field.subject = record.subject
             WHERE kind = ?1 AND taken_out = 0 AND NOT EXISTS
                 (SELECT 1 FROM milk_event WHERE container = record.subject AND empties = 1)
             ORDER BY at, record.subject, field.field",
        )?;
        let found = records(statement.query(params![Kind::Container.name()])?);
        found
    }

    /// The fields of what happened to those containers.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn fields_of_events_of_those(&self) -> Result<Vec<(String, Fields)>, Trouble> {
        let mut statement = self.connection.prepare_cached(
            "SELECT milk_event.subject, field.field, field.value
             FROM record JOIN milk_event ON milk_event.container = record.subject
             JOIN field ON field.subject = milk_event.subject
             WHERE record.kind = ?1 AND record.taken_out = 0 AND NOT EXISTS
                 (SELECT 1 FROM milk_event WHERE container = record.subject AND empties = 1)
             ORDER BY milk_event.subject, field.field",
        )?;
        let found = records(statement.query(params![Kind::Container.name()])?);
        found
    }

    /// What happened to a container, by id.
    ///
    /// # Errors
    /// Where the store can't be read.
    pub fn events_of_container(&self, container: &str) -> Result<Vec<String>, Trouble> {
        let mut statement =
            self.connection.prepare_cached("SELECT subject FROM milk_event WHERE container = ?1 ORDER BY subject")?;
        let found = statement.query_map(params![container], |row| row.get(0))?;
        Ok(found.collect::<Result<_, _>>()?)
    }
}
