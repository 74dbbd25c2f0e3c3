//! What lapses soon, said where it is met: on Now; and the way to it, on Supply.

use super::shelf::SOON;
use crate::gather::keeping::{sum, KeptMilk};
use crate::screen::shapes::{Action, Event, Notice, Place, Sign, Tone, Weight};
use crate::screen::View;
use crate::trouble::Trouble;

/// What lapses within a day; none where nothing does.
pub(in crate::screen) fn notice(view: &View<'_>) -> Result<Option<Notice>, Trouble> {
    if view.journal.containers_not_emptied()?.is_empty() {
        return Ok(None);
    }
    let milk = KeptMilk::read(view)?;
    let (soon, _) = milk.lapsing(view.now, SOON);
    if soon.is_empty() {
        return Ok(None);
    }
    let words = view.words();
    let (amount, unknown) = sum(soon.iter().copied());
    let key = if unknown == 0 { "kept-lapses-today" } else { "kept-lapses-today-partly" };
    let needs = [("bottles", soon.len().into()), ("amount", words.volume(amount).into())];
    let text = words.with(key, &needs);
    let open = Action::new("open-kept", words.say("kept-open"), Event::Go { place: Place::Kept }).weight(Weight::Quiet);
    Ok(Some(Notice {
        key: "kept-lapses".to_owned(),
        tone: Tone::Quiet,
        spoken: text.clone(),
        text,
        actions: vec![open],
    }))
}

/// The way to milk that is kept, with how much there is.
pub(in crate::screen) fn action(view: &View<'_>) -> Result<Action, Trouble> {
    let words = view.words();
    let milk = KeptMilk::read(view)?;
    let detail = match milk.kept.is_empty() {
        true => words.say("kept-nothing"),
        false => words.with(
            "kept-in-short",
            &[
                ("amount", words.volume(milk.usable(view.now).0).into()),
                ("bottles", milk.kept.iter().filter(|one| one.is_usable(view.now)).count().into()),
            ],
        ),
    };
    Ok(Action::new("supply-kept", words.say("kept-title"), Event::Go { place: Place::Kept })
        .detail(detail)
        .sign(Sign::Later))
}
