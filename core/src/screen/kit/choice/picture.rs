//! The pumps side by side on one scale, the bands of use behind; what is not stated is left open.

use super::super::plot::{empty, Height};
use super::words::numbered;
use crate::answer::choice::{doubts, Doubt};
use crate::gather::choice::{ChoiceInputs, Offer};
use crate::quantity::Vacuum;
use crate::screen::shapes::{PlotBand, PlotPicture, PlotPoint, Tick};
use crate::screen::View;

/// More pumps than this are not all named under the picture.
const MOST_NAMED: usize = 8;
/// Of more pumps than this only every fifth has its number under it.
const MOST_NUMBERED: usize = 12;

/// So much of the width is left for the words of the bands.
const FOR_WORDS: f32 = 0.2;

/// None where no pump is offered.
pub(super) fn of(view: &View<'_>, inputs: &ChoiceInputs) -> Option<PlotPicture> {
    if inputs.offers.is_empty() {
        return None;
    }
    let words = view.words();
    let rules = &inputs.rules;
    let stated: Vec<(&Offer, Option<Vacuum>, Option<Vacuum>)> = inputs.offers.iter().map(|o| ends(inputs, o)).collect();
    let shown = stated.iter().flat_map(|(_, low, high)| [*low, *high]).flatten().chain([rules.good.0, rules.good.1]);
    let height = Height::over(view, shown, false);
    let count = inputs.offers.len();
    let place = |at: usize| FOR_WORDS + (1.0 - FOR_WORDS) * (at as f32 + 0.5) / count as f32;
    let band = |low: Vacuum, high: Vacuum, key: &str| PlotBand {
        low: height.at(low),
        high: height.at(high),
        label: words.with(key, &[("range", words.vacuums_between(low, high).into())]),
    };
    let bands = [
        (rules.good.0, rules.personal.0, "offer-band-weak"),
        (rules.personal.0, rules.hospital.0, "offer-band-personal"),
        (rules.hospital.0, rules.good.1, "offer-band-hospital"),
    ];
    let points = stated.iter().enumerate().filter_map(|(at, (_, low, high))| {
        let [low, middle, high, open] = match (low, high) {
            (None, None) => return None,
            (Some(low), Some(high)) => {
                let (low, high) = (height.at(*low), height.at(*high));
                [low, (low + high) / 2.0, high, 0.0]
            }
            (None, Some(one)) => [height.at(*one), height.at(*one), height.at(*one), 0.0],
            (Some(low), None) => [height.at(*low), height.at(*low), 1.0, 1.0],
        };
        Some(PlotPoint { at: place(at), low, middle, high, part: None, open: open > 0.0 })
    });
    let number = |(at, (_, low, high)): (usize, &(&Offer, Option<Vacuum>, Option<Vacuum>))| {
        let told = count <= MOST_NUMBERED || (at + 1) % 5 == 0;
        let key = if low.is_none() && high.is_none() { "offer-tick-open" } else { "offer-tick" };
        told.then(|| Tick { at: place(at), label: words.with(key, &[("number", (at + 1).into())]) })
    };
    let names: Vec<String> =
        inputs.offers.iter().take(MOST_NAMED).enumerate().map(|(at, offer)| numbered(view, at, offer)).collect();
    Some(PlotPicture {
        bands: bands
            .into_iter()
            .filter(|(low, high, _)| low < high)
            .map(|(low, high, key)| band(low, high, key))
            .collect(),
        points: points.collect(),
        ticks: stated.iter().enumerate().filter_map(number).collect(),
        scale: height.labels(view),
        legend: [names.join(" \u{b7} "), words.say("offer-legend")].join(". "),
        spoken: spoken(view, &stated),
        ..empty()
    })
}

/// What is drawn of a pump: nothing while its figures are asked about.
fn ends<'o>(inputs: &ChoiceInputs, offer: &'o Offer) -> (&'o Offer, Option<Vacuum>, Option<Vacuum>) {
    match doubts(&offer.pump, &inputs.rules).iter().any(Doubt::is_about_vacuum) {
        true => (offer, None, None),
        false => (offer, offer.pump.vacuum.least(), offer.pump.vacuum.most()),
    }
}

fn spoken(view: &View<'_>, stated: &[(&Offer, Option<Vacuum>, Option<Vacuum>)]) -> String {
    let words = view.words();
    let each = stated.iter().enumerate().map(|(at, (offer, low, high))| {
        let figures = match low.is_some() || high.is_some() {
            true => super::words::vacuum_figures(view, &offer.pump.vacuum).unwrap_or_default(),
            false => words.say("offer-not-stated"),
        };
        words.with("offer-spoken", &[("name", numbered(view, at, offer).into()), ("figures", figures.into())])
    });
    each.collect::<Vec<_>>().join(" ")
}
