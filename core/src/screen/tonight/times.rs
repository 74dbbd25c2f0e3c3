//! The times to come, each with why then.

use super::head::{clock, why};
use crate::gather::tonight::TonightInputs;
use crate::screen::shapes::{ListGroup, ListRow};
use crate::screen::View;
use crate::time::{LocalDay, Moment};

pub(super) fn group(view: &View<'_>, look: &TonightInputs) -> ListGroup {
    let words = view.words();
    let Some(plan) = look.plan.as_ref().filter(|p| !p.sessions.is_empty()) else {
        return super::empty_group::empty_group("times");
    };
    let mut day = view.today();
    let rows: Vec<ListRow> = plan
        .sessions
        .iter()
        .map(|session| {
            let on = LocalDay::of(&Moment::new(session.at, view.zone), view.settings.day_start);
            let time = clock(view, session.at);
            let title = match std::mem::replace(&mut day, on) == on {
                true => time,
                false => words.with("times-next-day", &[("time", time.into()), ("date", words.date(on).into())]),
            };
            view.text_row(title, why(view, look, session))
        })
        .collect();
    ListGroup { key: "times".to_owned(), title: words.say("times"), rows, empty: String::new(), add: Vec::new() }
}
