//! A comparison of two ways: which is next, and what it says so far.

use super::super::pump_words::{opens, section};
use super::trial_text;
use crate::answer::trial::{answer, Done, TrialAnswer, Verdict};
use crate::gather::trial::{next_in, TrialInputs};
use crate::record::{text, Fields};
use crate::screen::shapes::{Action, Event, FindingsScreen, ListRow, Place, Screen, Section, Sign, Weight};
use crate::screen::View;
use crate::time::{LocalDay, Moment};
use crate::trouble::Trouble;

/// Sessions that are listed, the latest first.
const LISTED: usize = 20;

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (_, fields) = view.record(id)?;
    let design = text(&fields, "trial_design").map(|design| words.say(&format!("choice-trial-design-{design}")));
    let title = trial_text::title(view, &fields);
    let mut frame = view.frame(&Place::Trial { id: id.to_owned() }, title, design.unwrap_or_default())?;
    frame.back = Some(view.back());
    let findings = match TrialInputs::read(view, id)? {
        Some(inputs) => found(view, id, &fields, &inputs)?,
        None => not_begun(view, id, &fields),
    };
    Ok(Screen::Findings { frame, findings })
}

fn details(view: &View<'_>, id: &str) -> Action {
    let open = Event::Go { place: Place::Entry { id: id.to_owned() } };
    Action::new("details", view.words().say("pump-details"), open).weight(Weight::Quiet)
}

fn not_begun(view: &View<'_>, id: &str, fields: &Fields) -> FindingsScreen {
    let words = view.words();
    let (headline, caption) = (words.say("trial-not-begun"), words.say("trial-not-begun-caption"));
    FindingsScreen {
        spoken: [headline.as_str(), caption.as_str()].join(". "),
        headline,
        figure: String::new(),
        caption,
        dial: None,
        lines: vec![words.say("trial-how"), words.say("trial-outcome-first")],
        asks: Vec::new(),
        actions: begin(view, id, fields).into_iter().chain([details(view, id)]).collect(),
        sections: Vec::new(),
    }
}

/// Begins it, once everything is chosen that has to be chosen first.
pub(in crate::screen) fn begin(view: &View<'_>, id: &str, fields: &Fields) -> Option<Action> {
    let words = view.words();
    let chosen = ["way_a", "way_b", "trial_design", "outcome"].iter().all(|key| text(fields, key).is_some());
    let begun = text(fields, "drawn").is_some() || text(fields, "trial_ended").is_some();
    let event = Event::BeginTrial { id: id.to_owned(), seed: None };
    let action = Action::new("begin-trial", words.say("trial-begin"), event).sign(Sign::Start).weight(Weight::Main);
    let detail = if chosen { words.say("trial-begin-detail") } else { words.say("trial-choose-first") };
    (!begun).then(|| action.detail(detail).open(chosen))
}

fn found(view: &View<'_>, id: &str, fields: &Fields, inputs: &TrialInputs) -> Result<FindingsScreen, Trouble> {
    let words = view.words();
    let said = answer(&inputs.done, &inputs.set_up, &inputs.rules);
    let headline = trial_text::verdict(view, fields, &said);
    let figure = said.apart.map(|apart| trial_text::apart_figure(view, &apart)).unwrap_or_default();
    let caption = trial_text::caption(view, &said);
    let mut lines = Vec::new();
    let ended = text(fields, "trial_ended");
    match ended {
        Some(ended) => lines.push(words.say(&format!("choice-trial-ended-{ended}"))),
        None => lines.extend(next_in(view, id, fields)?.map(|next| trial_text::next(view, &next))),
    }
    lines.extend(trial_text::lines(view, fields, inputs, &said));
    let mut actions = vec![details(view, id)];
    if ended.is_none() {
        let clear = matches!(said.verdict, Verdict::Better(_) | Verdict::NoDifferenceThatMatters);
        let stop = Event::StopTrial { id: id.to_owned(), settled: clear };
        actions.insert(0, Action::new("stop-trial", words.say("trial-stop"), stop).sign(Sign::Finish));
    }
    let order = Section { rows: order(view, fields, inputs), ..section(view, "trial-order") };
    let figures = Section { rows: for_consultants(view, &said), ..section(view, "trial-figures") };
    let sections = [order, figures].into_iter().filter(|section| !section.rows.is_empty()).collect();
    Ok(FindingsScreen {
        spoken: [headline.as_str(), figure.as_str(), caption.as_str()].join(". "),
        headline,
        figure,
        caption,
        dial: None,
        lines,
        asks: Vec::new(),
        actions,
        sections,
    })
}

/// The sessions as they were drawn and done.
fn order(view: &View<'_>, fields: &Fields, inputs: &TrialInputs) -> Vec<ListRow> {
    let words = view.words();
    let row = |done: &Done| {
        let day = LocalDay::of(&Moment::new(done.at, view.zone), view.settings.day_start);
        let title =
            words.with("trial-session", &[("number", (done.place + 1).into()), ("date", words.short_date(day).into())]);
        let drawn = trial_text::way(view, fields, inputs.set_up.design, done.drawn);
        let detail = match done.done {
            Some(way) if way == done.drawn => words.with("trial-as-drawn", &[("way", drawn.into())]),
            Some(way) => {
                let way = trial_text::way(view, fields, inputs.set_up.design, way);
                words.with("trial-not-as-drawn", &[("way", way.into()), ("drawn", drawn.into())])
            }
            None => words.with("trial-not-known", &[("drawn", drawn.into())]),
        };
        let place = Place::Entry { id: done.session.clone() };
        opens(view, format!("open-{}", done.session), title, detail, place)
    };
    inputs.done.iter().rev().take(LISTED).map(row).collect()
}

/// What consultants use.
fn for_consultants(view: &View<'_>, said: &TrialAnswer) -> Vec<ListRow> {
    let words = view.words();
    let mut rows = Vec::new();
    if let Some((nap, tau)) = said.non_overlap {
        let figure = |value: f64| crate::quantity::say_decimal(value, 2);
        rows.push(view.text_row(words.say("trial-nap"), figure(nap.fraction())));
        let tau = crate::screen::words::with_sign(tau.fraction(), 2);
        rows.push(view.text_row(words.say("trial-tau"), tau));
    }
    if let Some(p) = said.p {
        rows.push(view.text_row(words.say("trial-p"), crate::quantity::say_decimal(p.fraction(), 3)));
    }
    if let Some(plain) = said.plain {
        rows.push(view.text_row(words.say("trial-plain"), trial_text::apart_figure(view, &plain)));
    }
    rows
}
