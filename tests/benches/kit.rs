//! How fast Kit is at ten years, with a check each month. `cargo bench -p drawwell-tests
//! --bench kit`; the figures stand in DEVELOPERS.md.

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
use drawwell_core::time::{Instant, Moment, Span, Zone};
use drawwell_tests::ten_years::{self, clock};
use serde_json::json;

/// A check a month for ten years: three readings a side and five levels once.
fn checks() -> String {
    let mut file = String::from(
        r#"{"fact":"gauge","id":"bench-gauge","span":{"value":450,"unit":"mm[Hg]"},"reads_in":"mm[Hg]","accuracy_class":"1.6"}
{"fact":"pump","id":"bench-pump","grade":"personal","levels":12}
"#,
    );
    for month in 0..120_i64 {
        let at: Instant = ten_years::END.minus(Span::hours(24 * 30 * (120 - month)));
        let moment = Moment::new(at, Zone::UTC);
        let value = 290.0 - month as f64 * 0.2;
        let mut readings = serde_json::Map::new();
        let places =
            [("left", None), ("left", None), ("left", None), ("right", None), ("right", None), ("right", None)];
        let levels = [2, 4, 6, 8, 10].map(|level| ("left", Some(level)));
        for (number, (side, level)) in places.into_iter().chain(levels).enumerate() {
            let shown = level.map_or(value, |level| value * f64::from(level) / 13.0) + (number % 2) as f64;
            readings.insert(
                format!("{number:03}"),
                json!({ "at": moment.to_rfc3339(), "zone": "UTC", "side": side, "level": level,
                        "vacuum": { "value": shown.round(), "unit": "mm[Hg]" } }),
            );
        }
        let line = json!({ "fact": "check", "id": format!("check-{month}"), "at": moment.to_json(), "pump": "bench-pump",
                           "gauge": "bench-gauge", "connected": "dead_headed", "readings": readings });
        file.push_str(&format!("{line}\n"));
    }
    file
}

fn kit(c: &mut Criterion) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("ten.drawwell");
    let mut journal = Journal::open(&path, "bench", ten_years::END).unwrap().journal;
    journal.merge(&ten_years::changes(), ten_years::END).unwrap();
    drop(journal);
    let now = clock(ten_years::END.plus(Span::minutes(5)));
    let mut app = ten_years::open(&path).unwrap();
    app.import_file(&mut checks().as_bytes(), &now).unwrap();
    let mut group = c.benchmark_group("kit at ten years, a check each month");
    for (name, place) in [
        ("the list", Place::Kit),
        ("the pump", Place::Pump { id: "bench-pump".to_owned() }),
        ("a check", Place::Check { id: "check-119".to_owned() }),
        ("the flange", Place::Fit),
    ] {
        group.bench_function(name, |b| b.iter(|| black_box(app.show(&place, &now).unwrap())));
    }
    app.update(Event::SetUp { field: "next_pump".to_owned(), value: "bench-pump".to_owned() }, &now).unwrap();
    app.update(Event::Start, &now).unwrap();
    let mark = Event::Mark { deed: drawwell_core::screen::shapes::Deed::Stronger };
    app.update(mark, &now).unwrap();
    group.bench_function("a running session that says its level in mmHg", |b| {
        b.iter(|| black_box(app.show(&Place::Now, &now).unwrap()))
    });
}

criterion_group!(benches, kit);
criterion_main!(benches);
