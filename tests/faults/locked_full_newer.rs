//! A journal that can't be written, or may not be.

use std::path::Path;

use drawwell_core::answer::supply::Calendar;
use drawwell_core::gather::{days, Record};
use drawwell_core::journal::Journal;
use drawwell_core::quantity::{ProductionUnit, Quantity};
use drawwell_core::time::{DayStart, Instant, LocalDay, Span, Zone};
use drawwell_core::trouble::{Kind, Trouble};
use rusqlite::Connection;
use serde_json::json;

const NOW: Instant = Instant::from_unix_milliseconds(1_772_000_000_000);

fn note(journal: &mut Journal, id: &str, text: &str) -> Result<(), Trouble> {
    journal.act("add", id, NOW, |w| {
        w.set(id, "kind", &json!("note"))?;
        w.set(id, "text", &json!(text))
    })
}

fn with_a_note(path: &Path) {
    note(&mut Journal::open(path, "one", NOW).unwrap().journal, "n", "kept").unwrap();
}

fn text(journal: &Journal) -> String {
    journal.record("n").unwrap().unwrap().1["text"].to_string()
}

#[test]
fn locked_by_another_process_it_is_busy_and_then_goes_on() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    with_a_note(&path);
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    let other = Connection::open(&path).unwrap();
    other.execute_batch("BEGIN IMMEDIATE").unwrap();
    let trouble = note(&mut journal, "n", "lost?").unwrap_err();
    assert_eq!((trouble.kind, trouble.key), (Kind::Busy, "trouble-busy"));
    assert_eq!(text(&journal), "\"kept\"");
    other.execute_batch("ROLLBACK").unwrap();
    note(&mut journal, "n", "written").unwrap();
}

#[test]
fn on_a_full_disk_nothing_is_lost_and_nothing_half_written() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    with_a_note(&path);
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    let pages: i64 = journal.connection().query_row("PRAGMA page_count", [], |r| r.get(0)).unwrap();
    journal.connection().query_row(&format!("PRAGMA max_page_count = {pages}"), [], |_| Ok(())).unwrap();
    let mut whole = journal.projection_text().unwrap();
    let (refused, trouble) = (0..200)
        .find_map(|i| match note(&mut journal, &format!("m{i}"), &"x".repeat(3000)) {
            Err(trouble) => Some((i, trouble)),
            Ok(()) => {
                whole = journal.projection_text().unwrap();
                None
            }
        })
        .unwrap();
    assert_eq!((trouble.kind, trouble.key), (Kind::Full, "trouble-full"));
    assert_eq!(journal.projection_text().unwrap(), whole, "note {refused} is not there by half");
    assert_eq!(text(&journal), "\"kept\"");
    journal.connection().query_row("PRAGMA max_page_count = 100000", [], |_| Ok(())).unwrap();
    note(&mut journal, "n", "room again").unwrap();
    let whole = journal.projection_text().unwrap();
    journal.rebuild().unwrap();
    assert_eq!(journal.projection_text().unwrap(), whole);
}

#[test]
fn read_only_is_told_as_such() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    with_a_note(&path);
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    journal.connection().pragma_update(None, "query_only", true).unwrap();
    let trouble = note(&mut journal, "n", "x").unwrap_err();
    assert_eq!((trouble.kind, trouble.key), (Kind::ReadOnly, "trouble-read-only"));
    assert_eq!(text(&journal), "\"kept\"");
}

#[test]
fn a_folder_that_is_not_there_is_told_and_nothing_is_made() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("nowhere").join("j");
    let trouble = Journal::open(&path, "one", NOW).unwrap_err();
    assert_eq!((trouble.kind, trouble.key), (Kind::Missing, "trouble-cannot-open"));
    assert!(!path.exists());
}

#[test]
fn a_newer_file_is_refused_and_not_a_byte_of_it_changes() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    with_a_note(&path);
    Connection::open(&path).unwrap().pragma_update(None, "user_version", 99).unwrap();
    let before = std::fs::read(&path).unwrap();
    let trouble = Journal::open(&path, "one", NOW).unwrap_err();
    assert_eq!(trouble.kind, Kind::Newer);
    assert_eq!(std::fs::read(&path).unwrap(), before);
}

#[test]
fn a_file_of_another_program_is_refused_and_not_a_byte_of_it_changes() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    Connection::open(&path).unwrap().execute_batch("CREATE TABLE recipe(name TEXT)").unwrap();
    let before = std::fs::read(&path).unwrap();
    let trouble = Journal::open(&path, "one", NOW).unwrap_err();
    assert_eq!((trouble.kind, trouble.key), (Kind::BadInput, "trouble-not-a-record"));
    assert_eq!(std::fs::read(&path).unwrap(), before);
}

#[test]
fn a_file_of_the_first_schema_is_brought_up_to_date_and_says_the_same() {
    let fixture = Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-1.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let journal = Journal::open(&path, "one", NOW).unwrap().journal;
    let day = LocalDay::on(chrono::NaiveDate::from_ymd_opt(2026, 2, 25).unwrap());
    let rollup = journal.rollup(day).unwrap();
    assert_eq!((rollup.sessions.get(), rollup.left.known.get(), rollup.right.unknown.get()), (1, 1, 1));
    assert_eq!(text(&journal), "\"from the first schema\"");
    assert_eq!(journal.undoable().unwrap().unwrap().name, "enter");
}

#[test]
fn a_file_of_the_second_schema_gets_its_removals_and_says_the_same() {
    let fixture = Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-2.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let journal = Journal::open(&path, "one", NOW).unwrap().journal;
    let day = LocalDay::on(chrono::NaiveDate::from_ymd_opt(2026, 2, 25).unwrap());
    assert_eq!(journal.rollup(day).unwrap().sessions.get(), 2);
    let all = journal.removals(Instant::from_unix_milliseconds(0), NOW.plus(Span::hours(24 * 365))).unwrap();
    let sessions: Vec<_> = all.iter().map(|r| r.session.as_str()).collect();
    assert_eq!(sessions, ["s-1", "s-2"]);
    let calendar = Calendar { start: DayStart::MIDNIGHT, zone: Zone::named("Europe/Berlin").unwrap() };
    let made = days::days(&Record::new(&journal, NOW, calendar.zone).unwrap(), day, day, calendar).unwrap();
    // 66 mL over the three hours between the two.
    let hourly = made[0].production().unwrap().in_unit(ProductionUnit::MilliliterPerHour);
    assert!((hourly - 22.0).abs() < 1e-3, "{hourly}");
    assert_eq!(journal.undoable().unwrap().unwrap().name, "bring-in");
}

#[test]
fn a_file_of_the_third_schema_gets_how_long_its_pump_ran_and_says_the_same() {
    let fixture = Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-3.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let journal = Journal::open(&path, "one", NOW).unwrap().journal;
    let ran = journal.ran("p-1", Instant::from_unix_milliseconds(0), NOW.plus(Span::hours(24 * 365))).unwrap();
    // 20 and 25 minutes, and one session of which nobody knows when it ended.
    assert_eq!((ran.span, ran.sessions.get(), ran.of_unknown_length.get()), (Span::minutes(45), 3, 1));
    assert_eq!(journal.removals(Instant::from_unix_milliseconds(0), NOW.plus(Span::hours(24 * 365))).unwrap().len(), 3);
    assert_eq!(journal.undoable().unwrap().unwrap().name, "bring-in");
}

#[test]
fn a_file_of_the_fourth_schema_gets_a_place_for_keys_that_stay_here() {
    let fixture = Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-4.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    assert_eq!(journal.undoable().unwrap().unwrap().name, "bring-in");
    assert_eq!(journal.secret("opens").unwrap(), None);
    journal.keep_secrets(&[("opens", "first")]).unwrap();
    journal.keep_secrets(&[("opens", "second")]).unwrap();
    assert_eq!(journal.secret("opens").unwrap().unwrap(), "first", "a key that was handed out goes on opening");
    assert!(!journal.changes().unwrap().iter().any(|c| c.value.contains("first")), "it is no change");
}

#[test]
fn a_file_of_the_seventh_schema_gets_which_sessions_hurt_and_says_the_same() {
    let fixture = Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/schema-7.drawwell");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    std::fs::copy(&fixture, &path).unwrap();
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    let hurt = |journal: &Journal| -> Vec<String> {
        let rows = journal.sessions_with_pain(Instant::from_unix_milliseconds(0), NOW.plus(Span::hours(24)), 50);
        rows.unwrap().into_iter().map(|row| row.subject).collect()
    };
    // One said in a mark, one in a field of its own, one of which nothing was said.
    assert_eq!(hurt(&journal), ["s-1", "s-3"]);
    let set = |journal: &mut Journal, field: &str, value: serde_json::Value| {
        journal.act("enter", "s-3", NOW, |w| w.set("s-3", field, &value)).unwrap();
    };
    set(&mut journal, "pain_left_letdown", serde_json::Value::Null);
    assert_eq!(hurt(&journal), ["s-1"]);
    set(&mut journal, "marks/b", json!({ "at": "2026-02-25T06:05:00+01:00", "zone": "Europe/Berlin", "does": "pain" }));
    assert_eq!(hurt(&journal), ["s-1", "s-3"]);
    let kept = journal.projection_text().unwrap();
    journal.rebuild().unwrap();
    assert_eq!(journal.projection_text().unwrap(), kept);
    journal.undo(NOW).unwrap();
    assert_eq!(hurt(&journal), ["s-1"]);
    // While it runs it is none of them; once it has ended it is.
    let at = |time: &str| json!({ "at": format!("2026-02-25T{time}:00+01:00"), "zone": "Europe/Berlin" });
    journal
        .act("start", "s-4", NOW, |w| {
            w.set("s-4", "kind", &json!("session"))?;
            w.set("s-4", "started", &at("07:00"))?;
            w.set("s-4", "marks/a", &json!({ "at": at("07:01")["at"], "zone": "Europe/Berlin", "does": "pain" }))
        })
        .unwrap();
    assert_eq!(hurt(&journal), ["s-1"]);
    journal.act("finish", "s-4", NOW, |w| w.set("s-4", "ended", &at("07:20"))).unwrap();
    assert_eq!(hurt(&journal), ["s-1", "s-4"]);
    let kept = journal.projection_text().unwrap();
    journal.rebuild().unwrap();
    assert_eq!(journal.projection_text().unwrap(), kept);
}

/// A key that is lost opens nothing any more: it is salvaged with the rest.
#[test]
fn keys_are_salvaged_from_a_damaged_file_or_its_backup() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    with_a_note(&path);
    let mut journal = Journal::open(&path, "one", NOW).unwrap().journal;
    journal.keep_secrets(&[("opens", "a key")]).unwrap();
    journal.back_up(NOW).unwrap().unwrap();
    drop(journal);
    for ending in ["-wal", "-shm"] {
        std::fs::remove_file(format!("{}{ending}", path.display())).ok();
    }
    std::fs::write(&path, vec![7_u8; 5000]).unwrap();
    let opened = Journal::open(&path, "one", NOW).unwrap();
    assert!(opened.salvaged.is_some());
    assert_eq!(opened.journal.secret("opens").unwrap().unwrap(), "a key");
}

#[test]
fn a_device_that_takes_over_a_file_writes_under_its_own_name() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("j");
    with_a_note(&path);
    let mut journal = Journal::open(&path, "two", NOW).unwrap().journal;
    note(&mut journal, "n", "from two").unwrap();
    let devices: Vec<String> = journal.changes().unwrap().into_iter().map(|c| c.dot.device).collect();
    assert_eq!(devices, ["one", "one", "two"]);
}
