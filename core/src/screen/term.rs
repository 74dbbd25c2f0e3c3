//! What a word of the trade means, in two sentences, and where that comes from.

use super::shapes::{Action, Event, FindingsScreen, Place, Screen, Sign, Weight};
use super::View;
use crate::guidance::Word;
use crate::trouble::{Kind, Trouble};

/// The words of a place that not everybody knows.
pub(super) fn on(place: &Place) -> &'static [Word] {
    match place {
        Place::Tonight | Place::Supply { .. } => &[Word::Range],
        Place::SupplyMore { .. } => &[Word::Range, Word::CorrectedAge],
        Place::Kit => &[Word::Flange, Word::Vacuum, Word::MmHg],
        Place::Pump { .. } | Place::Check { .. } => &[Word::Vacuum, Word::MmHg, Word::Range],
        Place::Trace { .. } => &[Word::Vacuum, Word::MmHg, Word::Letdown],
        Place::Fit => &[Word::Flange],
        Place::Day { .. } => &[Word::Letdown],
        Place::Family => &[Word::CorrectedAge],
        Place::Sheet => &[Word::CorrectedAge, Word::Letdown, Word::Vacuum, Word::Range],
        _ => &[],
    }
}

/// The ways to what these words mean, from where they stand.
pub(super) fn asks(view: &View<'_>, terms: &[Word]) -> Vec<Action> {
    let ask = |word: &Word| {
        let name = word.name();
        let place = Place::Term { word: name.to_owned() };
        Action::new(format!("term-{name}"), view.words().say(&format!("term-{name}-ask")), Event::Go { place })
            .sign(Sign::Help)
            .weight(Weight::Quiet)
    };
    terms.iter().map(ask).collect()
}

pub(super) fn show(view: &View<'_>, word: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let place = Place::Term { word: word.to_owned() };
    let gone = || Trouble::new(Kind::BadInput, "trouble-no-such-record");
    let word = Word::named(word).ok_or_else(gone)?;
    let term = word.term().ok_or_else(gone)?;
    let name = word.name();
    let mut frame = view.frame(&place, words.say(&format!("term-{name}-ask")), String::new())?;
    frame.back = Some(view.back());
    let source = match (&term.source, term.year) {
        (Some(source), Some(year)) => {
            let key = if term.from_memory { "term-source-from-memory" } else { "term-source" };
            words.with(key, &[("source", source.as_str().into()), ("year", year.to_string().into())])
        }
        _ => words.say("term-common-practice"),
    };
    let meaning = words.say(&format!("term-{name}-is"));
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [meaning.as_str(), source.as_str()].join(" "),
            headline: meaning,
            figure: String::new(),
            caption: source,
            dial: None,
            lines: Vec::new(),
            asks: Vec::new(),
            actions: Vec::new(),
            sections: Vec::new(),
        },
    })
}
