//! How fast: a tap against the bare store, opening and screens at ten years,
//! import. `cargo bench -p drawwell-tests`; the figures stand in DEVELOPERS.md.

#![allow(
    missing_docs,
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a benchmark that meets what it did not expect stops there"
)]

use std::hint::black_box;
use std::path::Path;

use criterion::{criterion_group, criterion_main, BatchSize, Criterion, Throughput};
use drawwell_core::app::App;
use drawwell_core::journal::{Change, Dot, Journal, Key, Stamp};
use drawwell_core::limits;
use drawwell_core::screen::shapes::{Clock, Deed, Event, Place};
use drawwell_core::share::family_file;
use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::{open as unseal, seal, signed, OpenWith, SealFor};
use drawwell_core::time::Span;
use drawwell_tests::ten_years::{self, clock};
use rusqlite::Connection;

fn open(path: &Path) -> App {
    ten_years::open(path).unwrap()
}

/// A journal of ten years as its family left it: with a tap, the days that a screen rests on are kept.
fn ten_years_old(folder: &tempfile::TempDir) -> std::path::PathBuf {
    let path = folder.path().join("ten.drawwell");
    let mut journal = Journal::open(&path, "bench", ten_years::END).unwrap().journal;
    journal.merge(&ten_years::changes(), ten_years::END).unwrap();
    drop(journal);
    let mut app = open(&path);
    for place in [Place::Now, Place::Supply { days: 0 }] {
        app.update(Event::Go { place }, &clock(ten_years::END)).unwrap();
    }
    path
}

/// The peer: one row in one transaction, with the same promises (WAL, FULL).
fn bare_store(folder: &tempfile::TempDir) -> Connection {
    let store = Connection::open(folder.path().join("bare")).unwrap();
    store.pragma_update(None, "journal_mode", "WAL").unwrap();
    store.pragma_update(None, "synchronous", "FULL").unwrap();
    store.execute_batch("CREATE TABLE tap(row INTEGER PRIMARY KEY, value TEXT NOT NULL) STRICT").unwrap();
    store
}

fn tap(c: &mut Criterion) {
    let mut group = c.benchmark_group("a tap, answered and on disk");
    let folder = tempfile::tempdir().unwrap();
    let mut bare = bare_store(&folder);
    group.bench_function("bare one-row transaction", |b| {
        b.iter(|| {
            let transaction = bare.transaction().unwrap();
            transaction
                .prepare_cached("INSERT INTO tap(value) VALUES (?1)")
                .unwrap()
                .execute(["a value about as long as a mark is when it is written as JSON text"])
                .unwrap();
            transaction.commit().unwrap();
        });
    });
    for (name, old) in [("in an empty record", false), ("at ten years", true)] {
        let path = if old { ten_years_old(&folder) } else { folder.path().join("new.drawwell") };
        // The core's part: the act itself, without the screen that answers it.
        let mut journal = Journal::open(&path, "bench", ten_years::END).unwrap().journal;
        let mut number = 0_u64;
        group.bench_function(format!("the journal's act {name}"), |b| {
            b.iter(|| {
                number += 1;
                let mark = serde_json::json!({ "at": "2026-02-25T07:13:20.000+01:00", "does": "letdown", "zone": "Europe/Berlin" });
                journal
                    .act("letdown", "live", ten_years::END, |w| w.set("live", &format!("marks/{}", number % 20_000), &mark_of(&mark, number)))
                    .unwrap();
            });
        });
        drop(journal);
        let mut app = open(&path);
        let start = ten_years::END.plus(Span::minutes(5));
        app.update(Event::Start, &clock(start)).unwrap();
        let mut taps = 0_i64;
        group.bench_function(format!("a tap and its screen {name}"), |b| {
            b.iter_batched(
                || {
                    // A session of at most twenty marks, as one is.
                    taps += 1;
                    if taps % 20 == 0 {
                        app.update(Event::Finish, &clock(start.plus(Span::seconds(taps)))).unwrap();
                        app.update(Event::Start, &clock(start.plus(Span::seconds(taps)))).unwrap();
                    }
                    clock(start.plus(Span::seconds(taps)))
                },
                |now| black_box(app_tap(&path, &now)),
                BatchSize::PerIteration,
            );
        });
    }
    group.finish();
}

fn mark_of(mark: &serde_json::Value, number: u64) -> serde_json::Value {
    let mut mark = mark.clone();
    if let Some(members) = mark.as_object_mut() {
        members.insert("number".to_owned(), number.into());
    }
    mark
}

thread_local! {
    static APP: std::cell::RefCell<Option<(std::path::PathBuf, App)>> = const { std::cell::RefCell::new(None) };
}

/// A second window on the same journal: setting up stays out of the time.
fn app_tap(path: &Path, now: &Clock) -> usize {
    APP.with_borrow_mut(|kept| {
        if kept.as_ref().is_none_or(|(known, _)| known != path) {
            *kept = Some((path.to_owned(), open(path)));
        }
        let (_, app) = kept.as_mut().unwrap();
        app.update(Event::Mark { deed: Deed::Letdown }, now).unwrap().effects.len()
    })
}

fn opening(c: &mut Criterion) {
    let folder = tempfile::tempdir().unwrap();
    let old = ten_years_old(&folder);
    let new = folder.path().join("new.drawwell");
    drop(open(&new));
    let mut group = c.benchmark_group("open and show the first screen");
    for (name, path) in [("an empty record", &new), ("ten years", &old)] {
        group.bench_function(name, |b| b.iter(|| black_box(open(path).here(&clock(ten_years::END)).unwrap())));
    }
    group.finish();
}

fn screens(c: &mut Criterion) {
    let folder = tempfile::tempdir().unwrap();
    let mut app = open(&ten_years_old(&folder));
    let mut group = c.benchmark_group("a screen at ten years");
    let places = [
        ("now", Place::Now),
        ("day", Place::Day { days_back: 1 }),
        ("entry", Place::Entry { id: "s-00029990".to_owned() }),
        ("kit", Place::Kit),
        ("family", Place::Family),
    ];
    for (name, place) in places {
        group.bench_function(name, |b| b.iter(|| black_box(app.show(&place, &clock(ten_years::END)).unwrap())));
    }
    group.finish();
}

fn coming_in(c: &mut Criterion) {
    let changes = ten_years::changes();
    let file = ten_years::exchange_file();
    let mut group = c.benchmark_group("ten years coming in");
    group.sample_size(10).throughput(Throughput::Elements(changes.len() as u64));
    let fresh = || {
        let folder = tempfile::tempdir().unwrap();
        let journal = Journal::open(&folder.path().join("j"), "bench", ten_years::END).unwrap().journal;
        (journal, folder)
    };
    group.bench_function("changes of another phone", |b| {
        b.iter_batched(fresh, |(mut j, f)| (j.merge(&changes, ten_years::END).unwrap(), j, f), BatchSize::PerIteration);
    });
    group.bench_function("the exchange form", |b| {
        b.iter_batched(
            fresh,
            |(mut j, f)| {
                let report =
                    drawwell_core::share::exchange::import(&mut j, &mut file.as_bytes(), ten_years::END).unwrap();
                assert_eq!((report.taken, report.wrong_count), (ten_years::SESSIONS as u64, 0));
                (j, f)
            },
            BatchSize::PerIteration,
        );
    });
    let (mut journal, _folder) = fresh();
    journal.merge(&changes, ten_years::END).unwrap();
    group.bench_function("the projection built anew", |b| b.iter(|| journal.rebuild().unwrap()));
    group.finish();
}

/// The worst that a file may hold: many values on one field, one stamp on all of them, all the
/// bytes that are taken in.
fn at_the_limits(c: &mut Criterion) {
    let mut group = c.benchmark_group("at the limits");
    group.sample_size(10);
    let fresh = || {
        let folder = tempfile::tempdir().unwrap();
        let journal = Journal::open(&folder.path().join("j"), "bench", ten_years::END).unwrap().journal;
        (journal, folder)
    };
    let change = |number: usize, subject: String| Change {
        dot: Dot { device: "other".to_owned(), sequence: number as i64 },
        stamp: Stamp::at(ten_years::END),
        subject,
        field: "text".to_owned(),
        value: "\"x\"".to_owned(),
        replaces: Vec::new(),
    };
    let heads: Vec<Change> = (1..=limits::HEADS).map(|number| change(number, "n".to_owned())).collect();
    group.bench_function("ten thousand heads of one field", |b| {
        b.iter_batched(fresh, |(mut j, f)| (j.merge(&heads, ten_years::END).unwrap(), j, f), BatchSize::PerIteration);
    });
    let million: Vec<Change> = (1..=1_000_000).map(|number| change(number, format!("n{}", number / 4))).collect();
    group.bench_function("a million changes with one stamp", |b| {
        b.iter_batched(fresh, |(mut j, f)| (j.merge(&million, ten_years::END).unwrap(), j, f), BatchSize::PerIteration);
    });
    let keys = OwnKeys::make().unwrap();
    let file = largest_file(&keys);
    let sealed = seal(&file, &SealFor::Keys(vec![keys.sealing_key().unwrap()])).unwrap();
    group.bench_function("the largest file opened and read", |b| {
        b.iter(|| {
            let plain = unseal(&sealed, &OpenWith::Keys(vec![keys.opens().to_owned()])).unwrap();
            black_box(family_file::read(&plain).unwrap().changes.len())
        });
    });
    group.finish();
}

/// A signed family file as long as one may be.
fn largest_file(keys: &OwnKeys) -> Vec<u8> {
    let (opens, signs) = (keys.sealing_key().unwrap(), keys.signing_key().unwrap());
    let mut text = format!(
        r#"{{"drawwell":"family","version":2,"family":"a-1","made":{{"at":"2026-08-14T10:00:00.000+02:00","zone":"Europe/Berlin"}},"sealing_key":"{opens}","signing_key":"{signs}"}}"#
    );
    for number in 1.. {
        let line = format!(
            "\n{{\"device\":\"other\",\"number\":{number},\"stamp\":65536,\"subject\":\"n{number}\",\"field\":\"text\",\"value\":\"a line of a note\",\"replaces\":[]}}"
        );
        if text.len() + line.len() + 1000 > limits::UNPACKED as usize {
            break;
        }
        text.push_str(&line);
    }
    signed::sign(&text, "a record", keys).unwrap().into_bytes()
}

/// The same deeds over the same ten years, sealed and not, in one run.
fn sealed(c: &mut Criterion) {
    let key = Key::make().unwrap();
    for (how, key) in [("plain", None), ("sealed", Some(&key))] {
        let folder = tempfile::tempdir().unwrap();
        let path = ten_years_old(&folder);
        drop(ten_years::open_with_key(&path, key).unwrap());
        let mut group = c.benchmark_group(format!("ten years, {how}"));
        let mut journal = Journal::open_with_key(&path, "bench", key, ten_years::END).unwrap().journal;
        let mut number = 0_u64;
        group.bench_function("the journal's act", |b| {
            b.iter(|| {
                number += 1;
                let mark = serde_json::json!({ "at": "2026-02-25T07:13:20.000+01:00", "does": "letdown", "zone": "Europe/Berlin" });
                journal
                    .act("letdown", "live", ten_years::END, |w| w.set("live", &format!("marks/{}", number % 20_000), &mark_of(&mark, number)))
                    .unwrap();
            });
        });
        drop(journal);
        let mut app = ten_years::open_with_key(&path, key).unwrap();
        let start = ten_years::END.plus(Span::minutes(5));
        app.update(Event::Start, &clock(start)).unwrap();
        let mut taps = 0_i64;
        group.bench_function("a tap and its screen", |b| {
            b.iter(|| {
                taps += 1;
                let now = clock(start.plus(Span::seconds(taps)));
                if taps % 20 == 0 {
                    app.update(Event::Finish, &now).unwrap();
                    app.update(Event::Start, &now).unwrap();
                }
                black_box(app.update(Event::Mark { deed: Deed::Letdown }, &now).unwrap().effects.len())
            });
        });
        for (name, place) in [
            ("now", Place::Now),
            ("day", Place::Day { days_back: 1 }),
            ("kit", Place::Kit),
            ("supply", Place::Supply { days: 28 }),
        ] {
            group.bench_function(name, |b| b.iter(|| black_box(app.show(&place, &clock(ten_years::END)).unwrap())));
        }
        drop(app);
        group.bench_function("open and show the first screen", |b| {
            b.iter(|| {
                let mut app = ten_years::open_with_key(&path, key).unwrap();
                black_box(app.here(&clock(ten_years::END)).unwrap())
            });
        });
        group.finish();
    }
    let mut group = c.benchmark_group("ten years moved under a key");
    group.sample_size(10);
    let fresh = || {
        let folder = tempfile::tempdir().unwrap();
        (ten_years_old(&folder), folder)
    };
    group.bench_function("once", |b| {
        b.iter_batched(
            fresh,
            |(path, folder)| (ten_years::open_with_key(&path, Some(&key)).unwrap(), folder),
            BatchSize::PerIteration,
        );
    });
    group.finish();
}

criterion_group!(journal, tap, opening, screens, sealed, coming_in, at_the_limits);
criterion_main!(journal);
