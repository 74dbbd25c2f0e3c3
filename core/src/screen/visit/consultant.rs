//! A consultant whose keys were added: words to compare, and the record for them.

use super::super::shapes::{Action, Event, Export, FindingsScreen, Place, Screen, Section, Sign, Weight};
use super::super::View;
use crate::record::{text, Kind};
use crate::share::sealed::spoken;
use crate::share::sealed::spoken::is_compared;
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
    let same = is_compared(&fields);
    let mut lines = vec![words.say(if same { "consultant-compared" } else { "consultant-compare" })];
    lines.extend(["share-what-goes", "not-a-diagnosis-share"].map(|line| words.say(line)));
    let first = match same {
        true => Action::new(
            "share-with",
            match key("name").trim() {
                "" => words.say("share-with-unnamed"),
                name => words.with("share-with", &[("name", name.into())]),
            },
            Event::Export { what: Export::SealedFor { consultant: id.to_owned() } },
        )
        .detail(words.say("share-with-detail"))
        .sign(Sign::Out),
        false => Action::new("words-same", words.say("words-same"), Event::WordsSame { consultant: id.to_owned() })
            .sign(Sign::In),
    };
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: words.with(
                "row-spoken",
                &[("title", words.say("consultant-words").into()), ("detail", compared.clone().into())],
            ),
            headline: words.say(if same { "consultant-words-same" } else { "consultant-words" }),
            // Once they were compared they are there to be read again, and no longer the thing to do.
            figure: if same { String::new() } else { compared.clone() },
            caption: if same { compared } else { String::new() },
            dial: None,
            lines,
            asks: Vec::new(),
            actions: vec![
                first.weight(if same { Weight::Main } else { Weight::Plain }),
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
