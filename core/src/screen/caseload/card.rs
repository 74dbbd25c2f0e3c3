//! The consultant's own card, as a QR code and as a line of text.

use super::super::qr_code;
use super::super::shapes::{Action, CardScreen, Event, Place, Screen, Weight};
use super::super::View;
use crate::record::SETTINGS;
use crate::share::names;
use crate::share::sealed::card::Whose;
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
            matrix: qr_code::matrix(&line)?,
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
