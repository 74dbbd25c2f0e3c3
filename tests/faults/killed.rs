//! A program killed at any moment loses no tap that was answered.

use std::io::{BufRead, BufReader};
use std::process::{Command, Stdio};
use std::time::Duration;

use drawwell_core::journal::Journal;
use drawwell_core::time::Instant;

const KILLS: u64 = 1000;
/// A journal is begun anew after so many kills, so that it stays small.
const A_JOURNAL: u64 = 50;
const NOW: Instant = Instant::from_unix_milliseconds(1_772_000_000_000);

/// Moments that differ from run to run of the loop and not from run to run of
/// the test: a linear congruential generator (Knuth, MMIX).
fn moment(kill: u64) -> Duration {
    let mixed = kill.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
    Duration::from_micros(mixed >> 33 & 0x3fff)
}

#[test]
fn killed_a_thousand_times_no_answered_tap_is_lost() {
    let mut folder = tempfile::tempdir().unwrap();
    let (mut next, mut answered_in_all) = (1, 0);
    for kill in 0..KILLS {
        if kill % A_JOURNAL == 0 {
            folder = tempfile::tempdir().unwrap();
            next = 1;
        }
        let path = folder.path().join("j");
        let mut child = Command::new(env!("CARGO_BIN_EXE_steady-thumb"))
            .arg(&path)
            .arg(next.to_string())
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let out = child.stdout.take().unwrap();
        // Wait for the first answer, so that the kill falls among taps.
        let mut lines = BufReader::new(out).lines();
        let mut last = lines.next().map(|l| l.unwrap().parse::<u64>().unwrap());
        std::thread::sleep(moment(kill));
        child.kill().unwrap();
        child.wait().unwrap();
        for line in lines.map_while(Result::ok) {
            // The last line may be cut; a whole one is a number.
            last = line.parse().ok().max(last);
        }
        let opened = Journal::open(&path, "thumb", NOW).unwrap();
        assert_eq!(opened.salvaged, None, "a killed journal is not a damaged one");
        let (_, fields) = opened.journal.record("s").unwrap().unwrap();
        let kept = fields["taps"].as_u64().unwrap();
        let answered = last.unwrap_or(0);
        assert!(kept >= answered, "kill {kill}: {answered} was answered, {kept} was kept");
        assert!(fields.contains_key(&format!("marks/{kept:08}")), "a tap is kept whole");
        answered_in_all += answered + 1 - next;
        next = kept + 1;
        if kill % A_JOURNAL == A_JOURNAL - 1 {
            let sound: String =
                opened.journal.connection().query_row("PRAGMA integrity_check", [], |r| r.get(0)).unwrap();
            assert_eq!(sound, "ok", "SQLite's own check");
            let mut journal = opened.journal;
            let incremental = journal.projection_text().unwrap();
            journal.rebuild().unwrap();
            assert_eq!(journal.projection_text().unwrap(), incremental);
        }
    }
    assert!(answered_in_all > KILLS, "{answered_in_all} taps were answered");
}
