//! Notes of the span, in the person's own words: those that stand by themselves, and those
//! beside something that was written down.

use super::section::{of_rows, row};
use super::span::Stretch;
use crate::record::{moment, text, Kind};
use crate::screen::shapes::SheetSection;
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Notes that are told, the latest.
const TOLD: usize = 8;

/// Kinds whose notes are told where they themselves are.
const TOLD_ELSEWHERE: &[Kind] = &[Kind::Sign, Kind::LifeEvent, Kind::CautionDealt];

pub(super) fn render(view: &View<'_>, span: Stretch) -> Result<Option<SheetSection>, Trouble> {
    let words = view.words();
    let since = span.from.begins(view.zone, view.settings.day_start);
    let mut found = Vec::new();
    for kind in Kind::ALL.iter().copied().filter(|kind| kind.time_field().is_some() && !TOLD_ELSEWHERE.contains(kind)) {
        let field = if kind == Kind::Note { "text" } else { "note" };
        if kind.field(field).is_none() {
            continue;
        }
        for row in view.journal.of_kind_since(kind, since)? {
            let (_, fields) = view.record(&row.subject)?;
            let at = kind.time_field().and_then(|key| moment(&fields, key)).filter(|at| at.instant() <= view.now);
            let said = text(&fields, field).unwrap_or_default().trim().to_owned();
            let (Some(at), false) = (at, said.is_empty()) else { continue };
            // The visit that the sheet begins with is one the consultant was at.
            let begins = span.since_visit && LocalDay::of(&at, view.settings.day_start) == span.from;
            if kind == Kind::Visit && begins {
                continue;
            }
            let beside = (kind != Kind::Note).then(|| words.say(&format!("kind-{}", kind.name())));
            found.push((at, beside.unwrap_or_default(), said));
        }
    }
    found.sort_by_key(|(at, ..)| at.instant());
    let more = found.len().saturating_sub(TOLD);
    let mut rows: Vec<_> = found
        .into_iter()
        .skip(more)
        .map(|(at, beside, said)| row(words.short_date(LocalDay::of(&at, view.settings.day_start)), beside, said))
        .collect();
    if more > 0 {
        rows.insert(0, row(words.with("sheet-and-earlier", &[("count", (more as i64).into())]), "", ""));
    }
    Ok(of_rows(view, "notes", rows))
}
