//! What was seen, in words.

use crate::answer::caution::{Because, Caution, Where};
use crate::quantity::{Quantity, Unit};
use crate::record::Kind;
use crate::screen::View;
use crate::time::{Instant, LocalDay, Moment, Span};

/// What a caution is about, such as `Fever and a sore breast`.
pub(crate) fn title(view: &View<'_>, caution: &Caution) -> String {
    let words = view.words();
    let name = caution.of.as_deref().and_then(|id| view.name_of_id(id).ok().flatten());
    let name = name.unwrap_or_else(|| words.say(&format!("kind-{}", Kind::Pump.name())));
    words.with(&format!("caution-{}", caution.source.key), &[("name", name.into())])
}

/// The same where it stands by itself.
pub(super) fn heading(view: &View<'_>, caution: &Caution) -> String {
    let title = title(view, caution);
    let mut letters = title.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}

fn when(view: &View<'_>, at: Instant) -> String {
    let words = view.words();
    let moment = Moment::new(at, view.zone);
    let day = LocalDay::of(&moment, view.settings.day_start);
    let clock = words.clock(&moment);
    match day == view.today() {
        true => words.with("caution-today-at", &[("time", clock.into())]),
        false => words.with("caution-day-at", &[("date", words.short_date(day).into()), ("time", clock.into())]),
    }
}

/// A fact that a caution rests on, such as `38.7 °C, today at 04:06`.
pub(in crate::screen) fn because(view: &View<'_>, because: &Because) -> String {
    let words = view.words();
    match because {
        Because::Temperature(at, temperature) => {
            let unit = view.settings.temperature;
            let figure = crate::quantity::say_decimal(temperature.in_unit(unit), Unit::places(unit));
            let what = words.with_unit(figure, unit);
            words.with("caution-fact", &[("what", what.into()), ("when", when(view, *at).into())])
        }
        Because::Sign(at, key, place) => {
            let sign = words.say(&format!("field-{}", key.replace('_', "-")));
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
            words.with("caution-fact", &[("what", what.into()), ("when", when(view, *at).into())])
        }
        Because::Since(since, lasted) => words.with(
            "caution-since",
            &[("when", when(view, *since).into()), ("span", words.span(Span::hours(lasted.in_minutes() / 60)).into())],
        ),
        Because::PainRose(at, from, to) => words.with(
            "caution-pain-rose",
            &[("when", when(view, *at).into()), ("from", from.get().into()), ("to", to.get().into())],
        ),
        Because::PainHigh(at, score) => {
            words.with("caution-pain-high", &[("when", when(view, *at).into()), ("score", score.get().into())])
        }
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
