//! What a comparison says, in sentences.

use super::milk::percent;
use crate::answer::trial::{Apart, Design, TrialAnswer, Verdict, Way};
use crate::gather::trial::{NextInTrial, TrialInputs};
use crate::quantity::{Quantity, Unit, Volume};
use crate::record::{text, Fields};
use crate::screen::words::with_sign;
use crate::screen::View;

/// What a way is called: by its own words, else by its letter.
pub(super) fn name(view: &View<'_>, fields: &Fields, way: Way) -> String {
    let (key, letter) = match way {
        Way::A => ("way_a", "A"),
        Way::B => ("way_b", "B"),
    };
    match text(fields, key).filter(|name| !name.trim().is_empty()) {
        Some(name) => view.words().with("trial-way", &[("letter", letter.into()), ("name", name.into())]),
        None => letter.to_owned(),
    }
}

/// Both ways.
pub(super) fn title(view: &View<'_>, fields: &Fields) -> String {
    let [a, b] = [Way::A, Way::B].map(|way| name(view, fields, way));
    view.words().with("trial-title", &[("a", a.into()), ("b", b.into())])
}

/// A way, and where a side each is compared, on which side it is.
pub(in crate::screen) fn way(view: &View<'_>, fields: &Fields, design: Design, way: Way) -> String {
    let name = name(view, fields, way);
    match design {
        Design::Sides => view.words().with("trial-on-the-left", &[("way", name.into())]),
        Design::Sessions => name,
    }
}

/// What is next, in a line.
pub(in crate::screen) fn next(view: &View<'_>, next: &NextInTrial) -> String {
    let way = way(view, &next.fields, next.design, next.way);
    view.words().with("trial-next", &[("way", way.into())])
}

pub(super) fn verdict(view: &View<'_>, fields: &Fields, said: &TrialAnswer) -> String {
    let words = view.words();
    match said.verdict {
        Verdict::Better(way) => words.with("trial-better", &[("way", name(view, fields, way).into())]),
        Verdict::NoDifferenceThatMatters => words.say("trial-no-difference"),
        Verdict::CannotTellYet => words.say("comfort-cannot-tell"),
        Verdict::CannotTell => words.say("trial-cannot-tell"),
    }
}

/// How far apart they lie: the first less the second.
pub(super) fn apart_figure(view: &View<'_>, apart: &Apart) -> String {
    let words = view.words();
    match apart {
        Apart::Milk(by) => signed_volume(view, by.value),
        Apart::Time(by) => words.with("trial-minutes", &[("minutes", minutes(by.value).into())]),
        Apart::Pain(by) => words.with("trial-points", &[("points", with_sign(by.value.get(), 1).into())]),
    }
}

fn minutes(span: crate::time::Span) -> String {
    with_sign(span.in_milliseconds() as f64 / 60_000.0, 1)
}

fn signed_volume(view: &View<'_>, volume: Volume) -> String {
    let unit = view.settings.volume;
    view.words().with_unit(with_sign(volume.in_unit(unit), unit.places().max(1)), unit)
}

/// Both ends of its range.
pub(super) fn ends(view: &View<'_>, apart: &Apart) -> [String; 2] {
    match apart {
        Apart::Milk(by) => [by.low, by.high].map(|end| signed_volume(view, end)),
        Apart::Time(by) => [by.low, by.high].map(minutes),
        Apart::Pain(by) => [by.low, by.high].map(|end| with_sign(end.get(), 1)),
    }
}

/// The range of the difference, and what it rests on.
pub(super) fn caption(view: &View<'_>, said: &TrialAnswer) -> String {
    let words = view.words();
    let pairs = ("pairs", said.pairs.get().into());
    match (&said.apart, said.share) {
        (Some(apart @ Apart::Milk(_)), Some([share, ..])) => {
            let [low, high] = ends(view, apart);
            let needs = [("low", low.into()), ("high", high.into()), ("share", percent(share).into()), pairs];
            words.with("trial-caption-milk", &needs)
        }
        (Some(apart), _) => {
            let [low, high] = ends(view, apart);
            words.with("trial-caption", &[("low", low.into()), ("high", high.into()), pairs])
        }
        (None, _) => words.with("trial-caption-few", &[pairs]),
    }
}

/// What more there is to say of how it was done.
pub(super) fn lines(view: &View<'_>, fields: &Fields, inputs: &TrialInputs, said: &TrialAnswer) -> Vec<String> {
    let words = view.words();
    let mut lines = Vec::new();
    if let Some(outcome) = text(fields, "outcome") {
        let outcome = words.say(&format!("choice-outcome-{outcome}"));
        lines.push(words.with("trial-decides", &[("outcome", outcome.into())]));
    }
    let planned = inputs.set_up.planned.get();
    lines.push(words.with("trial-done-of", &[("done", inputs.done.len().into()), ("planned", planned.into())]));
    if let Some(more) = said.more.filter(|more| more.get() > 0 && said.verdict == Verdict::CannotTellYet) {
        lines.push(words.with("trial-more", &[("more", more.get().into())]));
    }
    if said.not_as_drawn.get() > 0 {
        lines.push(words.with("trial-not-followed", &[("sessions", said.not_as_drawn.get().into())]));
    }
    if said.not_known.get() > 0 {
        lines.push(words.with("trial-unknown-sessions", &[("sessions", said.not_known.get().into())]));
    }
    if said.adjusted {
        lines.push(words.say("trial-adjusted"));
    }
    if text(fields, "trial_ended").is_none() {
        lines.push(words.say("trial-early"));
        lines.push(words.say("trial-stops"));
    }
    lines
}
