//! Cautions of the span: those that stand, and what became of the others; what to do, what
//! each was seen in, where it comes from.

use super::section::{of_rows, row};
use super::span::Stretch;
use crate::answer::caution::{Became, Because, Caution};
use crate::gather::caution::since;
use crate::guidance::CautionRules;
use crate::screen::caution::{became, because, heading, source_text};
use crate::screen::shapes::{SheetRow, SheetSection};
use crate::screen::View;
use crate::share::parts::{LeftOut, SharePart};
use crate::trouble::Trouble;

/// Facts that are told of each, the first and the latest.
const FACTS: usize = 5;

/// One that rests on a part that is left out is left out with it.
pub(super) fn render(
    view: &View<'_>,
    span: Stretch,
    left_out: &LeftOut,
    rules: &CautionRules,
) -> Result<Option<SheetSection>, Trouble> {
    let from = span.from.begins(view.zone, view.settings.day_start);
    let mut cautions = since(view, from)?;
    if left_out.has(SharePart::Notes) {
        cautions.iter_mut().for_each(without_note);
    }
    let goes = |caution: &&Caution| !parts_of(caution).iter().any(|part| left_out.has(*part));
    Ok(of_rows(view, "cautions", cautions.iter().filter(goes).map(|caution| line_of(view, caution, rules)).collect()))
}

/// What was said of it in the person's own words goes with the notes.
fn without_note(caution: &mut Caution) {
    if let Became::Dealt { note, .. } = &mut caution.became {
        *note = None;
    }
}

/// The parts that a caution rests on.
fn parts_of(caution: &Caution) -> Vec<SharePart> {
    match caution.because.is_empty() {
        true => vec![SharePart::Body],
        false => caution.because.iter().map(part_of).collect(),
    }
}

fn part_of(fact: &Because) -> SharePart {
    match fact {
        Because::Temperature(..)
        | Because::Sign(..)
        | Because::NotThere(..)
        | Because::Better(..)
        | Because::Entry(..)
        | Because::NoWordSince(..)
        | Because::BreastPain(..)
        | Because::Since(..) => SharePart::Body,
        Because::PainRose(..)
        | Because::PainHigh(..)
        | Because::PainOften(..)
        | Because::HurtsOften(..)
        | Because::Session(..) => SharePart::Comfort,
        Because::Drop(_) => SharePart::Supply,
        Because::Pull(..) => SharePart::Kit,
    }
}

fn line_of(view: &View<'_>, caution: &Caution, rules: &CautionRules) -> SheetRow {
    let words = view.words();
    let source = caution.source;
    let from = source_text(view, &source.source, source.year, source.from_memory);
    let of_now = !source.urgency_waits() || caution.is_of_now(view.now, rules.signs_hold);
    let became = became(view, caution, of_now);
    let mut notes: Vec<String> = became.into_iter().collect();
    notes.extend(facts(view, caution));
    let value = match caution.stands() {
        true => {
            notes.push(words.say(&format!("caution-{}-do", source.key)));
            words.say(&format!("urgency-{}", caution.urgency().name()))
        }
        false => words.say("sheet-caution-over"),
    };
    notes.push(match source.reviewed {
        true => from,
        false => format!("{from} {}", words.say("caution-not-reviewed")),
    });
    row(heading(view, caution), value, notes.join("\n"))
}

/// What it was seen in; of many the first and the latest, and how many lie between.
fn facts(view: &View<'_>, caution: &Caution) -> Vec<String> {
    let all = &caution.because;
    let between = all.len().saturating_sub(FACTS);
    let mut lines: Vec<String> = Vec::new();
    for (at, fact) in all.iter().enumerate() {
        match at {
            1 if between > 0 => {
                lines.push(view.words().with("sheet-and-more", &[("count", (between as i64).into())]));
            }
            at if at > 1 && at <= between => {}
            _ => lines.push(because(view, fact)),
        }
    }
    lines
}
