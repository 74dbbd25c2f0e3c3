//! Settings that a plan says to stay below, and how sessions since stood to them.

use super::levels::level_in_vacuum;
use super::plan::{pump_of_part, PartPump};
use super::Record;
use crate::quantity::{Count, Entered, Level, Vacuum};
use crate::record::mark::Phase;
use crate::record::{date, moment, text, whole_number, Fields, Kind, MarkKind, Session};
use crate::time::{Instant, LocalDay};
use crate::trouble::Trouble;

/// Sessions since that are looked at, the latest.
const LOOKS_AT: u32 = 100;

/// No dial has more levels.
pub(super) const MOST_LEVELS: u32 = 99;

/// A setting that an accepted plan says to go no higher than.
#[derive(Debug, Clone, PartialEq)]
pub struct PlannedCeiling {
    /// The plan.
    pub plan: String,
    /// Its part.
    pub part: String,
    /// The pump; none where every pump is meant.
    pub pump: Option<String>,
    /// The phase; none where both are meant.
    pub phase: Option<Phase>,
    /// As a level on the dial.
    pub level: Option<Level>,
    /// In mmHg.
    pub vacuum: Option<Vacuum>,
    /// When it was accepted.
    pub since: Instant,
}

/// How sessions stood to it since it was accepted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct KeptTo {
    /// At or below it.
    pub within: Count,
    /// Above it, at any time in that phase.
    pub above: Count,
    /// No hand set anything that could be compared.
    pub unknown: Count,
}

/// A level's pull, by the curve of the pump at that time.
type Pull<'p> = &'p dyn Fn(Level) -> Option<Vacuum>;

impl PlannedCeiling {
    fn read(record: &Record<'_>, id: &str, part: &Fields) -> Result<Option<Self>, Trouble> {
        let is = |key: &str, value: &str| text(part, key) == Some(value);
        if !(is("plan_part", "setting") && is("use_or_try", "at_most") && is("answer", "accepted")) {
            return Ok(None);
        }
        let (Some(plan), Some(since)) = (text(part, "plan"), moment(part, "answered")) else { return Ok(None) };
        let Some((_, of_plan)) = record.journal.record(plan)? else { return Ok(None) };
        if date(&of_plan, "good_until").is_some_and(|until| LocalDay::on(until) < record.today()) {
            return Ok(None);
        }
        let pump = match pump_of_part(record, part)? {
            PartPump::Pump { id } => Some(id),
            PartPump::Unwritten => None,
            PartPump::NotNamed if !part.contains_key("level") => None,
            // Levels of which pump, nobody can say; the plan's own page asks.
            PartPump::NotNamed | PartPump::Unknown(_) => return Ok(None),
        };
        Ok(Some(Self {
            plan: plan.to_owned(),
            part: id.to_owned(),
            pump,
            phase: text(part, "plan_phase").map(|phase| match phase {
                "letdown" => Phase::Letdown,
                _ => Phase::Expression,
            }),
            level: whole_number(part, "level").map(Level::new),
            vacuum: part.get("vacuum").and_then(Entered::<Vacuum>::from_json).map(|typed| typed.quantity()),
            since: since.instant(),
        }))
    }

    /// Whether it is about a session's pump in a phase.
    pub fn is_about(&self, pump: Option<&str>, phase: Phase) -> bool {
        phase != Phase::Rest
            && self.phase.is_none_or(|own| own == phase)
            && self.pump.as_deref().is_none_or(|own| pump == Some(own))
    }

    /// Whether a setting is above it; none where the two can't be compared.
    pub fn is_exceeded_by(&self, level: Option<Level>, vacuum: Option<Vacuum>, pull: Pull<'_>) -> Option<bool> {
        let by_level = self.level.zip(level).map(|(most, level)| level > most);
        let in_vacuum = vacuum.or_else(|| level.and_then(pull));
        let own = self.vacuum.or_else(|| self.level.and_then(pull));
        by_level.or_else(|| own.zip(in_vacuum).map(|(most, vacuum)| vacuum > most))
    }
}

/// The ceilings in force: of several about the same pump and phase the one accepted last.
///
/// # Errors
/// Where the store can't be read.
pub fn planned_ceilings(record: &Record<'_>) -> Result<Vec<PlannedCeiling>, Trouble> {
    let mut found: Vec<PlannedCeiling> = Vec::new();
    for (id, part) in record.journal.fields_of_kind(Kind::PlanPart)? {
        found.extend(PlannedCeiling::read(record, &id, &part)?);
    }
    found.sort_by(|a, b| (b.since, &b.part).cmp(&(a.since, &a.part)));
    let mut in_force: Vec<PlannedCeiling> = Vec::new();
    for one in found {
        if !in_force.iter().any(|later| later.pump == one.pump && later.phase == one.phase) {
            in_force.push(one);
        }
    }
    Ok(in_force)
}

/// The ceiling that what a session's dials show is above just now.
///
/// # Errors
/// Where the store can't be read.
pub fn exceeded_now(record: &Record<'_>, session: &Session) -> Result<Option<PlannedCeiling>, Trouble> {
    let in_force = planned_ceilings(record)?;
    let Some((phase, _)) = session.phase_at(record.now).filter(|_| !in_force.is_empty()) else { return Ok(None) };
    let shown = session.setting_at(record.now);
    let pull = level_in_vacuum(record, session, record.now)?;
    let pull = |level: Level| pull(level).map(|pull| pull.vacuum.value);
    let vacuum = shown.vacuum.as_ref().filter(|_| shown.level.is_none()).map(Entered::quantity);
    let exceeds = |one: &PlannedCeiling| {
        one.is_about(session.pump.as_deref(), phase) && one.is_exceeded_by(shown.level, vacuum, &pull) == Some(true)
    };
    Ok(in_force.into_iter().find(exceeds))
}

/// Whether a ceiling about a session's pump and phase can't be told in what its dial shows: in mmHg,
/// where nobody knows what its levels pull. A search would go above it unseen.
///
/// # Errors
/// Where the store can't be read.
pub fn cannot_be_compared(record: &Record<'_>, session: &Session, phase: Phase) -> Result<bool, Trouble> {
    let about = |one: &PlannedCeiling| one.is_about(session.pump.as_deref(), phase);
    let in_force: Vec<PlannedCeiling> = planned_ceilings(record)?.into_iter().filter(about).collect();
    let has_levels = match session.pump.as_deref() {
        Some(pump) => record.journal.record(pump)?.is_some_and(|(_, fields)| fields.contains_key("levels")),
        None => false,
    };
    if !in_force.iter().any(|one| one.level.is_none() == has_levels) {
        return Ok(false);
    }
    let curve = level_in_vacuum(record, session, record.now)?;
    Ok((1..=MOST_LEVELS).all(|level| curve(Level::new(level)).is_none()))
}

/// How the latest sessions since stood to it.
///
/// # Errors
/// Where the store can't be read.
pub fn kept_to(record: &Record<'_>, ceiling: &PlannedCeiling) -> Result<KeptTo, Trouble> {
    let (mut within, mut above, mut unknown) = (0, 0, 0);
    for row in record.journal.latest_sessions(record.now, LOOKS_AT)? {
        if row.running || row.at.is_none_or(|at| at < ceiling.since) {
            continue;
        }
        let (_, fields) = record.record(&row.subject)?;
        let session = Session::read(&row.subject, &fields);
        if session.method.as_deref() != Some("electric_pump") {
            continue;
        }
        let phases: Vec<Phase> = [Phase::Letdown, Phase::Expression]
            .into_iter()
            .filter(|phase| ceiling.is_about(session.pump.as_deref(), *phase))
            .collect();
        if phases.is_empty() {
            continue;
        }
        let set: Vec<(Option<Level>, Option<Vacuum>)> =
            phases.iter().flat_map(|phase| set_in(&session, &fields, *phase)).collect();
        // Levels are compared as levels: no curve is looked for.
        let as_levels = ceiling.level.is_some() && set.iter().all(|(level, _)| level.is_some());
        let curve = match as_levels {
            true => None,
            false => Some(level_in_vacuum(record, &session, row.at.unwrap_or(record.now))?),
        };
        let pull = |level: Level| curve.as_ref().and_then(|curve| curve(level)).map(|pull| pull.vacuum.value);
        let stood: Vec<bool> =
            set.into_iter().filter_map(|(level, vacuum)| ceiling.is_exceeded_by(level, vacuum, &pull)).collect();
        match (stood.is_empty(), stood.contains(&true)) {
            (true, _) => unknown += 1,
            (false, true) => above += 1,
            (false, false) => within += 1,
        }
    }
    Ok(KeptTo { within: Count::new(within), above: Count::new(above), unknown: Count::new(unknown) })
}

/// Everything that a hand set in a phase, or wrote down for it afterwards.
fn set_in(session: &Session, fields: &Fields, phase: Phase) -> Vec<(Option<Level>, Option<Vacuum>)> {
    // What a pump stood at when the phase was not marked is taken for expressing.
    let in_phase = |at: Instant| session.phase_at(at).map_or(Phase::Expression, |(is, _)| is) == phase;
    let marked = session.marks.iter().filter_map(|(_, mark)| match &mark.kind {
        MarkKind::Setting { level, vacuum, carried: false, .. } if in_phase(mark.at.instant()) => {
            Some((*level, vacuum.as_ref().map(Entered::quantity)))
        }
        _ => None,
    });
    let key = |what: &str| format!("{what}_{}", phase.name());
    let level = whole_number(fields, &key("level")).map(Level::new);
    let vacuum = fields.get(&key("vacuum")).and_then(Entered::<Vacuum>::from_json).map(|typed| typed.quantity());
    let all = marked.chain([(level, vacuum)]);
    all.filter(|(level, vacuum)| level.is_some() || vacuum.is_some()).collect()
}
