//! Which pump: what each offers against what is wanted, line by line, each by its rule.
//!
//! What is offered is gathered in [`crate::gather::choice`]. [`lines`] says what [`crate::answer::choice`] found, in
//! [`words`]; [`rules`] says by which rule; [`picture`] draws all pumps on one scale; [`stated`] and [`claim`] are what a stated figure says alone and after a check; [`asks`] is what to ask the
//! person and the seller; [`on_pages`] is what stands in Kit, in Visit and on the visit sheet; [`page`] is the
//! family's own page. There is no score, and the order is that in which pumps were added.

mod asks;
mod claim;
mod facts;
mod lines;
mod on_pages;
mod page;
mod picture;
mod rules;
mod stated;
mod words;

pub(super) use asks::of_a_pump as stated_asks;
pub(super) use claim::section_of as claim_checked;
pub(super) use on_pages::group;
pub(in crate::screen) use on_pages::{in_visit, on_sheet};
pub(in crate::screen) use page::page_sections;
pub(super) use stated::{in_short as stated_in_short, lines as stated_lines, range as stated_range};

use super::pump_words::{bare, opens, section};
use crate::answer::choice::Aspect;
use crate::gather::choice::ChoiceInputs;
use crate::record::{Kind, WANTED};
use crate::screen::shapes::{Action, Event, Export, FindingsScreen, Paper, Place, Screen, Section, Sign, Weight};
use crate::screen::View;
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Choice, words.say("offer-title"), words.say("offer-subtitle"))?;
    frame.back = Some(view.back());
    let inputs = ChoiceInputs::over(view)?;
    let (headline, caption) = (headline(view, &inputs), words::wanted(view, &inputs.wanted));
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [headline.as_str(), caption.as_str()].join(" "),
            headline,
            figure: String::new(),
            caption,
            dial: None,
            lines: Vec::new(),
            asks: asks::of_the_person(view, &inputs),
            actions: actions(view, &inputs),
            sections: sections(view, &inputs)?,
        },
    })
}

fn headline(view: &View<'_>, inputs: &ChoiceInputs) -> String {
    let words = view.words();
    match inputs.offers.len() {
        0 => words.say("offer-none"),
        1 => words.say("offer-one"),
        count => words.with("offer-several", &[("count", count.into())]),
    }
}

fn actions(view: &View<'_>, inputs: &ChoiceInputs) -> Vec<Action> {
    let words = view.words();
    let add = Event::Add { kind: Kind::OfferedPump.name().to_owned(), days_back: 0 };
    let wanted = Event::Go { place: Place::Entry { id: WANTED.to_owned() } };
    let mut actions = vec![
        Action::new("add-offered_pump", words.say("add-offered_pump"), add).sign(Sign::Add).weight(Weight::Main),
        Action::new("wanted", words.say("offer-open-wanted"), wanted).sign(Sign::Settings),
    ];
    if !inputs.offers.is_empty() {
        let page = Event::Export { what: Export::Choice { paper: Paper::A4 } };
        actions.push(
            Action::new("hand-over-choice", words.say("offer-page"), page)
                .detail(words.say("offer-page-detail"))
                .sign(Sign::Out),
        );
    }
    actions
}

fn sections(view: &View<'_>, inputs: &ChoiceInputs) -> Result<Vec<Section>, Trouble> {
    let words = view.words();
    let mut found = Vec::new();
    if let Some(plot) = picture::of(view, inputs) {
        found.push(Section { plot: Some(plot), ..section(view, "offer-picture") });
    }
    for aspect in Aspect::ALL {
        let rows = lines::rows(view, inputs, aspect);
        if !rows.is_empty() {
            let lines = rules::lines(view, inputs, aspect)?;
            found.push(Section { lines, rows, ..section(view, rules::section_key(aspect)) });
        }
    }
    found.push(Section { rows: facts::rows(view, inputs), ..section(view, "offer-facts") });
    found.push(Section { rows: asks::of_the_seller(view, inputs), ..section(view, "offer-asks") });
    found.push(Section { lines: rules::early(view, inputs), ..section(view, "offer-early") });
    let rows = inputs.offers.iter().enumerate().map(|(at, offer)| {
        let place = Place::Entry { id: offer.id.clone() };
        let detail = facts::decided(view, offer);
        opens(view, format!("open-{}", offer.id), words::numbered(view, at, offer), detail, place)
    });
    found.push(Section { rows: rows.collect(), ..section(view, "offer-pumps") });
    let mut says = vec![words.say("offer-no-order"), words.say("offer-not-known"), rules::more(view)?];
    says.push(words.say("pump-defers"));
    found.push(Section { lines: says, ..bare("says") });
    found.retain(|s| !s.lines.is_empty() || !s.rows.is_empty() || s.plot.is_some());
    if inputs.offers.is_empty() {
        found.retain(|s| matches!(s.key.as_str(), "offer-early" | "says"));
    }
    Ok(found)
}
