//! Cautions from temperature and signs.

pub use super::context::Context;
use std::collections::BTreeSet;

use super::because::Where;
use super::sign::BodySign;
use super::{fever, lasting, Because, Caution};
use crate::guidance::CautionSource;
use crate::time::Instant;

/// Every caution from the entries up to now, whatever became of it. `signs` are in order of time.
pub fn cautions(signs: &[BodySign], beside: &Context<'_>) -> Vec<Caution> {
    let known = signs.iter().position(|sign| sign.at > beside.now).unwrap_or(signs.len());
    let signs = signs.get(..known).unwrap_or_default();
    let mut found: Vec<Caution> = CautionSource::all()
        .iter()
        .filter(|source| source.any_sign)
        .flat_map(|source| of_any_sign(&source.key, signs, beside))
        .collect();
    found.extend(fever::cautions(signs, beside));
    found.extend(lasting::cautions(signs, beside));
    found.extend(blood(signs, beside));
    found.extend(breast_pain(signs, beside));
    fever::that_are_over(&mut found, beside);
    found
}

fn of_any_sign(key: &str, signs: &[BodySign], beside: &Context<'_>) -> Vec<Caution> {
    let Some(mut track) = beside.track(key) else { return Vec::new() };
    let source = track.source();
    let mut still = BTreeSet::new();
    for sign in signs {
        for (key, side) in sign.there.iter().filter(|(key, _)| source.is_about(key)) {
            if track.add(sign.at, Because::Sign(sign.at, key, *side)) {
                still.clear();
            }
            still.insert(*key);
        }
        for key in &sign.absent {
            // One that is gone does not speak for the others.
            if still.remove(key) && still.is_empty() {
                track.answer(sign.at, Because::NotThere(sign.at, key));
            }
        }
    }
    track.by(beside.now)
}

/// Blood: to the consultant; from one side for longer than the rule, to a doctor.
fn blood(signs: &[BodySign], beside: &Context<'_>) -> Vec<Caution> {
    const BLOOD: &str = "blood";
    let (Some(mut track), Some(mut lasts)) = (beside.track("blood"), beside.track("blood-lasts")) else {
        return Vec::new();
    };
    let mut on_one_side: Option<(Where, Instant)> = None;
    for sign in signs {
        if let Some(side) = sign.side_of(BLOOD) {
            let fact = Because::Sign(sign.at, BLOOD, Some(side));
            on_one_side = match on_one_side {
                Some((same, since)) if same == side => Some((side, since)),
                _ => (side != Where::Both).then_some((side, sign.at)),
            };
            match on_one_side {
                Some((_, since)) if sign.at.since(since) > beside.rules.blood_lasts => {
                    if lasts.add(sign.at, Because::Since(since, sign.at.since(since))) {
                        track.answer(sign.at, fact.clone());
                    }
                    lasts.add(sign.at, fact);
                }
                _ => drop(track.add(sign.at, fact)),
            }
        } else if sign.absent.contains(&BLOOD) {
            on_one_side = None;
            track.answer(sign.at, Because::NotThere(sign.at, BLOOD));
            lasts.answer(sign.at, Because::NotThere(sign.at, BLOOD));
        }
    }
    [lasts.by(beside.now), track.by(beside.now)].concat()
}

fn breast_pain(signs: &[BodySign], beside: &Context<'_>) -> Vec<Caution> {
    let Some(mut track) = beside.track("breast-pain") else { return Vec::new() };
    for sign in signs {
        match sign.breast_pain {
            Some(score) if score >= beside.rules.breast_pain_high => {
                track.add(sign.at, Because::BreastPain(sign.at, score));
            }
            Some(score) => track.answer(sign.at, Because::BreastPain(sign.at, score)),
            None => {}
        }
    }
    track.by(beside.now)
}
