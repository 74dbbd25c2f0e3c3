//! What a pump's checks say, gathered once.

use crate::answer::pump::{
    doubts::{self, Doubt},
    judge, limits, Grade, Judged, Limits, NoPull, Pull, Verdict,
};
use crate::guidance::{KitRules, Rules};
use crate::quantity::{Level, Quantity};
use crate::record::check::LEEWAY;
use crate::record::{whole, Fields, Gauge, GaugeCheck, Kind, Reading, Sides, RULES};
use crate::screen::View;
use crate::time::Instant;
use crate::trouble::Trouble;

/// A check with the gauge it was made with, and what each side that was read pulls at
/// the highest level.
pub(super) struct Looked {
    pub check: GaugeCheck,
    pub gauge: Option<Gauge>,
    pub pulls: Vec<(Sides, Result<Pull, NoPull>)>,
}

impl Looked {
    /// A check with its gauge; `levels` is what the pump's dial has.
    pub(super) fn at(view: &View<'_>, check: GaugeCheck, levels: Option<Level>) -> Result<Self, Trouble> {
        let gauge = gauge_of(view, &check)?;
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
    pub(super) fn pull(&self, side: Sides) -> Option<&Pull> {
        self.pulls.iter().find(|(of, _)| *of == side)?.1.as_ref().ok()
    }
}

/// Checks that are looked at, the latest: more lie too far back to tell of the present.
const MOST_CHECKS: u32 = 36;

/// What one side pulls at the highest level.
pub(super) struct SideLook {
    pub side: Sides,
    pub pull: Result<Pull, NoPull>,
    pub judged: Option<Judged>,
}

/// A pump and its checks, in order of time.
pub(super) struct PumpLook {
    pub id: String,
    pub fields: Fields,
    pub grade: Option<Grade>,
    pub levels: Option<Level>,
    pub limits: Limits,
    pub rules: KitRules,
    pub checks: Vec<Looked>,
}

/// The rules as they hold for this record.
pub(super) fn rules(view: &View<'_>) -> Result<Rules, Trouble> {
    let fields = view.journal.record(RULES)?.map(|(_, fields)| fields).unwrap_or_default();
    Ok(Rules::read(&fields))
}

/// The gauge of a check.
pub(super) fn gauge_of(view: &View<'_>, check: &GaugeCheck) -> Result<Option<Gauge>, Trouble> {
    let Some(id) = check.gauge.as_deref() else { return Ok(None) };
    Ok(view.journal.record(id)?.map(|(_, mut fields)| {
        if let Some(shared) = view.shared {
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
    view: &View<'_>,
    pump: &str,
    levels: Option<Level>,
    by: Instant,
    back: Back,
) -> Result<Vec<Looked>, Trouble> {
    let most = match back {
        Back::Checks(most) => most,
        Back::HighestLevel => NOW,
    };
    let mut found = Vec::new();
    for row in view.journal.naming(Kind::Check, "pump", pump, by, most)? {
        let (_, fields) = view.record(&row.subject)?;
        let check = GaugeCheck::read(&row.subject, &fields);
        if check.readings.is_empty() {
            continue;
        }
        let looked = Looked::at(view, check, levels)?;
        let pulled = !looked.pulls.is_empty();
        found.push(looked);
        if pulled && back == Back::HighestLevel {
            break;
        }
    }
    found.reverse();
    Ok(found)
}

impl PumpLook {
    pub(super) fn over(view: &View<'_>, pump: &str) -> Result<Self, Trouble> {
        Self::over_latest(view, pump, MOST_CHECKS)
    }

    /// As [`Self::over`], but no more than so many checks.
    pub(super) fn over_latest(view: &View<'_>, pump: &str, most: u32) -> Result<Self, Trouble> {
        Self::looking(view, pump, Back::Checks(most))
    }

    /// As [`Self::over`], but no further back than what it pulls now.
    pub(super) fn at_present(view: &View<'_>, pump: &str) -> Result<Self, Trouble> {
        Self::looking(view, pump, Back::HighestLevel)
    }

    fn looking(view: &View<'_>, pump: &str, back: Back) -> Result<Self, Trouble> {
        let (_, mut fields) = view.record(pump)?;
        if let Some(shared) = view.shared {
            shared.complete(Kind::Pump, &mut fields);
        }
        let rules = KitRules::read(&rules(view)?);
        let levels = whole(&fields, "levels").map(Level::new);
        Ok(Self {
            id: pump.to_owned(),
            grade: limits::grade(&fields),
            levels,
            limits: Limits::of(&fields, &rules),
            checks: checks_of(view, pump, levels, view.now.plus(LEEWAY), back)?,
            fields,
            rules,
        })
    }

    /// The latest check that was read at the highest level.
    pub(super) fn latest(&self) -> Option<&Looked> {
        self.checks.iter().rev().find(|looked| !looked.pulls.is_empty())
    }

    /// What each side that was read pulls at the highest level, judged.
    pub(super) fn sides(&self, looked: &Looked) -> Vec<SideLook> {
        let span = looked.gauge.and_then(|gauge| gauge.span);
        let judged = |pull: &Pull| judge(pull, &self.limits, self.rules.verdict_chance, span);
        looked
            .pulls
            .iter()
            .map(|(side, pull)| SideLook { side: *side, pull: *pull, judged: pull.as_ref().ok().map(judged) })
            .collect()
    }

    pub(super) fn doubts(&self, looked: &Looked) -> Vec<Doubt> {
        doubts::doubts(&looked.check, self.levels, &self.rules)
    }
}

/// What can be said of the sides together: the worst of what is sure, else that it
/// can't be told.
pub(super) fn together(sides: &[SideLook]) -> Verdict {
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
pub(crate) fn below_its_range(view: &View<'_>, pump: &str) -> Result<bool, Trouble> {
    Ok(latest_pulls(view, pump)?.iter().any(|(_, _, _, judged)| judged.verdict == Verdict::Below))
}

/// What each side of a pump pulled at the latest check of its highest level, judged, and
/// against what; none where the readings of that check are in doubt. The weakest first.
pub(in crate::screen) fn latest_pulls(
    view: &View<'_>,
    pump: &str,
) -> Result<Vec<(Instant, Limits, Pull, Judged)>, Trouble> {
    let look = PumpLook::at_present(view, pump)?;
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
