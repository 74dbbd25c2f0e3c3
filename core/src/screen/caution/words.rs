//! What was seen and what became of it, in words.

use crate::answer::caution::{Became, Because, Caution, Where};
use crate::quantity::{Quantity, Temperature, Unit};
use crate::record::Kind;
use crate::screen::{signs_text, View};
use crate::time::{Instant, LocalDay, Moment};

/// What a caution is about, such as `short of breath` or `a fever of 38.7 °C and signs at the breast`.
pub(crate) fn title(view: &View<'_>, caution: &Caution) -> String {
    let words = view.words();
    let name = caution.of.as_deref().and_then(|id| view.name_of_id(id).ok().flatten());
    let name = name.unwrap_or_else(|| words.say(&format!("kind-{}", Kind::Pump.name())));
    let key = format!("caution-{}", caution.source.key);
    let signs = signs(view, caution);
    // What was dealt with and is gone from the record still has a name.
    let bare = format!("{key}-bare");
    if caution.because.is_empty() && words.has(&bare) {
        return words.say(&bare);
    }
    let hottest = hottest(caution).map(|t| temperature(view, t)).unwrap_or_default();
    words.with(&key, &[("name", name.into()), ("signs", signs.into()), ("temperature", hottest.into())])
}

/// The same where it stands by itself.
pub(in crate::screen) fn heading(view: &View<'_>, caution: &Caution) -> String {
    let title = title(view, caution);
    let mut letters = title.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}

/// The signs it rests on, each once, within a sentence.
fn signs(view: &View<'_>, caution: &Caution) -> String {
    let mut seen: Vec<&str> = Vec::new();
    for fact in &caution.because {
        if let Because::Sign(_, key, _) = fact {
            if !seen.contains(key) {
                seen.push(key);
            }
        }
    }
    let said = seen.iter().map(|key| within_a_sentence(&signs_text::name(view, key)));
    said.collect::<Vec<_>>().join(", ")
}

fn within_a_sentence(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map(|first| first.to_lowercase().chain(letters).collect()).unwrap_or_default()
}

fn hottest(caution: &Caution) -> Option<Temperature> {
    let measured = caution.because.iter().filter_map(|fact| match fact {
        Because::Temperature(_, temperature) => Some(*temperature),
        _ => None,
    });
    measured.max_by(|a, b| a.canonical().total_cmp(&b.canonical()))
}

fn temperature(view: &View<'_>, temperature: Temperature) -> String {
    let unit = view.settings.temperature;
    view.words().with_unit(crate::quantity::say_decimal(temperature.in_unit(unit), Unit::places(unit)), unit)
}

pub(super) fn when(view: &View<'_>, at: Instant) -> String {
    let words = view.words();
    let moment = Moment::new(at, view.zone);
    let day = LocalDay::of(&moment, view.settings.day_start);
    let clock = words.clock(&moment);
    match day == view.today() {
        true => words.with("caution-today-at", &[("time", clock.into())]),
        false => words.with("caution-day-at", &[("date", words.short_date(day).into()), ("time", clock.into())]),
    }
}

/// What became of a caution, in one line; where it stands and is of now, nothing.
pub(in crate::screen) fn became(view: &View<'_>, caution: &Caution, is_of_now: bool) -> Option<String> {
    let words = view.words();
    Some(match &caution.became {
        Became::Stands if is_of_now => return None,
        Became::Stands => words.with("caution-waits-since", &[("when", when(view, caution.seen).into())]),
        Became::Dealt { at, how, note } => {
            let how = how.as_deref().map(|how| words.say(&format!("choice-dealt-how-{how}")));
            let said: Vec<String> = how.into_iter().chain(note.clone()).collect();
            match said.is_empty() {
                true => words.with("caution-became-dealt", &[("when", when(view, *at).into())]),
                false => words.with(
                    "caution-became-dealt-how",
                    &[("when", when(view, *at).into()), ("how", said.join(". ").into())],
                ),
            }
        }
        Became::Answered { by, .. } => words.with("caution-became-answered", &[("fact", because(view, by).into())]),
        Became::OutOfDate { at } => words.with("caution-became-out-of-date", &[("when", when(view, *at).into())]),
    })
}

/// What became of a caution that is over.
pub(crate) fn over_text(view: &View<'_>, caution: &Caution) -> String {
    became(view, caution, true).unwrap_or_default()
}

/// A fact that a caution rests on, such as `38.7 °C, today at 04:06`.
pub(in crate::screen) fn because(view: &View<'_>, because: &Because) -> String {
    let words = view.words();
    let fact = |what: String, at: Instant| {
        words.with("caution-fact", &[("what", what.into()), ("when", when(view, at).into())])
    };
    match because {
        Because::Temperature(at, measured) => fact(temperature(view, *measured), *at),
        Because::Sign(at, key, place) => {
            let sign = signs_text::name(view, key);
            let what = match place {
                Some(place) => {
                    let side = words.say(match place {
                        Where::Left => "caution-on-left",
                        Where::Right => "caution-on-right",
                        Where::Both => "caution-on-both",
                    });
                    words.with("caution-sign-at", &[("sign", sign.into()), ("side", side.into())])
                }
                None => sign,
            };
            fact(what, *at)
        }
        Because::NotThere(at, key) => {
            let sign = within_a_sentence(&signs_text::name(view, key));
            fact(words.with("caution-not-there", &[("sign", sign.into())]), *at)
        }
        Because::Better(at) => fact(words.say("caution-better"), *at),
        Because::Entry(at) => fact(words.say("caution-entry"), *at),
        Because::Session(at) => words.with("caution-session", &[("when", when(view, *at).into())]),
        Because::Since(since, lasted) => words.with(
            "caution-since",
            &[
                ("when", when(view, *since).into()),
                ("span", words.span(crate::time::Span::hours(lasted.in_minutes() / 60)).into()),
            ],
        ),
        Because::NoWordSince(at) => words.with("caution-no-word-since", &[("when", when(view, *at).into())]),
        Because::BreastPain(at, score) => {
            fact(words.with("sign-breast-pain", &[("value", i64::from(score.get()).into())]), *at)
        }
        Because::PainRose(at, from, to) => words.with(
            "caution-pain-rose",
            &[("when", when(view, *at).into()), ("from", from.get().into()), ("to", to.get().into())],
        ),
        Because::PainHigh(at, score) => {
            words.with("caution-pain-high", &[("when", when(view, *at).into()), ("score", score.get().into())])
        }
        Because::PainOften(at, score, some, of) => words.with(
            "caution-pain-in",
            &[
                ("when", when(view, *at).into()),
                ("score", score.get().into()),
                ("some", some.get().into()),
                ("of", of.get().into()),
            ],
        ),
        Because::HurtsOften(at, some, of) => words.with(
            "caution-hurts-in",
            &[("when", when(view, *at).into()), ("some", some.get().into()), ("of", of.get().into())],
        ),
        Because::Drop(drop) => words.with(
            "supply-drop",
            &[
                ("date", words.short_date(drop.since).into()),
                ("now", words.production(drop.now).into()),
                ("before", words.production(drop.before).into()),
            ],
        ),
        Because::Pull(at, pull, low) => words.with(
            "caution-pull",
            &[
                ("when", when(view, *at).into()),
                ("pull", words.vacuum(*pull).into()),
                ("low", words.vacuum(*low).into()),
            ],
        ),
    }
}
