//! The consultant's own card, as a QR code and as a line of text.

use qrcode::{Color, EcLevel, QrCode};

use super::super::shapes::{Action, CardScreen, Event, Matrix, Place, Screen, Weight};
use super::super::View;
use crate::record::SETTINGS;
use crate::share::names;
use crate::share::sealed::card::{Card, Whose};
use crate::trouble::{Kind as TroubleKind, Trouble};

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let card = view.own_card.as_ref().ok_or_else(|| Trouble::new(TroubleKind::Missing, "trouble-no-such-record"))?;
    let own = card.whose == Whose::Consultant;
    let say = |consultant: &str, phone: &str| words.say(if own { consultant } else { phone });
    let detail = say("own-card-detail", "phone-card-detail");
    let mut frame = view.frame(&Place::OwnCard, say("own-card", "phone-card"), detail)?;
    if own {
        frame.places = Vec::new();
    }
    frame.back = Some(view.back());
    let compared = card.words().join(" ");
    let line = card.write();
    let name = Action::new(
        "own-name",
        words.say(if card.name.is_empty() { "own-name-none" } else { "own-name" }),
        Event::Go { place: Place::Entry { id: SETTINGS.to_owned() } },
    )
    .detail(names::shown(&card.name))
    .weight(Weight::Quiet);
    Ok(Screen::Card {
        frame,
        card: CardScreen {
            matrix: matrix(card)?,
            words_label: words.say("own-words"),
            words: compared,
            line_label: words.say("own-line"),
            line,
            lines: vec![say("own-card-how", "phone-card-how")],
            actions: if own { vec![name] } else { Vec::new() },
            spoken: words.say("own-card-spoken"),
        },
    })
}

/// The QR code of a card (ISO/IEC 18004), with the quiet zone of four modules around it.
fn matrix(card: &Card) -> Result<Matrix, Trouble> {
    const QUIET: usize = 4;
    let code = QrCode::with_error_correction_level(card.write().as_bytes(), EcLevel::M)
        .map_err(|_| Trouble::bad("card", "bad-card"))?;
    let width = code.width();
    let size = width + 2 * QUIET;
    let colors = code.to_colors();
    let dark = (0..size * size)
        .map(|place| {
            let (row, column) = (place / size, place % size);
            let inside = |at: usize| at.checked_sub(QUIET).filter(|at| *at < width);
            match (inside(row), inside(column)) {
                (Some(row), Some(column)) => colors.get(row * width + column) == Some(&Color::Dark),
                _ => false,
            }
        })
        .collect();
    Ok(Matrix { size: size as u32, dark })
}
