//! How fast a desk of a hundred families with a year each opens to its ordered list.
//! `cargo bench -p drawwell-tests --bench caseload`; the figures stand in DEVELOPERS.md.

#![allow(
    missing_docs,
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a benchmark that meets what it did not expect stops there"
)]

use std::hint::black_box;

use criterion::{criterion_group, criterion_main, Criterion};
use drawwell_core::caseload::Caseload;
use drawwell_core::journal::Journal;
use drawwell_core::record::Kind;
use drawwell_core::screen::shapes::Opening;
use drawwell_core::time::{Moment, Span, Zone};
use drawwell_tests::ten_years::{self, clock};
use serde_json::json;

const FAMILIES: usize = 100;

fn caseload(c: &mut Criterion) {
    let folder = tempfile::tempdir().unwrap();
    let now = clock(ten_years::END.plus(Span::minutes(5)));
    let opening = Opening { device: "desk".to_owned(), language: "en".to_owned(), look_around: false };
    drop(Caseload::open(folder.path().to_owned(), opening.clone(), &now).unwrap());

    // One family's year, a file for each.
    let year = ten_years::END.minus(Span::hours(24 * 365));
    let changes: Vec<_> = ten_years::changes().into_iter().filter(|c| c.stamp.instant() >= year).collect();
    let one = folder.path().join("one");
    let mut journal = Journal::open(&one, "phone", ten_years::END).unwrap().journal;
    journal.merge(&changes, ten_years::END).unwrap();
    let sessions = journal.of_kind(Kind::Session).unwrap().len();
    assert!(sessions > 2500, "{sessions} sessions are no year");
    drop(journal);
    let mut desk = Journal::open(&folder.path().join("desk.drawwell"), "desk", ten_years::END).unwrap().journal;
    for number in 0..FAMILIES {
        std::fs::copy(&one, folder.path().join(format!("families/family-f-{number}.drawwell"))).unwrap();
        let shared = Moment::new(ten_years::END, Zone::UTC).to_json();
        desk.quiet_act(ten_years::END, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::CaseFamily.name()))?;
            w.set(&id, "name", &json!(format!("Family {number}")))?;
            w.set(&id, "family", &json!(format!("f-{number}")))?;
            w.set(&id, "shared", &shared)
        })
        .unwrap();
    }
    drop(desk);
    let open = || {
        let mut caseload = Caseload::open(folder.path().to_owned(), opening.clone(), &now).unwrap();
        caseload.here(&now).unwrap()
    };
    // Days are worked out once for a record that came in; what is timed is every opening after.
    let first = std::time::Instant::now();
    open();
    println!("the first opening, with all days worked out: {:?}", first.elapsed());
    let mut group = c.benchmark_group("a hundred families with a year each");
    group.sample_size(10);
    group.bench_function("open to the ordered list", |b| b.iter(|| black_box(open())));
    let mut caseload = Caseload::open(folder.path().to_owned(), opening.clone(), &now).unwrap();
    caseload.here(&now).unwrap();
    group.bench_function("the list again", |b| b.iter(|| black_box(caseload.here(&now).unwrap())));
}

criterion_group!(benches, caseload);
criterion_main!(benches);
