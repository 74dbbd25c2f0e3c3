//! How fast Tonight is at ten years. `cargo bench -p drawwell-tests --bench night`; the
//! figures stand in DEVELOPERS.md.

#![allow(
    missing_docs,
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a benchmark that meets what it did not expect stops there"
)]

use std::hint::black_box;

use criterion::{criterion_group, criterion_main, Criterion};
use drawwell_core::answer::supply::Calendar;
use drawwell_core::gather::{self, refill, Record};
use drawwell_core::journal::Journal;
use drawwell_core::screen::shapes::{Event, Place};
use drawwell_core::time::{DayStart, Span, Zone};
use drawwell_tests::ten_years::{self, clock};

/// Everything that makes a plan dearer: a long sleep wished for, sessions at night, work.
const FRAME: &str = r#"{"fact":"rhythm","id":"rhythm","sessions_a_day":8,"longest_interval":420,"shortest_interval":90,"sleep_from":"22:30","sleep_until":"06:30","sleep_stretch":300,"night_sessions":1,"reminders":"sound"}
{"fact":"fixed_point","id":"shift","what":"shift","from":"09:00","until":"16:00","days":"monday_to_friday"}
{"fact":"fixed_point","id":"noon","what":"break","from":"12:00","until":"12:45","days":"monday_to_friday"}
"#;

fn night(c: &mut Criterion) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("ten.drawwell");
    let mut journal = Journal::open(&path, "bench", ten_years::END).unwrap().journal;
    journal.merge(&ten_years::changes(), ten_years::END).unwrap();
    drop(journal);
    let at = ten_years::END.plus(Span::minutes(5));
    let now = clock(at);
    let mut app = ten_years::open(&path).unwrap();
    app.import_file(&mut FRAME.as_bytes(), &now).unwrap();
    let mut group = c.benchmark_group("tonight at ten years");
    let journal = Journal::open(&path, "reader", at).unwrap().journal;
    let record = Record::new(&journal, at, Zone::UTC).unwrap();
    let calendar = Calendar { start: DayStart::MIDNIGHT, zone: Zone::UTC };
    group.bench_function("the refill curves", |b| {
        b.iter(|| black_box(refill::curves(&record, calendar, None).unwrap()))
    });
    let refill = refill::curves(&record, calendar, None).unwrap();
    group.bench_function("replanned, the curves known", |b| {
        b.iter(|| {
            let gathered = gather::night::gathered(&record).unwrap();
            black_box(gathered.plan(&|from, until| refill.lost(from, until, Zone::UTC)))
        })
    });
    group.bench_function("the screen", |b| b.iter(|| black_box(app.show(&Place::Tonight, &now).unwrap())));
    group.bench_function("woken, reminders set anew", |b| b.iter(|| black_box(app.update(Event::Wake, &now).unwrap())));
    group.finish();
}

criterion_group!(benches, night);
criterion_main!(benches);
