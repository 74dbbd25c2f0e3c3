//! What changed within the span: supply, life, kit, what was answered to plans, and the schedule.

use super::section::{of_rows, row};
use super::span::Stretch;
use crate::gather::supply::SupplyInputs;
use crate::record::{date, moment, text, Kind, PlanChange, PlanDone};
use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::supply;
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Events that are told, the latest.
const TOLD: usize = 8;
/// A medicine is told for so many days, whenever the last visit was.
const MEDICINES: u32 = 28;

/// `supply` says whether what is worked out of amounts may go along, `notes` the
/// person's own words.
pub(super) fn render(
    view: &View<'_>,
    span: Stretch,
    look: &SupplyInputs,
    supply: bool,
    notes: bool,
) -> Result<Option<SheetSection>, Trouble> {
    let mut rows = Vec::new();
    if supply {
        rows.extend(supply::changes(view, look)?.into_iter().map(|note| row(note.title, "", note.detail)));
    }
    rows.extend(life(view, span, notes)?);
    rows.extend(kit(view, span)?);
    rows.extend(super::answers::rows(view, span)?);
    rows.extend(plan(view, span)?);
    Ok(of_rows(view, "changes", rows))
}

fn life(view: &View<'_>, span: Stretch, notes: bool) -> Result<Vec<SheetRow>, Trouble> {
    let words = view.words();
    let since = span.from.begins(view.zone, view.settings.day_start);
    // A medicine may go on from before the last visit.
    let first = view.today().earlier_by(MEDICINES).begins(view.zone, view.settings.day_start).min(since);
    let mut rows = Vec::new();
    for found in view.journal.of_kind_since(Kind::LifeEvent, first)?.into_iter().rev() {
        let (kind, fields) = view.record(&found.subject)?;
        let told = found.at.is_some_and(|at| at >= since) || text(&fields, "what") == Some("medicine");
        if !told || rows.len() >= TOLD {
            continue;
        }
        let at = moment(&fields, "at").filter(|at| at.instant() <= view.now);
        let Some(day) = at.map(|at| LocalDay::of(&at, view.settings.day_start)) else { continue };
        let note = text(&fields, "note").filter(|_| notes).unwrap_or_default();
        rows.push(row(view.name_of(kind, &fields), words.short_date(day), note));
    }
    rows.reverse();
    Ok(rows)
}

/// What came into use and went out of it.
fn kit(view: &View<'_>, span: Stretch) -> Result<Vec<SheetRow>, Trouble> {
    let words = view.words();
    let mut found = Vec::new();
    for kind in [Kind::Pump, Kind::Part, Kind::Flange] {
        for one in view.journal.of_kind(kind)? {
            let (_, fields) = view.record(&one.subject)?;
            for (key, said) in [("in_use_since", "sheet-came-into-use"), ("until", "sheet-out-of-use")] {
                let Some(day) = date(&fields, key).map(LocalDay::on).filter(|day| span.holds(*day, view)) else {
                    continue;
                };
                let label = words.with(said, &[("name", view.name_of(kind, &fields).into())]);
                found.push((day, row(label, words.short_date(day), "")));
            }
        }
    }
    found.sort_by_key(|(day, _)| *day);
    let skip = found.len().saturating_sub(TOLD);
    Ok(found.into_iter().skip(skip).map(|(_, row)| row).collect())
}

/// How often the schedule was changed by hand.
fn plan(view: &View<'_>, span: Stretch) -> Result<Option<SheetRow>, Trouble> {
    let words = view.words();
    let since = span.from.begins(view.zone, view.settings.day_start);
    let (mut moved, mut left_out) = (0_i64, 0_i64);
    for found in view.journal.of_kind_since(Kind::PlanChange, since)? {
        let (_, fields) = view.record(&found.subject)?;
        match PlanChange::read(&fields).filter(|change| change.at <= view.now).map(|change| change.done) {
            Some(PlanDone::Moved { .. }) => moved += 1,
            Some(PlanDone::Skipped) => left_out += 1,
            Some(PlanDone::Snoozed { .. }) | None => {}
        }
    }
    let note = words.with("sheet-plan-changes", &[("moved", moved.into()), ("left_out", left_out.into())]);
    Ok((moved + left_out > 0).then(|| row(words.say("sheet-plan-by-hand"), "", note)))
}
