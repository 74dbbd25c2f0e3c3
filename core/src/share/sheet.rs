//! The visit sheet for the page: what is not left out, as JSON that a press sets.
//!
//! The press is no part of core (the typesetter takes minutes to build): whoever opens
//! the record hands one in, as [`crate::app::App::with_press`].

use serde_json::json;

use crate::screen::shapes::SheetSection;
use crate::screen::sheet::Sheet;
use crate::screen::View;
use crate::time::Moment;
use crate::trouble::{Kind, Trouble};

/// The type of the file.
pub const CONTENT_TYPE: &str = "application/pdf";

/// Sets a sheet: its JSON and the moment it is made, in, the bytes of a PDF out. The same
/// in gives the same out. What it says where it cannot is for a developer, and names no
/// word of the record.
pub type Press = fn(&str, &Moment) -> Result<Vec<u8>, String>;

/// The paper of a key of `take_out`, as the page names it.
pub fn paper_of(key: &str) -> Option<&'static str> {
    match key {
        "sheet" | "sheet-a4" => Some("a4"),
        "sheet-letter" => Some("us-letter"),
        _ => None,
    }
}

/// What goes on the page, as JSON: every word in the person's language.
pub fn to_json(view: &View<'_>, sheet: &Sheet, paper: &str) -> String {
    let words = view.words();
    let who = sheet.who.clone().unwrap_or_default();
    let named = [sheet.heading.as_str(), who.as_str(), sheet.span.as_str()];
    let title = named.into_iter().filter(|s| !s.is_empty()).collect::<Vec<_>>().join(", ");
    let sections: Vec<&SheetSection> = sheet.going_out().collect();
    json!({
        "title": title,
        "language": view.texts.language(),
        "paper": paper,
        "heading": sheet.heading,
        "who": who,
        "span": sheet.span,
        "made": sheet.made,
        "sections": sections,
        "foot": sheet.foot,
        "footer": words.say("sheet-footer"),
        "page": words.say("sheet-page"),
        "undrawn_words": words.with("sheet-undrawn", &[("sign", SIGN.into())]),
    })
    .to_string()
}

/// Stands in the data for whatever sign the press uses in place of letters it has not.
const SIGN: &str = "{sign}";

/// Sets a sheet with a press.
pub fn set(view: &View<'_>, paper: &str, press: Option<Press>) -> Result<Vec<u8>, Trouble> {
    let press = press.ok_or_else(|| Trouble::new(Kind::Fault, "trouble-no-press"))?;
    let data = to_json(view, &Sheet::gather(view)?, paper);
    press(&data, &view.present()).map_err(|_| Trouble::new(Kind::Fault, "trouble-not-set"))
}
