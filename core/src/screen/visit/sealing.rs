//! Sharing with the consultant, and the passphrase of a file that came.

use super::super::shapes::{
    Action, Event, FieldGroup, FieldKind, FieldRow, FormScreen, ListGroup, Place, Screen, Secret, Sign, Weight,
};
use super::super::View;
use crate::record::Kind;
use crate::trouble::Trouble;

/// Names of things that are typed and no field of a record.
pub(crate) const CARD: &str = "card";
/// A passphrase to seal with.
pub(crate) const SEAL_PASSPHRASE: &str = "seal-passphrase";
/// A passphrase that opens.
pub(crate) const OPEN_PASSPHRASE: &str = "open-passphrase";

/// Consultants, each a row that opens, and how one more is taken in.
pub(super) fn group(view: &View<'_>) -> Result<ListGroup, Trouble> {
    let words = view.words();
    let mut rows = Vec::new();
    for (id, name) in view.named(Kind::Consultant)? {
        let row = view.text_row(name, words.say("consultant-row"));
        rows.push(row.opens(format!("open-{id}"), Event::Go { place: Place::Consultant { id } }));
    }
    Ok(ListGroup {
        key: "share".to_owned(),
        title: words.say("share-title"),
        empty: if rows.is_empty() { words.say("consultants-none") } else { String::new() },
        rows,
        add: vec![Action::new("open-sharing", words.say("open-sharing"), Event::Go { place: Place::Sharing })
            .detail(words.say("open-sharing-detail"))
            .sign(Sign::In)],
    })
}

/// A field that is sent with a tap: it stands in no record, so leaving it says nothing.
pub(in crate::screen) fn typed_row(
    view: &View<'_>,
    id: &str,
    kind: FieldKind,
    (sign, weight): (Sign, Weight),
) -> FieldRow {
    let words = view.words();
    let label = words.say(&format!("field-{id}"));
    let hint = words.say(&format!("hint-{id}"));
    FieldRow {
        id: id.to_owned(),
        field: id.to_owned(),
        spoken: words.with("field-spoken", &[("field", label.clone().into()), ("value", hint.clone().into())]),
        label,
        kind,
        value: String::new(),
        unit: String::new(),
        hint,
        options: Vec::new(),
        less: None,
        more: None,
        clear: None,
        done: Some(
            // What it sends is what was typed; the event on it says of which field.
            Action::new(
                format!("done-{id}"),
                words.say(&format!("done-{id}")),
                match kind {
                    FieldKind::Secret => {
                        Event::EnterSecret { id: id.to_owned(), secret: Secret { words: String::new() } }
                    }
                    _ => Event::Enter { id: id.to_owned(), field: id.to_owned(), typed: String::new() },
                },
            )
            .weight(weight)
            .sign(sign),
        ),
    }
}

pub(in crate::screen) fn form(
    view: &View<'_>,
    place: &Place,
    title: &str,
    groups: Vec<FieldGroup>,
    actions: Vec<Action>,
) -> Result<Screen, Trouble> {
    let mut frame = view.frame(place, view.words().say(title), String::new())?;
    frame.back = Some(view.back());
    let form = FormScreen { id: title.to_owned(), strip: None, notices: Vec::new(), groups, actions };
    Ok(Screen::Form { frame, form })
}

/// Where a consultant's key is taken in, and a passphrase is set instead.
pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let group = |key: &str, row: FieldRow| FieldGroup {
        key: key.to_owned(),
        title: view.words().say(&format!("group-{key}")),
        rows: vec![row],
    };
    let groups = vec![
        group("card", typed_row(view, CARD, FieldKind::LongText, (Sign::In, Weight::Main))),
        group("by-passphrase", typed_row(view, SEAL_PASSPHRASE, FieldKind::Secret, (Sign::Out, Weight::Plain))),
    ];
    let mut actions = Vec::new();
    if let Some(made_up) = view.offered {
        actions.push(
            Action::new(
                "seal-with-words",
                view.words().with("seal-with-words", &[("words", made_up.into())]),
                Event::EnterSecret { id: SEAL_PASSPHRASE.to_owned(), secret: Secret { words: made_up.to_owned() } },
            )
            .detail(view.words().say("seal-with-words-detail"))
            .sign(Sign::Out),
        );
    }
    actions.push(
        Action::new("open-own-card", view.words().say("phone-card"), Event::Go { place: Place::OwnCard })
            .detail(view.words().say("phone-card-detail"))
            .weight(Weight::Quiet),
    );
    form(view, &Place::Sharing, "sharing-page", groups, actions)
}

/// Where the passphrase of a file that came is typed.
pub(in crate::screen) fn show_sealed(view: &View<'_>) -> Result<Screen, Trouble> {
    let group = FieldGroup {
        key: "sealed".to_owned(),
        title: view.words().say("group-sealed"),
        rows: vec![typed_row(view, OPEN_PASSPHRASE, FieldKind::Secret, (Sign::In, Weight::Main))],
    };
    let leave = Action::new("leave-sealed", view.words().say("leave-sealed"), Event::LeaveSealed)
        .detail(view.words().say("leave-sealed-detail"))
        .sign(Sign::Skip);
    form(view, &Place::Sealed, "sealed-page", vec![group], vec![leave])
}
