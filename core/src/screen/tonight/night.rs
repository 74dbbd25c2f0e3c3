//! The night as one picture, from dusk to morning.

use chrono::Timelike;

use super::head::{clock, point_name};
use crate::answer::night::Plan;
use crate::gather::amount_scale::AmountScale;
use crate::gather::tonight::TonightInputs;
use crate::quantity::{Quantity, Volume};
use crate::record::{PlanDone, PointKind, SessionIn};
use crate::screen::shapes::{NightPicture, NightStretch, Peg, PegState, RibbonPoint, StretchKind, Tick};
use crate::screen::View;
use crate::time::{Instant, Moment, Span};

/// The picture begins so long before sleep, and ends so long after it.
const BESIDE: Span = Span::hours(2);
/// A sleep shorter than this is drawn without its length.
const LABELLED: Span = Span::minutes(60);

pub(super) fn picture(view: &View<'_>, look: &TonightInputs) -> Option<NightPicture> {
    let words = view.words();
    let plan = look.plan.as_ref()?;
    let window = plan.night.window;
    let from = window.from.minus(BESIDE);
    let until = window.until.plus(BESIDE);
    let place = |at: Instant| at.since(from).share_of(until.since(from));
    let inside = |at: Instant| (from..=until).contains(&at);
    let mut pegs: Vec<Peg> = look
        .gathered
        .emptyings
        .iter()
        .filter(|e| inside(e.at) && e.at <= view.now)
        .map(|e| Peg {
            at: place(e.from.max(from)),
            until: place(e.at),
            state: PegState::Done,
            label: clock(view, e.from),
        })
        .collect();
    for change in look.gathered.changes.iter().filter(|c| c.done == PlanDone::Skipped && inside(c.of)) {
        let at = place(change.of);
        pegs.push(Peg { at, until: at, state: PegState::Skipped, label: clock(view, change.of) });
    }
    for (i, session) in plan.sessions.iter().enumerate().filter(|(_, s)| inside(s.at)) {
        let state = match (i, session.feed, session.fixed) {
            (0, ..) => PegState::Next,
            (_, true, _) => PegState::Feed,
            (_, _, true) => PegState::Fixed,
            _ => PegState::Planned,
        };
        let label = clock(view, session.at);
        pegs.push(Peg { at: place(session.at), until: place(session.until.min(until)), state, label });
    }
    pegs.sort_by(|a, b| a.at.total_cmp(&b.at));
    let (water, scale) = water(view, look, plan, from, until);
    let sessions = pegs.iter().filter(|p| p.state != PegState::Skipped).count();
    let slept = words.span(plan.night.slept());
    Some(NightPicture {
        stretches: stretches(view, plan, from, until),
        now: inside(view.now).then(|| place(view.now)),
        ticks: ticks(view, from, until),
        legend: words.say(if water.is_empty() { "night-legend" } else { "night-legend-water" }),
        // Who has said how to be reminded has been here before.
        legend_open: look.gathered.rhythm.reminders.is_none(),
        legend_opens: words.say("night-legend-opens"),
        spoken: words.with(
            "night-spoken",
            &[
                ("from", clock(view, window.from).into()),
                ("until", clock(view, window.until).into()),
                ("count", (sessions as i64).into()),
                ("slept", slept.into()),
                ("longest", words.span(plan.night.longest()).into()),
            ],
        ),
        pegs,
        water,
        scale,
    })
}

fn stretches(view: &View<'_>, plan: &Plan, from: Instant, until: Instant) -> Vec<NightStretch> {
    let words = view.words();
    let place = |at: Instant| at.max(from).min(until).since(from).share_of(until.since(from));
    let window = plan.night.window;
    let mut all = vec![NightStretch {
        from: place(window.from),
        to: place(window.until),
        kind: StretchKind::Window,
        label: String::new(),
    }];
    for stands in plan.occurrences.iter().filter(|s| s.stretch.until > from && s.stretch.from < until) {
        let kind = match (stands.kind, stands.session) {
            (Some(PointKind::Feed), _) => StretchKind::Feed,
            (_, SessionIn::Not) => StretchKind::Busy,
            (_, SessionIn::Wanted) => StretchKind::Wanted,
            (_, SessionIn::Either) => continue,
        };
        all.push(NightStretch {
            from: place(stands.stretch.from),
            to: place(stands.stretch.until),
            kind,
            label: point_name(view, stands.kind),
        });
    }
    all.extend(plan.night.sleeps.iter().map(|sleep| NightStretch {
        from: place(sleep.from),
        to: place(sleep.until),
        kind: StretchKind::Sleep,
        label: if sleep.lasts() >= LABELLED { words.span(sleep.lasts()) } else { String::new() },
    }));
    all
}

/// Labels at the even hours on the wall.
pub(super) fn ticks(view: &View<'_>, from: Instant, until: Instant) -> Vec<Tick> {
    let words = view.words();
    let quarter = Span::minutes(15).in_milliseconds();
    let first = (from.unix_milliseconds() + quarter - 1).div_euclid(quarter) * quarter;
    let mut ticks: Vec<Tick> = Vec::new();
    let mut at = Instant::from_unix_milliseconds(first);
    while at <= until {
        let wall = Moment::new(at, view.zone).on_the_wall();
        if wall.minute() == 0 && wall.hour().is_multiple_of(2) {
            let label = words.hour(wall.hour());
            // An hour that comes twice is labelled once.
            if ticks.last().is_none_or(|last| last.label != label) {
                ticks.push(Tick { at: at.since(from).share_of(until.since(from)), label });
            }
        }
        at = at.plus(Span::milliseconds(quarter));
    }
    ticks
}

/// What the breasts hold: filling between emptyings, fallen after each. Nothing where no
/// well is known.
fn water(
    view: &View<'_>,
    look: &TonightInputs,
    plan: &Plan,
    from: Instant,
    until: Instant,
) -> (Vec<RibbonPoint>, Vec<Tick>) {
    let mut emptied: Vec<Instant> =
        look.gathered.emptyings.iter().map(|e| e.at).filter(|at| *at <= view.now && *at <= until).collect();
    emptied.extend(plan.sessions.iter().map(|s| s.until).filter(|at| *at <= until));
    if look.refill.wells.is_empty() || emptied.is_empty() {
        return (Vec::new(), Vec::new());
    }
    // The emptying before the picture says what it begins with.
    let before = emptied.iter().rposition(|at| *at <= from).unwrap_or(0);
    let step = Span::minutes(20);
    let mut held: Vec<(Instant, Instant)> = Vec::new();
    let mut fill = |since: Instant, to: Instant| {
        let mut at = since.max(from);
        while at < to {
            held.push((since, at));
            at = at.plus(step);
        }
        held.push((since, to));
    };
    let chain = emptied.get(before..).unwrap_or_default();
    for (since, next) in chain.iter().zip(chain.iter().skip(1)) {
        fill(*since, *next);
    }
    if let Some(last) = chain.last() {
        fill(*last, until);
    }
    let levels: Vec<(Instant, Volume, Volume, Volume)> = held
        .into_iter()
        .filter(|(_, at)| (from..=until).contains(at))
        .filter_map(|(since, at)| {
            let held = look.refill.brings(&[(since, at)], view.zone)?;
            Some((at, held.low, held.value, held.high))
        })
        .collect();
    let most = levels.iter().map(|l| l.3.canonical()).fold(0.0, f64::max);
    let scale = AmountScale::for_volumes(std::iter::once(Volume::from_canonical(most)), view.settings.volume);
    let points = levels
        .iter()
        .map(|(at, low, middle, high)| RibbonPoint {
            at: at.since(from).share_of(until.since(from)),
            low: scale.height(*low),
            middle: scale.height(*middle),
            high: scale.height(*high),
        })
        .collect();
    (points, crate::screen::scale::ticks(view, &scale).into_iter().filter(|t| t.at == 0.5 || t.at == 1.0).collect())
}
