//! Comfort as it is read from a record: sessions that were written down, imported and gathered.

use drawwell_core::answer::comfort::{comfort, Ceiling};
use drawwell_core::answer::letdown::letdowns;
use drawwell_core::answer::supply::Side;
use drawwell_core::answer::trial::{answer, order, write_order, Verdict, Way};
use drawwell_core::gather::comfort::ComfortInputs;
use drawwell_core::gather::flange_first::flange_first;
use drawwell_core::gather::trial::TrialInputs;
use drawwell_core::gather::Record;
use drawwell_core::journal::Journal;
use drawwell_core::quantity::{Count, Quantity};
use drawwell_core::record::mark::Phase;
use drawwell_core::share::exchange::import;
use drawwell_core::time::{Instant, Span, Zone};
use drawwell_tests::written::{milliliters, Written};
use serde_json::{json, Value};

const NOW: Instant = Instant::from_unix_milliseconds(1_790_000_000_000);

fn mmhg(value: f64) -> Value {
    json!({ "value": value, "unit": "mm[Hg]" })
}

fn journal(written: &Written) -> (Journal, tempfile::TempDir) {
    let folder = tempfile::tempdir().unwrap();
    let mut journal = Journal::open(&folder.path().join("j"), "phone", NOW).unwrap().journal;
    let report = import(&mut journal, &mut written.file().as_slice(), NOW).unwrap();
    assert!(report.wrong.is_empty(), "{:?}", report.wrong);
    (journal, folder)
}

/// Forty sessions, three hours apart: 140 to 240 mmHg, which hurts on the left over 190.
#[test]
fn a_ceiling_milk_and_letdowns_are_read_from_sessions_that_were_written_down() {
    let mut written = Written::within(Zone::UTC);
    for n in 0..40_i64 {
        let ended = NOW.minus(Span::hours(3 * (40 - n)));
        let vacuum = 140.0 + ((n * 7) % 11) as f64 * 10.0;
        let pain = if vacuum > 190.0 { 4 } else { 0 };
        let began = ended.minus(Span::minutes(15));
        let mut letdown = written.moment(began.plus(Span::minutes(2)));
        letdown.as_object_mut().unwrap().insert("does".into(), json!("letdown"));
        let fields = [
            ("vacuum_expression", mmhg(vacuum)),
            ("pain_left_expression", json!(pain)),
            ("amount_left", milliliters(50.0 + (n % 5) as f64)),
            ("amount_right", milliliters(55.0 + (n % 3) as f64)),
            ("marks", json!({ "1": letdown })),
        ];
        // Each fifth says nothing of how it felt.
        let said: Vec<(&str, Value)> =
            fields.into_iter().filter(|(key, _)| n % 5 > 0 || *key != "pain_left_expression").collect();
        written.session(&format!("s{n}"), ended, &said);
    }
    let (journal, _folder) = journal(&written);
    let record = Record::new(&journal, NOW, Zone::UTC).unwrap();
    let found = ComfortInputs::read(&record).unwrap();
    assert_eq!((found.felt.len(), found.silent), (32, Count::new(8)));
    let of = comfort(&found.felt, Side::Left, Phase::Expression, NOW, &found.rules).unwrap();
    let Ceiling::At(at) = of.in_vacuum.unwrap().ceiling else { panic!("not told") };
    assert!((170.0..=190.0).contains(&at.value.canonical()), "{at:?}");
    assert_eq!(comfort(&found.felt, Side::Right, Phase::Expression, NOW, &found.rules), None);
    // The first has no emptying before it.
    assert_eq!(found.milk.len(), 78);
    assert!(found.milk.iter().all(|m| m.gap == Span::hours(3) && !m.drawn));
    let heard = letdowns(&found.heard, NOW).unwrap();
    assert_eq!((heard.first.unwrap().median, heard.marked), (Span::minutes(2), Count::new(40)));
}

#[test]
fn a_trial_is_read_with_its_sessions_as_they_were_done() {
    let drawn = order(2026, Count::new(40));
    let mut written = Written::within(Zone::UTC);
    let trial = [
        ("at", written.moment(NOW.minus(Span::hours(200)))),
        ("trial_design", json!("sides")),
        ("outcome", json!("amount")),
        ("differs", json!("flange")),
        ("trial_sessions", json!(40)),
        ("seed", json!(2026)),
        ("drawn", json!(write_order(&drawn))),
    ];
    written.fact("trial", "t", &trial);
    for (place, way) in drawn.iter().enumerate() {
        let more = |own: Way| if own == Way::B { 12.0 } else { 0.0 } + (place % 4) as f64;
        // One was done the other way round, and one is left to chance: nobody said.
        let done = if place == 5 { way.other() } else { *way };
        let mut fields = vec![
            ("trial", json!("t")),
            ("trial_place", json!(place)),
            ("trial_drawn", json!(way.name())),
            ("amount_left", milliliters(50.0 + more(done))),
            ("amount_right", milliliters(60.0 + more(done.other()))),
        ];
        if place != 8 {
            fields.push(("trial_done", json!(done.name())));
        }
        written.session(&format!("s{place}"), NOW.minus(Span::hours(3 * (40 - place as i64))), &fields);
    }
    let (journal, _folder) = journal(&written);
    let record = Record::new(&journal, NOW, Zone::UTC).unwrap();
    let read = TrialInputs::read(&record, "t").unwrap().unwrap();
    assert_eq!((read.done.len(), read.order.len()), (40, 40));
    let found = answer(&read.done, &read.set_up, &read.rules);
    assert_eq!(found.verdict, Verdict::Better(Way::B));
    assert_eq!((found.pairs, found.not_as_drawn, found.not_known), (Count::new(18), Count::new(1), Count::new(1)));
    assert!(TrialInputs::read(&record, "gone").is_err());
}

/// Common practice, no source. Half of the sessions at the top, set by hand; or shown there since
/// the time before, which nobody confirmed.
#[test]
fn the_flange_is_looked_at_first_where_the_dial_was_set_to_its_top() {
    for (carried, fires) in [(false, true), (true, false)] {
        let mut written = Written::within(Zone::UTC);
        written.fact("pump", "p", &[("levels", json!(12))]);
        written.fact("flange", "f", &[("size", json!({ "value": 24, "unit": "mm" }))]);
        let measured = [
            ("at", written.moment(NOW.minus(Span::hours(90)))),
            ("nipple_left_before", json!({ "value": 16, "unit": "mm" })),
        ];
        written.fact("fit", "i", &measured);
        for n in 0..10_i64 {
            let ended = NOW.minus(Span::hours(3 * (10 - n)));
            let mut set = written.moment(ended.minus(Span::minutes(10)));
            let level = if n % 2 == 0 { 12 } else { 7 };
            for (key, value) in [("does", json!("setting")), ("level", json!(level)), ("carried", json!(carried))] {
                set.as_object_mut().unwrap().insert(key.to_owned(), value);
            }
            written.session(&format!("s{n}"), ended, &[("pump", json!("p")), ("marks", json!({ "1": set }))]);
        }
        let (journal, _folder) = journal(&written);
        let record = Record::new(&journal, NOW, Zone::UTC).unwrap();
        let found = flange_first(&record).unwrap();
        assert_eq!(found.is_some(), fires, "{found:?}");
        assert!(found.is_none_or(|found| found.at_top == Count::new(5) && found.too_wide));
    }
}
