//! While a session runs: the next step of a guided search, and which way of a comparison it is.
//! Before it: which way is next. What is said of both ends with them.

use super::setting::Setting;
use super::{so_far, trial_text};
use crate::answer::search::Next;
use crate::answer::trial::{Design, Way};
use crate::gather::search::{can_search_speeds, search_of, Proposed, SearchNow};
use crate::gather::trial::next_of_running;
use crate::quantity::{Entered, Level, Quantity, Speed, SpeedUnit, Vacuum};
use crate::record::mark::Phase;
use crate::record::{text, Fields, Session};
use crate::screen::shapes::{Action, ChoiceRow, Deed, Event, Notice, Place, Searched, Sign, Tone, Weight};
use crate::screen::View;
use crate::trouble::Trouble;

/// Before a session: which way the comparison has next.
pub(in crate::screen) fn notice(view: &View<'_>) -> Result<Option<Notice>, Trouble> {
    let Some(next) = next_of_running(view)? else { return Ok(None) };
    let words = view.words();
    let text = trial_text::next(view, &next);
    let open = Event::Go { place: Place::Trial { id: next.id.clone() } };
    let actions = vec![Action::new("open-trial", words.say("trial-open"), open).weight(Weight::Quiet)];
    Ok(Some(Notice { key: "trial-next".to_owned(), tone: Tone::Quiet, spoken: text.clone(), text, actions }))
}

/// What is asked of a session that runs.
pub(in crate::screen) fn rows(view: &View<'_>, session: &Session, fields: &Fields) -> Result<Vec<ChoiceRow>, Trouble> {
    let mut rows: Vec<ChoiceRow> = search(view, session)?.into_iter().collect();
    // What is tapped again and again goes before what is said once.
    rows.extend(so_far::row(view, session, fields)?);
    rows.extend(trial(view, session, fields)?);
    Ok(rows)
}

/// The way into a search, where none goes on.
pub(in crate::screen) fn offer(view: &View<'_>, session: &Session) -> Result<Option<Action>, Trouble> {
    let going_on = search_of(view, session)?.is_some_and(|search| search.ended.is_none());
    let electric = session.method.as_deref() == Some("electric_pump");
    Ok((electric && !going_on).then(|| start(view, "start-search", "search-start", false)))
}

/// The way into a search for the speed that brings the letdown, while the pump stimulates.
pub(in crate::screen) fn offer_speed(view: &View<'_>, session: &Session) -> Result<Option<Action>, Trouble> {
    let stimulates = session.phase_at(view.now).is_some_and(|(phase, _)| phase == Phase::Letdown);
    if !stimulates || !can_search_speeds(view, session)? || offer(view, session)?.is_none() {
        return Ok(None);
    }
    let event = Event::StartSearch { searched: Searched::Speed, beyond: false };
    Ok(Some(Action::new("start-search-speed", view.words().say("search-start-speed"), event).sign(Sign::Start)))
}

fn start(view: &View<'_>, key: &str, label: &str, beyond: bool) -> Action {
    let event = Event::StartSearch { searched: Searched::Vacuum, beyond };
    Action::new(key, view.words().say(label), event).sign(Sign::Start)
}

fn search(view: &View<'_>, session: &Session) -> Result<Option<ChoiceRow>, Trouble> {
    let words = view.words();
    let Some(search) = search_of(view, session)? else { return Ok(None) };
    let step = match &search.proposed {
        Proposed::Level(next) => step(next, |level: &Level| level.say(view)),
        Proposed::Vacuum(next) => step(next, |vacuum: &Vacuum| vacuum.say(view)),
        Proposed::Speed(next) => step_of_speed(next, |speed: &Speed| {
            let figure = Entered::<Speed>::of(speed.canonical(), SpeedUnit::PerMinute).say_in(SpeedUnit::PerMinute);
            words.with("search-speed", &[("speed", figure.into())])
        }),
    };
    let for_speed = matches!(search.proposed, Proposed::Speed(_));
    let said = |key: &str| words.with(key, &[("setting", step.setting.clone().into())]);
    let mark = |key: &str, label: &str, deed: Deed, sign: Sign| {
        Action::new(key, words.say(label), Event::Mark { deed }).sign(sign)
    };
    let (label, options) = match search.ended.as_deref() {
        Some("stopped") => return Ok(None),
        Some(_) => (said(step.over), beyond(view, &search, &step).into_iter().collect()),
        None => {
            let stop = Action::new("search-stop", words.say("search-stop"), Event::StopSearch).weight(Weight::Quiet);
            match search.is_set {
                false => (
                    said(step.next),
                    vec![Action::new("search-at", said("search-at"), Event::SearchAt).sign(Sign::Later), stop],
                ),
                true if for_speed => (
                    said("search-speed-how-is-it"),
                    vec![
                        mark("search-letdown", "mark-letdown", Deed::Letdown, Sign::Letdown),
                        mark("search-comfortable", "search-no-letdown-yet", Deed::Comfortable, Sign::None),
                        mark("search-hurts", "search-hurts", Deed::Hurts, Sign::Hurts),
                        stop,
                    ],
                ),
                true => (
                    said("search-how-is-it"),
                    vec![
                        mark("search-comfortable", "mark-comfortable", Deed::Comfortable, Sign::None),
                        mark("search-hurts", "search-hurts", Deed::Hurts, Sign::Hurts),
                        stop,
                    ],
                ),
            }
        }
    };
    Ok(Some(ChoiceRow { key: "search".to_owned(), label, options }))
}

/// Going above what was comfortable before is a choice of its own.
fn beyond(view: &View<'_>, search: &SearchNow, step: &Said) -> Option<Action> {
    (step.as_before && !search.beyond).then(|| start(view, "search-beyond", "search-beyond", true))
}

/// A step in words: keys of sentences, and the setting they speak of.
struct Said {
    next: &'static str,
    over: &'static str,
    setting: String,
    as_before: bool,
}

fn step<P>(next: &Next<P>, say: impl Fn(&P) -> String) -> Said {
    let none = || Said { next: "search-try", over: "search-all-hurt", setting: String::new(), as_before: false };
    match next {
        Next::Try(at) => Said { setting: say(at), ..none() },
        Next::BackTo(at) => Said { next: "search-back-to", setting: say(at), ..none() },
        Next::Rest => Said { over: "search-rest", ..none() },
        Next::Found(at) => Said { over: "search-found", setting: say(at), ..none() },
        Next::AsBefore(at) => Said { over: "search-as-before", setting: say(at), as_before: true, ..none() },
        Next::AsPlanned(at) => Said { over: "search-as-planned", setting: say(at), ..none() },
        Next::LetdownCame(at) => Said { over: "search-letdown-came", setting: say(at), ..none() },
        Next::NothingHurt(at) => Said { over: "search-nothing-hurt", setting: say(at), ..none() },
        Next::AllHurt => none(),
        Next::NothingToTry => Said { over: "search-nothing-to-try", ..none() },
    }
}

/// Of speeds it is asked which brings the letdown, at a vacuum that is comfortable.
fn step_of_speed(next: &Next<Speed>, say: impl Fn(&Speed) -> String) -> Said {
    match next {
        Next::Try(_) => Said { next: "search-speed-try", ..step(next, say) },
        Next::NothingHurt(_) | Next::Found(_) => Said { over: "search-no-letdown", ..step(next, say) },
        Next::AllHurt => Said { over: "search-speed-all-hurt", ..step(next, say) },
        _ => step(next, say),
    }
}

/// How a session of a comparison was done: nobody takes it for done as drawn.
fn trial(view: &View<'_>, session: &Session, fields: &Fields) -> Result<Option<ChoiceRow>, Trouble> {
    let words = view.words();
    let (Some(id), Some(drawn)) = (text(fields, "trial"), text(fields, "trial_drawn").and_then(Way::named)) else {
        return Ok(None);
    };
    let Some((_, trial)) = view.journal.record(id)? else { return Ok(None) };
    if text(&trial, "trial_ended").is_some() {
        return Ok(None);
    }
    let design = match text(&trial, "trial_design") {
        Some("sides") => Design::Sides,
        _ => Design::Sessions,
    };
    let way = |way: Way| trial_text::way(view, &trial, design, way);
    let done = text(fields, "trial_done");
    let option = |key: &str, label: String, value: &str| {
        let event = Event::TrialDone { session: session.id.clone(), way: value.to_owned() };
        Action::new(key, label, event).chosen(done == Some(value))
    };
    let other = drawn.other();
    Ok(Some(ChoiceRow {
        key: "trial".to_owned(),
        label: words.with("trial-this-session", &[("way", way(drawn).into())]),
        options: vec![
            option("trial-as-drawn", words.say("trial-do-as-drawn"), drawn.name()),
            option("trial-other-way", way(other), other.name()),
            option("trial-neither", words.say("trial-neither"), "neither"),
        ],
    }))
}
