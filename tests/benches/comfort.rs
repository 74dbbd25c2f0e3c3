//! How fast Comfort is: the exact test of forty sessions, and each answer over a season.

#![allow(
    missing_docs,
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a benchmark that meets what it did not expect stops there"
)]

use std::hint::black_box;

use criterion::{criterion_group, criterion_main, Criterion};
use drawwell_core::app::App;
use drawwell_core::gather::comfort::ComfortInputs;
use drawwell_core::gather::Record;
use drawwell_core::journal::Journal;
use drawwell_core::screen::shapes::{Clock, Opening, Place};
use drawwell_core::statistics::{bounds, paired_range, randomisation, Answered, RandomBlock, RisingChance};
use drawwell_core::time::Zone;
use drawwell_tests::chance::Chance;
use drawwell_tests::comfort_family::ceiling::{said, Limit};
use drawwell_tests::comfort_family::milk::{self, Yield};
use drawwell_tests::comfort_family::trial::{one, Tried};
use drawwell_tests::ten_years;

/// Pairs of values that never are the same.
fn pairs(number: usize) -> Vec<RandomBlock> {
    let mut chance = Chance::seeded(20_261_127);
    (0..number)
        .map(|_| RandomBlock { first: vec![60.0 + 9.0 * chance.normal()], second: vec![55.0 + 9.0 * chance.normal()] })
        .collect()
}

fn comfort(c: &mut Criterion) {
    let mut group = c.benchmark_group("comfort");
    group.sample_size(10);
    let (twenty, forty, sixty) = (pairs(20), pairs(38), pairs(60));
    group.bench_function("exact test, 40 sessions in 20 pairs", |b| b.iter(|| black_box(randomisation(&twenty, 1))));
    group.bench_function("exact test, 38 pairs", |b| b.iter(|| black_box(randomisation(&forty, 1))));
    group.bench_function("20,000 draws, 120 sessions", |b| b.iter(|| black_box(randomisation(&sixty, 1))));
    let apart: Vec<f64> =
        forty.iter().map(|pair| pair.first.iter().sum::<f64>() - pair.second.iter().sum::<f64>()).collect();
    group.bench_function("exact range of 38 differences", |b| b.iter(|| black_box(paired_range(&apart, 0.95))));
    let looks: Vec<f64> = (1..=20).map(|look| f64::from(look) / 20.0).collect();
    group.bench_function("bounds of 20 looks", |b| b.iter(|| black_box(bounds(0.05, &looks))));
    let answered: Vec<Answered> = (0..400)
        .map(|n| Answered { at: f64::from(n * 37 % 41) * 5.0, yes: n * 53 % 97 < n * 37 % 41, weight: 1.0 })
        .collect();
    group.bench_function("rising chance, 400 answers at 41 places", |b| {
        b.iter(|| black_box(RisingChance::fit(&answered, 10.0, 0.2)));
    });
    let season = Limit { sessions: 448, ..Limit::FINE };
    group.bench_function("ceiling of a side and phase with its course, eight weeks", |b| {
        b.iter(|| black_box(said(&season, 1)))
    });
    let season = Yield { sessions: 448, ..Yield::USUAL };
    group.bench_function("milk against vacuum, eight weeks", |b| b.iter(|| black_box(milk::said(&season, 1))));
    group.bench_function("a trial of 40 sessions, all its looks", |b| b.iter(|| black_box(one(&Tried::USUAL, 1))));
    let folder = tempfile::tempdir().unwrap();
    let mut journal = Journal::open(&folder.path().join("ten.drawwell"), "bench", ten_years::END).unwrap().journal;
    journal.merge(&ten_years::changes(), ten_years::END).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("ten.drawwell");
    let mut there = Journal::open(&path, "bench", ten_years::END).unwrap().journal;
    there.merge(&ten_years::changes(), ten_years::END).unwrap();
    drop(there);
    let clock =
        Clock { unix_milliseconds: ten_years::END.unix_milliseconds(), zone: "UTC".to_owned(), offset_seconds: None };
    let opening = Opening { device: "bench".to_owned(), language: "en".to_owned(), look_around: false };
    let mut app = App::open(path, opening, &clock).unwrap();
    for (name, place) in [("comfort", Place::Comfort), ("letdown", Place::Letdown), ("the list of Kit", Place::Kit)] {
        group.bench_function(format!("the screen at ten years: {name}"), |b| {
            b.iter(|| black_box(app.show(&place, &clock).unwrap()))
        });
    }
    let record = Record::new(&journal, ten_years::END, Zone::UTC).unwrap();
    group.bench_function("read at ten years, eight weeks of sessions", |b| {
        b.iter(|| black_box(ComfortInputs::read(&record).unwrap().felt.len()));
    });
    group.finish();
}

criterion_group!(benches, comfort);
criterion_main!(benches);
