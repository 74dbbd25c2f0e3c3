//! Checks of pumps as rows.

use drawwell_core::answer::pump::NoPull;
use drawwell_core::gather::{pumps, Record};
use drawwell_core::time::{LocalDay, Moment};
use drawwell_core::trouble::Trouble;

use super::figures::Tenths;
use super::life::Life;
use super::names::{grade_name, verdict_name};
use crate::table::Checks;

/// The rows of checks.
pub(super) fn rows(record: &Record<'_>, life: &Life, family: &str) -> Result<Vec<Checks>, Trouble> {
    let mut rows = Vec::new();
    for (place, pump) in (1..).zip(pumps::checked(record)?) {
        let by_now: Vec<_> = pump.checks.iter().filter(|check| check.at <= record.now).collect();
        for (number, check) in (1..).zip(&by_now) {
            let later = by_now.iter().any(|other| other.side == check.side && other.at > check.at);
            let day = LocalDay::of(&Moment::new(check.at, record.zone), record.settings.day_start);
            let used = pump.in_use_since.map(|since| day.days_since(since)).filter(|days| *days >= 0);
            let pull = check.pull.map(|pull| Tenths::from(pull.estimate)).map_err(why);
            let wear = pump.wear.iter().find(|(side, _)| *side == check.side).and_then(|(_, wear)| *wear);
            let wear = match wear {
                _ if later => Err("not_latest"),
                Some(wear) => Ok(Tenths::from(wear)),
                None => Err("needs_checks"),
            };
            let at = life.at(check.at);
            rows.push(Checks {
                family: family.to_owned(),
                pump: place,
                number,
                grade: grade_name(pump.grade),
                side: check.side.name(),
                day: at.day.ok(),
                day_why: at.day.err(),
                used_days: used,
                used_days_why: if used.is_none() { Some("not_said") } else { None },
                pull_tenths: pull.ok().map(|pull| pull.value),
                pull_low: pull.ok().map(|pull| pull.low),
                pull_high: pull.ok().map(|pull| pull.high),
                pull_tenths_why: pull.err(),
                verdict: verdict_name(check.verdict),
                latest: i64::from(!later),
                wear_tenths: wear.ok().map(|wear| wear.value),
                wear_low: wear.ok().map(|wear| wear.low),
                wear_high: wear.ok().map(|wear| wear.high),
                wear_tenths_why: wear.err(),
            });
        }
    }
    Ok(rows)
}

fn why(none: NoPull) -> &'static str {
    match none {
        NoPull::NotRead => "not_read",
        NoPull::GaugeUnknown => "gauge_unknown",
        NoPull::AtEndOfSpan => "at_end_of_span",
        NoPull::Needs(_) => "needs_readings",
    }
}
