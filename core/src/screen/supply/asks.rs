//! Gentle questions, and the one thing the program says by itself.

use crate::answer::supply::intervals::doubles;
use crate::answer::supply::watch::Drop;
use crate::answer::supply::{Interval, Side, Spread, Standing};
use crate::gather::supply::{Look, Quiet};
use crate::record::Removal;
use crate::screen::shapes::{Action, Event, Notice, Place, Sign, Tone, Weight};
use crate::screen::View;
use crate::time::{Moment, Span};
use crate::trouble::Trouble;

/// Asked about no longer than this after it was.
const ASKS_WITHIN: Span = Span::hours(72);
/// No more questions than this at once.
const ASKS: usize = 2;
/// What is ordinary is learnt from so long before.
const LEARNS: Span = Span::hours(24 * 17);

pub(super) fn notices(view: &View<'_>, look: &Look) -> Result<Vec<Notice>, Trouble> {
    let mut notices: Vec<Notice> = look.drop.iter().map(|drop| told_drop(view, drop)).collect();
    if look.is_empty() {
        return Ok(notices);
    }
    let now = view.now.plus(Span::milliseconds(1));
    let removals = view.journal.removals(view.now.minus(LEARNS), now)?;
    let mut spread = Spread::new(&removals, look.calendar);
    let mut asked: Vec<Interval> = Vec::new();
    for side in Side::BOTH {
        let recent = spread.judged(side, view.now.minus(ASKS_WITHIN), now).iter();
        let is_asked = |i: &&Interval| {
            let known = || {
                let in_quiet = |quiet: &Quiet| quiet.hide_one && quiet.hours.lie_between(i.from, i.until, view.zone);
                i.is_answered_missing() || look.quiet.as_ref().is_some_and(in_quiet)
            };
            match i.standing {
                Standing::SessionMissing => !known(),
                Standing::AmountInDoubt => true,
                Standing::Counts | Standing::Unknown | Standing::TooLong | Standing::Unclear => false,
            }
        };
        for interval in recent.filter(is_asked) {
            if !asked.iter().any(|other| other.session == interval.session) {
                asked.push(interval.clone());
            }
        }
    }
    let since = view.now.minus(ASKS_WITHIN);
    let recent = doubles(&removals).filter(|(_, second)| second.at >= since).collect::<Vec<_>>();
    notices.extend(recent.iter().rev().take(ASKS).map(|(first, second)| ask_double(view, first, second)));
    notices.extend(look.quiet.iter().filter(|quiet| !quiet.hide_one).map(|quiet| ask_quiet(view, quiet)));
    asked.sort_by_key(|i| std::cmp::Reverse(i.until));
    notices.extend(asked.into_iter().take(ASKS).map(|interval| ask(view, &interval)));
    Ok(notices)
}

fn ask(view: &View<'_>, interval: &Interval) -> Notice {
    let words = view.words();
    let session = interval.session.clone();
    let clock = |at| words.clock(&Moment::new(at, view.zone));
    let open = |label: &str| {
        Action::new("open-asked", words.say(label), Event::Go { place: Place::Entry { id: session.clone() } })
            .weight(Weight::Quiet)
    };
    if interval.standing == Standing::AmountInDoubt {
        let text = words.with(
            "asks-amount",
            &[
                ("time", clock(interval.until).into()),
                ("amount", interval.milk.map(|v| words.volume(v)).unwrap_or_default().into()),
            ],
        );
        return Notice {
            key: format!("asks-amount-{session}"),
            tone: Tone::Asks,
            spoken: text.clone(),
            text,
            actions: vec![
                Action::new(
                    "amount-is-right",
                    words.say("amount-is-right"),
                    Event::AmountIsRight { session: session.clone() },
                ),
                open("asks-amount-open"),
            ],
        };
    }
    let middle = interval.from.plus(Span::milliseconds(interval.lasted().in_milliseconds() / 2));
    let text =
        words.with("asks-missing", &[("from", clock(interval.from).into()), ("until", clock(interval.until).into())]);
    Notice {
        key: format!("asks-missing-{session}"),
        tone: Tone::Asks,
        spoken: text.clone(),
        text,
        actions: vec![
            Action::new(
                "add-missed",
                words.say("asks-missing-add"),
                Event::AddMissed { unix_milliseconds: middle.unix_milliseconds() },
            )
            .sign(Sign::Add),
            Action::new("gap-is-whole", words.say("gap-is-whole"), Event::GapIsWhole { session }),
        ],
    }
}

/// Whether a session is missed in hours in which none was ever written down.
fn ask_quiet(view: &View<'_>, quiet: &Quiet) -> Notice {
    let words = view.words();
    let hours =
        [("from", words.full_hour(quiet.hours.from).into()), ("until", words.full_hour(quiet.hours.until).into())];
    let text = words.with("asks-quiet", &hours);
    Notice {
        key: format!("asks-quiet-{}-{}", quiet.hours.from, quiet.hours.until),
        tone: Tone::Asks,
        spoken: text.clone(),
        text,
        actions: vec![
            Action::new(
                "quiet-is-whole",
                words.say("quiet-is-whole"),
                Event::GapIsWhole { session: quiet.session.clone() },
            ),
            Action::new(
                "quiet-hides-one",
                words.say("quiet-hides-one"),
                Event::GapHidesOne { session: quiet.session.clone() },
            ),
        ],
    }
}

/// Whether one session was written down twice.
fn ask_double(view: &View<'_>, first: &Removal, second: &Removal) -> Notice {
    let words = view.words();
    let clock = |removal: &Removal| words.clock(&Moment::new(removal.at, view.zone));
    let text = words.with("asks-double", &[("first", clock(first).into()), ("second", clock(second).into())]);
    let session = second.session.clone();
    Notice {
        key: format!("asks-double-{session}"),
        tone: Tone::Asks,
        spoken: text.clone(),
        text,
        actions: vec![
            Action::new("double-is-one", words.say("double-is-one"), Event::TakeOut { id: session.clone() }),
            Action::new("double-is-two", words.say("double-is-two"), Event::AmountIsRight { session: session.clone() }),
            Action::new("open-asked", words.say("asks-amount-open"), Event::Go { place: Place::Entry { id: session } })
                .weight(Weight::Quiet),
        ],
    }
}

fn told_drop(view: &View<'_>, drop: &Drop) -> Notice {
    let words = view.words();
    let text = words.with(
        "supply-drop",
        &[
            ("date", words.short_date(drop.since).into()),
            ("now", words.production(drop.now).into()),
            ("before", words.production(drop.before).into()),
        ],
    );
    Notice { key: "supply-drop".to_owned(), tone: Tone::Asks, spoken: text.clone(), text, actions: Vec::new() }
}

/// What the watch says by itself, in words; nothing where it says nothing.
pub(in crate::screen) fn drop_said(view: &View<'_>, look: &Look) -> Option<String> {
    look.drop.as_ref().map(|drop| told_drop(view, drop).text)
}
