//! What a longer or shorter sleep costs.

use crate::answer::night::Plan;
use crate::answer::refill::Difference;
use crate::gather::tonight::TonightInputs;
use crate::quantity::{Count, Quantity, Volume};
use crate::record::RHYTHM;
use crate::screen::shapes::{Action, Event, ListRow, Section, Weight};
use crate::screen::View;
use crate::time::{say_minutes, Instant, Span};

/// Sleeps that are offered.
const SLEEPS: [i64; 5] = [3, 4, 5, 6, 7];
/// A choice this near to what is planned is the same.
const SAME: i64 = 20;
/// So many are shown at most.
const MOST: usize = 3;

pub(super) fn section(view: &View<'_>, look: &TonightInputs) -> Option<Section> {
    let words = view.words();
    let plan = look.plan.as_ref()?;
    let now = plan.night.longest();
    let window = plan.night.window.lasts();
    let mut rows = Vec::new();
    // Those nearest to what is planned are of most use.
    let mut sleeps = SLEEPS.map(Span::hours).to_vec();
    sleeps.retain(|s| *s <= window && (s.in_minutes() - now.in_minutes()).abs() > SAME);
    sleeps.sort_by_key(|s| ((s.in_minutes() - now.in_minutes()).abs(), *s));
    sleeps.truncate(MOST);
    sleeps.sort();
    for sleep in sleeps {
        let mut frame = look.gathered.frame.clone();
        frame.stretch = Some(sleep);
        let lost = |from: Instant, until: Instant| look.refill.lost(from, until, view.zone);
        let Some(other) = look.gathered.plan_in(&frame, &lost) else { continue };
        // What is kept anyway costs nothing, and is no choice.
        if other.sessions.iter().map(|s| s.at).ne(plan.sessions.iter().map(|s| s.at)) {
            rows.push(row(view, look, plan, &other, sleep));
        }
    }
    rows.extend(one_more(view, look, plan));
    if rows.is_empty() {
        return None;
    }
    let mut section = crate::screen::section::section("choices", words.say("night-choices"));
    section.lines = vec![words.with("night-choices-now", &[("longest", words.span(now).into())])];
    section.rows = rows;
    Some(section)
}

/// One session more in the night.
fn one_more(view: &View<'_>, look: &TonightInputs, plan: &Plan) -> Option<ListRow> {
    let words = view.words();
    let inside = plan.sessions.iter().filter(|s| plan.night.window.holds(s.at)).count() as u32;
    let mut frame = look.gathered.frame.clone();
    frame.night_sessions = Count::new(inside + 1);
    frame.stretch = None;
    let other = look.gathered.plan_in(&frame, &|from, until| look.refill.lost(from, until, view.zone))?;
    if other.night.longest() >= plan.night.longest() {
        return None;
    }
    let title = words.with("night-choice-one-more", &[("longest", words.span(other.night.longest()).into())]);
    Some(view.text_row(title, cost(view, look, plan, &other)))
}

fn row(view: &View<'_>, look: &TonightInputs, plan: &Plan, other: &Plan, sleep: Span) -> ListRow {
    let words = view.words();
    let title = words.with("night-choice-sleep", &[("sleep", words.span(sleep).into())]);
    let longest = other.night.longest();
    let detail = if longest < sleep {
        words.with(
            "night-choice-cannot",
            &[("longest", words.span(longest).into()), ("limit", words.span(look.gathered.frame.longest.value).into())],
        )
    } else {
        cost(view, look, plan, other)
    };
    let mut row = view.text_row(title, detail);
    if longest >= sleep {
        let event = Event::Enter {
            id: RHYTHM.to_owned(),
            field: "sleep_stretch".to_owned(),
            typed: say_minutes(u32::try_from(sleep.in_minutes()).unwrap_or(0)),
        };
        let key = format!("sleep-{}", sleep.in_minutes());
        row.open = Some(Action::new(key, row.title.clone(), event).spoken(row.spoken.clone()).weight(Weight::Quiet));
    }
    row
}

/// What another plan brings less, in words.
fn cost(view: &View<'_>, look: &TonightInputs, plan: &Plan, other: &Plan) -> String {
    let words = view.words();
    let until = plan.until.max(other.until);
    match look.refill.less(&chain(look, plan, until), &chain(look, other, until), view.zone) {
        Difference::CannotTellYet => words.say("night-choice-cannot-tell"),
        Difference::Less(less) => {
            let least = Volume::from_canonical(less.value.canonical().abs());
            let ends = [less.low.canonical(), less.high.canonical()];
            let [low, high] =
                if less.value.canonical() < 0.0 { [-less.high.canonical(), -less.low.canonical()] } else { ends };
            let key = match less.value.canonical() {
                _ if less.low.canonical() <= 0.0 && less.high.canonical() >= 0.0 => "night-choice-no-difference",
                v if v > 0.0 => "night-choice-less",
                _ => "night-choice-more",
            };
            let range = words.volume_range(Volume::from_canonical(low), Volume::from_canonical(high));
            words.with(key, &[("volume", words.volume(least).into()), ("range", range.into())])
        }
    }
}

/// Intervals of a plan from the last emptying on, and what is then still in the breast.
fn chain(look: &TonightInputs, plan: &Plan, until: Instant) -> Vec<(Instant, Instant)> {
    let last = look.gathered.emptyings.iter().map(|e| e.at).filter(|at| *at <= look.gathered.now).max();
    let mut from = last.unwrap_or(look.gathered.now);
    let mut chain = Vec::new();
    for session in &plan.sessions {
        chain.push((from, session.until));
        from = session.until;
    }
    if from < until {
        chain.push((from, until));
    }
    chain
}
