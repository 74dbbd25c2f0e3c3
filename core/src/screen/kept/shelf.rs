//! The shelf as it is: a board for each place, the soonest to lapse in front.

use super::text::{left, name};
use crate::answer::keeping::Kept;
use crate::quantity::Quantity;
use crate::record::KeptIn;
use crate::screen::shapes::{ShelfBoard, ShelfBottle, ShelfPicture};
use crate::screen::View;
use crate::time::Span;

/// Bottles that are drawn on one board.
const DRAWN: usize = 12;
/// What lapses within this is soon.
pub(super) const SOON: Span = Span::hours(24);

/// Those of each place, in order; none where nothing is kept.
pub(super) fn picture(view: &View<'_>, kept: &[Kept]) -> Option<ShelfPicture> {
    let words = view.words();
    let fullest = kept.iter().filter_map(|one| one.left).map(Quantity::canonical).fold(0.0, f64::max);
    let bottle = |one: &&Kept| ShelfBottle {
        label: one.label.clone().unwrap_or_default(),
        full: one.left.filter(|_| fullest > 0.0).map(|left| (left.canonical() / fullest) as f32),
        soon: one.is_usable(view.now) && one.good_until.next_end(view.now).is_some_and(|at| at.since(view.now) <= SOON),
        past: !one.is_usable(view.now),
    };
    let places = KeptIn::ALL.into_iter().map(Some).chain([None]);
    let boards: Vec<ShelfBoard> = places
        .filter_map(|place| {
            let own: Vec<&Kept> = kept.iter().filter(|one| one.place == place).collect();
            let more = own.len().saturating_sub(DRAWN);
            (!own.is_empty()).then(|| ShelfBoard {
                label: place.map_or_else(
                    || words.say("kept-somewhere"),
                    |place| words.say(&format!("choice-kept-in-{}", place.name())),
                ),
                bottles: own.iter().take(DRAWN).map(bottle).collect(),
                more: if more > 0 { words.with("kept-more", &[("more", more.into())]) } else { String::new() },
            })
        })
        .collect();
    let each = kept.iter().take(DRAWN).map(|one| {
        let needs = [("name", name(view, one.label.as_deref()).into()), ("amount", left(view, one).into())];
        words.with("kept-spoken-one", &needs)
    });
    let spoken = each.collect::<Vec<_>>().join(", ");
    (!boards.is_empty()).then(|| ShelfPicture {
        boards,
        legend: words.say("kept-legend"),
        spoken: words.with("kept-spoken", &[("each", spoken.into())]),
    })
}
