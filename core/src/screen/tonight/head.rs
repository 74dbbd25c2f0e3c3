//! The next time, large, and what can be done with it.

use crate::answer::night::{Basis, Planned, Reminder, UnmetConstraint, Why};
use crate::gather::tonight::TonightInputs;
use crate::record::PointKind;
use crate::screen::shapes::{Action, Event, Notice, Sign, Tone, Weight};
use crate::screen::View;
use crate::time::{Instant, LocalDay, Moment, Span};

/// Words of the head.
pub(super) struct HeadWords {
    pub(super) headline: String,
    pub(super) figure: String,
    pub(super) caption: String,
    pub(super) why: String,
}

pub(super) fn clock(view: &View<'_>, at: Instant) -> String {
    view.words().clock(&Moment::new(at, view.zone))
}

pub(super) fn render(view: &View<'_>, look: &TonightInputs) -> HeadWords {
    let words = view.words();
    let nothing =
        |headline: String, caption: String| HeadWords { headline, figure: String::new(), caption, why: String::new() };
    if let Some(since) = look.gathered.running {
        let span = words.span(view.now.since(since));
        return nothing(words.say("tonight-running"), words.with("tonight-running-since", &[("span", span.into())]));
    }
    let Some(plan) = &look.plan else {
        return nothing(words.say("tonight-how-many"), words.say("tonight-how-many-detail"));
    };
    let Some(next) = plan.sessions.first() else {
        return nothing(words.say("tonight-none"), words.say("tonight-none-detail"));
    };
    match plan.late_since {
        Some(since) => HeadWords {
            headline: words.say("tonight-was-planned"),
            figure: clock(view, since),
            caption: words.with("tonight-ago", &[("span", words.span(view.now.since(since)).into())]),
            why: words.say("tonight-late"),
        },
        None => {
            let ahead = next.at.since(view.now);
            HeadWords {
                headline: headline(view, next),
                figure: clock(view, next.at),
                caption: match ahead > Span::minutes(0) {
                    true => words.with("tonight-in", &[("span", words.span(ahead).into())]),
                    false => words.say("tonight-now"),
                },
                why: why(view, look, next),
            }
        }
    }
}

/// What comes next, with its day where that is not today.
fn headline(view: &View<'_>, next: &Planned) -> String {
    let words = view.words();
    let what = words.say(if next.feed { "tonight-next-feed" } else { "tonight-next" });
    let on = LocalDay::on(Moment::new(next.at, view.zone).on_the_wall().date());
    let day = match on.days_since(LocalDay::on(view.present().on_the_wall().date())) {
        ..=0 => return what,
        1 => words.say("tomorrow"),
        _ => words.date(on),
    };
    words.with("tonight-next-on", &[("what", what.into()), ("day", day.into())])
}

/// What a fixed point is, or a block.
pub(super) fn point_name(view: &View<'_>, kind: Option<PointKind>) -> String {
    let words = view.words();
    match kind {
        Some(kind) => words.say(&format!("choice-what-{}", kind.name())),
        None => words.say("tonight-block"),
    }
}

/// Why a session is when it is, in a sentence.
pub(super) fn why(view: &View<'_>, look: &TonightInputs, planned: &Planned) -> String {
    let words = view.words();
    let span = |span: Span| words.span(span);
    match planned.why {
        Why::Late => words.say("why-late"),
        Why::ByHand => words.say("why-by-hand"),
        Why::Stands(kind) => words.with("why-stands", &[("what", point_name(view, Some(kind)).into())]),
        Why::Block => words.say("why-block"),
        Why::KeepsLongest(without) => words.with(
            "why-keeps-longest",
            &[("without", span(without).into()), ("longest", span(look.gathered.frame.longest.value).into())],
        ),
        Why::InTheNight => {
            words.with("why-in-the-night", &[("count", i64::from(look.gathered.frame.night_sessions.get()).into())])
        }
        Why::BeforeSleep => words.say("why-before-sleep"),
        Why::OnWaking => words.say("why-on-waking"),
        Why::Evenly => words.say("why-evenly"),
    }
}

pub(super) fn actions(view: &View<'_>, look: &TonightInputs) -> Vec<Action> {
    let words = view.words();
    let (Some(plan), None) = (&look.plan, look.gathered.running) else { return Vec::new() };
    let Some(next) = plan.sessions.first() else { return Vec::new() };
    let of = plan.late_since.unwrap_or(next.at).unix_milliseconds();
    let at = clock(view, plan.late_since.unwrap_or(next.at));
    let act = |key: &str, event: Event, sign: Sign| {
        Action::new(key, words.say(key), event)
            .detail(words.say(&format!("{key}-detail")))
            .spoken(words.with(&format!("{key}-spoken"), &[("time", at.clone().into())]))
            .sign(sign)
    };
    let earlier = plan.late_since.is_none() && next.at.minus(Span::minutes(15)) >= view.now;
    vec![
        act("plan-earlier", Event::MovePlanned { unix_milliseconds: of, steps: -1 }, Sign::Earlier).open(earlier),
        act("plan-later", Event::MovePlanned { unix_milliseconds: of, steps: 1 }, Sign::Later),
        act("plan-snooze", Event::SnoozePlanned { unix_milliseconds: of }, Sign::Snooze),
        act("plan-skip", Event::SkipPlanned { unix_milliseconds: of }, Sign::Skip),
    ]
}

fn notice(key: String, tone: Tone, text: String, actions: Vec<Action>) -> Notice {
    Notice { key, tone, spoken: text.clone(), text, actions }
}

pub(super) fn asks(view: &View<'_>, look: &TonightInputs) -> Vec<Notice> {
    let words = view.words();
    let mut all = Vec::new();
    if !view.alarms.shown {
        all.push(notice("alarms-not-shown".to_owned(), Tone::Quiet, words.say("alarms-not-shown"), Vec::new()));
    } else if !view.alarms.exact {
        all.push(notice("alarms-inexact".to_owned(), Tone::Quiet, words.say("alarms-inexact"), Vec::new()));
    }
    let Some(plan) = &look.plan else { return all };
    match plan.basis {
        Basis::FrameAlone => {
            all.push(notice("frame-alone".to_owned(), Tone::Quiet, words.say("tonight-frame-alone"), Vec::new()));
        }
        Basis::Silence { since } => {
            let span = words.span(view.now.since(since));
            let text = words.with("tonight-silence", &[("span", span.into())]);
            all.push(notice("silence".to_owned(), Tone::Quiet, text, Vec::new()));
        }
        Basis::Emptying(_) => {}
    }
    for (i, gives) in plan.unmet.iter().enumerate() {
        all.push(notice(format!("gives-way-{i}"), Tone::Quiet, unmet(view, look, gives), Vec::new()));
    }
    if look.gathered.rhythm.reminders.is_none() {
        let choose = |word: &str| {
            let event = Event::Enter {
                id: crate::record::RHYTHM.to_owned(),
                field: "reminders".to_owned(),
                typed: word.to_owned(),
            };
            Action::new(format!("reminders-{word}"), words.say(&format!("choice-reminders-{word}")), event)
                .weight(Weight::Quiet)
        };
        let actions = ["sound", "quiet", "none"].map(choose).to_vec();
        all.push(notice("ask-reminders".to_owned(), Tone::Asks, words.say("tonight-ask-reminders"), actions));
    }
    all
}

fn unmet(view: &View<'_>, look: &TonightInputs, gives: &UnmetConstraint) -> String {
    let words = view.words();
    let frame = &look.gathered.frame;
    match gives {
        UnmetConstraint::Longest { from, until, by } => words.with(
            "gives-way-longest",
            &[
                ("from", clock(view, *from).into()),
                ("until", clock(view, *until).into()),
                ("by", words.span(*by).into()),
                ("longest", words.span(frame.longest.value).into()),
            ],
        ),
        UnmetConstraint::Shortest { from, until, by } => words.with(
            "gives-way-shortest",
            &[
                ("from", clock(view, *from).into()),
                ("until", clock(view, *until).into()),
                ("by", words.span(*by).into()),
            ],
        ),
        UnmetConstraint::Sleep { longest, wished } => words.with(
            "gives-way-sleep",
            &[("longest", words.span(*longest).into()), ("wished", words.span(*wished).into())],
        ),
        UnmetConstraint::NightSessions { planned, asked } => words.with(
            "gives-way-night",
            &[("planned", i64::from(planned.get()).into()), ("asked", i64::from(asked.get()).into())],
        ),
        UnmetConstraint::Sessions { planned, wished } => words.with(
            if planned < wished { "gives-way-fewer" } else { "gives-way-more" },
            &[("planned", i64::from(planned.get()).into()), ("wished", i64::from(wished.get()).into())],
        ),
        UnmetConstraint::Point { kind, at } => words
            .with("gives-way-point", &[("what", point_name(view, *kind).into()), ("time", clock(view, *at).into())]),
    }
}

/// What a reminder says: its title, and a line under it.
pub(crate) fn reminder_words(view: &View<'_>, reminder: &Reminder) -> (String, String) {
    let words = view.words();
    let key = format!("reminder-{}", reminder.reminds.name());
    let title = words.with(&key, &[("time", clock(view, reminder.planned).into())]);
    (title, words.say(&format!("{key}-text")))
}
