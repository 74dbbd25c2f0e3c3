//! After a session: the water line of each side, drawn up with the thumb.

use super::scale::{self, amount_of};
use super::shapes::{Action, AmountColumn, AmountsScreen, ChoiceRow, Column, Event, Part, Place, Screen, Sign, Weight};
use super::{strip, View};
use crate::gather::amount_scale::AmountScale;
use crate::quantity::Unit;
use crate::record::{Amount, Session};
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>, session: &Session) -> Result<Screen, Trouble> {
    let words = view.words();
    let frame = view.frame(&Place::Now, words.say("amounts-title"), words.say("amounts-subtitle"))?;
    let scale = AmountScale::for_session(view, session)?;
    let before = before(view, session)?;
    let together = session.together.is_some();
    let parts: Vec<Part> = match (together, session.sides.left(), session.sides.right()) {
        (true, _, _) => vec![Part::Together],
        (false, true, false) => vec![Part::Left],
        (false, false, true) => vec![Part::Right],
        _ => vec![Part::Left, Part::Right],
    };
    let columns: Vec<AmountColumn> =
        parts.iter().map(|part| column(view, session, *part, &scale, before.as_ref())).collect();
    let lasted = match (&session.started, &session.ended) {
        (Some(from), Some(to)) => words.span(to.instant().since(from.instant())),
        _ => String::new(),
    };
    let choice = |key: &str, value: bool| {
        Action::new(
            format!("amounts-{key}"),
            words.say(&format!("amounts-{key}")),
            Event::MeasureTogether { session: session.id.clone(), together: value },
        )
        .chosen(together == value)
    };
    let both = session.sides.left() && session.sides.right();
    let any = parts.iter().any(|p| amount_of(session, *p).is_some_and(|a| !matches!(a, Amount::Later)));
    let spoken = columns.iter().map(|c| c.column.spoken.clone()).collect::<Vec<_>>().join(" ");
    Ok(Screen::Amounts {
        frame,
        amounts: AmountsScreen {
            session: session.id.clone(),
            headline: words.say("amounts-headline"),
            caption: words.with("amounts-caption", &[("span", lasted.into())]),
            strip: strip::draw(view, session, view.now),
            columns,
            scale: scale::ticks(view, &scale),
            together: ChoiceRow {
                key: "together".to_owned(),
                label: words.say("amounts-measured"),
                options: if both { vec![choice("each", false), choice("together", true)] } else { Vec::new() },
            },
            done: Action::new(
                "amounts-done",
                words.say("amounts-done"),
                Event::AmountsDone { session: session.id.clone() },
            )
            .weight(Weight::Main)
            .open(any),
            later: Action::new(
                "amounts-later",
                words.say("amounts-later"),
                Event::AmountsLater { session: session.id.clone() },
            )
            .weight(if any { Weight::Quiet } else { Weight::Plain })
            .sign(Sign::Later),
            spoken,
        },
    })
}

/// The session before this one, for the faint line of what it was last time.
fn before(view: &View<'_>, session: &Session) -> Result<Option<Session>, Trouble> {
    let Some(started) = session.started.as_ref() else { return Ok(None) };
    for row in view.journal.latest_sessions(started.instant(), 6)? {
        if row.subject != session.id {
            let other = view.session(&row.subject)?;
            if other.collects() {
                return Ok(Some(other));
            }
        }
    }
    Ok(None)
}

fn column(
    view: &View<'_>,
    session: &Session,
    part: Part,
    scale: &AmountScale,
    before: Option<&Session>,
) -> AmountColumn {
    let words = view.words();
    let name = match part {
        Part::Left => "left",
        Part::Right => "right",
        Part::Together => "together",
    };
    let label = words.say(&format!("side-{name}"));
    let amount = amount_of(session, part);
    let text = match amount {
        None | Some(Amount::Later) => words.say("amount-draw"),
        said => words.amount(said),
    };
    let id = &session.id;
    let step = |key: &str, steps: i32, sign: Sign| {
        Action::new(
            format!("amount-{name}-{key}"),
            words.say(&format!("amount-{key}")),
            Event::StepAmount { session: id.clone(), part, steps },
        )
        .spoken(words.with(&format!("amount-{key}-spoken"), &[("side", label.clone().into())]))
        .sign(sign)
    };
    let unknown = matches!(amount, Some(Amount::Unknown));
    AmountColumn {
        readings: scale::readings(view, scale),
        unit: scale.unit().ucum().to_owned(),
        less: step("less", -1, Sign::Softer).open(amount.and_then(Amount::known).is_some()),
        more: step("more", 1, Sign::Stronger),
        unknown: Action::new(
            format!("amount-{name}-unknown"),
            words.say("amount-say-unknown"),
            Event::AmountUnknown { session: id.clone(), part },
        )
        .spoken(words.with("amount-say-unknown-spoken", &[("side", label.clone().into())]))
        .sign(Sign::Unknown)
        .weight(Weight::Quiet)
        .chosen(unknown),
        column: Column {
            part,
            spoken: words
                .with("amount-spoken", &[("side", label.clone().into()), ("amount", words.amount(amount).into())]),
            label,
            text,
            height: amount.and_then(Amount::known).map(|v| scale.height(v)),
            ghost: before.and_then(|s| amount_of(s, part)).and_then(Amount::known).map(|v| scale.height(v)),
        },
    }
}
