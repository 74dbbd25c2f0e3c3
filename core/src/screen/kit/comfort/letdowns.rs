//! How soon milk lets down, by what was marked. A letdown that was not felt is not none.

use super::super::pump_words::section;
use super::now;
use crate::answer::letdown::{letdowns, Group, Later, Letdowns, Timing};
use crate::answer::Estimate;
use crate::gather::comfort::heard;
use crate::guidance::ComfortRules;
use crate::quantity::{Quantity, SpeedUnit, Vacuum};
use crate::screen::shapes::{Action, Event, FindingsScreen, ListRow, Place, Screen, Section, Sign, Weight};
use crate::screen::View;
use crate::time::Span;
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Letdown, words.say("letdown-title"), words.say("letdown-subtitle"))?;
    frame.back = Some(view.back());
    let rules = ComfortRules::read(view.rules()?);
    let found = letdowns(&heard(view)?, view.now);
    let first = found.as_ref().and_then(|found| found.first.as_ref());
    let (headline, figure, caption) = match first {
        Some(first) => (words.say("letdown-headline"), words.running(first.median), rests(view, first)),
        None => (words.say("comfort-cannot-tell"), String::new(), words.say("letdown-none-marked")),
    };
    let mut sections = Vec::new();
    if let Some(found) = &found {
        let rows: Vec<ListRow> = found.by.iter().map(|(group, timing)| row(view, group, timing)).collect();
        if !rows.is_empty() {
            let lines = vec![words.say("letdown-offer-search")];
            sections.push(Section { rows, lines, ..section(view, "letdown-by") });
        }
    }
    sections.push(Section { lines: bands(view, &rules), ..section(view, "comfort-background") });
    let mut actions = Vec::new();
    if let Some(row) = view.journal.running()? {
        actions.extend(now::offer_speed(view, &view.session(&row.subject)?)?);
    }
    let comfort = Action::new("comfort", words.say("comfort-title"), Event::Go { place: Place::Comfort });
    actions.push(comfort.sign(Sign::Kit).weight(Weight::Quiet));
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [headline.as_str(), figure.as_str(), caption.as_str()].join(" "),
            headline,
            figure,
            caption,
            dial: None,
            lines: found.as_ref().map(|found| lines(view, found)).unwrap_or_default(),
            asks: Vec::new(),
            actions,
            sections,
        },
    })
}

pub(super) fn rests(view: &View<'_>, timing: &Timing) -> String {
    let words = view.words();
    let sessions = ("sessions", timing.sessions.get().into());
    match timing.range {
        Some((low, high)) => words.with(
            "letdown-caption",
            &[("low", words.running(low).into()), ("high", words.running(high).into()), sessions],
        ),
        None => words.with("letdown-caption-few", &[sessions]),
    }
}

fn lines(view: &View<'_>, found: &Letdowns) -> Vec<String> {
    let words = view.words();
    let mut lines = Vec::new();
    if let Some((number, sessions)) = found.number {
        let needs = [("number", number.get().into()), ("sessions", sessions.get().into())];
        lines.push(words.with("letdown-number", &needs));
    }
    let moved = |key: &str, by: Estimate<Span>| {
        let span = |span: Span| words.running(Span::milliseconds(span.in_milliseconds().abs()));
        let needs = [("by", span(by.value).into()), ("low", span(by.low).into()), ("high", span(by.high).into())];
        words.with(key, &needs)
    };
    lines.push(match found.later {
        Later::Later(by) => moved("letdown-later", by),
        Later::Sooner(by) => moved("letdown-sooner", by),
        Later::NoSign(_) => words.say("letdown-no-sign"),
        Later::CannotTellYet => words.say("letdown-later-unknown"),
    });
    if found.not_marked.get() > 0 {
        lines.push(words.with("letdown-not-marked", &[("sessions", found.not_marked.get().into())]));
    }
    lines
}

fn row(view: &View<'_>, group: &Group, timing: &Timing) -> ListRow {
    let words = view.words();
    let title = match group {
        Group::Level(level) => words.with("comfort-level", &[("level", level.get().into())]),
        Group::Speed(speed) => words.with_unit(speed.to_string(), SpeedUnit::PerMinute),
        Group::Vacuum(vacuum) => words.vacuum(Vacuum::from_canonical(f64::from(*vacuum))),
        Group::Place(place) => words.say(&format!("choice-where-{place}")),
        Group::FromHour(hour) => {
            let (from, until) = (words.full_hour(*hour), words.full_hour(hour + 6));
            words.with("letdown-hours", &[("from", from.into()), ("until", until.into())])
        }
    };
    let detail = [words.running(timing.median), rests(view, timing)].join(" \u{b7} ");
    view.text_row(title, detail)
}

/// What is usual, beside it: nothing is judged by it.
fn bands(view: &View<'_>, rules: &ComfortRules) -> Vec<String> {
    let words = view.words();
    let minutes = |(low, high): (Span, Span)| [low.in_minutes(), high.in_minutes()];
    let [stimulation_low, stimulation_high] = minutes(rules.stimulation);
    let [expression_low, expression_high] = minutes(rules.expression);
    let (fewest, most) = rules.letdowns;
    vec![
        words.with(
            "letdown-usual-phases",
            &[
                ("stimulationlow", stimulation_low.into()),
                ("stimulationhigh", stimulation_high.into()),
                ("expressionlow", expression_low.into()),
                ("expressionhigh", expression_high.into()),
            ],
        ),
        words.with("letdown-usual-number", &[("low", fewest.get().into()), ("high", most.get().into())]),
        words.say("letdown-not-felt"),
    ]
}
