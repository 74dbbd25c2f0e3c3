//! What to ask: the person of a figure that may be a slip, the seller of what is not stated.

use super::super::pump_words::notice;
use super::words::name;
use crate::answer::choice::doubts::meant_unit;
use crate::answer::choice::{doubts, questions, Doubt, Question};
use crate::gather::choice::{ChoiceInputs, Offer};
use crate::guidance::KitRules;
use crate::quantity::Vacuum;
use crate::record::{Fields, Kind, Offered};
use crate::screen::shapes::{Action, Event, ListRow, Notice, Place};
use crate::screen::View;

/// Gentle questions before a figure is believed.
pub(super) fn of_the_person(view: &View<'_>, inputs: &ChoiceInputs) -> Vec<Notice> {
    inputs.offers.iter().flat_map(|offer| of(view, &offer.id, &name(view, offer), &offer.pump, &inputs.rules)).collect()
}

/// The same of a pump in Kit that was not checked.
pub(in crate::screen::kit) fn of_a_pump(view: &View<'_>, id: &str, pump: &Fields, rules: &KitRules) -> Vec<Notice> {
    of(view, id, &view.name_of(Kind::Pump, pump), &Offered::read(pump), rules)
}

fn of(view: &View<'_>, id: &str, name: &str, pump: &Offered, rules: &KitRules) -> Vec<Notice> {
    doubts(pump, rules).iter().map(|doubt| asked(view, id, name, doubt)).collect()
}

fn asked(view: &View<'_>, id: &str, name: &str, doubt: &Doubt) -> Notice {
    let words = view.words();
    let own = |key: &str| format!("{key}-{id}");
    let figure = |read: Vacuum, meant: Vacuum| {
        [("name", name.into()), ("read", words.vacuum(read).into()), ("meant", words.vacuum(meant).into())]
    };
    let right = || {
        let event = Event::Enter { id: id.to_owned(), field: "figures_are_right".to_owned(), typed: "yes".to_owned() };
        Action::new(own("figures-right"), words.say("readings-are-right"), event)
    };
    let meant = |label: &str| {
        let unit = meant_unit(doubt).unwrap_or_default().to_owned();
        Action::new(own("meant"), words.say(label), Event::MeantIn { id: id.to_owned(), unit })
    };
    match doubt {
        Doubt::PerhapsKilopascal { read, meant: by } => notice(
            &own("kilopascal"),
            words.with("offer-asks-kilopascal", &figure(*read, *by)),
            vec![meant("meant-kilopascal"), right()],
        ),
        Doubt::PerhapsMillibar { read, meant: by } => notice(
            &own("millibar"),
            words.with("offer-asks-millibar", &figure(*read, *by)),
            vec![meant("offer-meant-millibar"), right()],
        ),
        Doubt::NoCurrency => {
            let open = Event::Go { place: Place::Entry { id: id.to_owned() } };
            let text = words.with("offer-asks-currency", &[("name", name.into())]);
            notice(&own("currency"), text, vec![Action::new(own("open"), words.say("asks-look"), open)])
        }
    }
}

/// A row for each pump of which something is to be asked.
pub(super) fn of_the_seller(view: &View<'_>, inputs: &ChoiceInputs) -> Vec<ListRow> {
    let said = |offer: &Offer| (name(view, offer), asked_of(view, inputs, offer).join(" "));
    let rows = inputs.offers.iter().map(said).filter(|(_, asked)| !asked.is_empty());
    rows.map(|(name, asked)| view.text_row(name, asked)).collect()
}

/// What to ask whoever offers a pump.
pub(super) fn asked_of(view: &View<'_>, inputs: &ChoiceInputs, offer: &Offer) -> Vec<String> {
    questions(&offer.pump, &inputs.wanted).into_iter().map(|question| view.words().say(key(question))).collect()
}

const fn key(question: Question) -> &'static str {
    match question {
        Question::HighestVacuum => "offer-ask-highest-vacuum",
        Question::UpToWhich => "offer-ask-up-to-which",
        Question::Cycles => "offer-ask-cycles",
        Question::SetApart => "offer-ask-set-apart",
        Question::Stimulation => "offer-ask-stimulation",
        Question::BothAtOnce => "offer-ask-both-at-once",
        Question::Power => "offer-ask-power",
        Question::InClothes => "offer-ask-in-clothes",
        Question::MadeFor => "offer-ask-made-for",
        Question::MilkPath => "offer-ask-milk-path",
        Question::HoursRun => "offer-ask-hours-run",
        Question::Warranty => "offer-ask-warranty",
    }
}
