//! What was answered to the consultant's plans within the span.

use super::section::row;
use super::span::Stretch;
use crate::record::plan_part::is_part_before;
use crate::record::{moment, text, Kind};
use crate::screen::plan;
use crate::screen::shapes::SheetRow;
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Answers that are told, the latest.
const TOLD: usize = 8;

/// Each part that was accepted or left, by when, with what it says. A consultant's words in
/// a plan ask for no answer and are not told back.
pub(super) fn rows(view: &View<'_>, span: Stretch) -> Result<Vec<SheetRow>, Trouble> {
    let words = view.words();
    let mut found = Vec::new();
    for one in view.journal.of_kind(Kind::PlanPart)? {
        // What was answered before a later plan changed it counts no more.
        if is_part_before(&one.subject) {
            continue;
        }
        let (_, part) = view.record(&one.subject)?;
        let Some(at) = moment(&part, "answered").filter(|at| at.instant() <= view.now) else { continue };
        let day = LocalDay::of(&at, view.settings.day_start);
        if !span.holds(day, view) || text(&part, "plan_part") == Some("words") {
            continue;
        }
        let answered = match text(&part, "answer") {
            Some("accepted") => "sheet-plan-accepted",
            Some(_) => "sheet-plan-left",
            None => continue,
        };
        let label = words.with("sheet-plan-part", &[("part", plan::title_of_part(view, &part).into())]);
        let said = plan::said_in_part(view, &part).join(" \u{b7} ");
        let note = words.with(answered, &[("said", said.into())]);
        found.push((at.instant(), row(label, words.short_date(day), note)));
    }
    found.sort_by_key(|(at, _)| *at);
    let skip = found.len().saturating_sub(TOLD);
    Ok(found.into_iter().skip(skip).map(|(_, row)| row).collect())
}
