//! Before a family is removed from this machine: what goes, and what remains.

use super::super::shapes::{Action, DeskEvent, Event, FindingsScreen, Place, Screen, Section, Weight};
use super::super::View;
use crate::record::Kind;
use crate::screen::section::section;
use crate::trouble::{Kind as TroubleKind, Trouble};

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (kind, fields) = view.record(id)?;
    if kind != Kind::CaseFamily {
        return Err(Trouble::new(TroubleKind::Missing, "trouble-no-such-record"));
    }
    let place = Place::Removing { id: id.to_owned() };
    let mut frame = view.frame(&place, view.name_of(kind, &fields), words.say("remove-family"))?;
    frame.back = Some(view.back());
    let section = |key: &str, all: &[&str]| Section {
        lines: all.iter().map(|what| words.say(&format!("removing-{what}"))).collect(),
        ..section(key, words.say(&format!("erasing-{key}")))
    };
    let (headline, caption) = (words.say("erasing-headline"), words.say("removing-caption"));
    let event = Event::OnDesk { event: DeskEvent::RemoveFamily { family: id.to_owned() } };
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: words.with("row-spoken", &[("title", headline.clone().into()), ("detail", caption.clone().into())]),
            headline,
            figure: String::new(),
            caption,
            dial: None,
            lines: Vec::new(),
            asks: Vec::new(),
            actions: vec![Action::new("erase-family", words.say("removing-do"), event).weight(Weight::Careful)],
            sections: vec![section("goes", &["record", "written"]), section("remains", &["files", "family"])],
        },
    })
}
