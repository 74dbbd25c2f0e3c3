//! Over an empty record: begin, bring a record in, or look around.

use super::shapes::{Action, Event, Place, Screen, Sign, Weight, WelcomeScreen};
use super::View;
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Now, words.say("app-name"), String::new())?;
    frame.places = Vec::new();
    frame.undo = None;
    frame.redo = None;
    Ok(Screen::Welcome {
        frame,
        welcome: WelcomeScreen {
            headline: words.say("welcome-headline"),
            lines: ["welcome-line-record", "welcome-line-private", "welcome-line-care"].map(|k| words.say(k)).to_vec(),
            actions: vec![
                Action::new("begin", words.say("welcome-begin"), Event::Begin).weight(Weight::Main).sign(Sign::Start),
                Action::new("look-around", words.say("welcome-look-around"), Event::LookAround)
                    .detail(words.say("welcome-look-around-detail")),
                Action::new("pick-record", words.say("welcome-bring-in"), Event::PickRecord)
                    .weight(Weight::Quiet)
                    .sign(Sign::In),
            ],
        },
    })
}
