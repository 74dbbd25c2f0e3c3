//! Whether the record is sealed on this device, what is lost where its key is lost, and the
//! words that open it then.

use super::shapes::{
    Action, Event, FieldGroup, FieldKind, FindingsScreen, ListRow, Place, Screen, Section, Sign, Weight,
};
use super::{visit, View};
use crate::screen::section::section;
use crate::trouble::Trouble;

/// Where a recovery code is typed, as events name it.
pub(crate) const RECOVERY_CODE: &str = "recovery-code";

/// Where the code is typed of a record whose key is not there.
fn ask(view: &View<'_>) -> Result<Screen, Trouble> {
    let group = FieldGroup {
        key: "locked".to_owned(),
        title: view.words().say("group-locked"),
        rows: vec![visit::typed_row(view, RECOVERY_CODE, FieldKind::Secret, (Sign::In, Weight::Main))],
    };
    visit::form(view, &Place::Recovery, "locked-page", vec![group], Vec::new())
}

/// The line that says how the record lies here, and opens the page.
pub(super) fn row(view: &View<'_>) -> ListRow {
    let words = view.words();
    let told = view.text_row(words.say("sealed"), words.say(&format!("sealed-detail-{}", state(view))));
    told.opens("open-recovery", Event::Go { place: Place::Recovery })
}

fn state(view: &View<'_>) -> &'static str {
    match (view.journal.key().is_some(), view.journal.has_recovery()) {
        (false, _) => "not",
        (true, false) => "no-code",
        (true, true) => "code",
    }
}

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    if view.locked {
        return ask(view);
    }
    let words = view.words();
    let mut frame = view.frame(&Place::Recovery, words.say("recovery-page"), String::new())?;
    frame.back = Some(view.back());
    let state = state(view);
    let section =
        |key: &str, lines: Vec<String>| Section { lines, ..section(key, words.say(&format!("recovery-{key}"))) };
    let say_all = |key: &str, lines: &[&str]| lines.iter().map(|line| words.say(&format!("{key}-{line}"))).collect();
    let sealed = view.journal.key().is_some();
    let mut sections = Vec::new();
    let mut actions = Vec::new();
    if let Some(code) = view.offered.filter(|_| sealed) {
        // Numbered, so that none is left out when they are written down.
        let numbered = |(number, word): (usize, &str)| {
            words.with("recovery-word", &[("number", (number as i64 + 1).into()), ("word", word.to_owned().into())])
        };
        sections.push(section("code", code.split(' ').enumerate().map(numbered).collect()));
        sections.push(section("keep", say_all("recovery-keep", &["paper", "once", "anyone"])));
    } else if sealed {
        let key = if state == "code" { "make-recovery-anew" } else { "make-recovery" };
        actions.push(Action::new(key, words.say(key), Event::MakeRecovery).weight(Weight::Main));
    } else if !view.look_around && !view.journal.is_read_only() {
        let seal = Action::new("seal-with-code", words.say("seal-with-code"), Event::SealWithCode);
        actions.push(seal.detail(words.say("seal-with-code-detail")));
    }
    sections.push(match sealed {
        true => section("lost", say_all("recovery-lost", &["how", "what", "other"])),
        false => section("open", say_all("recovery-open", &["who", "what", "why"])),
    });
    let headline = words.say(&format!("recovery-headline-{}", if sealed { "sealed" } else { "not" }));
    let caption = words.say(&format!("recovery-caption-{state}"));
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
            actions,
            sections,
        },
    })
}
