//! A choice of pumps that is still open, in the fewest lines: what is wanted, and a line a pump.

use super::section::{row, section};
use crate::screen::kit::choice_on_sheet;
use crate::screen::shapes::SheetSection;
use crate::screen::View;
use crate::trouble::Trouble;

pub(super) fn render(view: &View<'_>) -> Result<Option<SheetSection>, Trouble> {
    let Some((wanted, pumps)) = choice_on_sheet(view)? else { return Ok(None) };
    let rows = pumps.into_iter().map(|(name, said)| row(name, "", said)).collect();
    Ok(Some(SheetSection { caption: wanted, rows, ..section(view, "choice") }))
}
