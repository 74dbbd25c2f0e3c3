//! The words on top: one word, one figure, and what is not known.

use super::head_words::HeadWords;
use crate::answer::supply::course::{Course, Heading};
use crate::answer::supply::level::Level;
use crate::answer::Estimate;
use crate::gather::supply::SupplyInputs;
use crate::quantity::{Production, Quantity, Share};
use crate::screen::View;

pub(in crate::screen) fn render(view: &View<'_>, look: &SupplyInputs) -> HeadWords {
    let words = view.words();
    if look.is_empty() {
        return HeadWords {
            headline: words.say("supply-nothing"),
            figure: String::new(),
            caption: words.say("supply-nothing-caption"),
            lines: Vec::new(),
        };
    }
    if let Some(first) = look.first_days {
        return super::first_days::render(view, look, first);
    }
    let rests = look.told.rests_on;
    let complete = rests.complete.get();
    let days = rests.days.get();
    let (figure, caption) = match &look.level {
        Level::Known(level) => {
            let mut with =
                vec![("range", range(view, level).into()), ("complete", complete.into()), ("days", days.into())];
            with.extend(look.turned.map(|turned| ("date", words.short_date(turned.on).into())));
            let key = match (look.turned.is_some(), complete == days) {
                (true, _) => "supply-caption-since",
                (false, true) => "supply-caption-all",
                (false, false) => "supply-caption",
            };
            (
                words.with("supply-figure", &[("production", words.production(level.value).into())]),
                words.with(key, &with),
            )
        }
        Level::NeedsDays(more) => (
            String::new(),
            words.with("supply-needs-days", &[("complete", complete.into()), ("more", more.get().into())]),
        ),
        Level::TooMuchMissing => (String::new(), words.say("supply-too-much-missing")),
    };
    let mut lines = Vec::new();
    if let Some(turned) = look.turned {
        lines.push(words.with("supply-before", &[("before", words.production(turned.before).into())]));
    }
    match (&look.course, look.turned) {
        (Ok(course), None) => lines.push(course_line(view, look, course)),
        (Ok(course), Some(_)) => {
            let word = heading(view, look.course.as_ref());
            let line = course_line(view, look, course);
            lines.extend(
                course
                    .heading
                    .map(|_| words.with("supply-since-then", &[("word", word.into()), ("line", line.into())])),
            );
        }
        (Err(Level::NeedsDays(more)), None) if look.level.known().is_some() => {
            lines.push(words.with("supply-course-needs", &[("more", more.get().into())]));
        }
        (Err(_), _) => {}
    }
    if matches!(look.course.as_ref().map(|c| c.heading), Ok(Some(Heading::Rising | Heading::Falling)))
        && look.turned.is_none()
    {
        if let Some(began) = look.began_to_go {
            let dates = [
                ("date", words.short_date(began.on).into()),
                ("earliest", words.short_date(began.earliest).into()),
                ("latest", words.short_date(began.latest).into()),
            ];
            lines.push(words.with("supply-began", &dates));
        }
        lines.push(words.say("supply-come-to"));
    }
    if !look.changes.is_empty() && look.turned.is_none() {
        lines.push(words.say("supply-changed-within"));
    }
    if let Some(quiet) = look.quiet.as_ref().filter(|_| look.level.known().is_some()) {
        let hours =
            [("from", words.full_hour(quiet.hours.from).into()), ("until", words.full_hour(quiet.hours.until).into())];
        lines.push(words.with(if quiet.hide_one { "supply-hides-one" } else { "supply-rests-on-quiet" }, &hours));
    }
    HeadWords { headline: headline(view, look), figure, caption, lines }
}

/// How much of the time the figure rests on. On the sheet a part of its own says it.
pub(super) fn observed(view: &View<'_>, look: &SupplyInputs) -> Option<String> {
    let rests = look.told.rests_on;
    let in_part = rests.complete.get() > 0 && rests.observed.per_cent() < Share::ALL.per_cent();
    let least = look.rules.complete_day.per_cent();
    (in_part && !look.is_empty() && look.first_days.is_none()).then(|| {
        let shares = [("percent", rests.observed.per_cent().into()), ("least", least.into())];
        view.words().with("supply-observed", &shares)
    })
}

/// The word on top: a change of late goes before a course.
fn headline(view: &View<'_>, look: &SupplyInputs) -> String {
    match look.turned.filter(|_| look.level.known().is_some()) {
        Some(turned) => view.words().with(
            if turned.more { "supply-more-since" } else { "supply-less-since" },
            &[("date", view.words().short_date(turned.on).into())],
        ),
        None => heading(view, look.course.as_ref()),
    }
}

/// The word for a course.
pub(super) fn heading(view: &View<'_>, course: Result<&Course, &Level>) -> String {
    let key = match course.ok().and_then(|c| c.heading) {
        Some(Heading::Holding) => "supply-holding",
        Some(Heading::Rising) => "supply-rising",
        Some(Heading::Falling) => "supply-falling",
        None => "supply-cannot-tell",
    };
    view.words().say(key)
}

/// A range, such as `610 to 670 mL`.
pub(super) fn range(view: &View<'_>, estimate: &Estimate<Production>) -> String {
    let words = view.words();
    words.with(
        "supply-range",
        &[
            ("low", words.low().production_figure(estimate.low).into()),
            ("high", words.high().production(estimate.high).into()),
        ],
    )
}

fn course_line(view: &View<'_>, look: &SupplyInputs, course: &Course) -> String {
    let words = view.words();
    let drift = &course.drift;
    let more = |q: crate::quantity::Drift| Production::from_canonical(q.canonical().abs());
    let band = look.rules.band_a_week.per_cent();
    match course.heading {
        Some(Heading::Holding) => words.with("supply-line-holding", &[("band", band.into())]),
        Some(heading) => words.with(
            if heading == Heading::Rising { "supply-line-rising" } else { "supply-line-falling" },
            &[
                ("drift", words.production(more(drift.value)).into()),
                (
                    "least",
                    words
                        .low()
                        .production_figure(more(if heading == Heading::Rising { drift.low } else { drift.high }))
                        .into(),
                ),
                (
                    "most",
                    words
                        .high()
                        .production(more(if heading == Heading::Rising { drift.high } else { drift.low }))
                        .into(),
                ),
            ],
        ),
        None => words.with(
            "supply-line-between",
            &[("low", words.low().signed(drift.low).into()), ("high", words.high().signed(drift.high).into())],
        ),
    }
}
