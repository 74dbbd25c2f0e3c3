//! Tables, and how an older file becomes a newer one.
//!
//! A released migration is never changed. What a column means is never
//! changed either: a new meaning gets a new column. The projection may be
//! dropped and built anew, since the changes hold everything.

use rusqlite::{Connection, Transaction};

use crate::trouble::{Kind, Trouble};

/// Marks the file as ours: "DrWl".
pub(super) const APPLICATION_ID: i32 = 0x4472_576c;

type Step = fn(&Transaction<'_>) -> Result<(), Trouble>;

/// Each step takes a file from the version of its place to the next.
const STEPS: &[Step] =
    &[truth, projection, supply, kit, secrets, super::built::table, trust, pain, super::milk_events::table];

/// The version this program writes.
pub(super) const VERSION: i32 = STEPS.len() as i32;

fn truth(store: &Transaction<'_>) -> Result<(), Trouble> {
    store.execute_batch(
        "CREATE TABLE device(
            number INTEGER PRIMARY KEY,
            name TEXT NOT NULL UNIQUE
        ) STRICT;
        CREATE TABLE change(
            row INTEGER PRIMARY KEY,
            device TEXT NOT NULL,
            device_seq INTEGER NOT NULL,
            stamp INTEGER NOT NULL,
            subject TEXT NOT NULL,
            field TEXT NOT NULL,
            value TEXT NOT NULL,
            replaces TEXT NOT NULL,
            crc INTEGER NOT NULL
        ) STRICT;
        CREATE TABLE act(
            number INTEGER PRIMARY KEY,
            name TEXT NOT NULL,
            subject TEXT NOT NULL,
            undoes INTEGER NOT NULL,
            undone INTEGER NOT NULL,
            device TEXT NOT NULL,
            first_seq INTEGER NOT NULL,
            last_seq INTEGER NOT NULL
        ) STRICT;
        CREATE TABLE clock(
            only INTEGER PRIMARY KEY CHECK(only = 1),
            device TEXT NOT NULL,
            stamp INTEGER NOT NULL,
            ahead_milliseconds INTEGER NOT NULL
        ) STRICT;",
    )?;
    Ok(())
}

fn projection(store: &Transaction<'_>) -> Result<(), Trouble> {
    store.execute_batch(
        "CREATE TABLE field(
            subject TEXT NOT NULL,
            field TEXT NOT NULL,
            value TEXT NOT NULL,
            device TEXT NOT NULL,
            device_seq INTEGER NOT NULL,
            others TEXT NOT NULL,
            PRIMARY KEY(subject, field)
        ) STRICT, WITHOUT ROWID;
        CREATE TABLE awaited(
            subject TEXT NOT NULL,
            field TEXT NOT NULL,
            device TEXT NOT NULL,
            device_seq INTEGER NOT NULL,
            PRIMARY KEY(subject, field, device, device_seq)
        ) STRICT, WITHOUT ROWID;
        CREATE TABLE record(
            subject TEXT NOT NULL PRIMARY KEY,
            kind TEXT NOT NULL,
            at INTEGER NOT NULL,
            until INTEGER NOT NULL,
            day INTEGER NOT NULL,
            running INTEGER NOT NULL,
            lacks INTEGER NOT NULL,
            taken_out INTEGER NOT NULL
        ) STRICT, WITHOUT ROWID;
        CREATE INDEX record_by_time ON record(kind, taken_out, at);
        CREATE INDEX record_by_day ON record(day, at);
        CREATE INDEX record_running ON record(at) WHERE running = 1;
        CREATE INDEX record_lacking ON record(at) WHERE lacks = 1;
        CREATE TABLE day_rollup(
            day INTEGER PRIMARY KEY,
            sessions INTEGER NOT NULL,
            left_milliliters REAL NOT NULL,
            left_known INTEGER NOT NULL,
            left_unknown INTEGER NOT NULL,
            right_milliliters REAL NOT NULL,
            right_known INTEGER NOT NULL,
            right_unknown INTEGER NOT NULL,
            together_milliliters REAL NOT NULL,
            together_known INTEGER NOT NULL,
            together_unknown INTEGER NOT NULL
        ) STRICT;",
    )?;
    Ok(())
}

fn supply(store: &Transaction<'_>) -> Result<(), Trouble> {
    store.execute_batch(
        "CREATE TABLE removal(
            subject TEXT NOT NULL PRIMARY KEY,
            at INTEGER NOT NULL,
            zone TEXT NOT NULL,
            sides TEXT NOT NULL,
            left_milliliters REAL NOT NULL,
            right_milliliters REAL NOT NULL,
            together_milliliters REAL NOT NULL,
            gap_is_whole INTEGER NOT NULL,
            amount_is_right INTEGER NOT NULL
        ) STRICT, WITHOUT ROWID;
        CREATE INDEX removal_by_time ON removal(at);
        CREATE TABLE day_production(
            day INTEGER PRIMARY KEY,
            milliliters REAL NOT NULL,
            observed REAL NOT NULL,
            made BLOB NOT NULL
        ) STRICT;",
    )?;
    Ok(())
}

fn kit(store: &Transaction<'_>) -> Result<(), Trouble> {
    store.execute_batch(
        "CREATE TABLE run(
            subject TEXT NOT NULL PRIMARY KEY,
            pump TEXT NOT NULL,
            at INTEGER NOT NULL,
            milliseconds INTEGER NOT NULL
        ) STRICT, WITHOUT ROWID;
        CREATE INDEX run_by_pump ON run(pump, at, milliseconds);",
    )?;
    Ok(())
}

fn secrets(store: &Transaction<'_>) -> Result<(), Trouble> {
    store.execute_batch(
        "CREATE TABLE secret(
            name TEXT NOT NULL PRIMARY KEY,
            value TEXT NOT NULL
        ) STRICT, WITHOUT ROWID;",
    )?;
    Ok(())
}

/// What an act took in from elsewhere, and where the file lies.
fn trust(store: &Transaction<'_>) -> Result<(), Trouble> {
    store.execute_batch(
        "CREATE TABLE taken(
            act INTEGER NOT NULL,
            number INTEGER NOT NULL,
            subject TEXT NOT NULL,
            field TEXT NOT NULL,
            before TEXT NOT NULL,
            after TEXT NOT NULL,
            PRIMARY KEY(act, number)
        ) STRICT, WITHOUT ROWID;
        CREATE TABLE place(
            only INTEGER PRIMARY KEY CHECK(only = 1),
            mark TEXT NOT NULL
        ) STRICT;",
    )?;
    Ok(())
}

/// Whether pain was said of a session: the caution line of every screen asks for it. And when a
/// session began: those that overlap are asked about.
fn pain(store: &Transaction<'_>) -> Result<(), Trouble> {
    store.execute_batch(
        "ALTER TABLE record ADD COLUMN pain INTEGER NOT NULL DEFAULT 0;
        ALTER TABLE removal ADD COLUMN began INTEGER NOT NULL DEFAULT -9223372036854775808;",
    )?;
    Ok(())
}

/// The version of a file; zero for a new one. Refuses files that are not ours
/// and files from a newer version, without writing to them.
pub(super) fn version(connection: &Connection) -> Result<i32, Trouble> {
    let version: i32 = connection.query_row("PRAGMA user_version", [], |r| r.get(0))?;
    let owner: i32 = connection.query_row("PRAGMA application_id", [], |r| r.get(0))?;
    let tables: i64 = connection.query_row("SELECT count(*) FROM sqlite_schema", [], |r| r.get(0))?;
    if owner != APPLICATION_ID && (tables > 0 || version != 0) {
        return Err(Trouble::new(Kind::BadInput, "trouble-not-a-record"));
    }
    if version > VERSION {
        return Err(Trouble::new(Kind::Newer, "trouble-newer"));
    }
    Ok(version)
}

/// Brings a file up to date, all steps or none.
pub(super) fn migrate(connection: &mut Connection, from: i32) -> Result<(), Trouble> {
    if from == VERSION {
        return Ok(());
    }
    let store = connection.transaction_with_behavior(rusqlite::TransactionBehavior::Immediate)?;
    for step in STEPS.iter().skip(usize::try_from(from).unwrap_or(0)) {
        step(&store)?;
    }
    // What is derived may have got more columns: it is built once, at the end.
    super::projection::rebuild(&store)?;
    store.pragma_update(None, "user_version", VERSION)?;
    store.pragma_update(None, "application_id", APPLICATION_ID)?;
    store.commit()?;
    Ok(())
}
