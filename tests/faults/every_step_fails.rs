//! Every step of the store failed in turn: the record is unchanged, or changed
//! whole, and goes on.
//!
//! SQLite's progress handler interrupts after the N-th instruction, for every
//! N until the act goes through; the commit hook fails the last step.

use drawwell_core::journal::{Journal, Key};
use drawwell_core::time::{Instant, Span};
use drawwell_core::trouble::Trouble;
use serde_json::json;

const NOW: Instant = Instant::from_unix_milliseconds(1_772_000_000_000);
const YEAR: Span = Span::hours(24 * 365);

fn journal(folder: &tempfile::TempDir, key: Option<&Key>) -> Journal {
    let mut journal = Journal::open_with_key(&folder.path().join("j"), "one", key, NOW).unwrap().journal;
    act(&mut journal, 60).unwrap();
    journal
}

/// The same of a store that is sealed.
fn plain_and_sealed() -> [Option<Key>; 2] {
    [None, Some(Key::make().unwrap())]
}

/// An act that touches everything: a record, its row, a day.
fn act(journal: &mut Journal, milliliters: u32) -> Result<(), Trouble> {
    let at = json!({ "at": "2026-02-25T07:13:20+01:00", "zone": "Europe/Berlin" });
    journal.act("start", "s", NOW, |w| {
        w.set("s", "kind", &json!("session"))?;
        w.set("s", "started", &at)?;
        w.set("s", "ended", &at)?;
        w.set("s", "amount_left", &json!({ "value": milliliters, "unit": "mL" }))?;
        w.set("s", "marks/a", &json!({ "at": "2026-02-25T07:13:20+01:00", "zone": "Europe/Berlin", "does": "letdown" }))
    })
}

fn whole_state(journal: &Journal) -> String {
    format!(
        "{}\n{:?}\n{:?}",
        journal.projection_text().unwrap(),
        journal.changes().unwrap(),
        journal.undoable().unwrap()
    )
}

/// Fails each instruction in turn; how many there were.
fn fail_each(journal: &mut Journal, mut deed: impl FnMut(&mut Journal) -> Result<(), Trouble>) -> u32 {
    let before = whole_state(journal);
    let after = {
        let folder = tempfile::tempdir().unwrap();
        let twin = folder.path().join("twin");
        journal.connection().query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(())).unwrap();
        std::fs::copy(journal.path(), &twin).unwrap();
        // A copy would be noticed, and go on under another name.
        let store = rusqlite::Connection::open(&twin).unwrap();
        if let Some(key) = journal.key() {
            store.pragma_update(None, "key", format!("x'{}'", key.figures())).unwrap();
        }
        store.execute("DELETE FROM place", []).unwrap();
        drop(store);
        let mut twin = Journal::open_with_key(&twin, "one", journal.key(), NOW).unwrap().journal;
        deed(&mut twin).unwrap();
        whole_state(&twin)
    };
    assert_ne!(before, after);
    for n in 1.. {
        let mut left = i64::from(n);
        let handler = move || {
            left -= 1;
            left == 0
        };
        journal.connection_mut().progress_handler(1, Some(handler)).unwrap();
        let outcome = deed(journal);
        journal.connection_mut().progress_handler(0, None::<fn() -> bool>).unwrap();
        let state = whole_state(journal);
        if outcome.is_ok() || state == after {
            // The very last instruction fails after the commit: changed whole.
            assert_eq!(state, after);
            return n;
        }
        assert_eq!(state, before, "failed at instruction {n}");
    }
    0
}

#[test]
fn an_act_is_done_whole_or_not_at_all() {
    for key in plain_and_sealed() {
        let folder = tempfile::tempdir().unwrap();
        let mut journal = journal(&folder, key.as_ref());
        let steps = fail_each(&mut journal, |j| act(j, 75));
        assert!(steps > 100, "{steps} steps were failed");
        let after = journal.projection_text().unwrap();
        assert!(after.contains("75"));
        journal.rebuild().unwrap();
        assert_eq!(journal.projection_text().unwrap(), after);
    }
}

#[test]
fn undo_is_done_whole_or_not_at_all() {
    for key in plain_and_sealed() {
        let folder = tempfile::tempdir().unwrap();
        let mut journal = journal(&folder, key.as_ref());
        act(&mut journal, 75).unwrap();
        let steps = fail_each(&mut journal, |j| j.undo(NOW).map(drop));
        assert!(steps > 100, "{steps} steps were failed");
        assert!(journal.projection_text().unwrap().contains("60"));
    }
}

#[test]
fn a_merge_is_done_whole_or_not_at_all() {
    for key in plain_and_sealed() {
        let other = tempfile::tempdir().unwrap();
        let folder = tempfile::tempdir().unwrap();
        let changes = {
            let mut journal = Journal::open(&other.path().join("j"), "two", NOW).unwrap().journal;
            act(&mut journal, 90).unwrap();
            journal.changes().unwrap()
        };
        let mut journal = journal(&folder, key.as_ref());
        let steps = fail_each(&mut journal, |j| j.merge(&changes, NOW).map(drop));
        assert!(steps > 100, "{steps} steps were failed");
    }
}

#[test]
fn a_commit_that_fails_leaves_everything_as_it_was() {
    for key in plain_and_sealed() {
        let folder = tempfile::tempdir().unwrap();
        let mut journal = journal(&folder, key.as_ref());
        let before = whole_state(&journal);
        journal.connection_mut().commit_hook(Some(|| true)).unwrap();
        assert!(act(&mut journal, 75).is_err());
        journal.connection_mut().commit_hook(None::<fn() -> bool>).unwrap();
        assert_eq!(whole_state(&journal), before);
        act(&mut journal, 75).unwrap();
    }
}

#[test]
fn a_migration_stopped_half_way_can_be_begun_again() {
    let fixture = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-1.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    // The last table the migration makes is there already: it stops at it.
    let in_the_way = |sql: &str| rusqlite::Connection::open(&path).unwrap().execute_batch(sql).unwrap();
    in_the_way("CREATE TABLE day_rollup(in_the_way TEXT)");
    assert_eq!(Journal::open(&path, "one", NOW).unwrap_err().kind, drawwell_core::trouble::Kind::Fault);
    let tables: Vec<String> = {
        let store = rusqlite::Connection::open(&path).unwrap();
        let mut statement = store.prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY 1").unwrap();
        let names = statement.query_map([], |r| r.get(0)).unwrap().collect::<Result<_, _>>().unwrap();
        names
    };
    assert_eq!(tables, ["act", "change", "clock", "day_rollup", "device"], "nothing of it is left");
    in_the_way("DROP TABLE day_rollup");
    let journal = Journal::open(&path, "one", NOW).unwrap().journal;
    assert_eq!(
        journal
            .rollup(drawwell_core::time::LocalDay::on(chrono::NaiveDate::from_ymd_opt(2026, 2, 25).unwrap()))
            .unwrap()
            .sessions
            .get(),
        1
    );
}

#[test]
fn a_migration_from_the_second_schema_stopped_half_way_can_be_begun_again() {
    let fixture = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-2.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    // The last table the migration makes is there already: it stops at it.
    let in_the_way = |sql: &str| rusqlite::Connection::open(&path).unwrap().execute_batch(sql).unwrap();
    let ask =
        |sql: &str| -> i64 { rusqlite::Connection::open(&path).unwrap().query_row(sql, [], |r| r.get(0)).unwrap() };
    in_the_way("CREATE TABLE day_production(in_the_way TEXT)");
    assert_eq!(Journal::open(&path, "one", NOW).unwrap_err().kind, drawwell_core::trouble::Kind::Fault);
    assert_eq!(ask("PRAGMA user_version"), 2, "it still is what it was");
    assert_eq!(ask("SELECT count(*) FROM sqlite_schema WHERE name LIKE 'removal%'"), 0, "nothing of it is left");
    in_the_way("DROP TABLE day_production");
    let journal = Journal::open(&path, "one", NOW).unwrap().journal;
    assert_eq!(journal.removals(Instant::from_unix_milliseconds(0), NOW.plus(YEAR)).unwrap().len(), 2);
    drop(journal);
    assert!(ask("PRAGMA user_version") > 2);
}

#[test]
fn a_migration_from_the_third_schema_stopped_half_way_can_be_begun_again() {
    let fixture = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-3.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let in_the_way = |sql: &str| rusqlite::Connection::open(&path).unwrap().execute_batch(sql).unwrap();
    let ask =
        |sql: &str| -> i64 { rusqlite::Connection::open(&path).unwrap().query_row(sql, [], |r| r.get(0)).unwrap() };
    in_the_way("CREATE TABLE run_by_pump(in_the_way TEXT)");
    assert_eq!(Journal::open(&path, "one", NOW).unwrap_err().kind, drawwell_core::trouble::Kind::Fault);
    assert_eq!(ask("PRAGMA user_version"), 3, "it still is what it was");
    assert_eq!(ask("SELECT count(*) FROM sqlite_schema WHERE name = 'run'"), 0, "nothing of it is left");
    in_the_way("DROP TABLE run_by_pump");
    let journal = Journal::open(&path, "one", NOW).unwrap().journal;
    let all = journal.ran("p-1", Instant::from_unix_milliseconds(0), NOW.plus(YEAR)).unwrap();
    assert_eq!(all.sessions.get(), 3);
    drop(journal);
    assert!(ask("PRAGMA user_version") > 3);
}

#[test]
fn a_migration_from_the_fourth_schema_stopped_half_way_can_be_begun_again() {
    let fixture = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-4.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let in_the_way = |sql: &str| rusqlite::Connection::open(&path).unwrap().execute_batch(sql).unwrap();
    in_the_way("CREATE TABLE secret(in_the_way TEXT)");
    assert_eq!(Journal::open(&path, "one", NOW).unwrap_err().kind, drawwell_core::trouble::Kind::Fault);
    let version = || -> i64 {
        rusqlite::Connection::open(&path).unwrap().query_row("PRAGMA user_version", [], |r| r.get(0)).unwrap()
    };
    assert_eq!(version(), 4, "it still is what it was");
    in_the_way("DROP TABLE secret");
    assert_eq!(Journal::open(&path, "one", NOW).unwrap().journal.secret("opens").unwrap(), None);
    assert!(version() > 4);
}

#[test]
fn a_migration_from_the_seventh_schema_stopped_half_way_can_be_begun_again() {
    let fixture = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-7.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let in_the_way = |sql: &str| rusqlite::Connection::open(&path).unwrap().execute_batch(sql).unwrap();
    in_the_way("ALTER TABLE record ADD COLUMN pain TEXT");
    assert_eq!(Journal::open(&path, "one", NOW).unwrap_err().kind, drawwell_core::trouble::Kind::Fault);
    let version = || -> i64 {
        rusqlite::Connection::open(&path).unwrap().query_row("PRAGMA user_version", [], |r| r.get(0)).unwrap()
    };
    assert_eq!(version(), 7, "it still is what it was");
    in_the_way("ALTER TABLE record DROP COLUMN pain");
    let journal = Journal::open(&path, "one", NOW).unwrap().journal;
    assert_eq!(journal.sessions_with_pain(Instant::from_unix_milliseconds(0), NOW, 50).unwrap().len(), 2);
    assert!(version() > 7);
}

#[test]
fn a_migration_from_the_eighth_schema_stopped_half_way_can_be_begun_again() {
    let fixture = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-8.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let in_the_way = |sql: &str| rusqlite::Connection::open(&path).unwrap().execute_batch(sql).unwrap();
    in_the_way("CREATE TABLE milk_event(in_the_way TEXT)");
    assert_eq!(Journal::open(&path, "one", NOW).unwrap_err().kind, drawwell_core::trouble::Kind::Fault);
    let version = || -> i64 {
        rusqlite::Connection::open(&path).unwrap().query_row("PRAGMA user_version", [], |r| r.get(0)).unwrap()
    };
    assert_eq!(version(), 8, "it still is what it was");
    in_the_way("DROP TABLE milk_event");
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    assert!(version() > 8);
    let fill = |journal: &mut Journal, id: &str, field: &str, value: serde_json::Value| {
        journal.quiet_act(NOW, |w| w.set(id, field, &value)).unwrap();
    };
    fill(&mut journal, "b", "kind", serde_json::json!("container"));
    assert_eq!(journal.containers_not_emptied().unwrap(), ["b"]);
    let at = serde_json::json!({ "at": "2026-08-11T09:00:00.000+02:00", "zone": "Europe/Berlin" });
    for (field, value) in
        [("kind", "milk_event".into()), ("at", at), ("container", "b".into()), ("happened", "given".into())]
    {
        fill(&mut journal, "e", field, value);
    }
    assert_eq!(journal.containers_not_emptied().unwrap(), Vec::<String>::new(), "all that was left was given");
    fill(&mut journal, "e", "taken", serde_json::json!({ "value": 10, "unit": "mL" }));
    assert_eq!(journal.containers_not_emptied().unwrap(), ["b"], "some of it was");
    fill(&mut journal, "e", "taken", serde_json::Value::Null);
    fill(&mut journal, "e", "taken_out", true.into());
    assert_eq!(journal.containers_not_emptied().unwrap(), ["b"], "what was taken out of the record gives nothing");
}

#[test]
fn a_migration_from_the_fifth_schema_stopped_half_way_can_be_begun_again() {
    let fixture = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-5.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let in_the_way = |sql: &str| rusqlite::Connection::open(&path).unwrap().execute_batch(sql).unwrap();
    in_the_way("CREATE TABLE built(in_the_way TEXT)");
    assert_eq!(Journal::open(&path, "one", NOW).unwrap_err().kind, drawwell_core::trouble::Kind::Fault);
    let version = || -> i64 {
        rusqlite::Connection::open(&path).unwrap().query_row("PRAGMA user_version", [], |r| r.get(0)).unwrap()
    };
    assert_eq!(version(), 5, "it still is what it was");
    in_the_way("DROP TABLE built");
    let journal = Journal::open(&path, "one", NOW).unwrap().journal;
    assert_eq!(journal.undoable().unwrap().unwrap().name, "enter");
    assert!(version() > 5);
}
