//! Only who said yes is in it, and only for as long.

use std::collections::BTreeSet;
use std::fs;

use drawwell_core::time::Span;
use drawwell_network::invented;
use drawwell_network::table::{Cell, TABLES};
use drawwell_network::take_in::{self, TakeIn};

use crate::shared::{key, pseudonym, store_in, take, Network};

fn families(network: &Network) -> BTreeSet<String> {
    network.rows("families").iter().filter_map(|row| row[0].text().map(str::to_owned)).collect()
}

#[test]
fn in_it_are_those_who_said_yes_and_nobody_else() {
    let network = Network::shared();
    let yes: BTreeSet<String> = network.counted().map(pseudonym).collect();
    assert!(yes.len() > 60 && yes.len() < network.truth.len(), "some of each: {}", yes.len());
    assert_eq!(families(network), yes);
    for table in TABLES {
        for row in network.rows(table.name) {
            assert!(yes.contains(row[0].text().unwrap()), "a row of {} is of nobody who said yes", table.name);
        }
    }
}

/// Names, dates, zones and notes of records never reach a store, whatever its bytes are.
#[test]
fn no_name_date_or_zone_stands_in_a_table() {
    let network = Network::shared();
    for table in TABLES {
        for row in network.rows(table.name) {
            for (cell, column) in row.iter().zip(table.columns) {
                let Some(text) = cell.text() else { continue };
                let bad = text.contains("heron") || text.contains("Europe") || text.contains("2026");
                assert!(!bad, "{}.{}: {text}", table.name, column.name);
                let word = text.chars().all(|c| c.is_ascii_alphanumeric() || matches!(c, '_' | '-' | ' '));
                assert!(word && text.len() <= 40, "{}.{}: {text}", table.name, column.name);
            }
        }
    }
}

#[test]
fn what_is_not_known_says_why_and_what_is_known_does_not() {
    let network = Network::shared();
    let mut lacked = 0;
    for table in TABLES {
        let at = |name: &str| table.columns.iter().position(|column| column.name == name);
        let rows = network.rows(table.name);
        for (place, column) in table.columns.iter().enumerate() {
            let Some(why) = at(&format!("{}_why", column.name)) else { continue };
            for row in &rows {
                assert_eq!(row[place] == Cell::Null, row[why] != Cell::Null, "{}.{}", table.name, column.name);
                lacked += usize::from(row[place] == Cell::Null);
            }
        }
    }
    assert!(lacked > 100);
}

#[test]
fn the_same_files_again_are_not_worked_out_again() {
    let folder = tempfile::tempdir().unwrap();
    let truth = invented::write(&folder.path().join("desks"), 7, 8).unwrap();
    let store = store_in(&folder.path().join("store"), 4);
    let desks: Vec<_> =
        truth.iter().map(|t| folder.path().join("desks").join(&t.site)).collect::<BTreeSet<_>>().into_iter().collect();
    let first = take(&store, "one", &desks);
    let held: Vec<_> = (0..4).map(|bucket| store.read(bucket).unwrap()).collect();
    let again = take(&store, "one", &desks);
    assert_eq!(again.unchanged, first.counted);
    assert_eq!(again.counted, 0);
    assert_eq!(held, (0..4).map(|bucket| store.read(bucket).unwrap()).collect::<Vec<_>>());
}

/// The family is gone from every table, and a copy that does not know of it brings nothing back.
#[test]
fn a_yes_taken_back_removes_every_row_and_no_older_copy_brings_them_back() {
    let folder = tempfile::tempdir().unwrap();
    let desk = folder.path().join("desk");
    fs::create_dir_all(&desk).unwrap();
    let (truth, record) = (0..).map(|number| invented::family(3, number)).find(|(t, _)| t.consent == "yes").unwrap();
    let file = desk.join(format!("{}.jsonl", truth.family));
    fs::write(&file, &record).unwrap();
    let store = store_in(&folder.path().join("store"), 4);
    assert_eq!(take(&store, "one", std::slice::from_ref(&file)).counted, 1);
    let name = pseudonym(&truth);
    assert!(store.prove_gone(&name).is_err(), "it is there, so that the proof can fail");

    let at = r#"{"at":"2026-08-31T10:00:00+02:00","zone":"Europe/Berlin"}"#;
    let withdrawn =
        record.replace(r#""consent_scope":"network""#, &format!(r#""consent_scope":"network","withdrawn":{at}"#));
    assert_ne!(withdrawn, record);
    fs::write(&file, &withdrawn).unwrap();
    let summary = take(&store, "one", std::slice::from_ref(&file));
    assert_eq!((summary.withdrawn, summary.counted), (1, 0));
    store.prove_gone(&name).unwrap();

    fs::write(&file, &record).unwrap();
    let summary = take(&store, "another", std::slice::from_ref(&file));
    assert_eq!((summary.withdrawn, summary.counted), (1, 0), "an older copy from another desk");
    store.prove_gone(&name).unwrap();

    let later = r#"{"at":"2026-08-31T12:00:00+02:00","zone":"Europe/Berlin"}"#;
    let anew =
        format!("{withdrawn}{{\"fact\":\"consent\",\"id\":\"again\",\"at\":{later},\"consent_scope\":\"network\"}}\n");
    fs::write(&file, anew).unwrap();
    assert_eq!(take(&store, "one", &[file]).counted, 1, "a later yes counts");
}

#[test]
fn a_yes_that_ends_tomorrow_is_gone_the_day_after() {
    let folder = tempfile::tempdir().unwrap();
    let (truth, record) = (0..).map(|number| invented::family(5, number)).find(|(t, _)| t.consent == "yes").unwrap();
    let file = folder.path().join(format!("{}.jsonl", truth.family));
    // The present is the first of September, in Berlin.
    fs::write(&file, record.replace("2027-08-31", "2026-09-02")).unwrap();
    let store = store_in(&folder.path().join("store"), 4);
    assert_eq!(take(&store, "one", &[file]).counted, 1);
    let in_days = |days: i64| take_in::today(invented::present().plus(Span::hours(24 * days)));
    assert_eq!(take_in::forget_ended(&store, in_days(2)).unwrap(), 0, "on its last day it holds");
    assert_eq!(take_in::forget_ended(&store, in_days(3)).unwrap(), 1);
    store.prove_gone(&pseudonym(&truth)).unwrap();
}

#[test]
fn a_yes_to_the_network_is_none_to_research() {
    let folder = tempfile::tempdir().unwrap();
    let (truth, record) = (0..).map(|number| invented::family(5, number)).find(|(t, _)| t.consent == "yes").unwrap();
    let file = folder.path().join(format!("{}.jsonl", truth.family));
    fs::write(&file, &record).unwrap();
    let objects = drawwell_network::store::objects::Objects::in_folder(&folder.path().join("store")).unwrap();
    let store = drawwell_network::store::Store::create(objects, &key(), "research", 4).unwrap();
    let by = TakeIn { key: &key(), site: "one", now: invented::present() };
    let taken = take_in::run(&store, by, std::slice::from_ref(&file), &|_, _| ()).unwrap();
    assert_eq!((taken.counted, taken.no_consent), (0, 1));
    fs::write(&file, record.replace(r#""consent_scope":"network""#, r#""consent_scope":"research""#)).unwrap();
    assert_eq!(take_in::run(&store, by, &[file], &|_, _| ()).unwrap().counted, 1);
}

/// Damage is a row, never a stop; once the file can be read the row goes.
#[test]
fn a_file_that_can_not_be_read_is_a_row_in_refused() {
    let folder = tempfile::tempdir().unwrap();
    let desk = folder.path().join("desk");
    fs::create_dir_all(&desk).unwrap();
    let (_, record) = (0..).map(|number| invented::family(5, number)).find(|(t, _)| t.consent == "yes").unwrap();
    fs::write(desk.join("whole.jsonl"), &record).unwrap();
    fs::write(desk.join("damaged.jsonl"), b"%PDF-1.7 a page").unwrap();
    fs::write(desk.join("odd.drawwell"), [b"SQLite format 3\0".as_slice(), &[7; 5000]].concat()).unwrap();
    let store = store_in(&folder.path().join("store"), 1);
    let summary = take(&store, "one", std::slice::from_ref(&desk));
    assert_eq!((summary.counted, summary.refused), (1, 2));
    let refused = store.read(0).unwrap().rows.remove("refused").unwrap();
    assert_eq!(refused.len(), 2);
    assert!(refused.iter().all(|row| row[1] == Cell::from("one") && row[2].text().is_some()));
    fs::write(desk.join("damaged.jsonl"), &record).unwrap();
    assert_eq!(take(&store, "one", &[desk]).refused, 1);
    assert_eq!(store.read(0).unwrap().rows["refused"].len(), 1);
}

/// Of one family at two desks one is counted, whichever comes first, and it is the later copy.
#[test]
fn one_family_from_two_desks_is_one_family() {
    let (truth, record) = (0..).map(|number| invented::family(9, number)).find(|(t, _)| t.consent == "yes").unwrap();
    let last = record.lines().rfind(|line| line.contains(r#""fact":"session""#)).unwrap();
    let older = record.replace(&format!("{last}\n"), "");
    for order in [[&older, &record], [&record, &older]] {
        let folder = tempfile::tempdir().unwrap();
        let store = store_in(&folder.path().join("store"), 1);
        for (site, copy) in ["one", "two"].into_iter().zip(order) {
            let desk = folder.path().join(site);
            fs::create_dir_all(&desk).unwrap();
            fs::write(desk.join(format!("{}.jsonl", truth.family)), copy).unwrap();
            take(&store, site, &[desk]);
        }
        let held = store.read(0).unwrap();
        assert_eq!(held.rows["families"].len(), 1);
        let sessions = record.lines().filter(|line| line.contains(r#""fact":"session""#)).count();
        assert_eq!(held.rows["sessions"].len(), sessions);
    }
}

/// A clock in the year 2200: nothing later than the present is taken for real.
#[test]
fn a_family_whose_clock_was_in_2200_is_counted_up_to_the_present() {
    let folder = tempfile::tempdir().unwrap();
    let (truth, record) = (0..).map(|number| invented::family(9, number)).find(|(t, _)| t.consent == "yes").unwrap();
    let far = r#"{"fact":"session","id":"far","started":{"at":"2200-01-01T10:00:00+01:00","zone":"Europe/Berlin"},"ended":{"at":"2200-01-01T10:15:00+01:00","zone":"Europe/Berlin"},"amount_left":{"value":500,"unit":"mL"}}"#;
    let file = folder.path().join(format!("{}.jsonl", truth.family));
    fs::write(&file, format!("{record}{far}\n")).unwrap();
    let store = store_in(&folder.path().join("store"), 1);
    assert_eq!(take(&store, "one", &[file]).counted, 1);
    let held = store.read(0).unwrap();
    let sessions = record.lines().filter(|line| line.contains(r#""fact":"session""#)).count();
    assert_eq!(held.rows["sessions"].len(), sessions);
    assert!(held.rows["days"].len() < 100);
}
