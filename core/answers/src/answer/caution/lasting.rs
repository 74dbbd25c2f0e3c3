//! Signs at the breast that last: not better after the time of the rule, nobody said how
//! they are, or both breasts swollen in the first days.

use super::because::Where;
use super::context::Context;
use super::life::Track;
use super::sign::{BodySign, SinceBefore};
use super::{Because, Caution};
use crate::quantity::{Count, Quantity};
use crate::time::Instant;

/// Signs that began, and when somebody last said that they are there.
struct Began {
    first: Instant,
    last: Instant,
    /// The signs that are still there as far as anybody said, each as it was named last.
    named: Vec<Because>,
    /// Whether it was asked already since then.
    asked: bool,
}

impl Began {
    fn at(at: Instant) -> Self {
        Self { first: at, last: at, named: Vec::new(), asked: false }
    }

    /// What an entry names is there. One that is gone does not speak for the others: true
    /// where none is left.
    fn hears(&mut self, there: Vec<Because>, absent: &[&'static str]) -> bool {
        let of = |fact: &Because| match fact {
            Because::Sign(_, key, _) => Some(*key),
            _ => None,
        };
        self.named.retain(|known| !there.iter().any(|fact| of(fact) == of(known)));
        self.named.extend(there);
        self.named.retain(|known| of(known).is_some_and(|key| !absent.contains(&key)));
        self.named.is_empty()
    }
}

pub(super) fn cautions(signs: &[BodySign], beside: &Context<'_>) -> Vec<Caution> {
    let (Some(mut no_better), Some(mut no_word), Some(mut engorged)) =
        (beside.track("no-better"), beside.track("no-word"), beside.track("engorgement"))
    else {
        return Vec::new();
    };
    let source = no_better.source();
    let mut began: Option<Began> = None;
    for sign in signs {
        if let Some(began) = &mut began {
            ask(&mut no_word, &mut no_better, began, sign.at, beside);
        }
        let engorges = engorges(sign, signs, beside);
        let lasts = |key: &str| source.is_about(key) && !(engorges && key == "swelling");
        if engorges {
            engorged.add(sign.at, Because::Sign(sign.at, "swelling", Some(Where::Both)));
        } else if sign.absent.contains(&"swelling") {
            engorged.answer(sign.at, Because::NotThere(sign.at, "swelling"));
        }
        let left = began.as_mut().is_some_and(|began| began.hears(sign.among(lasts), &sign.absent));
        let gone = sign.absent.iter().find(|key| source.is_about(key)).filter(|_| left);
        let better = sign.since_before == Some(SinceBefore::Better);
        let said_again = matches!(sign.since_before, Some(SinceBefore::Same | SinceBefore::Worse)) && began.is_some();
        if better || gone.is_some() {
            // Better is not gone: if it is said to be the same or worse again, time runs anew.
            began = None;
            let by = gone.map_or(Because::Better(sign.at), |key| Because::NotThere(sign.at, key));
            for track in [&mut no_better, &mut no_word, &mut engorged] {
                track.answer(sign.at, by.clone());
            }
        } else if sign.has(lasts) || said_again {
            no_word.answer(sign.at, Because::Entry(sign.at));
            let now = began.get_or_insert_with(|| Began::at(sign.at));
            (now.last, now.asked) = (sign.at, false);
            now.hears(sign.among(lasts), &sign.absent);
            let lasted = sign.at.since(now.first);
            if lasted >= beside.rules.no_better_after {
                let first = now.first;
                let named = now.named.clone();
                no_better.add(sign.at, Because::Since(first, lasted));
                for fact in named {
                    no_better.add(sign.at, fact);
                }
            }
        }
    }
    if let Some(began) = &mut began {
        ask(&mut no_word, &mut no_better, began, beside.now, beside);
    }
    [no_better.by(beside.now), no_word.by(beside.now), engorged.by(beside.now)].concat()
}

/// For as long as the rule says nobody said how it is: that is unknown, and not "no better".
/// Where it is said already that it does not get better, there is nothing to ask.
fn ask(no_word: &mut Track<'_>, no_better: &mut Track<'_>, began: &mut Began, by: Instant, beside: &Context<'_>) {
    let due = began.last.plus(beside.rules.no_better_after);
    if by >= due && !began.asked && !no_better.is_open(by) {
        began.asked = true;
        no_word.add(due, Because::NoWordSince(began.last));
        for fact in &began.named {
            no_word.add(due, fact.clone());
        }
    }
}

/// Both breasts swollen without fever or another sign at the breast, in the first days after
/// a birth: milk coming in does that.
fn engorges(sign: &BodySign, signs: &[BodySign], beside: &Context<'_>) -> bool {
    const DAY_MINUTES: i64 = 24 * 60;
    let days = |count: Count| i64::from(count.get());
    let of_first_days = beside.births.since_latest(sign.at).is_some_and(|age| {
        (days(beside.rules.engorged_from)..=days(beside.rules.engorged_to)).contains(&(age.in_minutes() / DAY_MINUTES))
    });
    let near = |other: &&BodySign| {
        let apart = if other.at > sign.at { other.at.since(sign.at) } else { sign.at.since(other.at) };
        apart <= beside.rules.signs_together
    };
    let hot = |other: &BodySign| {
        other.temperature.is_some_and(|t| t.canonical() >= beside.rules.fever_with_place.canonical() - 0.001)
    };
    of_first_days
        && sign.side_of("swelling") == Some(Where::Both)
        && !signs.iter().filter(near).any(hot)
        && !sign.has(|key| key != "swelling" && super::fever::is_of_breast(key))
}
