//! The screen: every part as it goes out, each with the way to leave it out.

use super::{Part, Sheet};
use crate::record::{choices::PAPERS, text, Kind, SETTINGS};
use crate::screen::field_row;
use crate::screen::shapes::{
    Action, Event, Export, FieldRow, Paper, Place, Screen, SheetPart, SheetScreen, Sign, Weight,
};
use crate::screen::View;
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let sheet = Sheet::gather(view)?;
    let mut frame = view.frame(&Place::Sheet, sheet.heading.clone(), sheet.span.clone())?;
    frame.back = Some(view.back());
    let going = sheet.parts.iter().filter(|part| !part.out).count() as i64;
    let parts = sheet.parts.into_iter().map(|part| shown(view, part)).collect();
    Ok(Screen::Sheet {
        frame,
        sheet: SheetScreen {
            intro: words.say(if going == 0 { "sheet-intro-nothing" } else { "sheet-intro" }),
            fields: fields(view)?,
            parts,
            left_out: sheet.left_out,
            sources: sheet.sources,
            foot: sheet.foot,
            hand_over: hand_over(view)?,
            spoken: words.with("sheet-spoken", &[("count", going.into()), ("span", sheet.span.into())]),
        },
    })
}

/// The name on the sheet, and its paper.
fn fields(view: &View<'_>) -> Result<Vec<FieldRow>, Trouble> {
    let (_, fields) = view.record(SETTINGS)?;
    let mut rows = Vec::new();
    for spec in ["sheet_name", "paper"].into_iter().filter_map(|key| Kind::Settings.field(key)) {
        rows.extend(field_row::rows(view, SETTINGS, Kind::Settings, spec, &fields)?);
    }
    Ok(rows)
}

/// On the paper that was chosen, or the first there is.
fn hand_over(view: &View<'_>) -> Result<Action, Trouble> {
    let words = view.words();
    let (_, fields) = view.record(SETTINGS)?;
    let paper = text(&fields, "paper").or_else(|| PAPERS.first().copied()).unwrap_or_default();
    let detail = words.say(&format!("choice-paper-{paper}"));
    let on = if paper == "letter" { Paper::Letter } else { Paper::A4 };
    Ok(Action::new(
        "hand-over-sheet",
        words.say("sheet-hand-over"),
        Event::Export { what: Export::Sheet { paper: on } },
    )
    .detail(words.with("sheet-hand-over-detail", &[("paper", detail.into())]))
    .sign(Sign::Out)
    .weight(Weight::Main))
}

fn shown(view: &View<'_>, part: Part) -> SheetPart {
    let words = view.words();
    let name = part.part.name();
    let title = words.say(&format!("sheet-part-{name}"));
    let (label, spoken, sign) = match part.out {
        true => ("sheet-take-in", "sheet-take-in-spoken", Sign::In),
        false => ("sheet-leave-out", "sheet-leave-out-spoken", Sign::Skip),
    };
    let event = Event::LeaveOut { part: name.to_owned(), out: !part.out };
    SheetPart {
        key: name.to_owned(),
        leave: Action::new(format!("leave-{name}"), words.say(label), event)
            .spoken(words.with(spoken, &[("part", title.clone().into())]))
            .sign(sign)
            .chosen(part.out),
        out: part.out,
        said_out: if part.out { words.say("sheet-is-out") } else { String::new() },
        title,
        sections: part.sections,
    }
}
