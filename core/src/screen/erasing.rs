//! Before the record is erased: what goes, what remains, and the way to keep it.

use super::shapes::{Action, Event, Export, FindingsScreen, Place, Screen, Section, Sign, Weight};
use super::View;
use crate::screen::section::section;
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Erasing, words.say("erasing-page"), String::new())?;
    frame.back = Some(view.back());
    let copies = view.journal.backups().len() as i64;
    let mut goes = vec![words.say("erasing-goes-record")];
    if copies > 0 {
        goes.push(words.with("erasing-goes-backups", &[("count", copies.into())]));
    }
    goes.push(words.say("erasing-goes-aside"));
    let remains = ["files", "consultant", "backup"].map(|what| words.say(&format!("erasing-remains-{what}"))).to_vec();
    let section =
        |key: &str, lines: Vec<String>| Section { lines, ..section(key, words.say(&format!("erasing-{key}"))) };
    let (headline, caption) = (words.say("erasing-headline"), words.say("erasing-caption"));
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: words.with("row-spoken", &[("title", headline.clone().into()), ("detail", caption.clone().into())]),
            headline,
            figure: String::new(),
            caption,
            dial: None,
            lines: vec![words.say("erasing-first")],
            asks: Vec::new(),
            actions: vec![
                Action::new("hand-over-record", words.say("hand-over-record"), Event::Export { what: Export::Record })
                    .sign(Sign::Out),
                Action::new("erase-record", words.say("erase-record"), Event::EraseRecord).weight(Weight::Careful),
            ],
            sections: vec![section("goes", goes), section("remains", remains)],
        },
    })
}
