//! What else a sheet states: no rule goes by it.

use super::words::name;
use crate::gather::choice::{ChoiceInputs, Offer};
use crate::quantity::say_decimal;
use crate::record::{text, whole_number};
use crate::screen::shapes::ListRow;
use crate::screen::View;

/// A row for each pump of which there is something.
pub(super) fn rows(view: &View<'_>, inputs: &ChoiceInputs) -> Vec<ListRow> {
    inputs
        .offers
        .iter()
        .map(|offer| (offer, of(view, inputs, offer)))
        .filter(|(_, said)| !said.is_empty())
        .map(|(offer, said)| view.text_row(name(view, offer), said))
        .collect()
}

/// How it is offered, its steps, its warranty where no line tells it, its weight and its price.
pub(super) fn of(view: &View<'_>, inputs: &ChoiceInputs, offer: &Offer) -> String {
    let words = view.words();
    let how = text(&offer.fields, "offered_how").map(|how| words.say(&format!("choice-offered-how-{how}")));
    let levels = offer.pump.levels.map(|count| words.with("levels", &[("count", count.get().into())]));
    let speeds = whole_number(&offer.fields, "speed_steps");
    let speeds = speeds.map(|count| words.with("offer-speed-steps", &[("count", count.into())]));
    let weight = offer.pump.weight.as_ref().map(|weight| words.entered(weight, view.settings.mass));
    let warranty = offer.pump.warranty_months.filter(|_| inputs.wanted.planned.is_none());
    let warranty = warranty.map(|months| words.with("offer-fact-warranty", &[("months", months.get().into())]));
    let parts = [how, levels, speeds, warranty, weight, price(view, offer)];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" \u{b7} ")
}

/// A price with its currency, and what it is for; where no currency was said, as a bare figure.
fn price(view: &View<'_>, offer: &Offer) -> Option<String> {
    let words = view.words();
    let price = offer.pump.price.as_ref()?;
    let figure = say_decimal(price.figure.as_f64()?, 2);
    let figure = match &price.currency {
        Some(currency) => words.with("quantity", &[("figure", figure.into()), ("unit", currency.as_str().into())]),
        None => figure,
    };
    Some(match text(&offer.fields, "price_for") {
        Some("week") => words.with("offer-price-week", &[("price", figure.into())]),
        Some("month") => words.with("offer-price-month", &[("price", figure.into())]),
        _ => figure,
    })
}

/// What was decided of it.
pub(super) fn decided(view: &View<'_>, offer: &Offer) -> String {
    let decided = text(&offer.fields, "decided").map(|word| view.words().say(&format!("choice-decided-{word}")));
    decided.unwrap_or_else(|| view.words().say("offer-undecided"))
}
