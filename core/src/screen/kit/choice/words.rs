//! Words for what is wanted, and for what a sheet states.

use crate::answer::choice::Found;
use crate::gather::choice::Offer;
use crate::quantity::{say_decimal, Entered, Quantity, Speed, SpeedUnit, Unit, Vacuum};
use crate::record::wanted::{HowOften, MustRun};
use crate::record::{Kind, Stated, Wanted};
use crate::screen::View;

/// A pump by its name.
pub(super) fn name(view: &View<'_>, offer: &Offer) -> String {
    view.name_of(Kind::OfferedPump, &offer.fields)
}

/// A pump by the number it has in the picture, and its name.
pub(super) fn numbered(view: &View<'_>, at: usize, offer: &Offer) -> String {
    view.words().with("offer-numbered", &[("number", (at + 1).into()), ("name", name(view, offer).into())])
}

/// What is wanted, in short.
pub(super) fn wanted(view: &View<'_>, wanted: &Wanted) -> String {
    let words = view.words();
    let often = wanted.often.map(|often| {
        words.say(match often {
            HowOften::NowAndThen => "choice-how-often-now_and_then",
            HowOften::DailyAtWork => "choice-how-often-daily_at_work",
            HowOften::NearlyAllMilk => "choice-how-often-nearly_all_milk",
            HowOften::NeonatalUnit => "choice-how-often-neonatal_unit",
        })
    });
    let runs = wanted.runs.map(|runs| words.say(runs_key(runs)));
    let weeks = wanted.planned.map(|_| weeks(view, wanted));
    let yes = |said: bool, key: &str| said.then(|| words.say(key));
    let parts = [
        often,
        weeks,
        yes(wanted.both_at_once, "offer-wants-both"),
        runs,
        yes(wanted.sensitive, "offer-wants-sensitive"),
        yes(wanted.letdown_needs_more, "offer-wants-letdown"),
    ];
    match wanted.says_something() {
        true => parts.into_iter().flatten().collect::<Vec<_>>().join(" \u{b7} "),
        false => words.say("offer-wants-nothing"),
    }
}

pub(super) fn runs_key(runs: MustRun) -> &'static str {
    match runs {
        MustRun::Mains => "choice-must-run-mains",
        MustRun::Battery => "choice-must-run-battery",
        MustRun::InClothes => "choice-must-run-in_clothes",
    }
}

/// For how many weeks.
pub(super) fn weeks(view: &View<'_>, wanted: &Wanted) -> String {
    let weeks = wanted.planned.map_or(0, |planned| planned.in_minutes() / (7 * 24 * 60));
    view.words().with("offer-weeks", &[("count", weeks.into())])
}

/// What a sheet states, as typed; where it was typed in another unit than is read, in that one too, to one place
/// more: what is judged has to be seen. Nothing where it states nothing.
fn figures<Q: Quantity>(view: &View<'_>, stated: &Stated<Q>, unit: Q::Unit) -> Option<String> {
    let typed_in = stated.high.as_ref().or(stated.low.as_ref())?.unit();
    let typed = ends(view, stated, typed_in, |entered| entered.say_in(typed_in));
    if typed_in == unit {
        return Some(typed);
    }
    let places = unit.places() + 1;
    let read = ends(view, stated, unit, |entered| say_decimal(entered.quantity().in_unit(unit), places));
    Some(view.words().with("offer-as-typed", &[("typed", typed.into()), ("read", read.into())]))
}

fn ends<Q: Quantity>(
    view: &View<'_>,
    stated: &Stated<Q>,
    unit: Q::Unit,
    say: impl Fn(&Entered<Q>) -> String,
) -> String {
    let words = view.words();
    match (&stated.low, &stated.high) {
        (Some(low), Some(high)) if low.quantity() != high.quantity() => words
            .with("range", &[("low", say(low).into()), ("high", say(high).into()), ("unit", words.unit(unit).into())]),
        (_, Some(one)) => words.with_unit(say(one), unit),
        (Some(low), None) => words.with("limit-from", &[("low", words.with_unit(say(low), unit).into())]),
        (None, None) => String::new(),
    }
}

/// The highest vacuum that is stated.
pub(super) fn vacuum_figures(view: &View<'_>, stated: &Stated<Vacuum>) -> Option<String> {
    figures(view, stated, view.settings.vacuum)
}

/// The cycles that are stated.
pub(super) fn cycles_figures(view: &View<'_>, stated: &Stated<Speed>) -> Option<String> {
    figures(view, stated, SpeedUnit::PerMinute)
}

/// How a pump stands to what is wanted; nothing where nothing was.
pub(super) fn found(view: &View<'_>, found: Found) -> Option<String> {
    let key = match found {
        Found::Fits => "offer-found-fits",
        Found::Partly => "offer-found-partly",
        Found::DoesNot => "offer-found-does-not",
        Found::CannotTell => "offer-found-cannot-tell",
        Found::NotStated => "offer-found-not-stated",
        Found::NothingWanted => return None,
    };
    Some(view.words().say(key))
}
