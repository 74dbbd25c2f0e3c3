//! The scale along a column, in words: what a thumb reads beside it.

use super::shapes::{Part, Reading, Tick};
use super::View;
use crate::gather::amount_scale::AmountScale;
use crate::record::{Amount, Session};

/// What the column reads at each height a thumb can mean, from the ground up.
pub(super) fn readings(view: &View<'_>, scale: &AmountScale) -> Vec<Reading> {
    let words = view.words();
    let reading =
        |(at, typed): (f32, String)| Reading { at, label: words.with_unit(typed.clone(), scale.unit()), typed };
    scale.figures().into_iter().map(reading).collect()
}

/// Labels along the height.
pub(super) fn ticks(view: &View<'_>, scale: &AmountScale) -> Vec<Tick> {
    let words = view.words();
    let tick = |(at, figure): (f32, String)| Tick {
        at,
        // The unit once, at the top.
        label: if at == 1.0 { words.with_unit(figure, scale.unit()) } else { figure },
    };
    scale.quarters().into_iter().map(tick).collect()
}

/// The field that the amount of one part of a session is kept in.
pub(crate) fn field_of(part: Part) -> &'static str {
    match part {
        Part::Left => "amount_left",
        Part::Right => "amount_right",
        Part::Together => "amount_together",
    }
}

/// The amount of one part of a session.
pub(crate) fn amount_of(session: &Session, part: Part) -> Option<&Amount> {
    match part {
        Part::Left => session.left.as_ref(),
        Part::Right => session.right.as_ref(),
        Part::Together => session.together.as_ref(),
    }
}
