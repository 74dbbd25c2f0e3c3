//! Tonight: when to express next, and what the night holds.

use super::shapes::{ListGroup, Place, Screen, TonightScreen};
use super::View;
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let frame = view.frame(&Place::Tonight, words.say("place-tonight"), words.date(view.today()))?;
    Ok(Screen::Tonight {
        frame,
        tonight: TonightScreen {
            headline: String::new(),
            figure: String::new(),
            caption: String::new(),
            why: String::new(),
            asks: Vec::new(),
            start: None,
            actions: Vec::new(),
            night: None,
            figures: Vec::new(),
            choices: Vec::new(),
            times: ListGroup {
                key: "times".to_owned(),
                title: String::new(),
                rows: Vec::new(),
                empty: String::new(),
                add: Vec::new(),
            },
            sections: Vec::new(),
            spoken: String::new(),
        },
    })
}
