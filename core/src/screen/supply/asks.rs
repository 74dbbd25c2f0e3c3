//! Gentle questions, and the one thing the program says by itself.

use crate::answer::supply::intervals::Twice;
use crate::answer::supply::watch::Drop;
use crate::answer::supply::{Interval, IntervalStatus};
use crate::gather::supply::{Asked, Quiet, SupplyInputs};
use crate::record::Removal;
use crate::screen::shapes::{Action, Event, Notice, Place, Sign, Tone, Weight};
use crate::screen::View;
use crate::time::{Moment, Span};
use crate::trouble::Trouble;

pub(super) fn notices(view: &View<'_>, look: &SupplyInputs) -> Result<Vec<Notice>, Trouble> {
    let mut notices: Vec<Notice> = look.drop.iter().map(|drop| drop_notice(view, drop)).collect();
    if look.is_empty() {
        return Ok(notices);
    }
    let asked = Asked::of(view, look)?;
    notices.extend(asked.doubles.iter().map(|(first, second, how)| ask_double(view, first, second, *how)));
    notices.extend(look.quiet.iter().filter(|quiet| !quiet.hide_one).map(|quiet| ask_quiet(view, quiet)));
    notices.extend(asked.intervals.iter().map(|interval| ask(view, interval)));
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
    if interval.status == IntervalStatus::AmountInDoubt {
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
fn ask_double(view: &View<'_>, first: &Removal, second: &Removal, how: Twice) -> Notice {
    let words = view.words();
    let key = match how {
        Twice::Alike => "asks-double",
        Twice::Overlaps => "asks-overlap",
    };
    let clock = |removal: &Removal| words.clock(&Moment::new(removal.at, view.zone));
    let text = words.with(key, &[("first", clock(first).into()), ("second", clock(second).into())]);
    let session = second.session.clone();
    Notice {
        key: format!("asks-double-{session}"),
        tone: Tone::Asks,
        spoken: text.clone(),
        text,
        actions: vec![
            Action::new("double-is-one", words.say("double-is-one"), Event::Remove { id: session.clone() }),
            Action::new("double-is-two", words.say("double-is-two"), Event::AmountIsRight { session: session.clone() }),
            Action::new("open-asked", words.say("asks-amount-open"), Event::Go { place: Place::Entry { id: session } })
                .weight(Weight::Quiet),
        ],
    }
}

fn drop_notice(view: &View<'_>, drop: &Drop) -> Notice {
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
pub(in crate::screen) fn drop_text(view: &View<'_>, look: &SupplyInputs) -> Option<String> {
    look.drop.as_ref().map(|drop| drop_notice(view, drop).text)
}
