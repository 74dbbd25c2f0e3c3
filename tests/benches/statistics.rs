//! How fast the statistics are, and how they grow: a season and more, ten years, a century.
//! `cargo xtask bench statistics` times SciPy and pymannkendall in the same run.

#![allow(
    missing_docs,
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a benchmark that meets what it did not expect stops there"
)]

use std::hint::black_box;

use criterion::{criterion_group, criterion_main, BenchmarkId, Criterion, Throughput};
use drawwell_core::statistics::{hamed_rao, mann_kendall, pelt, pettitt, robust_pelt, robust_slope, Point};
use drawwell_tests::chance::Chance;

/// A slow fall, likeness of neighbours and noise, to a hundredth.
fn series(days: usize) -> Vec<Point> {
    let (mut chance, mut noise) = (Chance::seeded(20_261_125), 0.0);
    let point = |day| {
        noise = 0.4 * noise + 60.0 * chance.normal();
        let value: f64 = 800.0 - 0.02 * day as f64 + noise;
        Point { at: day as f64, value: (value * 100.0).round() / 100.0 }
    };
    (0..days).map(point).collect()
}

fn statistics(c: &mut Criterion) {
    let mut group = c.benchmark_group("statistics");
    group.sample_size(10);
    for days in [500, 3_650, 36_500] {
        let points = series(days);
        let values: Vec<f64> = points.iter().map(|point| point.value).collect();
        let penalty = 4.0 * (days as f64).ln();
        group.throughput(Throughput::Elements(days as u64));
        let mut bench = |name: &str, deed: &dyn Fn() -> bool| {
            group.bench_function(BenchmarkId::new(name, days), |b| b.iter(deed));
        };
        bench("robust slope with its range", &|| black_box(robust_slope(&points, 0.95, 1.0)).is_some());
        bench("Mann-Kendall", &|| black_box(mann_kendall(&values)).is_some());
        bench("Hamed-Rao, three lags", &|| black_box(hamed_rao(&points, Some(3))).is_some());
        bench("Pettitt", &|| black_box(pettitt(&values)).is_some());
        // These two are n² where nothing changes, and so is Hamed-Rao with all lags.
        if days < 10_000 {
            bench("Hamed-Rao, all lags", &|| black_box(hamed_rao(&points, None)).is_some());
            bench("changes, squared loss", &|| black_box(pelt(&values, 3_600.0 * penalty, 7)).is_empty());
            bench("changes, bounded loss", &|| black_box(robust_pelt(&values, penalty, 7)).is_empty());
        }
    }
    group.finish();
}

criterion_group!(benches, statistics);
criterion_main!(benches);
