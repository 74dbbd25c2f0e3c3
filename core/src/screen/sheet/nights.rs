//! The nights that were, as Tonight looks back on them.

use super::section::section;
use crate::answer::night::Frame;
use crate::screen::shapes::SheetSection;
use crate::screen::tonight;
use crate::screen::View;
use crate::trouble::Trouble;

pub(super) fn render(view: &View<'_>, frame: &Frame, days: u32) -> Result<Option<SheetSection>, Trouble> {
    let found = tonight::nights_back(view, frame, days.min(tonight::NIGHTS_BACK))?;
    Ok(found.map(|(lines, plot)| SheetSection { lines, plot: Some(plot), ..section(view, "nights") }))
}
