//! What each pump that was used pulled when it was checked last, as its page says it.

use super::section::{of_rows, row};
use super::sessions::{used, SessionFields};
use crate::record::Kind;
use crate::screen::kit::{checked, limits_rules};
use crate::screen::shapes::SheetSection;
use crate::screen::View;
use crate::trouble::Trouble;

pub(super) fn render(view: &View<'_>, sessions: &[SessionFields]) -> Result<Option<SheetSection>, Trouble> {
    // Said once, at the foot.
    let defers = view.words().say("pump-defers");
    let mut rows = Vec::new();
    for pump in pumps(view, sessions)? {
        let Some(found) = checked(view, &pump)? else { continue };
        let name = view.name_of_id(&pump)?.unwrap_or_default();
        let beside: Vec<String> = [found.figure, found.caption].into_iter().filter(|s| !s.is_empty()).collect();
        let lines = found.lines.into_iter().filter(|line| *line != defers);
        let note: Vec<String> = std::iter::once(beside.join(" \u{b7} ")).chain(lines).collect();
        rows.push(row(name, found.headline, note.join("\n")));
    }
    Ok(of_rows(view, "pump", rows))
}

/// The rules that a range rests on where the maker's own is not known.
pub(super) fn rules(view: &View<'_>, sessions: &[SessionFields]) -> Result<Vec<&'static str>, Trouble> {
    let mut found = Vec::new();
    for pump in pumps(view, sessions)? {
        if checked(view, &pump)?.is_some() {
            found.extend(limits_rules(view, &pump)?);
        }
    }
    Ok(found)
}

/// Pumps that were used; all there are where no session names one.
fn pumps(view: &View<'_>, sessions: &[SessionFields]) -> Result<Vec<String>, Trouble> {
    let all = view.journal.of_kind(Kind::Pump)?.into_iter().map(|row| row.subject);
    let used = used(sessions, &["pump"]);
    Ok(all.filter(|pump| used.is_empty() || used.contains(pump.as_str())).collect())
}
