//! The renderer that sets the visit sheet.
//!
//! It is no part of core (the typesetter takes minutes to build): whoever opens
//! the record hands one in, as [`crate::app::App::with_sheet_renderer`].

use crate::screen::labels_to_json;
use crate::screen::shapes::{LabelPaper, Paper};
use crate::screen::sheet::{page, Sheet};
use crate::screen::View;
use crate::time::Moment;
use crate::trouble::{Kind, Trouble};

/// The type of the file.
pub const CONTENT_TYPE: &str = "application/pdf";

/// Sets a sheet: its JSON and the moment it is made, in, the bytes of a PDF out. The same
/// in gives the same out. What it says where it cannot is for a developer, and names no
/// word of the record.
pub type SheetRenderer = fn(&str, &Moment) -> Result<Vec<u8>, String>;

/// A paper, as the page names it.
fn named(paper: Paper) -> &'static str {
    match paper {
        Paper::A4 => "a4",
        Paper::Letter => "us-letter",
    }
}

/// Sets a sheet with a renderer.
pub(super) fn set(view: &View<'_>, paper: Paper, renderer: Option<SheetRenderer>) -> Result<Vec<u8>, Trouble> {
    typeset(view, renderer, || Ok(page::to_json(view, &Sheet::gather(view)?, named(paper))))
}

/// Sets the page of a choice.
pub(super) fn set_choice(view: &View<'_>, paper: Paper, renderer: Option<SheetRenderer>) -> Result<Vec<u8>, Trouble> {
    typeset(view, renderer, || page::choice_to_json(view, named(paper)))
}

/// Sets labels for kept milk.
pub(super) fn set_labels(
    view: &View<'_>,
    on: LabelPaper,
    container: &str,
    renderer: Option<SheetRenderer>,
) -> Result<Vec<u8>, Trouble> {
    typeset(view, renderer, || labels_to_json(view, on, container))
}

fn typeset(
    view: &View<'_>,
    renderer: Option<SheetRenderer>,
    data: impl FnOnce() -> Result<String, Trouble>,
) -> Result<Vec<u8>, Trouble> {
    let renderer = renderer.ok_or_else(|| Trouble::new(Kind::Fault, "trouble-no-press"))?;
    renderer(&data()?, &view.present()).map_err(|_| Trouble::new(Kind::Fault, "trouble-not-set"))
}
