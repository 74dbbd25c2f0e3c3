//! The journal against a plain map: what a hundred acts, undos, restarts and
//! rebuilds leave is what a map with a stack of its former selves would hold.

use std::collections::BTreeMap;

use drawwell_core::journal::Journal;
use drawwell_core::time::Instant;
use proptest::prelude::*;
use proptest_state_machine::{prop_state_machine, ReferenceStateMachine, StateMachineTest};
use serde_json::{json, Value};
use tempfile::TempDir;

type Map = BTreeMap<(String, String), Value>;

#[derive(Debug, Clone)]
enum Transition {
    /// One act: fields of subjects, each once.
    Set(BTreeMap<(usize, usize), u8>),
    Clear(usize, usize),
    Undo,
    Redo,
    Reopen,
    Rebuild,
    /// An act whose closure fails after it has written.
    Fail(usize, usize, u8),
}

#[derive(Debug, Clone, Default)]
struct Model {
    now: Map,
    /// What the map was before each act that can be taken back.
    before: Vec<Map>,
    /// What it was before each undo.
    after: Vec<Map>,
}

const FIELDS: [&str; 4] = ["kind", "text", "glow", "marks/a"];

fn write(map: &mut Map, subject: usize, field: usize, value: u8) -> bool {
    let (key, value) = ((format!("s{subject}"), FIELDS[field].to_owned()), given(field, value));
    map.insert(key, value.clone()) != Some(value)
}

fn given(field: usize, value: u8) -> Value {
    match field {
        0 => json!("note"),
        3 => {
            json!({ "at": format!("2026-02-25T07:{:02}:20+01:00", value % 60), "zone": "Europe/Berlin", "does": "letdown" })
        }
        _ => json!(value % 5),
    }
}

impl ReferenceStateMachine for Model {
    type State = Self;
    type Transition = Transition;

    fn init_state() -> BoxedStrategy<Self> {
        Just(Self::default()).boxed()
    }

    fn transitions(_: &Self) -> BoxedStrategy<Transition> {
        let one = || (0..3_usize, 0..4_usize, any::<u8>());
        prop_oneof![
            6 => proptest::collection::btree_map((0..3_usize, 0..4_usize), any::<u8>(), 1..4).prop_map(Transition::Set),
            2 => (0..3_usize, 0..4_usize).prop_map(|(s, f)| Transition::Clear(s, f)),
            3 => Just(Transition::Undo),
            2 => Just(Transition::Redo),
            1 => Just(Transition::Reopen),
            1 => Just(Transition::Rebuild),
            1 => one().prop_map(|(s, f, v)| Transition::Fail(s, f, v)),
        ]
        .boxed()
    }

    fn apply(mut state: Self, transition: &Transition) -> Self {
        let was = state.now.clone();
        match transition {
            Transition::Set(all) => {
                for ((subject, field), value) in all {
                    write(&mut state.now, *subject, *field, *value);
                }
                state.acted(was);
            }
            Transition::Clear(subject, field) => {
                state.now.remove(&(format!("s{subject}"), FIELDS[*field].to_owned()));
                state.acted(was);
            }
            Transition::Undo => {
                if let Some(before) = state.before.pop() {
                    state.after.push(was);
                    state.now = before;
                }
            }
            Transition::Redo => {
                if let Some(after) = state.after.pop() {
                    state.before.push(was);
                    state.now = after;
                }
            }
            Transition::Reopen | Transition::Rebuild | Transition::Fail(..) => {}
        }
        state
    }
}

impl Model {
    /// An act that wrote something can be taken back, and makes an end of redo.
    fn acted(&mut self, was: Map) {
        if was != self.now {
            self.before.push(was);
            self.after.clear();
        }
    }
}

struct Real {
    journal: Option<Journal>,
    clock: i64,
    folder: TempDir,
}

impl Real {
    fn open(&mut self) {
        drop(self.journal.take());
        let path = self.folder.path().join("j");
        self.journal = Some(Journal::open(&path, "one", Instant::from_unix_milliseconds(0)).unwrap().journal);
    }
    fn journal(&mut self) -> &mut Journal {
        self.journal.as_mut().unwrap()
    }
}

impl StateMachineTest for Real {
    type SystemUnderTest = Self;
    type Reference = Model;

    fn init_test(_: &Model) -> Self {
        let mut real = Self { journal: None, clock: 1_772_000_000_000, folder: tempfile::tempdir().unwrap() };
        real.open();
        real
    }

    fn apply(mut real: Self, _: &Model, transition: Transition) -> Self {
        real.clock += 7;
        let now = Instant::from_unix_milliseconds(real.clock);
        match transition {
            Transition::Set(all) => real
                .journal()
                .act("enter", "", now, |w| {
                    all.iter().try_for_each(|((s, f), v)| w.set(&format!("s{s}"), FIELDS[*f], &given(*f, *v)))
                })
                .unwrap(),
            Transition::Clear(s, f) => {
                real.journal().act("clear", "", now, |w| w.set(&format!("s{s}"), FIELDS[f], &Value::Null)).unwrap();
            }
            Transition::Undo => drop(real.journal().undo(now).unwrap()),
            Transition::Redo => drop(real.journal().redo(now).unwrap()),
            Transition::Reopen => real.open(),
            Transition::Rebuild => real.journal().rebuild().unwrap(),
            Transition::Fail(s, f, v) => {
                let outcome: Result<(), _> = real.journal().act("enter", "", now, |w| {
                    w.set(&format!("s{s}"), FIELDS[f], &given(f, v.wrapping_add(1)))?;
                    Err(drawwell_core::trouble::Trouble::bad("", "bad-field"))
                });
                assert!(outcome.is_err());
            }
        }
        real
    }

    fn check_invariants(real: &Self, model: &Model) {
        let journal = real.journal.as_ref().unwrap();
        for subject in 0..3 {
            let id = format!("s{subject}");
            let expected: BTreeMap<String, Value> =
                model.now.iter().filter(|((s, _), _)| *s == id).map(|((_, f), v)| (f.clone(), v.clone())).collect();
            let found = journal.record(&id).unwrap().map(|(_, fields)| fields);
            assert_eq!(found, expected.contains_key("kind").then_some(expected));
        }
        assert_eq!(journal.undoable().unwrap().is_some(), !model.before.is_empty());
        assert_eq!(journal.redoable().unwrap().is_some(), !model.after.is_empty());
    }
}

prop_state_machine! {
    #![proptest_config(ProptestConfig { cases: 48, failure_persistence: None, ..ProptestConfig::default() })]
    #[test]
    fn the_journal_is_a_map_with_a_memory(sequential 1..100 => Real);
}
