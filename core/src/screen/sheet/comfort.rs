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
    let rows = found.into_iter().map(|line| row(line.about, line.said, line.rests_on)).collect();
    Ok(Some(SheetSection { rows, lines: flange.into_iter().collect(), ..section(view, "comfort") }))
}
