//! What another copy has not seen, handed on change by change, makes the same record as handing
//! on everything.

use std::collections::{BTreeMap, BTreeSet};

use drawwell_core::journal::{Journal, Seen};
use drawwell_core::time::{Instant, Span};
use proptest::prelude::*;
use serde_json::json;

const NOW: Instant = Instant::from_unix_milliseconds(1_772_000_000_000);

struct Phones(Vec<Journal>, #[allow(dead_code)] tempfile::TempDir);

fn phones() -> Phones {
    let folder = tempfile::tempdir().unwrap();
    let open = |name: &str| Journal::open(&folder.path().join(name), name, NOW).unwrap().journal;
    Phones(["one", "two", "three"].map(open).into(), folder)
}

fn write(journal: &mut Journal, number: usize) {
    let now = NOW.plus(Span::seconds(number as i64));
    journal.act("enter", "n", now, |w| w.set(&format!("n{}", number % 5), "text", &json!(number))).unwrap();
}

/// Hands on what the other has not seen, a part of it or all.
fn hand_on(phones: &mut Phones, from: usize, to: usize, most: usize) -> u64 {
    let seen = phones.0[to].seen().unwrap();
    let mut changes = Vec::new();
    let mut last = BTreeMap::new();
    let count = phones.0[from]
        .changes_since(&seen, |change| {
            assert!(!seen.has(&change.dot.device, change.dot.sequence), "nothing it has seen");
            let before = last.insert(change.dot.device.clone(), change.dot.sequence);
            assert!(before.is_none_or(|before| before < change.dot.sequence), "in the order of its numbers");
            changes.push(change);
            Ok(())
        })
        .unwrap();
    changes.truncate(most);
    let merged = phones.0[to].merge(&changes, NOW).unwrap();
    assert_eq!((merged.known, merged.other), (0, 0));
    count
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]
    #[test]
    fn what_was_not_seen_is_enough(steps in proptest::collection::vec((0..3_usize, 0..3_usize, 0..6_usize), 1..40)) {
        let mut phones = phones();
        for (number, (from, to, most)) in steps.into_iter().enumerate() {
            if from == to {
                write(&mut phones.0[from], number);
            } else {
                hand_on(&mut phones, from, to, most);
            }
        }
        // Twice round each way, and every phone has all.
        for _ in 0..2 {
            for (from, to) in [(0, 1), (1, 2), (2, 0), (1, 0), (2, 1), (0, 2)] {
                hand_on(&mut phones, from, to, usize::MAX);
            }
        }
        let said: BTreeSet<String> = phones.0.iter().map(|journal| journal.projection_text().unwrap()).collect();
        prop_assert_eq!(said.len(), 1);
        for (from, to) in [(0, 1), (1, 2), (2, 0)] {
            prop_assert_eq!(hand_on(&mut phones, from, to, usize::MAX), 0, "nothing is new any more");
        }
    }
}

/// Numbers that are missing in the middle are asked for again, and runs that meet are one.
#[test]
fn a_gap_is_handed_on_and_closes() {
    let mut phones = phones();
    for number in 0..20 {
        write(&mut phones.0[0], number);
    }
    let all = phones.0[0].changes().unwrap();
    let name = phones.0[0].device().to_owned();
    let part: Vec<_> = all.iter().filter(|c| c.dot.sequence <= 4 || c.dot.sequence >= 9).cloned().collect();
    phones.0[1].merge(&part, NOW).unwrap();
    let last = all.iter().map(|c| c.dot.sequence).max().unwrap();
    assert_eq!(phones.0[1].seen().unwrap().runs(&name), [1..=4, 9..=last]);
    let mut numbers = Vec::new();
    let seen = phones.0[1].seen().unwrap();
    phones.0[0]
        .changes_since(&seen, |change| {
            numbers.push(change.dot.sequence);
            Ok(())
        })
        .unwrap();
    assert_eq!(numbers, [5, 6, 7, 8]);
    let mut joined = Seen::default();
    for run in [9..=last, 1..=4, 5..=8, 3..=3] {
        joined.add(&name, run);
    }
    assert_eq!(joined, phones.0[0].seen().unwrap());
}

/// A copy that is read no further than it wants is not read to its end.
#[test]
fn who_has_enough_stops() {
    let mut phones = phones();
    for number in 0..20 {
        write(&mut phones.0[0], number);
    }
    let mut count = 0;
    let stopped = phones.0[0].changes_since(&Seen::default(), |_| {
        count += 1;
        if count < 3 {
            Ok(())
        } else {
            Err(drawwell_core::trouble::Trouble::bad("", "trouble-fault"))
        }
    });
    assert!(stopped.is_err());
    assert_eq!(count, 3);
}
