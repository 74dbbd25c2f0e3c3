//! Fever: by itself, with signs at the breast, and one that is over.

use std::collections::BTreeSet;

use super::because::Became;
use super::context::Context;
use super::life::Track;
use super::sign::{BodySign, SinceBefore};
use super::{Because, Caution, Dealt};
use crate::guidance::{CautionSource, Urgency};
use crate::quantity::{Quantity, Temperature};
use crate::time::Instant;

/// The three, the sharper before: one fever is one line.
const SHARPEST_FIRST: [&str; 3] = ["breast-fever", "fever-with-place", "fever"];

/// Whether a temperature is at a limit or above. A thousandth is no thermometer's: what is
/// lost in turning 101.3 °F into °C must not move the limit.
fn reaches(temperature: Temperature, limit: Temperature) -> bool {
    temperature.canonical() >= limit.canonical() - 0.001
}

/// The latest entry near a reading with any of these signs.
fn near<'s>(
    signs: &'s [BodySign],
    reading: Instant,
    source: &CautionSource,
    beside: &Context<'_>,
) -> Option<&'s BodySign> {
    around(signs, reading, beside).iter().rev().find(|sign| sign.has(|key| source.is_about(key)))
}

/// The entries near an instant, which are read together with one of then. `signs` are in order
/// of time.
fn around<'s>(signs: &'s [BodySign], at: Instant, beside: &Context<'_>) -> &'s [BodySign] {
    let together = beside.rules.signs_together;
    let from = signs.partition_point(|sign| sign.at < at.minus(together));
    let to = signs.partition_point(|sign| sign.at <= at.plus(together));
    signs.get(from..to).unwrap_or_default()
}

/// From when on a temperature by itself is a fever.
fn limit_by_itself(at: Instant, beside: &Context<'_>) -> Temperature {
    match beside.births.are_longer_ago_than(beside.rules.after_birth, at) {
        true => beside.rules.fever_later,
        false => beside.rules.fever_after_birth,
    }
}

/// A reading that is a fever, and the signs it is read with.
fn classified<'s>(
    signs: &'s [BodySign],
    at: Instant,
    temperature: Temperature,
    beside: &Context<'_>,
) -> Option<(&'static str, Option<&'s BodySign>)> {
    for key in SHARPEST_FIRST {
        let source = CautionSource::named(key)?;
        let (limit, alone) = match key {
            "breast-fever" => (beside.rules.breast_fever, false),
            "fever-with-place" => (beside.rules.fever_with_place, false),
            _ => (limit_by_itself(at, beside), true),
        };
        if !reaches(temperature, limit) {
            continue;
        }
        match near(signs, at, source, beside) {
            _ if alone => return Some((key, None)),
            Some(with) => return Some((key, Some(with))),
            None => {}
        }
    }
    None
}

/// Who dealt with a fever that was told by its sharper name dealt with it by its duller one too.
fn dealt_also_by(key: &str, dealt: &[Dealt]) -> Vec<Dealt> {
    let place = |key: &str| SHARPEST_FIRST.iter().position(|one| *one == key);
    let also = dealt.iter().filter(|dealt| place(&dealt.key) <= place(key) && place(&dealt.key).is_some());
    also.map(|dealt| Dealt { key: key.to_owned(), ..dealt.clone() }).collect()
}

pub(super) fn cautions(signs: &[BodySign], beside: &Context<'_>) -> Vec<Caution> {
    let dealt = SHARPEST_FIRST.map(|key| (key, dealt_also_by(key, beside.dealt)));
    let tracks = dealt.iter().map(|(key, dealt)| Track::new(key, dealt, beside.rules.signs_hold));
    let Some(mut tracks) = tracks.collect::<Option<Vec<_>>>() else { return Vec::new() };
    // Signs at the breast that are still there, and the last temperature that was no fever.
    let mut still: BTreeSet<&'static str> = BTreeSet::new();
    let mut cool: Option<Because> = None;
    for sign in signs {
        still.extend(sign.there.iter().map(|(key, _)| *key).filter(|key| is_of_breast(key)));
        still.retain(|key| !sign.absent.contains(key));
        if sign.since_before == Some(SinceBefore::Better) {
            still.clear();
        }
        if let Some(temperature) = sign.temperature {
            let reading = Because::Temperature(sign.at, temperature);
            match classified(signs, sign.at, temperature, beside) {
                Some((key, with)) => {
                    cool = None;
                    for track in tracks.iter_mut().filter(|track| track.source().key == key) {
                        track.add(sign.at, reading.clone());
                        // The sign may have come after the reading.
                        for fact in with.map(|with| with.among(|key| track.source().is_about(key))).unwrap_or_default()
                        {
                            track.add(with.map_or(sign.at, |with| with.at.max(sign.at)), fact);
                        }
                    }
                }
                None => cool = Some(reading),
            }
        }
        // A sign that came after the fever was cool again is still read with it.
        if let Some(key) = hot_before(signs, sign, beside) {
            for track in tracks.iter_mut().filter(|track| track.source().key == key) {
                for fact in sign.among(|key| track.source().is_about(key)) {
                    track.add(sign.at, fact);
                }
            }
        }
        if let Some(reading) = &cool {
            for track in &mut tracks {
                let breast = track.source().key != "fever";
                if !breast || still.is_empty() {
                    track.answer(sign.at, reading.clone());
                }
            }
        }
    }
    one_line(tracks.into_iter().flat_map(|track| track.by(beside.now)).collect())
}

/// The sharpest fever with signs at the breast that was read shortly before an entry which
/// names such a sign.
fn hot_before(signs: &[BodySign], sign: &BodySign, beside: &Context<'_>) -> Option<&'static str> {
    if !sign.has(is_of_breast) {
        return None;
    }
    let before = around(signs, sign.at, beside).iter().filter(|earlier| earlier.at < sign.at);
    let keys = before.filter_map(|hot| Some(classified(signs, hot.at, hot.temperature?, beside)?.0));
    let place = |key: &&str| SHARPEST_FIRST.iter().position(|one| one == key);
    keys.filter(|key| *key != "fever").min_by_key(place)
}

/// Whether it is a sign at the breast that a fever is read with.
pub(super) fn is_of_breast(key: &str) -> bool {
    CautionSource::named("breast-fever").is_some_and(|source| source.is_about(key))
}

/// Where two of them stand, the sharper speaks for both.
fn one_line(mut found: Vec<Caution>) -> Vec<Caution> {
    let rank = |caution: &Caution| SHARPEST_FIRST.iter().position(|key| *key == caution.source.key);
    let Some(sharpest) = found.iter().filter(|c| c.stands()).filter_map(rank).min() else { return found };
    let (duller, mut rest): (Vec<Caution>, Vec<Caution>) =
        found.drain(..).partition(|c| c.stands() && rank(c) != Some(sharpest));
    if let Some(kept) = rest.iter_mut().find(|c| c.stands() && rank(c) == Some(sharpest)) {
        for caution in duller {
            (kept.began, kept.seen) = (kept.began.min(caution.began), kept.seen.max(caution.seen));
            kept.because
                .extend(caution.because.into_iter().filter(|fact| !kept.because.contains(fact)).collect::<Vec<_>>());
        }
    }
    rest
}

/// A fever that is over, with nothing else of the body that is urgent left: the consultant
/// hears of it.
pub(super) fn that_are_over(found: &mut Vec<Caution>, beside: &Context<'_>) {
    let urgent = found.iter().any(|c| c.stands() && c.urgency() < Urgency::Consultant);
    let Some(mut track) = beside.track("fever-over") else { return };
    let mut over: Vec<(Instant, Because, Because)> = found
        .iter()
        .filter(|caution| SHARPEST_FIRST.contains(&caution.source.key.as_str()))
        .filter_map(|caution| match &caution.became {
            Became::Answered { at, by } => Some((*at, caution.because.first()?.clone(), by.clone())),
            _ => None,
        })
        .collect();
    over.sort_by_key(|(at, ..)| *at);
    for (at, first, by) in over {
        track.add(at, first);
        track.add(at, by);
    }
    found.extend(track.by(beside.now).into_iter().filter(|caution| !urgent || !caution.stands()));
}
