//! How fast kept milk is: ten years with eight thousand bottles, three hundred of them not empty.

#![allow(
    missing_docs,
    clippy::expect_used,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a benchmark that meets what it did not expect stops there"
)]

use std::hint::black_box;

use criterion::{criterion_group, criterion_main, Criterion};
use drawwell_core::answer::keeping::{in_force, keep, use_first, Kept};
use drawwell_core::app::App;
use drawwell_core::journal::Journal;
use drawwell_core::quantity::{Quantity, Volume};
use drawwell_core::record::{Container, KeptIn};
use drawwell_core::screen::shapes::{Clock, Opening, Place};
use drawwell_core::time::{Instant, Moment, Span, Zone};
use serde_json::json;

const NOW: Instant = Instant::from_unix_milliseconds(1_790_000_000_000);
const BOTTLES: i64 = 8000;
const FULL: i64 = 300;

fn zone() -> Zone {
    Zone::named("Europe/Berlin").unwrap()
}

/// A bottle every eleven hours, all but the latest given after some days.
fn filled(journal: &mut Journal) {
    for number in 0..BOTTLES {
        let left = BOTTLES - number;
        let at = Moment::new(NOW.minus(Span::hours(11 * left)), zone());
        journal
            .quiet_act(at.instant(), |w| {
                let id = format!("bottle-{number}");
                w.set(&id, "kind", &json!("container"))?;
                w.set(&id, "at", &at.to_json())?;
                w.set(&id, "amount", &json!({ "value": 60 + number % 90, "unit": "mL" }))?;
                w.set(&id, "kept_in", &json!("freezer"))?;
                w.set(&id, "label", &json!(number.to_string()))?;
                if left > FULL {
                    let event = format!("{id}-given");
                    w.set(&event, "kind", &json!("milk_event"))?;
                    w.set(&event, "at", &Moment::new(at.instant().plus(Span::hours(72)), zone()).to_json())?;
                    w.set(&event, "container", &json!(id))?;
                    w.set(&event, "happened", &json!("given"))?;
                }
                Ok(())
            })
            .unwrap();
    }
}

fn kept(c: &mut Criterion) {
    let mut group = c.benchmark_group("kept milk");
    group.sample_size(20);
    let all: Vec<Kept> = (0..FULL)
        .map(|number| {
            let container = Container {
                id: format!("{number:03}"),
                label: None,
                expressed: Moment::new(NOW.minus(Span::hours(11 * number)), zone()),
                amount: Some(Volume::from_canonical(60.0 + (number * 37 % 91) as f64 * 0.7)),
                kept_in: Some(KeptIn::Freezer),
                room: None,
            };
            keep(&container, &[], &in_force(None, None, None), NOW)
        })
        .collect();
    let all: Vec<&Kept> = all.iter().collect();
    group.bench_function("what to use first, 300 bottles, 1,234.5 mL", |b| {
        b.iter(|| black_box(use_first(&all, Volume::from_canonical(1234.5), NOW)));
    });
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("kept");
    let mut journal = Journal::open(&path, "bench", NOW).unwrap().journal;
    filled(&mut journal);
    drop(journal);
    let clock =
        Clock { unix_milliseconds: NOW.unix_milliseconds(), zone: "Europe/Berlin".into(), offset_seconds: None };
    let opening = Opening { device: "bench".into(), language: "en".into(), look_around: false };
    let mut app = App::open(path, opening, &clock).unwrap();
    for (name, place) in [
        ("the shelf", Place::Kept),
        ("what to use first", Place::UseFirst { milliliters: 120 }),
        ("a bottle", Place::Container { id: format!("bottle-{}", BOTTLES - 1) }),
        ("now", Place::Now),
    ] {
        group.bench_function(format!("{name}, ten years with 8,000 bottles"), |b| {
            b.iter(|| black_box(app.show(&place, &clock).unwrap()));
        });
    }
    group.finish();
}

criterion_group!(benches, kept);
criterion_main!(benches);
