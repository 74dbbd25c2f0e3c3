//! What the steps of a pump's speed dial are in cycles per minute: from traces, and counted.

use super::Record;
use crate::answer::pump::speed_steps::counted;
use crate::answer::trace::Findings;
use crate::answer::Estimate;
use crate::quantity::{Level, Speed};
use crate::record::check::LEEWAY;
use crate::record::{whole_number, Kind, Taps};
use crate::trouble::Trouble;

/// Traces and counts that are looked at, the latest.
const LOOKED_AT: u32 = 60;

/// A step, and where its speed was found.
pub(crate) struct SpeedStep {
    pub step: Level,
    pub speed: Estimate<Speed>,
    /// The trace or the count.
    pub id: String,
    pub by_trace: bool,
}

/// The latest of each step; a trace goes before a count.
pub(crate) fn speed_steps(record: &Record<'_>, pump: &str) -> Result<Vec<SpeedStep>, Trouble> {
    let mut found: Vec<SpeedStep> = Vec::new();
    for kind in [Kind::Trace, Kind::SpeedCount] {
        for row in record.journal.naming(kind, "pump", pump, record.now.plus(LEEWAY), LOOKED_AT)? {
            let (_, fields) = record.record(&row.subject)?;
            let Some(step) = whole_number(&fields, "speed_step").map(Level::new) else { continue };
            let speed = match kind {
                Kind::Trace => fields.get("findings").and_then(Findings::from_json).and_then(|found| found.main().rate),
                _ => counted(&Taps::from_json(fields.get("taps"))).ok(),
            };
            let known = found.iter().any(|known| known.step == step);
            if let (Some(speed), false) = (speed, known) {
                found.push(SpeedStep { step, speed, id: row.subject, by_trace: kind == Kind::Trace });
            }
        }
    }
    found.sort_by_key(|step| step.step);
    Ok(found)
}
