//! Taking in is killed at any moment: what is read is what was there before, or after.

use std::fs;
use std::process::{Command, Stdio};
use std::thread;
use std::time::Instant;

use drawwell_network::invented::{self, Dice};
use drawwell_network::report::engine::Engine;
use drawwell_network::store::Store;
use drawwell_network::table::{Cell, Table};

use crate::shared::{store_in, take};

/// Kills that strike a writer at work, in one run of the tests.
const KILLS: usize = 12;
/// And tries until so many did.
const TRIES: usize = 100;

#[test]
fn a_killed_writer_leaves_each_bucket_as_before_or_after() {
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name);
    fs::create_dir_all(at("desk")).unwrap();
    fs::write(at("key"), "5a".repeat(32)).unwrap();
    store_in(&at("store"), 4);
    let truth = (0..).map(|number| invented::family(31, number)).filter(|(t, _)| t.consent == "yes" && t.followed < 16);
    let families: Vec<_> = truth.take(4).collect();
    let columns = Table::named("families").unwrap().columns;
    let says_sessions = columns.iter().position(|column| column.name == "sessions").unwrap();
    let mut dice = Dice::new(4);
    let mut killed = 0;
    // The first writer is let be: how long one takes here is how late one may be killed.
    let mut whole = None;
    for round in 0..TRIES {
        if killed == KILLS {
            break;
        }
        // Each round every record says another number of sessions.
        for (truth, record) in &families {
            let dropped: Vec<String> = (0..round % 5).map(|number| format!(r#""id":"session-{number}""#)).collect();
            let kept = record.lines().filter(|line| !dropped.iter().any(|dropped| line.contains(dropped)));
            let text: String = kept.flat_map(|line| [line, "\n"]).collect();
            fs::write(at("desk").join(format!("{}.jsonl", truth.family)), text).unwrap();
        }
        let mut writer = Command::new(env!("CARGO_BIN_EXE_drawwell-network"))
            .args(["take-in", "--site", "one", "--at", &invented::present().unix_milliseconds().to_string(), "--key"])
            .args([at("key"), at("store"), at("desk")])
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .unwrap();
        let began = Instant::now();
        match whole {
            None => {
                writer.wait().unwrap();
                whole = Some(began.elapsed());
            }
            Some(whole) => {
                thread::sleep(whole.mul_f64(dice.roll(1000) as f64 / 1000.0));
                killed += usize::from(writer.try_wait().unwrap().is_none());
                writer.kill().ok();
                writer.wait().unwrap();
            }
        }
        let store = Store::in_folder(&at("store")).unwrap();
        Engine::over(&store).unwrap();
        for bucket in 0..4 {
            let held = store.read(bucket).unwrap();
            for about in held.rows.get("families").into_iter().flatten() {
                // As many rows as the family's own row says: of one round, and not of two.
                let of_it = held.rows["sessions"].iter().filter(|row| row[0] == about[0]).count();
                assert_eq!(about[says_sessions], Cell::Whole(of_it as i64));
                assert_eq!(held.rows["trends"].iter().filter(|row| row[0] == about[0]).count(), 1);
            }
        }
    }
    assert_eq!(killed, KILLS, "so many were killed while they wrote");
    // Whoever comes next is not in the way of what was left.
    let store = Store::in_folder(&at("store")).unwrap();
    take(&store, "one", std::slice::from_ref(&at("desk")));
    let families_there: usize = (0..4).map(|b| store.read(b).unwrap().rows.get("families").map_or(0, Vec::len)).sum();
    assert_eq!(families_there, families.len());
}
