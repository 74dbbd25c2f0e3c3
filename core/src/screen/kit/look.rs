//! What a pump's checks say, gathered once.

use crate::answer::pump::{
    doubts::{self, Doubt},
    judge, limits, Grade, Judged, Limits, NoPull, Pull, Verdict,
};
use crate::guidance::{KitRules, Rules};
use crate::quantity::Level;
use crate::record::{text, whole, Fields, Gauge, GaugeCheck, Kind, Sides, RULES};
use crate::screen::View;
use crate::trouble::Trouble;

/// A check with the gauge it was made with.
pub(super) struct Looked {
    pub check: GaugeCheck,
    pub gauge: Option<Gauge>,
}

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
    Ok(view.journal.record(id)?.map(|(_, fields)| Gauge::read(&fields)))
}

/// The checks of a pump that hold a reading, in order of time.
pub(super) fn checks_of(view: &View<'_>, pump: &str) -> Result<Vec<Looked>, Trouble> {
    let mut found = Vec::new();
    for row in view.journal.of_kind(Kind::Check)? {
        let (_, fields) = view.record(&row.subject)?;
        if text(&fields, "pump") != Some(pump) {
            continue;
        }
        let check = GaugeCheck::read(&row.subject, &fields);
        if !check.readings.is_empty() {
            let gauge = gauge_of(view, &check)?;
            found.push(Looked { check, gauge });
        }
    }
    Ok(found)
}

impl PumpLook {
    pub(super) fn over(view: &View<'_>, pump: &str) -> Result<Self, Trouble> {
        let (_, fields) = view.record(pump)?;
        let rules = KitRules::read(&rules(view)?);
        Ok(Self {
            id: pump.to_owned(),
            grade: limits::grade(&fields),
            levels: whole(&fields, "levels").map(Level::new),
            limits: Limits::of(&fields, &rules),
            checks: checks_of(view, pump)?,
            fields,
            rules,
        })
    }

    /// The latest check that was read at the highest level.
    pub(super) fn latest(&self) -> Option<&Looked> {
        self.checks
            .iter()
            .rev()
            .find(|looked| looked.check.readings.iter().any(|(_, reading)| doubts::at_highest(reading, self.levels)))
    }

    /// What each side that was read pulls at the highest level.
    pub(super) fn sides(&self, looked: &Looked) -> Vec<SideLook> {
        [Sides::Left, Sides::Right, Sides::Both]
            .into_iter()
            .map(|side| {
                let pull = self.pull(looked, side);
                let judged = pull.as_ref().ok().map(|pull| {
                    let span = looked.gauge.and_then(|gauge| gauge.span);
                    judge(pull, &self.limits, self.rules.verdict_chance, span)
                });
                SideLook { side, pull, judged }
            })
            .filter(|side| side.pull != Err(NoPull::NotRead))
            .collect()
    }

    pub(super) fn pull(&self, looked: &Looked, side: Sides) -> Result<Pull, NoPull> {
        Pull::of(&looked.check, looked.gauge.as_ref(), |reading| {
            reading.place.side == side && doubts::at_highest(reading, self.levels)
        })
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
