//! Whether a network of units may count this family: for what, and until when.

use super::super::shapes::{Action, Event, ListGroup, Place, QuestionScreen, Screen, Sign, Weight};
use super::super::View;
use crate::gather::consent::holding;
use crate::record::ConsentScope;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// For how many months it may hold; or until it is withdrawn.
const MONTHS: [u32; 3] = [3, 6, 12];

pub(super) fn group(view: &View<'_>) -> Result<ListGroup, Trouble> {
    let words = view.words();
    let given = holding(view)?;
    let ask = Event::Go { place: Place::Consent { scope: None } };
    let (rows, add) = match &given {
        Some(given) => {
            let until = match given.until {
                Some(until) => words.with("consent-until", &[("date", words.date(LocalDay::on(until)).into())]),
                None => words.say("consent-open-ended"),
            };
            let title = words.say(&format!("choice-consent-scope-{}", given.scope.name()));
            let open = Event::Go { place: Place::Entry { id: given.id.clone() } };
            let row = view.text_row(title, until).opens(format!("open-{}", given.id), open);
            let withdraw = Action::new("withdraw-consent", words.say("consent-withdraw"), Event::WithdrawConsent);
            (vec![row], withdraw.detail(words.say("consent-withdraw-detail")).sign(Sign::Out))
        }
        None => {
            let open = Action::new("open-consent", words.say("consent-open"), ask);
            (Vec::new(), open.detail(words.say("consent-open-detail")).sign(Sign::Out))
        }
    };
    Ok(ListGroup {
        key: "consent".to_owned(),
        title: words.say("consent-title"),
        rows,
        empty: if given.is_none() { words.say("consent-none") } else { String::new() },
        add: vec![add],
    })
}

pub(in crate::screen) fn show(view: &View<'_>, scope: Option<&str>) -> Result<Screen, Trouble> {
    let words = view.words();
    let place = Place::Consent { scope: scope.map(str::to_owned) };
    let mut frame = view.frame(&place, words.say("consent-title"), words.say("consent-subtitle"))?;
    frame.back = Some(view.back());
    let skip = Action::new("skip", words.say("consent-no"), Event::Go { place: Place::Visit }).weight(Weight::Quiet);
    let question = match scope {
        None => QuestionScreen {
            headline: words.say("consent-what-for"),
            line: words.say("consent-what-for-line"),
            answers: ConsentScope::ALL
                .map(|scope| {
                    let place = Place::Consent { scope: Some(scope.name().to_owned()) };
                    let label = words.say(&format!("choice-consent-scope-{}", scope.name()));
                    Action::new(format!("scope-{}", scope.name()), label, Event::Go { place })
                })
                .into(),
            skip: Some(skip),
        },
        Some(scope) => {
            let give = |months: Option<u32>| Event::GiveConsent { scope: scope.to_owned(), months };
            let spans = MONTHS.map(|months| {
                let label = words.with("consent-months", &[("months", months.into())]);
                Action::new(format!("months-{months}"), label, give(Some(months)))
            });
            let open = Action::new("months-open", words.say("consent-open-ended"), give(None));
            QuestionScreen {
                headline: words.say("consent-how-long"),
                line: words.say("consent-how-long-line"),
                answers: spans.into_iter().chain([open]).collect(),
                skip: Some(skip),
            }
        }
    };
    Ok(Screen::Question { frame, question })
}
