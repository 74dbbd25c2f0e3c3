//! The one calm line.

use super::words::title;
use crate::answer::caution::Caution;
use crate::screen::shapes::{Action, Event, Notice, Place, Tone, Weight};
use crate::screen::View;
use crate::trouble::Trouble;

/// The most urgent caution in one line that opens, and how many more there are.
pub(in crate::screen) fn line(view: &View<'_>, place: &Place) -> Result<Option<Notice>, Trouble> {
    if matches!(place, Place::Caution { .. } | Place::Cautions) {
        return Ok(None);
    }
    let cautions = super::standing(view)?;
    let Some(first) = cautions.first() else { return Ok(None) };
    let words = view.words();
    let what = said(view, first);
    let text = match cautions.len() {
        1 => what,
        all => words.with("caution-and-more", &[("what", what.into()), ("count", (all as i64 - 1).into())]),
    };
    let to = match cautions.len() {
        1 => Place::Caution { key: first.key() },
        _ => Place::Cautions,
    };
    Ok(Some(Notice {
        key: "caution".to_owned(),
        tone: Tone::Caution,
        spoken: text.clone(),
        text,
        // Its sign stands before the words already.
        actions: vec![
            Action::new("open-caution", words.say("caution-open"), Event::Go { place: to }).weight(Weight::Quiet)
        ],
    }))
}

/// What to do, and why, in one line.
pub(super) fn said(view: &View<'_>, caution: &Caution) -> String {
    let words = view.words();
    let asks = words.say(&format!("urgency-{}", caution.urgency().name()));
    words.with("caution-line", &[("asks", asks.into()), ("what", title(view, caution).into())])
}
