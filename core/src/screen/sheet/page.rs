//! The visit sheet for the page: what is not left out, as JSON that a press sets.

use serde_json::json;

use super::Sheet;
use crate::screen::kit::choice_page;
use crate::screen::shapes::SheetSection;
use crate::screen::View;
use crate::trouble::Trouble;

/// What goes on the page, as JSON: every word in the person's language.
pub(crate) fn to_json(view: &View<'_>, sheet: &Sheet, paper: &str) -> String {
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
        "seen": [words.say("sheet-seen-by"), words.say("sheet-seen-on")],
        "footer": words.say("sheet-footer"),
        "page": words.say("sheet-page"),
        "undrawn_words": words.with("sheet-undrawn", &[("sign", SIGN.into())]),
    })
    .to_string()
}

/// The family's own page of a choice of pumps, as JSON for the same typesetter.
pub(crate) fn choice_to_json(view: &View<'_>, paper: &str) -> Result<String, Trouble> {
    let words = view.words();
    let day = words.plain_date(view.today().date());
    let heading = words.say("offer-title");
    let page = json!({
        "title": heading,
        "language": view.texts.language(),
        "paper": paper,
        "heading": heading,
        "who": "",
        "span": day,
        "made": words.with("sheet-made", &[("date", day.into()), ("time", words.clock(&view.present()).into())]),
        "sections": choice_page(view)?,
        "foot": words.say("pump-defers"),
        "seen": Vec::<String>::new(),
        "footer": words.say("offer-page-footer"),
        "page": words.say("sheet-page"),
        "undrawn_words": words.with("sheet-undrawn", &[("sign", SIGN.into())]),
    });
    Ok(page.to_string())
}

/// Stands in the data for whatever sign the press uses in place of letters it has not.
const SIGN: &str = "{sign}";
