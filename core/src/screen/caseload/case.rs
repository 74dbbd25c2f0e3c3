//! What the consultant keeps of one family: its name here, the next visit, her notes, her
//! plans; and how it is removed for good.

use super::super::shapes::{Action, DeskEvent, Event, FieldGroup, FormScreen, Place, Screen, Sign, Weight};
use super::super::{field_row, View};
use crate::record::Kind;
use crate::trouble::{Kind as TroubleKind, Trouble};

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (kind, fields) = view.record(id)?;
    if kind != Kind::CaseFamily {
        return Err(Trouble::new(TroubleKind::Missing, "trouble-no-such-record"));
    }
    let place = Place::CaseFamily { id: id.to_owned() };
    let mut frame = view.frame(&place, view.name_of(kind, &fields), words.say("case-subtitle"))?;
    frame.places = Vec::new();
    frame.back = Some(view.back());
    let mut groups: Vec<FieldGroup> = Vec::new();
    for spec in kind.fields().iter().filter(|spec| !spec.group.is_empty()) {
        let rows = field_row::rows(view, id, kind, spec, &fields)?;
        match groups.iter_mut().find(|group| group.key == spec.group) {
            Some(group) => group.rows.extend(rows),
            None => groups.push(FieldGroup {
                key: spec.group.to_owned(),
                title: words.say(&format!("group-{}", spec.group)),
                rows,
            }),
        }
    }
    let actions = vec![
        Action::new(
            "open-family",
            words.say("case-open"),
            Event::OnDesk { event: DeskEvent::OpenFamily { family: id.to_owned() } },
        )
        .sign(Sign::Supply)
        .weight(Weight::Main),
        Action::new(
            "write-plan",
            words.say("write-plan"),
            Event::OnDesk { event: DeskEvent::WritePlan { family: id.to_owned() } },
        )
        .sign(Sign::Add),
        Action::new(
            "remove-family",
            words.say("remove-family"),
            Event::Go { place: Place::Removing { id: id.to_owned() } },
        )
        .detail(words.say("remove-family-detail"))
        .weight(Weight::Quiet),
    ];
    Ok(Screen::Form {
        frame,
        form: FormScreen { id: id.to_owned(), strip: None, notices: Vec::new(), groups, actions },
    })
}
