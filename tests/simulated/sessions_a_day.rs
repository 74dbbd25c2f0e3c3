//! How often a day a person expresses, told from the last week where sessions are missing from it.

use drawwell_core::answer::night::gathered::{sessions_since, Gathered, NightInputs};
use drawwell_core::guidance::{NightRules, Rules};
use drawwell_core::record::{Kind, Removal, Rhythm, Row};
use drawwell_core::time::{DayStart, Span};
use drawwell_tests::simulated_family::{Family, Simulator};

fn row(removal: &Removal) -> Row {
    Row {
        subject: removal.session.clone(),
        kind: Kind::Session,
        at: Some(removal.at.minus(Span::minutes(15))),
        until: Some(removal.at),
        day: None,
        running: false,
        lacks: false,
        taken_out: false,
        pain: false,
    }
}

/// How often it is told right, and how often a session too few, of many families.
fn told_right(by: Simulator, family: &Family, families: u64) -> (f64, f64) {
    let (mut right, mut fewer) = (0, 0);
    for seed in 0..families {
        let life = by.live(family, 20, seed + 9_000_000);
        let Some(last) = life.removals.last() else { continue };
        let (now, zone) = (last.at.plus(Span::minutes(20)), last.zone);
        let since = sessions_since(now, zone, DayStart::MIDNIGHT);
        let sessions: Vec<Row> = life.removals.iter().filter(|removal| removal.at >= since).map(row).collect();
        let told = Gathered::of(NightInputs {
            now,
            zone,
            start: DayStart::MIDNIGHT,
            rhythm: Rhythm::default(),
            rules: NightRules::read(&Rules::default()),
            sessions: &sessions,
            running: None,
            points: Vec::new(),
            changes: Vec::new(),
            births: &[],
        });
        let count = told.frame.sessions.map(|sessions| sessions.value.get());
        right += u32::from(count == Some(family.sessions));
        fewer += u32::from(count.is_some_and(|count| count < family.sessions));
    }
    (f64::from(right) / families as f64, f64::from(fewer) / families as f64)
}

#[test]
fn with_one_session_in_ten_missing_they_are_counted_right_in_three_families_of_four() {
    let mut all = Vec::new();
    for by in Simulator::BOTH {
        for sessions in [6, 8] {
            let (right, fewer) = told_right(by, &Family { sessions, ..Family::USUAL }, 200);
            assert!(right >= 0.95 && fewer <= 0.05, "{by:?} {sessions}: {right}");
            let (right, fewer) = told_right(by, &Family { sessions, unlogged: 0.1, ..Family::USUAL }, 200);
            println!("{by:?} {sessions}: right {right:.2}, fewer {fewer:.2}");
            // Never more than are done; who is tired leaves out the same ones at night.
            assert!(right >= 0.6 && (right + fewer - 1.0).abs() < 1e-9, "{by:?} {sessions}: {right} {fewer}");
            all.push(right);
        }
    }
    assert!(all.iter().sum::<f64>() / all.len() as f64 >= 0.75, "{all:?}");
}
