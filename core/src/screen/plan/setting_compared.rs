//! A planned setting beside what was used on that pump, what the pump can, and where it hurt.
//! Levels of two pumps are two things: nothing is compared across pumps.

use super::above_comfortable;
use crate::gather::plan::{pump_of_part, PartPump};
use crate::guidance::CautionRules;
use crate::quantity::{Entered, Level, Vacuum};
use crate::record::mark::Phase;
use crate::record::session::PAINS;
use crate::record::{text, whole_number, Fields, Kind, MarkKind, Session};
use crate::screen::View;
use crate::time::{Instant, LocalDay, Moment, Span};
use crate::trouble::Trouble;

/// Sessions with that pump that are looked at, the latest.
const LOOKS_AT: u32 = 60;

/// What a plan sets, or a session was set to.
struct Strength {
    level: Option<Level>,
    vacuum: Option<Vacuum>,
}

impl Strength {
    /// Whether it is stronger than another, where both say the same kind of thing.
    fn is_above(&self, other: &Self) -> Option<bool> {
        match (self.level.zip(other.level), self.vacuum.zip(other.vacuum)) {
            (Some((own, other)), _) => Some(own > other),
            (None, Some((own, other))) => Some(own > other),
            (None, None) => None,
        }
    }
}

/// What is said beside a setting, each a line.
pub(super) fn notes(view: &View<'_>, part: &Fields) -> Result<Vec<String>, Trouble> {
    let words = view.words();
    let planned = Strength {
        level: whole_number(part, "level").map(Level::new),
        vacuum: part.get("vacuum").and_then(Entered::<Vacuum>::from_json).map(|v| v.quantity()),
    };
    if planned.level.is_none() && planned.vacuum.is_none() {
        return Ok(Vec::new());
    }
    let (pump, name) = match pump_of_part(view, part)? {
        PartPump::Pump { id } => {
            let name = view.name_of_id(&id)?.unwrap_or_default();
            (Some(id), name)
        }
        PartPump::Unwritten => (None, words.say("plan-this-pump")),
        PartPump::Unknown(name) => return Ok(vec![words.with("plan-pump-unknown", &[("pump", name.into())])]),
        PartPump::NotNamed => return Ok(vec![words.say("plan-pump-not-named")]),
    };
    let mut notes = Vec::new();
    if let Some(pump) = &pump {
        notes.extend(beyond_pump(view, pump, &name, &planned)?);
    }
    let phase = match text(part, "plan_phase") {
        Some("letdown") => Phase::Letdown,
        _ => Phase::Expression,
    };
    notes.extend(above_comfortable::note(view, pump.as_deref(), phase, planned.level, planned.vacuum)?);
    notes.extend(compared_with_use(view, pump.as_deref(), &name, phase, &planned)?);
    Ok(notes)
}

/// Above what the pump's own range or dial goes to.
fn beyond_pump(view: &View<'_>, pump: &str, name: &str, planned: &Strength) -> Result<Option<String>, Trouble> {
    let words = view.words();
    let (_, fields) = view.record(pump)?;
    let most = fields.get("maximum_vacuum_high").and_then(Entered::<Vacuum>::from_json).map(|v| v.quantity());
    if let (Some(vacuum), Some(most)) = (planned.vacuum, most) {
        if vacuum > most {
            let needs = [("pump", name.to_owned().into()), ("most", words.vacuum(most).into())];
            return Ok(Some(words.with("plan-beyond-range", &needs)));
        }
    }
    Ok(match (planned.level, whole_number(&fields, "levels")) {
        (Some(level), Some(levels)) if level.get() > levels => {
            Some(words.with("plan-beyond-levels", &[("pump", name.to_owned().into()), ("levels", levels.into())]))
        }
        _ => None,
    })
}

/// What a session was set to in a phase, as somebody set or typed it.
fn used(session: &Session, fields: &Fields, phase: Phase) -> Strength {
    // A session begins in the letdown phase by itself: where no other was marked, what was set
    // at its end is all that is known.
    let marked = match (session.phases().iter().any(|(of, _)| *of == phase), &session.ended) {
        (false, Some(ended)) => session.used_at(ended.instant()),
        _ => session.used_in(phase),
    };
    let key = |what: &str| format!("{what}_{}", phase.name());
    Strength {
        level: whole_number(fields, &key("level")).map(Level::new).or(marked.level),
        vacuum: fields
            .get(&key("vacuum"))
            .and_then(Entered::<Vacuum>::from_json)
            .or(marked.vacuum)
            .map(|vacuum| vacuum.quantity()),
    }
}

/// The settings at which it hurt in a phase: where a mark says so, what was set then; where it
/// was turned down, what was set before; where it was said afterwards, what was used.
fn hurt_at(session: &Session, fields: &Fields, phase: Phase, rules: &CautionRules) -> Vec<Strength> {
    let in_phase = |at: Instant| session.phase_at(at).is_none_or(|(is, _)| is == phase);
    let as_set = |at: Instant| {
        let set = session.used_at(at);
        Strength { level: set.level, vacuum: set.vacuum.map(|vacuum| vacuum.quantity()) }
    };
    let marked = session.marks.iter().filter_map(|(_, mark)| {
        let at = mark.at.instant();
        match &mark.kind {
            MarkKind::Pain { score } if score.is_none_or(|score| score >= rules.pain_often) => Some(at),
            MarkKind::Setting { for_discomfort: true, .. } => Some(at.minus(Span::milliseconds(1))),
            _ => None,
        }
    });
    let mut found: Vec<Strength> = marked.filter(|at| in_phase(*at)).map(as_set).collect();
    let of_phase = PAINS.iter().filter(|(_, _, of)| *of == phase);
    if of_phase.filter_map(|(key, _, _)| whole_number(fields, key)).any(|score| score >= rules.pain_often.get()) {
        found.push(used(session, fields, phase));
    }
    found
}

/// Stronger than what was used last on this pump, or as strong as where it hurt.
fn compared_with_use(
    view: &View<'_>,
    pump: Option<&str>,
    name: &str,
    phase: Phase,
    planned: &Strength,
) -> Result<Vec<String>, Trouble> {
    let words = view.words();
    let rules = CautionRules::read(view.rules()?);
    let (mut above_last, mut hurt): (Option<bool>, Option<(Strength, Moment)>) = (None, None);
    let rows = match pump {
        Some(pump) => view.journal.naming(Kind::Session, "pump", pump, view.now, LOOKS_AT)?,
        None => view.journal.latest_sessions(view.now, LOOKS_AT)?,
    };
    for row in rows {
        let (_, fields) = view.record(&row.subject)?;
        let session = Session::read(&row.subject, &fields);
        if session.pump.as_deref() != pump {
            continue;
        }
        let used = used(&session, &fields, phase);
        let Some(above) = planned.is_above(&used) else { continue };
        above_last.get_or_insert(above);
        let Some(at) = session.started.clone() else { continue };
        for hurts in hurt_at(&session, &fields, phase, &rules) {
            // Where it hurt at a setting that is no stronger than the planned one: the weakest.
            let weakest = hurt.as_ref().is_none_or(|(known, _)| known.is_above(&hurts) == Some(true));
            if weakest && hurts.is_above(planned) == Some(false) {
                hurt = Some((hurts, at.clone()));
            }
        }
    }
    // Who reads a family's record is not the one who used it.
    let there = view.shared.is_some();
    let mut notes = Vec::new();
    match above_last {
        Some(true) => notes.push(words.say(if there { "plan-higher-there" } else { "plan-higher" })),
        Some(false) => {}
        None => notes.push(words.with("plan-never-used", &[("pump", name.to_owned().into())])),
    }
    if let Some((used, at)) = hurt {
        let said = match (used.level, used.vacuum) {
            (Some(level), _) => words.with("plan-level", &[("level", level.get().into())]),
            (None, Some(vacuum)) => words.vacuum(vacuum),
            (None, None) => return Ok(notes),
        };
        let day = LocalDay::of(&at, view.settings.day_start);
        let key = if there { "plan-hurt-there" } else { "plan-hurt" };
        notes.push(words.with(key, &[("setting", said.into()), ("date", words.short_date(day).into())]));
    }
    Ok(notes)
}
