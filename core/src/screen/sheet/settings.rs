//! Settings that were used, by pump: the usual level in each phase, what it pulls where a
//! check says so, and the usual speed.

use std::collections::BTreeMap;

use super::section::{row, section};
use super::sessions::SessionFields;
use crate::gather::levels::level_in_vacuum;
use crate::quantity::{say_decimal, Entered, Level, Quantity, Speed, SpeedUnit, Vacuum};
use crate::record::mark::Phase;
use crate::record::{whole_number, MarkKind};
use crate::screen::kit::level_text;
use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::View;
use crate::trouble::Trouble;

/// What the sessions with one pump were set to in one phase.
#[derive(Default)]
struct Used {
    levels: Vec<u32>,
    vacuums: Vec<f64>,
    cycles: Vec<f64>,
}

pub(super) fn render(view: &View<'_>, sessions: &[SessionFields]) -> Result<Option<SheetSection>, Trouble> {
    let mut pumps: BTreeMap<&str, Vec<&SessionFields>> = BTreeMap::new();
    for told in sessions {
        if let Some(pump) = told.session.pump.as_deref() {
            pumps.entry(pump).or_default().push(told);
        }
    }
    let mut rows = Vec::new();
    let mut lines = Vec::new();
    for (pump, with) in &pumps {
        let name = view.name_of_id(pump)?.unwrap_or_default();
        // A pump that is gone leaves its sessions as they are.
        let levels = view.journal.record(pump)?.and_then(|(_, fields)| whole_number(&fields, "levels"));
        for phase in [Phase::Letdown, Phase::Expression] {
            rows.extend(used_row(view, &name, levels, with, phase)?);
        }
        lines.extend(unsaid(view, &name, with));
    }
    Ok((!rows.is_empty() || !lines.is_empty()).then(|| SheetSection { rows, lines, ..section(view, "settings") }))
}

/// Sessions whose setting was only carried over from the one before: nobody said what was used.
fn unsaid(view: &View<'_>, name: &str, sessions: &[&SessionFields]) -> Option<String> {
    let says_nothing = |told: &&&SessionFields| {
        [Phase::Letdown, Phase::Expression].into_iter().all(|phase| set_in(told, phase) == (None, None, None))
    };
    // A pump that is drawn by hand has no setting to say.
    let has_dials =
        |told: &&&SessionFields| told.session.method.as_deref().is_none_or(|method| method == "electric_pump");
    let all = sessions.iter().filter(has_dials).count() as i64;
    let count = sessions.iter().filter(has_dials).filter(says_nothing).count() as i64;
    let needs = [("pump", name.to_owned().into()), ("count", count.into()), ("all", all.into())];
    (count > 0).then(|| view.words().with("sheet-settings-unsaid", &needs))
}

fn used(sessions: &[&SessionFields], phase: Phase) -> Used {
    let mut used = Used::default();
    for told in sessions {
        let (level, vacuum, cycles) = set_in(told, phase);
        used.levels.extend(level);
        used.vacuums.extend(vacuum);
        used.cycles.extend(cycles);
    }
    used.levels.sort_unstable();
    used
}

/// The last setting of a phase as marked, or as typed afterwards.
fn set_in(told: &SessionFields, phase: Phase) -> (Option<u32>, Option<f64>, Option<f64>) {
    let key = |what: &str| format!("{what}_{}", phase.name());
    let typed = (
        whole_number(&told.fields, &key("level")),
        told.fields.get(&key("vacuum")).and_then(Entered::<Vacuum>::from_json).map(|e| e.quantity().canonical()),
        told.fields.get(&key("cycles")).and_then(Entered::<Speed>::from_json).map(|e| e.quantity().canonical()),
    );
    let in_phase = |at| told.session.phase_at(at).is_some_and(|(is, _)| is == phase);
    let marks = told.session.marks.iter().filter(|(_, mark)| in_phase(mark.at.instant()));
    let (mut level, mut vacuum, mut cycles) = (None, None, None);
    for (_, mark) in marks {
        // A setting made before a phase holds on into it, so each mark of the phase looks back.
        // What was only carried over from last time was not used, as far as anybody said.
        let now = told.session.used_at(mark.at.instant());
        if matches!(mark.kind, MarkKind::Phase(_) | MarkKind::Setting { .. }) {
            level = now.level.map(|l| l.get());
            vacuum = now.vacuum.map(|v| v.quantity().canonical());
            cycles = now.cycles.map(|c| c.quantity().canonical());
        }
    }
    (typed.0.or(level), typed.1.or(vacuum), typed.2.or(cycles))
}

fn used_row(
    view: &View<'_>,
    name: &str,
    levels: Option<u32>,
    sessions: &[&SessionFields],
    phase: Phase,
) -> Result<Option<SheetRow>, Trouble> {
    let words = view.words();
    let used = used(sessions, phase);
    let mut notes = Vec::new();
    let mut value = String::new();
    if let (Some(least), Some(middle), Some(most)) =
        (used.levels.first(), used.levels.get(used.levels.len() / 2), used.levels.last())
    {
        value = match levels {
            Some(of) => words.with("sheet-level-of", &[("level", (*middle).into()), ("of", of.into())]),
            None => words.with("sheet-level", &[("level", (*middle).into())]),
        };
        if least != most {
            notes.push(words.with("sheet-from-to", &[("low", (*least).into()), ("high", (*most).into())]));
        }
        notes.extend(pulled(view, sessions, Level::new(*middle))?);
    }
    if let Some(vacuum) = crate::statistics::median(&used.vacuums) {
        let shown = words.vacuum(Vacuum::from_canonical(vacuum));
        notes.push(words.with("sheet-vacuum-shown", &[("vacuum", shown.into())]));
    }
    if let Some(cycles) = crate::statistics::median(&used.cycles) {
        let figure = say_decimal(Speed::from_canonical(cycles).in_unit(SpeedUnit::PerMinute), 0);
        let speed = words.with_unit(figure, SpeedUnit::PerMinute);
        if value.is_empty() {
            value = speed;
        } else {
            notes.push(speed);
        }
    }
    let label = words.with(
        "sheet-pump-phase",
        &[("pump", name.into()), ("phase", words.say(&format!("phase-{}", phase.name())).into())],
    );
    Ok((!value.is_empty() || !notes.is_empty()).then(|| row(label, value, notes.join("; "))))
}

/// What a level pulled in the latest session, by the check that held then.
fn pulled(view: &View<'_>, sessions: &[&SessionFields], level: Level) -> Result<Option<String>, Trouble> {
    let Some(last) = sessions.last() else { return Ok(None) };
    let Some(at) = last.session.started.as_ref() else { return Ok(None) };
    let pulls = level_in_vacuum(view, &last.session, at.instant())?;
    Ok(pulls(level).map(|pull| level_text(view, &pull)))
}
