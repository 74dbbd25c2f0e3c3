//! What is comfortable, how soon milk lets down, what comparisons say, and whether to look at the
//! flange first, as their pages say it.

use super::section::{row, section};
use super::span::Stretch;
use crate::screen::kit::in_short;
use crate::screen::shapes::SheetSection;
use crate::screen::View;
use crate::trouble::Trouble;

pub(super) fn render(view: &View<'_>, span: Stretch, amounts: bool) -> Result<Option<SheetSection>, Trouble> {
    let since = span.from.begins(view.zone, view.settings.day_start);
    let (found, flange) = in_short(view, since, amounts)?;
    if found.is_empty() && flange.is_none() {
        return Ok(None);
    }
    // One run of words a line: beside a long figure a label would stand in a column of its own.
    let rows = found.into_iter().map(|line| {
        let said = [line.said, line.rests_on].into_iter().filter(|text| !text.is_empty());
        row(line.about, String::new(), said.collect::<Vec<_>>().join(". "))
    });
    let rows = rows.collect();
    Ok(Some(SheetSection { rows, lines: flange.into_iter().collect(), ..section(view, "comfort") }))
}
