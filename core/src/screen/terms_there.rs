//! The words of the trade on a place, each with the way to what it means.

use super::shapes::{Action, Event, Place, Sign, Weight};
use super::View;
use crate::guidance::Word;

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
