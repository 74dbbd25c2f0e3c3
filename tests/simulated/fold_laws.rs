//! Laws of the fold: any order, any repeats, two devices and more give the same
//! record; what was rebuilt is what was kept up to date.

use drawwell_core::journal::{Change, Journal};
use drawwell_core::time::{Instant, Span};
use proptest::prelude::*;
use proptest::sample::Index;
use serde_json::{json, Value};
use tempfile::TempDir;

const NOW: Instant = Instant::from_unix_milliseconds(1_772_000_000_000);
/// When they hear of each other: by then nothing is ahead that their clocks said.
const HEARD: Instant = Instant::from_unix_milliseconds(1_772_000_000_000 + 4 * 24 * 3_600_000);
const DEVICES: [&str; 3] = ["one", "two", "three"];

#[derive(Debug, Clone)]
enum Step {
    /// A device gives a field of a session a value, its clock being off by so much.
    Write { device: usize, subject: usize, field: usize, value: u8, off_by_minutes: i64 },
    /// A device hears everything another has.
    Hear { device: usize, from: usize },
}

fn step() -> impl Strategy<Value = Step> {
    prop_oneof![
        5 => (0..3_usize, 0..3_usize, 0..5_usize, any::<u8>(), -3000..3000_i64).prop_map(
            |(device, subject, field, value, off_by_minutes)| Step::Write { device, subject, field, value, off_by_minutes }
        ),
        1 => (0..3_usize, 0..3_usize).prop_map(|(device, from)| Step::Hear { device, from }),
    ]
}

fn value(field: usize, value: u8) -> (&'static str, Value) {
    let at = |minute: u8| json!({ "at": format!("2026-02-2{}T07:{:02}:00+01:00", minute % 3, minute % 60), "zone": "Europe/Berlin" });
    match field {
        0 => ("kind", if value.is_multiple_of(7) { Value::Null } else { json!("session") }),
        1 => ("started", at(value)),
        2 => ("amount_left", json!({ "value": value, "unit": "mL" })),
        3 => ("taken_out", json!(value.is_multiple_of(2))),
        _ => ("ended", if value.is_multiple_of(3) { Value::Null } else { at(59) }),
    }
}

fn open(name: &str) -> (Journal, TempDir) {
    let folder = tempfile::tempdir().unwrap();
    (Journal::open(&folder.path().join("j"), name, NOW).unwrap().journal, folder)
}

fn live(steps: &[Step]) -> Vec<(Journal, TempDir)> {
    let mut devices: Vec<_> = DEVICES.iter().map(|name| open(name)).collect();
    for (index, step) in steps.iter().enumerate() {
        match step {
            Step::Write { device, subject, field, value: given, off_by_minutes } => {
                let now = NOW.plus(Span::minutes(index as i64 + off_by_minutes));
                let (field, given) = value(*field, *given);
                devices[*device].0.act("enter", "", now, |w| w.set(&format!("s{subject}"), field, &given)).unwrap();
            }
            Step::Hear { device, from } if device != from => {
                let changes = devices[*from].0.changes().unwrap();
                devices[*device].0.merge(&changes, HEARD).unwrap();
            }
            Step::Hear { .. } => {}
        }
    }
    devices
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn any_order_and_any_repeats_give_the_same_record(
        steps in proptest::collection::vec(step(), 1..60),
        order in proptest::collection::vec(any::<Index>(), 150),
    ) {
        let mut devices = live(&steps);
        let all: Vec<Change> = {
            let mut all: Vec<Change> = devices.iter().flat_map(|(j, _)| j.changes().unwrap()).collect();
            all.sort_by(|a, b| a.dot.cmp(&b.dot));
            all.dedup();
            all
        };
        if all.is_empty() {
            return Ok(());
        }
        for (journal, _) in &mut devices {
            journal.merge(&all, HEARD).unwrap();
        }
        // Fresh devices hear the same changes shuffled, in pieces, some twice.
        let shuffled: Vec<Change> = order.iter().map(|i| i.get(&all).clone()).chain(all.iter().rev().cloned()).collect();
        for size in [1, 7, shuffled.len()] {
            let (mut fresh, folder) = open("fresh");
            for piece in shuffled.chunks(size) {
                fresh.merge(piece, HEARD).unwrap();
            }
            devices.push((fresh, folder));
        }
        let expected = devices[0].0.projection_text().unwrap();
        for (journal, _) in &mut devices {
            prop_assert_eq!(&journal.projection_text().unwrap(), &expected);
            journal.rebuild().unwrap();
            prop_assert_eq!(&journal.projection_text().unwrap(), &expected, "rebuilt is incremental");
        }
    }

    #[test]
    fn what_was_rebuilt_is_what_was_kept_up_to_date(steps in proptest::collection::vec(step(), 1..60)) {
        for (journal, _) in &mut live(&steps) {
            let incremental = journal.projection_text().unwrap();
            journal.rebuild().unwrap();
            prop_assert_eq!(journal.projection_text().unwrap(), incremental);
        }
    }

    #[test]
    fn no_value_that_nobody_replaced_is_lost(steps in proptest::collection::vec(step(), 1..60)) {
        let mut devices = live(&steps);
        let all: Vec<Change> = devices.iter().flat_map(|(j, _)| j.changes().unwrap()).collect();
        let (journal, _) = &mut devices[0];
        journal.merge(&all, HEARD).unwrap();
        for change in &all {
            let replaced = all.iter().any(|c| c.replaces.contains(&change.dot));
            let counts = journal.record(&change.subject).unwrap().is_some_and(|(_, f)| {
                f.get(&change.field).map_or("null".to_owned(), Value::to_string) == change.value
            });
            let shown = journal.other_values(&change.subject).unwrap().iter().any(|h| h.field == change.field && h.value == change.value);
            let hidden_by_kind = journal.record(&change.subject).unwrap().is_none();
            prop_assert!(replaced || counts || shown || hidden_by_kind, "{:?}", change);
        }
    }
}
