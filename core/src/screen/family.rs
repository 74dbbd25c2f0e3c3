//! Children, settings, and the record as a whole: out, in, and kept safe.

use super::shapes::{Action, Event, Export, ListGroup, ListScreen, Place, Screen, Sign, Weight};
use super::{kit, View};
use crate::record::{Kind, RULES, SETTINGS};
use crate::time::zone_data;
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Family, words.say("place-family"), words.say("family-subtitle"))?;
    frame.back = Some(view.back());
    Ok(Screen::List {
        frame,
        list: ListScreen {
            intro: String::new(),
            groups: vec![kit::group(view, Kind::Child)?, settings(view), record(view), about(view)],
        },
    })
}

fn settings(view: &View<'_>) -> ListGroup {
    let words = view.words();
    let wants = &view.settings;
    let detail = words.with(
        "settings-detail",
        &[
            ("volume", words.unit(wants.volume).into()),
            ("vacuum", words.unit(wants.vacuum).into()),
            ("temperature", words.unit(wants.temperature).into()),
            ("hand", words.say(&format!("choice-hand-{}", wants.hand)).into()),
        ],
    );
    let open = |id: &str| Event::Go { place: Place::Entry { id: id.to_owned() } };
    let told = |key: &str, detail: String| view.text_row(words.say(key), detail);
    ListGroup {
        key: "settings".to_owned(),
        title: words.say("group-settings"),
        rows: vec![
            told("settings", detail).opens("open-settings", open(SETTINGS)),
            told("rules", words.say("rules-detail")).opens("open-rules", open(RULES)),
        ],
        empty: String::new(),
        add: Vec::new(),
    }
}

fn record(view: &View<'_>) -> ListGroup {
    let words = view.words();
    let fact = |key: &str, detail: String| view.text_row(words.say(key), detail);
    let backup = match view.journal.last_backup() {
        Some(at) => words.with("backup-made", &[("span", words.span(view.now.since(at)).into())]),
        None => words.say("backup-none"),
    };
    ListGroup {
        key: "record".to_owned(),
        title: words.say("group-record"),
        rows: vec![
            fact("record-here", words.say("record-here-detail")),
            super::recovery::row(view),
            fact("backup", backup),
        ],
        empty: String::new(),
        add: vec![
            Action::new("hand-over-record", words.say("hand-over-record"), Event::Export { what: Export::Record })
                .detail(words.say("hand-over-record-detail"))
                .sign(Sign::Out),
            Action::new("pick-record", words.say("pick-record"), Event::PickRecord)
                .detail(words.say("pick-record-detail"))
                .sign(Sign::In),
            Action::new("open-erasing", words.say("open-erasing"), Event::Go { place: Place::Erasing })
                .detail(words.say("open-erasing-detail"))
                .weight(Weight::Quiet),
        ],
    }
}

fn about(view: &View<'_>) -> ListGroup {
    let words = view.words();
    let look = if view.look_around {
        Action::new("leave-look-around", words.say("leave-look-around"), Event::LeaveLookAround)
    } else {
        Action::new("look-around", words.say("welcome-look-around"), Event::LookAround)
            .detail(words.say("welcome-look-around-detail"))
    };
    ListGroup {
        key: "about".to_owned(),
        title: words.say("group-about"),
        rows: vec![
            view.text_row(words.say("about-care"), words.say("about-care-detail")),
            view.text_row(
                words.say("about-zones"),
                words.with("about-zones-detail", &[("release", zone_data().into())]),
            ),
        ],
        empty: String::new(),
        add: vec![look.weight(Weight::Quiet)],
    }
}
