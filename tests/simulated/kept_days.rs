//! A day's production that is kept and let go piece by piece is what it would
//! be if everything were worked out anew.

use chrono::{DateTime, Duration};
use drawwell_core::answer::supply::{Calendar, DayProduction};
use drawwell_core::gather::{self, Record};
use drawwell_core::journal::Journal;
use drawwell_core::time::{DayStart, Instant, LocalDay, Zone};
use proptest::prelude::*;
use serde_json::{json, Value};

const NOW: Instant = Instant::from_unix_milliseconds(1_775_000_000_000);
const SESSIONS: usize = 120;

#[derive(Debug, Clone)]
enum Edit {
    Amount(usize, u32),
    Unknown(usize),
    Move(usize, i64),
    TakeOut(usize, bool),
    /// So many in a row, over days.
    TakeOutStretch(usize, usize),
    /// So many in a row from the right alone, over days.
    RightAlone(usize, usize),
    Rebuild,
    GapIsWhole(usize),
    Add(i64, u32),
    Undo,
    Look,
}

fn edit() -> impl Strategy<Value = Edit> {
    prop_oneof![
        (0..SESSIONS, 0..400_u32).prop_map(|(s, ml)| Edit::Amount(s, ml)),
        (0..SESSIONS).prop_map(Edit::Unknown),
        (0..SESSIONS, -600..600_i64).prop_map(|(s, by)| Edit::Move(s, by)),
        (0..SESSIONS, any::<bool>()).prop_map(|(s, out)| Edit::TakeOut(s, out)),
        (0..SESSIONS).prop_map(Edit::GapIsWhole),
        (0..SESSIONS, 8..90_usize).prop_map(|(s, count)| Edit::TakeOutStretch(s, count)),
        (0..SESSIONS, 8..90_usize).prop_map(|(s, count)| Edit::RightAlone(s, count)),
        Just(Edit::Rebuild),
        (0..24 * 20_i64, 0..120_u32).prop_map(|(hour, ml)| Edit::Add(hour, ml)),
        Just(Edit::Undo),
        Just(Edit::Look),
    ]
}

fn at(minutes: i64) -> Value {
    let first = DateTime::parse_from_rfc3339("2026-03-01T06:00:00+01:00").unwrap();
    json!({ "at": (first + Duration::minutes(minutes)).to_rfc3339(), "zone": "Europe/Berlin" })
}

fn amount(ml: u32) -> Value {
    json!({ "value": ml, "unit": "mL", "typed": ml.to_string(), "typed_unit": "mL" })
}

fn id(number: usize) -> String {
    format!("s{number:03}")
}

fn write_session(journal: &mut Journal, id: &str, minutes: i64, ml: u32) {
    journal
        .act("add", id, NOW, |w| {
            w.set(id, "kind", &json!("session"))?;
            w.set(id, "started", &at(minutes - 20))?;
            w.set(id, "ended", &at(minutes))?;
            w.set(id, "amount_left", &amount(ml))?;
            w.set(id, "amount_right", &amount(ml + 5))
        })
        .unwrap();
}

fn days(journal: &Journal) -> Vec<DayProduction> {
    let first = LocalDay::on(chrono::NaiveDate::from_ymd_opt(2026, 2, 26).unwrap());
    let last = LocalDay::on(chrono::NaiveDate::from_ymd_opt(2026, 3, 31).unwrap());
    let calendar = Calendar { start: DayStart::MIDNIGHT, zone: Zone::named("Europe/Berlin").unwrap() };
    kept(journal, first, last, calendar)
}

/// Days as a tap reads them: what had to be worked out is kept.
fn kept(journal: &Journal, from: LocalDay, to: LocalDay, calendar: Calendar) -> Vec<DayProduction> {
    let record = Record::new(journal, NOW, calendar.zone).unwrap();
    let days = gather::days::days(&record, from, to, calendar).unwrap();
    journal.keep_days(&record.worked_out());
    days
}

fn stretch(journal: &mut Journal, from: usize, count: usize, field: &str, value: &Value) {
    let sessions = from..(from + count).min(SESSIONS);
    journal.act("enter", "", NOW, |w| sessions.clone().try_for_each(|s| w.set(&id(s), field, value))).unwrap();
}

fn apply(journal: &mut Journal, edit: &Edit, added: &mut usize) {
    let mut set = |subject: usize, field: &str, value: &Value| {
        journal.act("enter", &id(subject), NOW, |w| w.set(&id(subject), field, value)).unwrap();
    };
    match edit {
        Edit::Amount(session, ml) => set(*session, "amount_left", &amount(*ml)),
        Edit::Unknown(session) => set(*session, "amount_right", &json!({ "said": "unknown" })),
        Edit::Move(session, by) => set(*session, "ended", &at(*session as i64 * 180 + by)),
        Edit::TakeOut(session, out) => set(*session, "taken_out", &json!(out)),
        Edit::TakeOutStretch(from, count) => stretch(journal, *from, *count, "taken_out", &json!(true)),
        Edit::RightAlone(from, count) => stretch(journal, *from, *count, "sides", &json!("right")),
        Edit::Rebuild => journal.rebuild().unwrap(),
        Edit::GapIsWhole(session) => set(*session, "gap_before", &json!("whole")),
        Edit::Add(hour, ml) => {
            *added += 1;
            write_session(journal, &id(SESSIONS + *added), hour * 60, *ml);
        }
        Edit::Undo => drop(journal.undo(NOW).unwrap()),
        Edit::Look => drop(days(journal)),
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]
    #[test]
    fn kept_days_are_days_worked_out_anew(edits in prop::collection::vec(edit(), 1..14)) {
        let folder = tempfile::tempdir().unwrap();
        let mut journal = Journal::open(&folder.path().join("j"), "one", NOW).unwrap().journal;
        for number in 0..SESSIONS {
            write_session(&mut journal, &id(number), number as i64 * 180, 40 + (number as u32 * 7) % 23);
        }
        days(&journal);
        let mut added = 0;
        for edit in &edits {
            apply(&mut journal, edit, &mut added);
        }
        let kept = days(&journal);
        journal.rebuild().unwrap();
        prop_assert_eq!(days(&journal), kept.clone());
        let mut other = Journal::open(&folder.path().join("other"), "two", NOW).unwrap().journal;
        other.merge(&journal.changes().unwrap(), NOW).unwrap();
        prop_assert_eq!(days(&other), kept);
    }
}

/// The left rests from the 10th to the 50th day. Far from its last emptying
/// and from its next, what is known of a day must not hang on how many other
/// days are worked out along with it.
#[test]
fn a_side_that_rests_for_weeks_is_the_same_in_a_day_alone_and_among_all_days() {
    let folder = tempfile::tempdir().unwrap();
    let mut journal = Journal::open(&folder.path().join("j"), "one", NOW).unwrap().journal;
    journal
        .act("add", "", NOW, |w| {
            for number in 0..60 * 6 {
                let (id, minutes) = (id(number), number as i64 * 240);
                w.set(&id, "kind", &json!("session"))?;
                w.set(&id, "started", &at(minutes - 20))?;
                w.set(&id, "ended", &at(minutes))?;
                w.set(&id, "amount_right", &amount(50))?;
                match (60..300).contains(&number) {
                    true => w.set(&id, "sides", &json!("right"))?,
                    false => w.set(&id, "amount_left", &amount(50))?,
                }
            }
            Ok(())
        })
        .unwrap();
    let calendar = Calendar { start: DayStart::MIDNIGHT, zone: Zone::named("Europe/Berlin").unwrap() };
    let first = LocalDay::on(chrono::NaiveDate::from_ymd_opt(2026, 3, 1).unwrap());
    let day = |n: i32| LocalDay::from_number(first.number() + n).unwrap();
    let together = kept(&journal, first, day(60), calendar);
    journal.rebuild().unwrap();
    let alone: Vec<DayProduction> = (0..=60).flat_map(|n| kept(&journal, day(n), day(n), calendar)).collect();
    for (together, alone) in together.iter().zip(&alone) {
        assert_eq!(together, alone);
    }
    // 50 mL every four hours from the side that is in use.
    let resting = together[30].production().unwrap();
    assert!((drawwell_core::quantity::Quantity::canonical(resting) - 300.0).abs() < 1e-3, "{resting:?}");
}

/// A program before this one worked days out in another way, and kept them.
#[test]
fn days_that_an_older_program_kept_are_worked_out_anew() {
    let folder = tempfile::tempdir().unwrap();
    let mut journal = Journal::open(&folder.path().join("j"), "one", NOW).unwrap().journal;
    (0..SESSIONS).for_each(|number| write_session(&mut journal, &id(number), number as i64 * 180, 45));
    let calendar = Calendar { start: DayStart::MIDNIGHT, zone: Zone::named("Europe/Berlin").unwrap() };
    let on = |day: u32| LocalDay::on(chrono::NaiveDate::from_ymd_opt(2026, 3, day).unwrap());
    let whole = |journal: &Journal| {
        let least = drawwell_core::quantity::Share::NONE;
        let record = Record::new(journal, NOW, calendar.zone).unwrap();
        let told = gather::days::productions(&record, on(5), on(9), calendar, least).unwrap();
        journal.keep_days(&record.worked_out());
        (told, kept(journal, on(5), on(9), calendar))
    };
    let right = whole(&journal);
    assert_eq!(right.0.len(), 5);
    // The first byte tells in which way a day was written.
    let older =
        "UPDATE day_production SET milliliters = 9000, observed = 1, made = CAST(x'00' || substr(made, 2) AS BLOB)";
    assert!(journal.connection().execute(older, []).unwrap() >= 5);
    assert_eq!(whole(&journal), right);
}
