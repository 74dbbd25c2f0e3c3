//! After a session: the water line of each side, drawn up with the thumb.

use super::scale::{self, amount_of, field_of};
use super::shapes::{
    Action, AmountColumn, AmountsScreen, ChoiceRow, Column, Event, FieldKind, FieldRow, Part, Place, Screen, Sign,
    Weight,
};
use super::View;
use crate::gather::amount_scale::AmountScale;
use crate::quantity::{say_decimal, Quantity, Unit};
use crate::record::{Amount, Session};
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>, session: &Session, place: &Place) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(place, words.say("amounts-title"), words.say("amounts-subtitle"))?;
    if *place != Place::Now {
        frame.back = Some(view.back());
    }
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
        (Some(from), Some(to)) => Some(to.instant().since(from.instant())),
        _ => None,
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
            caption: lasted.map_or_else(
                || words.say("amounts-caption-unknown"),
                |span| words.with("amounts-caption", &[("span", words.span(span).into())]),
            ),
            lead: super::lead::lead(view, "lead-amounts")?,
            columns,
            scale: scale::ticks(view, &scale),
            together: ChoiceRow {
                key: "together".to_owned(),
                label: words.say("amounts-measured"),
                options: if both { vec![choice("each", false), choice("together", true)] } else { Vec::new() },
            },
            keep: super::kept::keep_row(view, session)?,
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
    let step = |key: &str, steps: i32, fine: bool, sign: Sign| {
        Action::new(
            format!("amount-{name}-{key}"),
            words.say(&format!("amount-{key}")),
            Event::StepAmount { session: id.clone(), part, steps, fine },
        )
        .spoken(words.with(&format!("amount-{key}-spoken"), &[("side", label.clone().into())]))
        .sign(sign)
    };
    let unknown = matches!(amount, Some(Amount::Unknown));
    let known = amount.and_then(Amount::known);
    AmountColumn {
        readings: scale::readings(view, scale),
        unit: scale.unit().ucum().to_owned(),
        typing: FieldRow {
            value: known.map(|volume| say_decimal(volume.in_unit(scale.unit()), 2)).unwrap_or_default(),
            unit: words.unit(scale.unit()),
            spoken: words.with("amount-type-spoken", &[("side", label.clone().into())]),
            ..FieldRow::bare(id, field_of(part), &label, FieldKind::Number)
        },
        less: step("less", -1, false, Sign::Softer).open(known.is_some()),
        more: step("more", 1, false, Sign::Stronger),
        less_fine: step("less-fine", -1, true, Sign::Softer).open(known.is_some()),
        more_fine: step("more-fine", 1, true, Sign::Stronger),
        unknown: Action::new(
            format!("amount-{name}-unknown"),
            words.say("amount-say-unknown"),
            Event::AmountUnknown { session: id.clone(), part },
        )
        .spoken(words.with("amount-say-unknown-spoken", &[("side", label.clone().into())]))
        .weight(Weight::Quiet)
        .chosen(unknown),
        column: Column {
            part,
            spoken: words
                .with("amount-spoken", &[("side", label.clone().into()), ("amount", words.amount(amount).into())]),
            label,
            text,
            height: known.map(|v| scale.height(v)),
            ghost: before.and_then(|s| amount_of(s, part)).and_then(Amount::known).map(|v| scale.height(v)),
        },
    }
}
