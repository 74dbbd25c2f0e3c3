//! A consultant whose keys were taken in: words to compare, and the record for her.

use super::super::shapes::{Action, Event, FindingsScreen, Place, Screen, Section, Sign, Weight};
use super::super::View;
use crate::record::{text, Kind};
use crate::share::sealed::spoken;
use crate::trouble::{Kind as TroubleKind, Trouble};

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (kind, fields) = view.record(id)?;
    if kind != Kind::Consultant {
        return Err(Trouble::new(TroubleKind::Missing, "trouble-no-such-record"));
    }
    let place = Place::Consultant { id: id.to_owned() };
    let mut frame = view.frame(&place, view.name_of(kind, &fields), words.say("kind-consultant"))?;
    frame.back = Some(view.back());
    let key = |field: &str| text(&fields, field).unwrap_or_default();
    let compared = spoken::words(key("sealing_key"), key("signing_key")).join(" ");
    let lines = vec![words.say("consultant-compare"), words.say("share-what-goes"), words.say("not-a-diagnosis-share")];
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: words.with(
                "row-spoken",
                &[("title", words.say("consultant-words").into()), ("detail", compared.clone().into())],
            ),
            headline: words.say("consultant-words"),
            figure: compared,
            caption: String::new(),
            dial: None,
            lines,
            asks: Vec::new(),
            actions: vec![
                Action::new("share-with", words.say("share-with"), Event::ShareWith { consultant: id.to_owned() })
                    .detail(words.say("share-with-detail"))
                    .sign(Sign::Out)
                    .weight(Weight::Main),
                Action::new(
                    "consultant-details",
                    words.say("consultant-details"),
                    Event::Go { place: Place::Entry { id: id.to_owned() } },
                )
                .weight(Weight::Quiet),
            ],
            sections: Vec::<Section>::new(),
        },
    })
}
