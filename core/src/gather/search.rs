//! A guided search as far as it came in its session.

use super::levels::level_in_vacuum;
use super::planned_ceiling::{planned_ceilings, PlannedCeiling, MOST_LEVELS};
use super::Record;
use crate::answer::comfort::felt_in;
use crate::answer::search::{Feeling, Limits, Next, Range, Step};
use crate::answer::supply::Side;
use crate::guidance::ComfortRules;
use crate::quantity::{Entered, Level, Quantity, Speed, Vacuum};
use crate::record::mark::Phase;
use crate::record::{flag, moment, text, whole_number, Fields, Kind, MarkKind, Session, Sides};
use crate::time::Instant;
use crate::trouble::Trouble;

/// Sessions with that pump that are looked through for what was comfortable before.
const LOOKS_BACK: u32 = 40;
/// Searches begin no lower than this: no pump pulls less and is a pump.
const LOWEST: f64 = 30.0;
/// The highest vacuum where the pump's maker states none: that of a search is below it.
const HIGHEST: f64 = 300.0;

/// Speeds closer than this are one, in cycles a minute.
const SAME_SPEED: f64 = 0.5;

/// How a search ended that a hand stopped.
const STOPPED: &str = "stopped";

/// What is searched among.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Proposed {
    /// Levels of the dial.
    Level(Next<Level>),
    /// Vacuums as the pump shows them.
    Vacuum(Next<Vacuum>),
    /// Cycles a minute: which brings the letdown.
    Speed(Next<Speed>),
}

/// A search in the running session.
#[derive(Debug, Clone, PartialEq)]
pub struct SearchNow {
    /// The record of the search.
    pub id: String,
    /// What comes next.
    pub proposed: Proposed,
    /// Whether the pump was set to it.
    pub is_set: bool,
    /// How it ended, where it did.
    pub ended: Option<String>,
    /// Whether it may go above what was comfortable before.
    pub beyond: bool,
}

/// The latest search of a session; none where none was begun in it.
///
/// # Errors
/// Where the store can't be read.
pub fn search_of(record: &Record<'_>, session: &Session) -> Result<Option<SearchNow>, Trouble> {
    let Some(started) = session.started.as_ref().map(|at| at.instant()) else { return Ok(None) };
    let all = record.journal.fields_of_kind_since(Kind::Search, started)?;
    let own = all.into_iter().rfind(|(_, fields)| text(fields, "session") == Some(session.id.as_str()));
    let Some((id, fields)) = own else { return Ok(None) };
    let Some(began) = moment(&fields, "at").map(|at| at.instant()) else { return Ok(None) };
    let rules = ComfortRules::read(record.rules()?);
    let beyond = flag(&fields, "beyond");
    let phase = match text(&fields, "search_phase") {
        Some("letdown") => Phase::Letdown,
        _ => Phase::Expression,
    };
    let sides = Sides::named(text(&fields, "search_side"));
    let pump = pump_of(record, session)?;
    let set = session.used_at(record.now);
    let vacuum_searched = text(&fields, "searched") != Some("speed");
    let before = match vacuum_searched {
        true => comfortable_before(record, session, sides, phase, started, &rules)?,
        false => (None, None),
    };
    let planned = planned(record, session, phase)?;
    let (proposed, is_set) = match whole_number(&pump, "levels") {
        _ if !vacuum_searched => speeds(session, &pump, began, record.now, &rules),
        Some(levels) => {
            let steps = steps(session, began, record.now, |kind| match kind {
                MarkKind::Setting { level, carried: false, .. } => *level,
                _ => None,
            });
            let limits = Limits { known: before.0, beyond, planned: planned.0 };
            let next = Range::levels(Level::new(levels)).next(&steps, limits, &rules);
            (Proposed::Level(next), proposed_of(next).is_some_and(|level| set.level == Some(level)))
        }
        None => {
            let shown = |kind: &MarkKind| match kind {
                MarkKind::Setting { vacuum, carried: false, .. } => vacuum.as_ref().map(Entered::quantity),
                _ => None,
            };
            let most = pump.get("maximum_vacuum_high").and_then(Entered::<Vacuum>::from_json);
            let most = most.map_or(Vacuum::from_canonical(HIGHEST), |most| most.quantity());
            let range = Range::vacuums(Vacuum::from_canonical(LOWEST), most, &rules);
            let limits = Limits { known: before.1, beyond, planned: planned.1 };
            let next = range.next(&steps(session, began, record.now, shown), limits, &rules);
            let is_set = proposed_of(next).is_some_and(|wanted| {
                set.vacuum.is_some_and(|v| (v.quantity().canonical() - wanted.canonical()).abs() < 0.5)
            });
            (Proposed::Vacuum(next), is_set)
        }
    };
    let mut found = SearchNow { id, proposed, is_set, ended: None, beyond };
    // Its last step may have been taken back since: then it goes on.
    let over = found.is_over().is_some();
    found.ended = text(&fields, "search_ended").filter(|how| over || *how == STOPPED).map(str::to_owned);
    Ok(Some(found))
}

/// What is to be set next.
fn proposed_of<P: Copy>(next: Next<P>) -> Option<P> {
    match next {
        Next::Try(at) | Next::BackTo(at) => Some(at),
        Next::Rest
        | Next::Found(_)
        | Next::AsBefore(_)
        | Next::AsPlanned(_)
        | Next::LetdownCame(_)
        | Next::NothingHurt(_)
        | Next::AllHurt
        | Next::NothingToTry => None,
    }
}

fn pump_of(record: &Record<'_>, session: &Session) -> Result<Fields, Trouble> {
    let Some(pump) = session.pump.as_deref() else { return Ok(Fields::default()) };
    Ok(record.journal.record(pump)?.map(|(_, fields)| fields).unwrap_or_default())
}

/// The speeds that a pump's maker states, from the slowest; none where both ends are not known.
fn stated_speeds(pump: &Fields) -> Option<(Speed, Speed)> {
    let bound = |key: &str| pump.get(key).and_then(Entered::<Speed>::from_json).map(|typed| typed.quantity());
    bound("cycles_low").zip(bound("cycles_high")).filter(|(slowest, fastest)| slowest < fastest)
}

/// Whether the speeds of a session's pump can be searched.
///
/// # Errors
/// Where the store can't be read.
pub fn can_search_speeds(record: &Record<'_>, session: &Session) -> Result<bool, Trouble> {
    Ok(stated_speeds(&pump_of(record, session)?).is_some())
}

/// The search for a speed: over when the letdown comes, at the speed that was set then.
fn speeds(session: &Session, pump: &Fields, began: Instant, now: Instant, rules: &ComfortRules) -> (Proposed, bool) {
    let Some((slowest, fastest)) = stated_speeds(pump) else { return (Proposed::Speed(Next::NothingToTry), false) };
    let shown = |kind: &MarkKind| match kind {
        MarkKind::Setting { cycles, carried: false, .. } => cycles.as_ref().map(Entered::quantity),
        _ => None,
    };
    let tried = |at: Instant| session.used_at(at).cycles.map(|cycles| cycles.quantity());
    let came = session.marks.iter().find_map(|(_, mark)| {
        let at = mark.at.instant();
        let during = mark.kind == MarkKind::Letdown && (began..=now).contains(&at);
        tried(at).filter(|_| during)
    });
    let next = came.map_or_else(
        || Range::speeds(slowest, fastest, rules).next(&steps(session, began, now, shown), Limits::NONE, rules),
        Next::LetdownCame,
    );
    let is_set = proposed_of(next)
        .is_some_and(|wanted| tried(now).is_some_and(|set| (set.canonical() - wanted.canonical()).abs() < SAME_SPEED));
    (Proposed::Speed(next), is_set)
}

/// The highest that the consultant's plan says for this pump and phase, as a level and as the
/// pump shows it.
fn planned(record: &Record<'_>, session: &Session, phase: Phase) -> Result<(Option<Level>, Option<Vacuum>), Trouble> {
    let about = |one: &PlannedCeiling| one.is_about(session.pump.as_deref(), phase);
    let in_force: Vec<PlannedCeiling> = planned_ceilings(record)?.into_iter().filter(about).collect();
    if in_force.is_empty() {
        return Ok((None, None));
    }
    let curve = level_in_vacuum(record, session, record.now)?;
    let pulled = |level: Level| curve(level).map(|pull| pull.vacuum.value);
    let (mut level, mut vacuum): (Option<Level>, Option<Vacuum>) = (None, None);
    for one in in_force {
        // The highest level that pulls no more than the plan's mmHg.
        let by_curve = one.vacuum.and_then(|most| {
            let below = |level: &Level| pulled(*level).is_some_and(|pull| pull <= most);
            (1..=MOST_LEVELS).map(Level::new).filter(below).max()
        });
        for own in [one.level, by_curve].into_iter().flatten() {
            level = Some(level.map_or(own, |known| known.min(own)));
        }
        let own = one.vacuum.or_else(|| one.level.and_then(pulled));
        vacuum = own.filter(|own| vacuum.is_none_or(|known| *own < known)).or(vacuum);
    }
    Ok((level, vacuum))
}

impl SearchNow {
    /// How it is over, as its record says it; none where it goes on.
    pub fn is_over(&self) -> Option<&'static str> {
        fn ended<P>(next: &Next<P>) -> Option<&'static str> {
            match next {
                Next::Try(_) | Next::BackTo(_) => None,
                Next::Rest => Some("pain_rose"),
                Next::Found(_) | Next::AsBefore(_) => Some("found"),
                Next::AsPlanned(_) => Some("as_planned"),
                Next::LetdownCame(_) => Some("letdown_came"),
                Next::NothingHurt(_) => Some("nothing_hurt"),
                Next::AllHurt => Some("all_hurt"),
                Next::NothingToTry => Some("stopped"),
            }
        }
        match &self.proposed {
            Proposed::Level(next) => ended(next),
            Proposed::Vacuum(next) => ended(next),
            // Of speeds it was looked for which brings the letdown.
            Proposed::Speed(Next::NothingHurt(_) | Next::Found(_)) => Some("no_letdown"),
            Proposed::Speed(next) => ended(next),
        }
    }
}

/// The steps that were taken: what was set by hand since the search began, and how it felt. A
/// setting of which nothing was said is no step.
fn steps<P: Copy>(
    session: &Session,
    began: Instant,
    now: Instant,
    setting: impl Fn(&MarkKind) -> Option<P>,
) -> Vec<Step<P>> {
    let mut at: Option<P> = None;
    let mut steps = Vec::new();
    let since = session.marks.iter().filter(|(_, mark)| (began..=now).contains(&mark.at.instant()));
    for (_, mark) in since {
        at = setting(&mark.kind).or(at);
        let felt = match &mark.kind {
            MarkKind::Comfortable => Feeling::Comfortable,
            MarkKind::Pain { score } => Feeling::Discomfort(*score),
            _ => continue,
        };
        steps.extend(at.map(|at| Step { at, felt }));
    }
    steps
}

/// The highest that was comfortable before on this pump, as a level and as the pump shows it: of
/// both sides the lower.
fn comfortable_before(
    record: &Record<'_>,
    session: &Session,
    sides: Sides,
    phase: Phase,
    by: Instant,
    rules: &ComfortRules,
) -> Result<(Option<Level>, Option<Vacuum>), Trouble> {
    let mut found = [(Side::Left, None, None), (Side::Right, None, None)];
    for row in record.journal.latest_sessions(by, LOOKS_BACK)? {
        if row.subject == session.id {
            continue;
        }
        let (_, fields) = record.record(&row.subject)?;
        let before = Session::read(&row.subject, &fields);
        if before.pump != session.pump {
            continue;
        }
        let felt = felt_in(&before, &fields, &|_| None, rules);
        for one in felt.iter().filter(|felt| felt.comfortable && felt.phase == phase) {
            for (_, level, vacuum) in found.iter_mut().filter(|(side, ..)| *side == one.side) {
                *level = one.strength.level.max(*level);
                let shown = one.strength.vacuum.map(|shown| shown.value);
                *vacuum = shown.filter(|shown| vacuum.is_none_or(|known| *shown > known)).or(*vacuum);
            }
        }
    }
    let takes_part = |side: Side| match side {
        Side::Left => sides.left(),
        Side::Right => sides.right(),
    };
    let own = || found.iter().filter(|(side, ..)| takes_part(*side));
    let level = own().filter_map(|(_, level, _)| *level).min();
    let vacuum = own().filter_map(|(_, _, vacuum)| *vacuum).reduce(|a, b| if b < a { b } else { a });
    Ok((level, vacuum))
}
