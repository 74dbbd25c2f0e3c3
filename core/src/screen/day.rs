//! One local day: what came by the clock, and everything written down in it.

use super::shapes::{
    Action, DayBar, DayChoice, DayPicture, DayScreen, EntryRow, Event, Part, Place, Screen, SideTotal, Sign, Tick,
    Weight,
};
use super::{signs_text, strip, View};
use crate::gather::amount_scale::AmountScale;
use crate::journal::DayRollup;
use crate::quantity::{Entered, Quantity, Volume};
use crate::record::Row;
use crate::record::{moment, text, Amount, Fields, Kind, Session};
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// A week, and as many days as a chart of four weeks has.
const WEEK: u32 = 7;
const WEEKS: u32 = 28;

pub(super) fn show(view: &View<'_>, days_back: u32) -> Result<Screen, Trouble> {
    let words = view.words();
    let day = view.today().earlier_by(days_back);
    let title = words.day(day, view.today());
    let subtitle = if days_back < 2 { words.date(day) } else { words.with("days-ago", &[("days", days_back.into())]) };
    let mut frame = view.frame(&Place::Day { days_back }, title, subtitle)?;
    frame.back = Some(view.back());
    let rows = view.journal.of_day(day)?;
    let rollup = view.journal.rollup(day)?;
    let mut entries = Vec::new();
    let mut taken_out = Vec::new();
    let mut sessions = Vec::new();
    for row in &rows {
        let (kind, fields) = view.record(&row.subject)?;
        // What was done with the plan is told in Tonight, and what became of milk on its shelf.
        if matches!(kind, Kind::PlanChange | Kind::Container | Kind::MilkEvent | Kind::Cleaning) {
            continue;
        }
        if row.taken_out {
            taken_out.push(out_row(view, row, kind, &fields)?);
        } else {
            if kind == Kind::Session {
                sessions.push(Session::read(&row.subject, &fields));
            }
            entries.push(entry_row(view, row, kind, &fields)?);
        }
    }
    entries.reverse();
    let go = |key: &str, to: u32, sign: Sign| {
        Action::new(
            format!("day-{key}"),
            words.say(&format!("day-{key}")),
            Event::Go { place: Place::Day { days_back: to } },
        )
        .sign(sign)
        .weight(Weight::Quiet)
    };
    let (figure, caption) = total(view, &rollup);
    Ok(Screen::Day {
        frame,
        day: DayScreen {
            earlier: Some(go("earlier", days_back.saturating_add(1), Sign::Earlier)),
            choice: choice(view, days_back),
            later: (days_back > 0).then(|| go("later", days_back - 1, Sign::Later)),
            figure,
            caption,
            sides: sides(view, &rollup),
            picture: picture(view, day, days_back, &sessions),
            empty: if entries.is_empty() { words.say("day-empty") } else { String::new() },
            entries,
            add: ["session", "feed", "sign", "weight", "life_event", "note"]
                .map(|kind| {
                    Action::new(
                        format!("add-{kind}"),
                        words.say(&format!("kind-{kind}")),
                        Event::Add { kind: kind.to_owned(), days_back },
                    )
                    .spoken(words.say(&format!("add-{kind}")))
                    .sign(Sign::Add)
                })
                .to_vec(),
            taken_out_label: if taken_out.is_empty() { String::new() } else { words.say("taken-out") },
            taken_out,
        },
    })
}

/// The days that are one tap away: those of the last week, and a week and four weeks on from here.
fn choice(view: &View<'_>, days_back: u32) -> DayChoice {
    let words = view.words();
    let go = |key: String, label: String, to: u32| {
        Action::new(key, label, Event::Go { place: Place::Day { days_back: to } }).chosen(to == days_back)
    };
    let name = |to: u32| words.day(view.today().earlier_by(to), view.today());
    let jump = |key: &str, to: u32| {
        let day = name(to);
        go(format!("day-{key}"), words.say(&format!("day-{key}")), to)
            .spoken(words.with(&format!("day-{key}-spoken"), &[("day", day.clone().into())]))
            .detail(day)
    };
    let near = (0..WEEK).map(|to| go(format!("day-{to}"), name(to), to));
    let back = [jump("week-back", days_back.saturating_add(WEEK)), jump("weeks-back", days_back.saturating_add(WEEKS))];
    let on = days_back.checked_sub(WEEK).filter(|to| *to >= WEEK).map(|to| jump("week-on", to));
    let text = name(days_back);
    DayChoice {
        spoken: words.with("day-choice-spoken", &[("day", text.clone().into())]),
        spoken_open: words.with("day-choice-spoken-open", &[("day", text.clone().into())]),
        text,
        days: near.chain(on).chain(back).collect(),
    }
}

/// The day's figure, and what is not in it.
fn total(view: &View<'_>, rollup: &DayRollup) -> (String, String) {
    let words = view.words();
    if rollup.sessions.get() == 0 {
        return (words.say("day-figure-none"), words.say("day-caption-none"));
    }
    let sessions = words.with("sessions", &[("count", rollup.sessions.get().into())]);
    let unknown = rollup.left.unknown.get() + rollup.right.unknown.get() + rollup.together.unknown.get();
    if rollup.known_count().get() == 0 {
        return (words.say("day-figure-unknown"), words.with("day-caption-unknown", &[("sessions", sessions.into())]));
    }
    let caption = if unknown == 0 {
        words.with("day-caption", &[("sessions", sessions.into())])
    } else {
        words.with("day-caption-partly", &[("sessions", sessions.into()), ("unknown", unknown.into())])
    };
    let figure = words.volume(rollup.known());
    let figure = if unknown == 0 { figure } else { words.with("at-least", &[("volume", figure.into())]) };
    (figure, caption)
}

/// The same in one line: the figure, and how many sessions with what is not known of them.
pub(super) fn in_a_line(view: &View<'_>, rollup: &DayRollup) -> (String, String) {
    let words = view.words();
    let (figure, _) = total(view, rollup);
    let sessions = words.with("sessions", &[("count", rollup.sessions.get().into())]);
    let unknown = rollup.left.unknown.get() + rollup.right.unknown.get() + rollup.together.unknown.get();
    let sessions = match unknown {
        0 => sessions,
        _ => words.with("today-unknown", &[("sessions", sessions.into()), ("unknown", unknown.into())]),
    };
    (figure, sessions)
}

fn sides(view: &View<'_>, rollup: &DayRollup) -> Vec<SideTotal> {
    let words = view.words();
    let all = [
        (Part::Left, "left", rollup.left),
        (Part::Right, "right", rollup.right),
        (Part::Together, "together", rollup.together),
    ];
    all.into_iter()
        .filter(|(part, _, sum)| *part != Part::Together || sum.known.get() + sum.unknown.get() > 0)
        .map(|(part, name, sum)| SideTotal {
            part,
            label: words.say(&format!("side-{name}")),
            text: match (sum.known.get(), sum.unknown.get()) {
                (0, 0) => words.say("amount-nothing-said"),
                (0, _) => words.say("amount-unknown"),
                _ => words.volume(sum.volume),
            },
            note: match sum.unknown.get() {
                0 => String::new(),
                n => words.with("side-unknown", &[("count", n.into())]),
            },
        })
        .collect()
}

fn picture(view: &View<'_>, day: LocalDay, days_back: u32, sessions: &[Session]) -> DayPicture {
    let words = view.words();
    let start = view.settings.day_start;
    let volume = |amount: &Option<Amount>| amount.as_ref().and_then(Amount::known);
    let whole = |s: &Session| {
        let parts = [volume(&s.left), volume(&s.right), volume(&s.together)];
        Volume::from_canonical(parts.into_iter().flatten().map(Quantity::canonical).sum())
    };
    let scale = AmountScale::for_volumes(
        sessions.iter().filter(|s| s.collects()).map(whole).filter(|v| v.canonical() > 0.0),
        view.settings.volume,
    );
    let bars: Vec<DayBar> = sessions
        .iter()
        .filter_map(|s| {
            let at = day.place_of(s.started.as_ref()?, start);
            let height = |amount: &Option<Amount>| volume(amount).map(|v| scale.height(v));
            Some(DayBar {
                at,
                left: height(&s.left),
                right: height(&s.right),
                together: height(&s.together),
                open: s.collects() && lacks_any(s),
                feed: !s.collects(),
            })
        })
        .collect();
    let spoken = words.with("day-picture-spoken", &[("count", (bars.len() as i64).into())]);
    DayPicture {
        bars,
        ticks: (0..=4).map(|q| Tick { at: q as f32 / 4.0, label: words.hour(start.hour() + q * 6) }).collect(),
        scale: crate::screen::scale::ticks(view, &scale).into_iter().filter(|t| t.at == 0.5 || t.at == 1.0).collect(),
        now: (days_back == 0).then(|| day.place_of(&view.present(), start)),
        spoken,
    }
}

fn lacks_any(session: &Session) -> bool {
    let unknown = |a: &Option<Amount>| a.as_ref().and_then(Amount::known).is_none();
    match &session.together {
        Some(together) => together.known().is_none(),
        None => (session.sides.left() && unknown(&session.left)) || (session.sides.right() && unknown(&session.right)),
    }
}

fn entry_row(view: &View<'_>, row: &Row, kind: Kind, fields: &Fields) -> Result<EntryRow, Trouble> {
    let words = view.words();
    let time = kind.time_field().and_then(|key| moment(fields, key)).map(|m| words.clock(&m)).unwrap_or_default();
    let sides = if kind == Kind::Session { each_side(view, row, fields) } else { String::new() };
    let (title, detail, amount, strip) = match kind {
        Kind::Session => session_row(view, row, fields)?,
        Kind::Feed => {
            let way = text(fields, "way").map(|w| words.say(&format!("choice-way-{w}")));
            let milk = text(fields, "milk").map(|m| words.say(&format!("choice-milk-{m}"))).unwrap_or_default();
            let amount = fields.get("amount").and_then(Amount::from_json);
            (way.unwrap_or_else(|| words.say("kind-feed")), milk, words.amount(amount.as_ref()), None)
        }
        Kind::Sign => {
            let said = signs_text::of(view, fields)?.lines(view, true).join("\n");
            (words.say("kind-sign"), said, signs_text::temperature(view, fields), None)
        }
        Kind::CautionDealt => (view.name_of(kind, fields), dealt(view, fields), String::new(), None),
        Kind::Weight => {
            let child = text(fields, "child").map(|id| view.name_of_id(id)).transpose()?.flatten().unwrap_or_default();
            let weight = fields.get("weight").and_then(Entered::<crate::quantity::Mass>::from_json);
            let weight = weight.map(|w| words.entered(&w, view.settings.mass)).unwrap_or_default();
            (words.say("kind-weight"), child, weight, None)
        }
        Kind::LifeEvent => {
            let what = text(fields, "what").map(|w| words.say(&format!("choice-what-{w}")));
            let note = text(fields, "note").unwrap_or_default().to_owned();
            (what.unwrap_or_else(|| words.say("kind-life_event")), note, String::new(), None)
        }
        Kind::Check | Kind::Trace => {
            let pump = text(fields, "pump").map(|id| view.name_of_id(id)).transpose()?.flatten().unwrap_or_default();
            (words.say(&format!("kind-{}", kind.name())), pump, String::new(), None)
        }
        Kind::Fit => (words.say("kind-fit"), String::new(), String::new(), None),
        Kind::Visit => {
            (words.say("kind-visit"), text(fields, "note").unwrap_or_default().to_owned(), String::new(), None)
        }
        Kind::Question => {
            (words.say("kind-question"), text(fields, "question").unwrap_or_default().to_owned(), String::new(), None)
        }
        _ => (view.name_of(kind, fields), text(fields, "text").unwrap_or_default().to_owned(), String::new(), None),
    };
    let care = match view.journal.overlapping(row)?.into_iter().find(|other| shares_side(view, row, other)) {
        Some(_) if kind == Kind::Session => words.say("care-overlap"),
        _ => String::new(),
    };
    let spoken =
        [&time, &title, &detail, &amount, &sides, &care].map(String::as_str).into_iter().filter(|s| !s.is_empty());
    let spoken = spoken.collect::<Vec<_>>().join(", ");
    Ok(EntryRow {
        id: row.subject.clone(),
        open: Action::new(format!("open-{}", row.subject), title.clone(), Event::Go { place: opened(row, kind) })
            .spoken(words.with("open-spoken", &[("what", spoken.clone().into())]))
            .weight(Weight::Quiet),
        time,
        title,
        detail,
        amount,
        sides,
        strip,
        care,
        spoken,
        others: Vec::new(),
    })
}

/// What a row opens: what was found where something was, else the record itself.
fn opened(row: &Row, kind: Kind) -> Place {
    let id = row.subject.clone();
    match kind {
        Kind::Check if !row.taken_out => Place::Check { id },
        Kind::Trace if !row.taken_out => Place::Trace { id },
        _ => Place::Entry { id },
    }
}

/// Whether two sessions used the same side.
pub(super) fn shares_side(view: &View<'_>, one: &Row, other: &Row) -> bool {
    let sides = |row: &Row| view.session(&row.subject).ok().map(|s| s.sides);
    match (sides(one), sides(other)) {
        (Some(a), Some(b)) => a.meets(b),
        _ => false,
    }
}

type RowParts = (String, String, String, Option<super::shapes::Strip>);

fn session_row(view: &View<'_>, row: &Row, fields: &Fields) -> Result<RowParts, Trouble> {
    let words = view.words();
    let session = Session::read(&row.subject, fields);
    let method = words.say(&format!("choice-method-{}", session.method.as_deref().unwrap_or("unsaid")));
    let sides = words.say(&format!("choice-sides-{}", session.sides.name()));
    let length = match (row.at, row.until) {
        (Some(from), Some(until)) => words.span(until.since(from)),
        _ if row.running => words.say("running-now"),
        _ => words.say("length-unknown"),
    };
    let amount = match session.collects() {
        false => weighed(view, fields),
        true => match &session.together {
            Some(_) => words.amount(session.together.as_ref()),
            None => {
                let both = session.sides.left() && session.sides.right();
                match (session.left.as_ref().and_then(Amount::known), session.right.as_ref().and_then(Amount::known)) {
                    (Some(l), Some(r)) if both => words.volume(Volume::from_canonical(l.canonical() + r.canonical())),
                    (Some(l), None) if both => words.with("amount-and-unknown", &[("volume", words.volume(l).into())]),
                    (None, Some(r)) if both => words.with("amount-and-unknown", &[("volume", words.volume(r).into())]),
                    _ if both && session.left.is_none() && session.right.is_none() => words.amount(None),
                    _ if both => words.amount(session.left.as_ref().or(session.right.as_ref())),
                    _ if session.sides.left() => words.amount(session.left.as_ref()),
                    _ => words.amount(session.right.as_ref()),
                }
            }
        },
    };
    let drawn = (!session.marks.is_empty() && !session.is_running()).then(|| strip::draw(view, &session, view.now));
    let detail = words.with("session-detail", &[("sides", sides.into()), ("length", length.into())]);
    Ok((method, detail, amount, drawn))
}

/// What each side gave, where both were used and measured apart.
fn each_side(view: &View<'_>, row: &Row, fields: &Fields) -> String {
    let words = view.words();
    let session = Session::read(&row.subject, fields);
    let both = session.sides.left() && session.sides.right() && session.together.is_none();
    let (left, right) = (session.left.as_ref(), session.right.as_ref());
    if !both || !session.collects() || (left.is_none() && right.is_none()) {
        return String::new();
    }
    let (left, right) = (words.amount(left), words.amount(right));
    words.with("session-sides", &[("left", left.into()), ("right", right.into())])
}

/// What weighing before and after says, if both were done.
fn weighed(view: &View<'_>, fields: &Fields) -> String {
    use crate::quantity::{Mass, MassUnit};
    let words = view.words();
    let mass = |key: &str| fields.get(key).and_then(Entered::<Mass>::from_json).map(|e| e.quantity().canonical());
    match (mass("weight_before"), mass("weight_after")) {
        (Some(before), Some(after)) => {
            let gain = crate::quantity::say_decimal(after - before, 0);
            words.with("weighed", &[("mass", words.with_unit(gain, MassUnit::Gram).into())])
        }
        _ => words.say("not-weighed"),
    }
}

/// How a caution was dealt with, and what more was said of it.
fn dealt(view: &View<'_>, fields: &Fields) -> String {
    let how = text(fields, "dealt_how").map(|how| view.words().say(&format!("choice-dealt-how-{how}")));
    let note = text(fields, "note").map(str::trim).filter(|note| !note.is_empty()).map(str::to_owned);
    how.into_iter().chain(note).collect::<Vec<_>>().join(". ")
}

fn out_row(view: &View<'_>, row: &Row, kind: Kind, fields: &Fields) -> Result<EntryRow, Trouble> {
    let words = view.words();
    let mut shown = entry_row(view, row, kind, fields)?;
    shown.care = match view.journal.late_edit(&row.subject)? {
        Some(_) => words.say("care-late-edit"),
        None => String::new(),
    };
    shown.strip = None;
    shown.others = vec![Action::new(
        format!("bring-back-{}", row.subject),
        words.say("bring-back"),
        Event::BringBack { id: row.subject.clone() },
    )
    .spoken(words.with("bring-back-spoken", &[("what", shown.spoken.clone().into())]))
    .sign(Sign::In)];
    Ok(shown)
}
