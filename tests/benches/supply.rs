//! How fast Supply is at ten years. `cargo bench -p drawwell-tests --bench supply`;
//! the figures stand in DEVELOPERS.md.

#![allow(
    missing_docs,
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a benchmark that meets what it did not expect stops there"
)]

use std::hint::black_box;

use criterion::{criterion_group, criterion_main, Criterion};
use drawwell_core::journal::Journal;
use drawwell_core::screen::shapes::{Event, Place};
use drawwell_core::time::Span;
use drawwell_tests::ten_years::{self, clock};

fn supply(c: &mut Criterion) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("ten.drawwell");
    let mut journal = Journal::open(&path, "bench", ten_years::END).unwrap().journal;
    journal.merge(&ten_years::changes(), ten_years::END).unwrap();
    drop(journal);
    let now = clock(ten_years::END.plus(Span::minutes(5)));
    let mut app = ten_years::open(&path).unwrap();
    let mut group = c.benchmark_group("supply at ten years");
    // The history is worked out once; what is timed is every time after.
    // A tap keeps the days that were worked out for it.
    app.update(Event::Go { place: Place::Supply { days: 0 } }, &now).unwrap();
    for (name, place) in [
        ("28 days", Place::Supply { days: 28 }),
        ("all", Place::Supply { days: 0 }),
        ("the figures of 28 days", Place::SupplyFigures { days: 28 }),
        ("the figures of all", Place::SupplyFigures { days: 0 }),
        ("the first screen, with its watch", Place::Now),
    ] {
        group.bench_function(name, |b| b.iter(|| black_box(app.show(&place, &now).unwrap())));
    }
    let mut minutes = 10;
    group.bench_function("28 days after a new session, the session's own taps included", |b| {
        b.iter(|| {
            minutes += 20;
            let at = clock(ten_years::END.plus(Span::minutes(minutes)));
            app.update(Event::Start, &at).unwrap();
            app.update(Event::Finish, &clock(ten_years::END.plus(Span::minutes(minutes + 10)))).unwrap();
            black_box(app.show(&Place::Supply { days: 28 }, &at).unwrap())
        });
    });
}

criterion_group!(benches, supply);
criterion_main!(benches);
