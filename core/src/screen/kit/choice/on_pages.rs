//! A choice in the list of Kit, in Visit and on the visit sheet.

use super::super::pump_words::opens;
use super::stated;
use super::words::name;
use crate::gather::choice::{ChoiceInputs, Offer};
use crate::record::Kind;
use crate::screen::shapes::{Action, Event, ListGroup, ListRow, Place, Sign};
use crate::screen::View;
use crate::trouble::Trouble;

/// Pumps that the visit sheet names; more are counted.
const MOST_ON_THE_SHEET: usize = 4;

fn lead(view: &View<'_>, inputs: &ChoiceInputs) -> ListRow {
    let words = view.words();
    let detail = match inputs.offers.len() {
        0 => words.say("offer-lead-none"),
        count => words.with("offer-lead", &[("count", count.into())]),
    };
    opens(view, "open-choice".to_owned(), words.say("offer-title"), detail, Place::Choice)
}

/// What leads to the choice, from Kit.
pub(in crate::screen::kit) fn group(view: &View<'_>) -> Result<ListGroup, Trouble> {
    let words = view.words();
    let inputs = ChoiceInputs::over(view)?;
    let name = Kind::OfferedPump.name();
    let add = Event::Add { kind: name.to_owned(), days_back: 0 };
    Ok(ListGroup {
        key: "choice".to_owned(),
        title: words.say("offer-group"),
        rows: vec![lead(view, &inputs)],
        empty: String::new(),
        add: vec![Action::new(format!("add-{name}"), words.say(&format!("add-{name}")), add).sign(Sign::Add)],
    })
}

/// What leads to it from Visit, while a choice is open.
pub(in crate::screen) fn in_visit(view: &View<'_>) -> Result<Option<ListGroup>, Trouble> {
    let inputs = ChoiceInputs::over(view)?;
    Ok(inputs.is_open().then(|| ListGroup {
        key: "choice".to_owned(),
        title: view.words().say("offer-group"),
        rows: vec![lead(view, &inputs)],
        empty: String::new(),
        add: Vec::new(),
    }))
}

/// What a visit sheet says while a choice is open, in the fewest words: what each pump states.
pub(in crate::screen) fn on_sheet(view: &View<'_>) -> Result<Option<String>, Trouble> {
    let inputs = ChoiceInputs::over(view)?;
    if !inputs.is_open() {
        return Ok(None);
    }
    let words = view.words();
    let open: Vec<&Offer> = inputs.open().collect();
    let said = |offer: &&Offer| {
        let figures = stated::on_sheet(view, &offer.fields, &inputs.rules);
        words.with("offer-on-sheet", &[("name", name(view, offer).into()), ("figures", figures.into())])
    };
    let mut pumps: Vec<String> = open.iter().take(MOST_ON_THE_SHEET).map(said).collect();
    if let Some(more) = open.len().checked_sub(MOST_ON_THE_SHEET).filter(|more| *more > 0) {
        pumps.push(words.with("offer-more-on-sheet", &[("count", more.into())]));
    }
    Ok(Some(pumps.join(" \u{b7} ")))
}
