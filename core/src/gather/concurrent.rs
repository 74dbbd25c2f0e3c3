//! What else changed about a day: what was written down, and what the days themselves say.

use super::Record;
use crate::answer::supply::concurrent::{compared, from_days, window, Fact, TwoSides, What, When};
use crate::answer::supply::DayProduction;
use crate::quantity::{Count, Entered, Temperature};
use crate::record::{text, whole_number, Kind, Session};
use crate::statistics::median;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// No more than this stands beside one.
const MOST: usize = 8;

/// The facts that stand beside a change, in order of days. `days` are what the days about it
/// made; `fever` is the temperature from which one was noted.
///
/// # Errors
/// Where the store can't be read.
pub(crate) fn facts(
    record: &Record<'_>,
    change: &When,
    days: &[DayProduction],
    fever: Temperature,
) -> Result<Vec<Fact>, Trouble> {
    let mut facts = recorded(record, change, fever)?;
    facts.extend(from_days(change, days));
    // Where a range of dates is long, what lies nearest to the day goes before.
    facts.sort_by_key(|fact| fact.day.days_since(change.on).abs());
    facts.truncate(MOST);
    facts.sort_by_key(|fact| fact.day);
    Ok(facts)
}

/// What was written down within the range of dates.
fn recorded(record: &Record<'_>, change: &When, fever: Temperature) -> Result<Vec<Fact>, Trouble> {
    let (from, to) = window(change);
    let mut facts = Vec::new();
    for kind in [Kind::Pump, Kind::Part, Kind::Flange] {
        for row in record.journal.of_kind(kind)? {
            let (_, fields) = record.record(&row.subject)?;
            let since =
                text(&fields, "in_use_since").and_then(|d| chrono::NaiveDate::parse_from_str(d, "%Y-%m-%d").ok());
            let day = since.map(LocalDay::on).filter(|day| (from..=to).contains(day));
            facts.extend(day.map(|day| Fact { day, what: What::NewKit(kind), record: Some(row.subject.clone()) }));
        }
    }
    let mut day = from;
    while day <= to {
        for row in record.journal.of_day(day)?.into_iter().filter(|row| !row.taken_out) {
            let entry = Some(row.subject.clone());
            match row.kind {
                Kind::LifeEvent => {
                    let what = text(&record.record(&row.subject)?.1, "what").unwrap_or("other").to_owned();
                    facts.push(Fact { day, what: What::Noted(what), record: entry });
                }
                Kind::Sign => {
                    let (_, fields) = record.record(&row.subject)?;
                    let measured = fields.get("temperature").and_then(Entered::<Temperature>::from_json);
                    if measured.is_some_and(|t| t.quantity() >= fever) {
                        facts.push(Fact { day, what: What::Fever, record: entry });
                    }
                }
                _ => {}
            }
        }
        let Some(next) = LocalDay::from_number(day.number() + 1) else { break };
        day = next;
    }
    facts.extend(setting(record, change)?);
    Ok(facts)
}

fn level_of(record: &Record<'_>, session: &str) -> Result<Option<f64>, Trouble> {
    let (_, fields) = record.record(session)?;
    let typed = whole_number(&fields, "level_expression").map(f64::from);
    let session = Session::read(session, &fields);
    let marked = session.ended.as_ref().and_then(|end| session.used_at(end.instant()).level);
    Ok(typed.or(marked.map(|l| f64::from(l.get()))))
}

/// Another usual level on the dial before and after, by the middle of each day's sessions.
fn setting(record: &Record<'_>, change: &When) -> Result<Option<Fact>, Trouble> {
    let (mut day, last) = compared(change);
    let mut levels = TwoSides::default();
    while day <= last {
        let mut of_day = Vec::new();
        for row in record.journal.of_day(day)?.into_iter().filter(|row| !row.taken_out && row.kind == Kind::Session) {
            of_day.extend(level_of(record, &row.subject)?);
        }
        if let Some(middle) = median(&of_day) {
            levels.take(change, day, middle);
        }
        let Some(next) = LocalDay::from_number(day.number() + 1) else { break };
        day = next;
    }
    let differ = levels.differ_by(1.0).map(|(before, after)| (before.round() as u32, after.round() as u32));
    Ok(differ.filter(|(before, after)| before != after).map(|(before, after)| Fact {
        day: change.on,
        what: What::Setting(Count::new(before), Count::new(after)),
        record: None,
    }))
}
