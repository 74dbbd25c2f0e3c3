//! Supply, as its screen says it over the same days.

use super::section::{row, section};
use crate::gather::supply::SupplyInputs;
use crate::screen::shapes::SheetSection;
use crate::screen::supply;
use crate::screen::View;
use crate::trouble::Trouble;

pub(super) fn render(view: &View<'_>, look: &SupplyInputs) -> Result<Option<SheetSection>, Trouble> {
    let said = supply::render(view, look);
    let weeks = supply::weeks(view, look)?;
    // Where nothing came there is no answer and no picture.
    if weeks.bars.iter().all(|bar| bar.height.is_none_or(|height| height == 0.0)) {
        return Ok(None);
    }
    let sides = supply::sides(view, look).into_iter().map(|side| {
        let note = [side.headline, side.detail].into_iter().filter(|s| !s.is_empty()).collect::<Vec<_>>().join(", ");
        row(side.column.label, side.column.text, note)
    });
    let against = supply::against(view, look)?.rows.into_iter().map(|held| row(held.title, "", held.detail));
    let mut lines = said.lines;
    lines.extend(supply::drop_text(view, look));
    Ok(Some(SheetSection {
        headline: said.headline,
        figure: said.figure,
        caption: said.caption,
        lines,
        rows: sides.chain(against).collect(),
        weeks: Some(weeks),
        ..section(view, "supply")
    }))
}
