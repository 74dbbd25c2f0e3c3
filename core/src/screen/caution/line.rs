//! The one calm line.

use super::{call, words::title};
use crate::answer::caution::Caution;
use crate::gather;
use crate::record::choices::SINCE_BEFORE;
use crate::screen::shapes::{Action, Event, Notice, Place, Tone, Weight};
use crate::screen::View;
use crate::trouble::Trouble;

/// What asks how signs are, and does not say that they are no better.
pub(super) const NO_WORD: &str = "no-word";

/// The most urgent caution in one line that opens, and how many more there are.
pub(in crate::screen) fn line(view: &View<'_>, place: &Place) -> Result<Option<Notice>, Trouble> {
    if matches!(place, Place::Caution { .. } | Place::Cautions) {
        return Ok(None);
    }
    let cautions = &view.cautions;
    let Some(first) = cautions.first() else { return Ok(None) };
    let words = view.words();
    if first.source.key == NO_WORD && view.shared.is_none() {
        return Ok(Some(asks(view, first)));
    }
    let what = render(view, first)?;
    let text = match cautions.len() {
        1 => what,
        all => words.with("caution-and-more", &[("what", what.into()), ("count", (all as i64 - 1).into())]),
    };
    let to = match cautions.len() {
        1 => Place::Caution { key: first.key() },
        _ => Place::Cautions,
    };
    let mut actions = call::first(view, first)?;
    // Its sign stands before the words already.
    actions.push(Action::new("open-caution", words.say("caution-open"), Event::Go { place: to }).weight(Weight::Quiet));
    Ok(Some(Notice { key: "caution".to_owned(), tone: Tone::Caution, spoken: text.clone(), text, actions }))
}

/// Better, the same, or worse: one tap answers.
fn asks(view: &View<'_>, caution: &Caution) -> Notice {
    let words = view.words();
    let text = words.with("asks-since-before", &[("what", title(view, caution).into())]);
    Notice { key: "asks-since-before".to_owned(), tone: Tone::Asks, spoken: text.clone(), text, actions: answers(view) }
}

/// Better, the same, worse.
pub(super) fn answers(view: &View<'_>) -> Vec<Action> {
    let answer = |word: &&str| {
        let label = view.words().say(&format!("choice-since-before-{word}"));
        Action::new(format!("since-before-{word}"), label, Event::SinceBefore { word: (*word).to_owned() })
    };
    SINCE_BEFORE.iter().map(answer).collect()
}

/// What to do, and why, in one line.
pub(super) fn render(view: &View<'_>, caution: &Caution) -> Result<String, Trouble> {
    let words = view.words();
    if !caution.is_of_now(view.now, gather::caution::rules(view)?.signs_hold) && caution.source.urgency_waits() {
        let when = super::words::when(view, caution.seen);
        return Ok(words.with("caution-line-waits", &[("what", title(view, caution).into()), ("when", when.into())]));
    }
    let asks = words.say(&format!("urgency-{}", caution.urgency().name()));
    Ok(words.with("caution-line", &[("asks", asks.into()), ("what", title(view, caution).into())]))
}
