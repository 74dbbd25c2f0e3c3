//! What a stated highest vacuum alone says, before a gauge touched the pump.

use super::words::vacuum_figures;
use crate::answer::choice::{doubts, of_stated_vacuum, reaches, Doubt, Reaches, Strength};
use crate::answer::pump::limits::grade;
use crate::answer::pump::Grade;
use crate::guidance::KitRules;
use crate::quantity::Vacuum;
use crate::record::offered::stated_vacuum;
use crate::record::{Fields, Offered, Stated};
use crate::screen::View;

/// What is stated, in figures; nothing where nothing is.
pub(in crate::screen::kit) fn range(view: &View<'_>, pump: &Fields) -> Option<String> {
    vacuum_figures(view, &stated_vacuum(pump))
}

/// One line about a pump that was not checked: whether its own figures bear out what it is called, and how strong
/// it gets. Nothing where no vacuum is stated.
pub(in crate::screen::kit) fn in_short(view: &View<'_>, pump: &Fields, rules: &KitRules) -> Option<String> {
    let stated = stated_vacuum(pump);
    let figures = vacuum_figures(view, &stated)?;
    if is_asked_about(pump, rules) {
        return Some(view.words().say("offer-ask-first"));
    }
    let key = not_as_called(pump, &stated, rules).map_or_else(|| strength_key(pump, rules), |(key, _)| key);
    let grade = grade_text(view, pump);
    Some(view.words().with(key, &[("figures", figures.into()), ("grade", grade.into())]))
}

/// What is stated, and what it is called where its own figures do not bear that out.
pub(super) fn on_sheet(view: &View<'_>, pump: &Fields, rules: &KitRules) -> String {
    let words = view.words();
    let stated = stated_vacuum(pump);
    let figures = vacuum_figures(view, &stated).unwrap_or_else(|| words.say("offer-unstated"));
    match not_as_called(pump, &stated, rules) {
        Some(_) => {
            words.with("offer-not-as-called", &[("figures", figures.into()), ("grade", grade_text(view, pump).into())])
        }
        None => figures,
    }
}

/// The same with the rule it goes by, for the page of the pump.
pub(in crate::screen::kit) fn lines(view: &View<'_>, pump: &Fields, rules: &KitRules) -> Vec<String> {
    let words = view.words();
    let stated = stated_vacuum(pump);
    let Some(figures) = vacuum_figures(view, &stated).filter(|_| !is_asked_about(pump, rules)) else {
        return Vec::new();
    };
    let need = [("figures", figures.into()), ("grade", grade_text(view, pump).into())];
    let mut lines = Vec::new();
    if let Some((key, low)) = not_as_called(pump, &stated, rules) {
        lines.push(words.with(key, &need));
        let limit = words.with("limit-from", &[("low", words.vacuum(low).into())]);
        lines.push(words.with("offer-stated-grade-rule", &[("range", limit.into())]));
    }
    lines.push(words.with(strength_key(pump, rules), &need));
    let (low, high) = rules.good;
    lines.push(words.with(
        "offer-stated-rule",
        &[("good", words.vacuums_between(low, high).into()), ("weak", words.vacuum(rules.personal.0).into())],
    ));
    lines.push(words.say("term-common-practice"));
    lines
}

/// Whether its figures wait for an answer: they may be in another unit.
fn is_asked_about(pump: &Fields, rules: &KitRules) -> bool {
    doubts(&Offered::read(pump), rules).iter().any(Doubt::is_about_vacuum)
}

fn grade_text(view: &View<'_>, pump: &Fields) -> String {
    crate::record::text(pump, "grade")
        .map(|grade| view.words().say(&format!("choice-grade-{grade}")))
        .unwrap_or_default()
}

/// Where its own figures do not bear out what it is called: what to say, and from where on they would.
fn not_as_called(pump: &Fields, stated: &Stated<Vacuum>, rules: &KitRules) -> Option<(&'static str, Vacuum)> {
    let low = match grade(pump)? {
        Grade::Hospital => rules.hospital.0,
        Grade::Personal => rules.personal.0,
        Grade::Hand => return None,
    };
    match reaches(stated, |vacuum| vacuum >= low) {
        Reaches::No => Some(("offer-claim-no", low)),
        Reaches::Partly => Some(("offer-claim-partly", low)),
        Reaches::Yes | Reaches::OpenAbove | Reaches::NotStated => None,
    }
}

fn strength_key(pump: &Fields, rules: &KitRules) -> &'static str {
    key_of(&of_stated_vacuum(&stated_vacuum(pump), grade(pump), rules))
}

/// What there is to say of how strong a pump gets.
pub(super) fn key_of(strength: &Strength) -> &'static str {
    match (strength.good, strength.no_weak, strength.beyond) {
        (Reaches::NotStated, _, _) => "offer-no-vacuum",
        (_, _, Reaches::Yes | Reaches::Partly) => "offer-beyond",
        (Reaches::No, _, _) => "offer-below",
        (_, Reaches::No, _) => "offer-weak",
        (_, Reaches::Partly, _) => "offer-weak-in-part",
        (_, Reaches::OpenAbove, _) | (Reaches::OpenAbove, _, _) => "offer-open-above",
        _ => "offer-good",
    }
}
