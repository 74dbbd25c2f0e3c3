//! What is asked once, after the first screen. All of it may be left open.

use super::shapes::{Action, Event, Place, QuestionScreen, Screen, StartingQuestion, Weight};
use super::View;
use crate::quantity::{Unit, VolumeUnit};
use crate::trouble::Trouble;

/// Births that are one tap away, in days ago.
const BORN: [u32; 8] = [0, 1, 2, 3, 4, 5, 6, 7];
/// Sessions a day that are one tap away; what was agreed, no advice.
const SESSIONS: [u32; 8] = [4, 5, 6, 7, 8, 9, 10, 12];

/// The question after this one.
pub(crate) fn next(question: StartingQuestion) -> Option<StartingQuestion> {
    match question {
        StartingQuestion::Units => Some(StartingQuestion::Birth),
        StartingQuestion::Birth => Some(StartingQuestion::SessionsADay),
        StartingQuestion::SessionsADay => None,
    }
}

fn name(question: StartingQuestion) -> &'static str {
    match question {
        StartingQuestion::Units => "units",
        StartingQuestion::Birth => "birth",
        StartingQuestion::SessionsADay => "sessions",
    }
}

pub(super) fn show(view: &View<'_>, question: StartingQuestion) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame =
        view.frame(&Place::Starting { question }, words.say("starting-title"), words.say("starting-subtitle"))?;
    frame.places = Vec::new();
    let answer = |answer: String, label: String| {
        Action::new(format!("answer-{answer}"), label, Event::StartingAnswer { question, answer })
    };
    let answers = match question {
        StartingQuestion::Units => [VolumeUnit::Milliliter, VolumeUnit::FluidOunce]
            .map(|unit| {
                let named = words.say(&format!("starting-unit-{}", words.unit_key(unit)));
                answer(unit.ucum().to_owned(), named).chosen(view.settings.volume == unit)
            })
            .into(),
        StartingQuestion::Birth => BORN
            .map(|days| {
                let label = match days {
                    0 => words.say("today"),
                    1 => words.say("yesterday"),
                    _ => words.date(view.today().earlier_by(days)),
                };
                answer(days.to_string(), label)
            })
            .into_iter()
            .chain([Action::new(
                "add-child",
                words.say("starting-birth-earlier"),
                Event::Add { kind: "child".to_owned(), days_back: 0 },
            )])
            .collect(),
        StartingQuestion::SessionsADay => SESSIONS.map(|count| answer(count.to_string(), count.to_string())).into(),
    };
    let skip = match next(question) {
        Some(question) => Place::Starting { question },
        None => Place::Now,
    };
    let name = name(question);
    Ok(Screen::Question {
        frame,
        question: QuestionScreen {
            headline: words.say(&format!("starting-{name}")),
            line: words.say(&format!("starting-{name}-line")),
            answers,
            skip: Some(
                Action::new("skip", words.say("starting-skip"), Event::Go { place: skip }).weight(Weight::Quiet),
            ),
        },
    })
}
