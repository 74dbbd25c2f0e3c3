//! A session that is over already, in two questions: when it ended, and how long it was.

use super::ready::how;
use super::shapes::{Action, Event, Place, QuestionScreen, Screen};
use super::View;
use crate::gather::next_session::SetUp;
use crate::record::Kind;
use crate::time::Span;
use crate::trouble::Trouble;

/// When it may have ended: minutes ago.
const ENDED: [u32; 8] = [0, 15, 30, 45, 60, 90, 120, 180];
/// How long it may have been, in minutes.
const LASTED: [u32; 8] = [5, 10, 15, 20, 25, 30, 45, 60];

pub(super) fn show(view: &View<'_>, minutes_ago: Option<u32>) -> Result<Screen, Trouble> {
    let words = view.words();
    let set_up = how(view, &SetUp::next(view)?, &view.named(Kind::Pump)?);
    let place = Place::JustPumped { minutes_ago };
    let mut frame = view.frame(&place, words.say("just-pumped"), set_up)?;
    frame.back = Some(view.back());
    let span = |minutes: u32| words.span(Span::minutes(i64::from(minutes)));
    let question = match minutes_ago {
        None => QuestionScreen {
            headline: words.say("pumped-ended"),
            line: String::new(),
            answers: ENDED
                .map(|minutes| {
                    let label = match minutes {
                        0 => words.say("pumped-ended-now"),
                        _ => words.with("pumped-ended-ago", &[("span", span(minutes).into())]),
                    };
                    let place = Place::JustPumped { minutes_ago: Some(minutes) };
                    Action::new(format!("ended-{minutes}"), label, Event::Go { place })
                })
                .into(),
            skip: Some(Action::new(
                "add-session",
                words.say("pumped-ended-earlier"),
                Event::Add { kind: Kind::Session.name().to_owned(), days_back: 0 },
            )),
        },
        Some(minutes_ago) => {
            let lasted = |lasted_minutes: Option<u32>| Event::JustPumped { minutes_ago, lasted_minutes };
            QuestionScreen {
                headline: words.say("pumped-lasted"),
                line: String::new(),
                answers: LASTED
                    .map(|minutes| Action::new(format!("lasted-{minutes}"), span(minutes), lasted(Some(minutes))))
                    .into(),
                skip: Some(Action::new("lasted-unknown", words.say("pumped-lasted-unknown"), lasted(None))),
            }
        }
    };
    Ok(Screen::Question { frame, question })
}
