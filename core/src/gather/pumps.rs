//! What the checks of every pump say, for who counts pumps.

use super::kit::PumpInputs;
use super::Record;
use crate::answer::pump::wear::{course, NewPart, Point};
use crate::answer::pump::{Grade, NoPull, Pull, Verdict};
use crate::answer::Estimate;
use crate::quantity::Wear;
use crate::record::{date, text, Kind, Sides};
use crate::time::{Instant, LocalDay};
use crate::trouble::Trouble;

/// One side of a check.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Checked {
    /// When.
    pub at: Instant,
    /// Which side, or both on one gauge.
    pub side: Sides,
    /// What it pulls at the highest level, or why that is not known.
    pub pull: Result<Pull, NoPull>,
    /// Whether that meets its range; none where its readings are in doubt.
    pub verdict: Option<Verdict>,
}

/// How one side wears, where enough checks say it.
pub type WearOfSide = (Sides, Option<Estimate<Wear>>);

/// A pump, its checks in order of time, and how each side wears.
#[derive(Debug, Clone, PartialEq)]
pub struct CheckedPump {
    /// Its record.
    pub id: String,
    /// What it is made for.
    pub grade: Option<Grade>,
    /// Since when it is used.
    pub in_use_since: Option<LocalDay>,
    /// Its checks, a side each.
    pub checks: Vec<Checked>,
    /// How it wears by the month, by the checks done as the latest was.
    pub wear: Vec<WearOfSide>,
}

/// Every pump with its checks.
///
/// # Errors
/// Where the store can't be read.
pub fn checked(record: &Record<'_>) -> Result<Vec<CheckedPump>, Trouble> {
    let mut found = Vec::new();
    for row in record.journal.of_kind(Kind::Pump)? {
        let pump = PumpInputs::over(record, &row.subject)?;
        let wear = wear_of(record, &pump)?;
        found.push(CheckedPump {
            grade: pump.grade,
            in_use_since: date(&pump.fields, "in_use_since").map(LocalDay::on),
            checks: checks_of(&pump),
            id: pump.id,
            wear,
        });
    }
    Ok(found)
}

fn checks_of(pump: &PumpInputs) -> Vec<Checked> {
    let mut found = Vec::new();
    for looked in &pump.checks {
        let Some(at) = looked.check.at.as_ref().map(crate::time::Moment::instant) else { continue };
        let sure = pump.doubts(looked).is_empty();
        found.extend(pump.sides(looked).into_iter().map(|side| Checked {
            at,
            side: side.side,
            pull: side.pull,
            verdict: side.judged.filter(|_| sure).map(|judged| judged.verdict),
        }));
    }
    found
}

fn wear_of(record: &Record<'_>, pump: &PumpInputs) -> Result<Vec<WearOfSide>, Trouble> {
    let Some(latest) = pump.latest() else { return Ok(Vec::new()) };
    let parts: Vec<NewPart> = record
        .journal
        .fields_of_kind(Kind::Part)?
        .into_iter()
        .filter(|(_, fields)| text(fields, "pump") == Some(&pump.id))
        .filter_map(|(part, fields)| {
            let since = LocalDay::on(date(&fields, "in_use_since")?);
            Some(NewPart { at: since.begins(record.zone, record.settings.day_start), part })
        })
        .collect();
    let of = |side: Sides| {
        let same = pump.checks.iter().filter(|looked| looked.check.set_up == latest.check.set_up);
        let points: Vec<Point> = same
            .filter(|looked| pump.doubts(looked).is_empty())
            .filter_map(|looked| {
                Some(Point {
                    at: looked.check.at.as_ref()?.instant(),
                    check: looked.check.id.clone(),
                    gauge: looked.check.gauge.clone()?,
                    pull: *looked.pull(side)?,
                })
            })
            .collect();
        (!points.is_empty()).then(|| (side, course(&points, &parts, pump.limits.low, record.now).and_then(|c| c.slope)))
    };
    Ok([Sides::Left, Sides::Right, Sides::Both].into_iter().filter_map(of).collect())
}
