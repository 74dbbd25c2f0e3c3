//! What a pump's checks say, gathered once.

use super::Record;
use crate::answer::pump::{
    doubts::{self, Doubt},
    judge, limits, Grade, Judged, Limits, NoPull, Pull, Verdict,
};
use crate::guidance::KitRules;
use crate::quantity::{Level, Quantity};
use crate::record::check::LEEWAY;
use crate::record::{whole_number, Fields, Gauge, GaugeCheck, Kind, Reading, Sides};
use crate::time::Instant;
use crate::trouble::Trouble;

/// A check with the gauge it was made with, and what each side that was read pulls at
/// the highest level.
pub(crate) struct CheckInputs {
    pub check: GaugeCheck,
    pub gauge: Option<Gauge>,
    pub pulls: Vec<(Sides, Result<Pull, NoPull>)>,
}

impl CheckInputs {
    /// A check with its gauge; `levels` is what the pump's dial has.
    pub(crate) fn at(record: &Record<'_>, check: GaugeCheck, levels: Option<Level>) -> Result<Self, Trouble> {
        let gauge = gauge_of(record, &check)?;
        let pulls = [Sides::Left, Sides::Right, Sides::Both]
            .into_iter()
            .map(|side| {
                let of_side = |reading: &Reading| reading.place.side == side && doubts::at_highest(reading, levels);
                (side, Pull::of(&check, gauge.as_ref(), of_side))
            })
            .filter(|(_, pull)| *pull != Err(NoPull::NotRead))
            .collect();
        Ok(Self { check, gauge, pulls })
    }

    /// What a side pulls at the highest level.
    pub(crate) fn pull(&self, side: Sides) -> Option<&Pull> {
        self.pulls.iter().find(|(of, _)| *of == side)?.1.as_ref().ok()
    }
}

/// Checks that are looked at, the latest: more lie too far back to tell of the present.
const MOST_CHECKS: u32 = 36;

/// What one side pulls at the highest level.
pub(crate) struct SideInputs {
    pub side: Sides,
    pub pull: Result<Pull, NoPull>,
    pub judged: Option<Judged>,
}

/// A pump and its checks, in order of time.
pub(crate) struct PumpInputs {
    pub id: String,
    pub fields: Fields,
    pub grade: Option<Grade>,
    pub levels: Option<Level>,
    pub limits: Limits,
    pub rules: KitRules,
    pub checks: Vec<CheckInputs>,
}

/// The gauge of a check.
pub(crate) fn gauge_of(record: &Record<'_>, check: &GaugeCheck) -> Result<Option<Gauge>, Trouble> {
    let Some(id) = check.gauge.as_deref() else { return Ok(None) };
    Ok(record.journal.record(id)?.map(|(_, mut fields)| {
        if let Some(shared) = record.shared {
            shared.complete(Kind::Gauge, &mut fields);
        }
        Gauge::read(&fields)
    }))
}

/// How far back checks are looked at.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Back {
    /// The latest so many.
    Checks(u32),
    /// To the latest that was read at the highest level.
    HighestLevel,
}

/// The latest checks of a pump by an instant that hold a reading, in order of time;
/// `levels` is what its dial has.
fn checks_of(
    record: &Record<'_>,
    pump: &str,
    levels: Option<Level>,
    by: Instant,
    back: Back,
) -> Result<Vec<CheckInputs>, Trouble> {
    let most = match back {
        Back::Checks(most) => most,
        Back::HighestLevel => NOW,
    };
    let mut found = Vec::new();
    for row in record.journal.naming(Kind::Check, "pump", pump, by, most)? {
        let (_, fields) = record.record(&row.subject)?;
        let check = GaugeCheck::read(&row.subject, &fields);
        if check.readings.is_empty() {
            continue;
        }
        let looked = CheckInputs::at(record, check, levels)?;
        let pulled = !looked.pulls.is_empty();
        found.push(looked);
        if pulled && back == Back::HighestLevel {
            break;
        }
    }
    found.reverse();
    Ok(found)
}

impl PumpInputs {
    pub(crate) fn over(record: &Record<'_>, pump: &str) -> Result<Self, Trouble> {
        Self::over_latest(record, pump, MOST_CHECKS)
    }

    /// As [`Self::over`], but no more than so many checks.
    pub(crate) fn over_latest(record: &Record<'_>, pump: &str, most: u32) -> Result<Self, Trouble> {
        Self::looking(record, pump, Back::Checks(most))
    }

    /// As [`Self::over`], but no further back than what it pulls now.
    pub(crate) fn at_present(record: &Record<'_>, pump: &str) -> Result<Self, Trouble> {
        Self::looking(record, pump, Back::HighestLevel)
    }

    fn looking(record: &Record<'_>, pump: &str, back: Back) -> Result<Self, Trouble> {
        let (_, mut fields) = record.record(pump)?;
        if let Some(shared) = record.shared {
            shared.complete(Kind::Pump, &mut fields);
        }
        let rules = KitRules::read(record.rules()?);
        let levels = whole_number(&fields, "levels").map(Level::new);
        Ok(Self {
            id: pump.to_owned(),
            grade: limits::grade(&fields),
            levels,
            limits: Limits::of(&fields, &rules),
            checks: checks_of(record, pump, levels, record.now.plus(LEEWAY), back)?,
            fields,
            rules,
        })
    }

    /// The latest check that was read at the highest level.
    pub(crate) fn latest(&self) -> Option<&CheckInputs> {
        self.checks.iter().rev().find(|looked| !looked.pulls.is_empty())
    }

    /// What each side that was read pulls at the highest level, judged.
    pub(crate) fn sides(&self, looked: &CheckInputs) -> Vec<SideInputs> {
        let span = looked.gauge.and_then(|gauge| gauge.span);
        let judged = |pull: &Pull| judge(pull, &self.limits, self.rules.verdict_chance, span);
        looked
            .pulls
            .iter()
            .map(|(side, pull)| SideInputs { side: *side, pull: *pull, judged: pull.as_ref().ok().map(judged) })
            .collect()
    }

    pub(crate) fn doubts(&self, looked: &CheckInputs) -> Vec<Doubt> {
        doubts::doubts(&looked.check, self.levels, &self.rules)
    }
}

/// What can be said of the sides together: the worst of what is sure, else that it
/// can't be told.
pub(crate) fn together(sides: &[SideInputs]) -> Verdict {
    let verdicts: Vec<Verdict> = sides.iter().map(|s| s.judged.map_or(Verdict::CannotTell, |j| j.verdict)).collect();
    let any = |wanted| verdicts.contains(&wanted);
    match () {
        () if any(Verdict::Below) => Verdict::Below,
        () if any(Verdict::Above) => Verdict::Above,
        () if any(Verdict::CannotTell) || verdicts.is_empty() => Verdict::CannotTell,
        () => Verdict::Meets,
    }
}

/// Checks that are looked at for what a pump pulls now: the latest may hold no highest level.
const NOW: u32 = 4;

/// Whether a pump is judged to pull below its range by its latest check.
pub(crate) fn below_its_range(record: &Record<'_>, pump: &str) -> Result<bool, Trouble> {
    Ok(latest_pulls(record, pump)?.iter().any(|(_, _, _, judged)| judged.verdict == Verdict::Below))
}

/// What each side of a pump pulled at the latest check of its highest level, judged, and
/// against what; none where the readings of that check are in doubt. The weakest first.
pub(crate) fn latest_pulls(record: &Record<'_>, pump: &str) -> Result<Vec<(Instant, Limits, Pull, Judged)>, Trouble> {
    let look = PumpInputs::at_present(record, pump)?;
    let Some(latest) = look.latest().filter(|latest| look.doubts(latest).is_empty()) else { return Ok(Vec::new()) };
    let Some(at) = latest.check.at.as_ref().map(crate::time::Moment::instant) else { return Ok(Vec::new()) };
    let mut found: Vec<_> = look
        .sides(latest)
        .into_iter()
        .filter_map(|side| Some((at, look.limits, side.pull.ok()?, side.judged?)))
        .collect();
    found.sort_by(|a, b| a.2.estimate.value.canonical().total_cmp(&b.2.estimate.value.canonical()));
    Ok(found)
}
