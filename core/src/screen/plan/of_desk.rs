//! A plan as the consultant writes it: her words, its parts, and how it is sent.

use super::says;
use crate::gather::plan::parts_of_plan;
use crate::record::{choices::PLAN_PARTS, moment, text, Fields, Kind, NAME_OF_CASE};
use crate::screen::section::section;
use crate::screen::shapes::{
    Action, Event, Export, FieldRow, FindingsScreen, ListRow, Place, Screen, Section, Sign, Weight,
};
use crate::screen::{field_row, View};
use crate::time::LocalDay;
use crate::trouble::Trouble;

pub(in crate::screen) fn show(view: &View<'_>, id: &str, plan: &Fields) -> Result<Screen, Trouble> {
    let words = view.words();
    let place = Place::Plan { id: id.to_owned() };
    let mut frame = view.frame(&place, words.say("kind-plan"), String::new())?;
    frame.back = Some(view.back());
    let parts = parts_of_plan(view.journal, id)?;
    let caption = match moment(plan, "sent") {
        Some(at) => words.with(
            "plan-sent",
            &[
                ("date", words.date(LocalDay::of(&at, view.settings.day_start)).into()),
                ("time", words.clock(&at).into()),
            ],
        ),
        None => words.say("plan-not-sent"),
    };
    let mut fields = Vec::new();
    for spec in Kind::Plan.fields().iter().filter(|spec| ["plan_words", "good_until"].contains(&spec.key)) {
        fields.extend(field_row::rows(view, id, Kind::Plan, spec, plan)?);
    }
    let rows = parts.iter().map(|(part, said)| row(view, part, said)).collect();
    let add = PLAN_PARTS.iter().map(|part| {
        let label = words.say(&format!("choice-plan-part-{part}"));
        let event = Event::AddPlanPart { plan: id.to_owned(), part: (*part).to_owned() };
        Action::new(format!("add-part-{part}"), label, event).sign(Sign::Add)
    });
    let section = |key: &str, fields: Vec<_>, rows: Vec<ListRow>, actions: Vec<Action>| Section {
        fields,
        rows,
        actions,
        ..section(key, words.say(&format!("plan-{key}")))
    };
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            headline: match whose(view, plan)? {
                Some(name) => words.with("plan-writing-for", &[("name", name.into())]),
                None => words.say("plan-writing"),
            },
            figure: String::new(),
            spoken: caption.clone(),
            caption,
            dial: None,
            lines: vec![words.say("plan-writing-detail")],
            asks: Vec::new(),
            actions: vec![Action::new(
                "send-plan",
                words.say("send-plan"),
                Event::Export { what: Export::Plan { plan: id.to_owned() } },
            )
            .detail(words.say("send-plan-detail"))
            .sign(Sign::Out)
            .weight(Weight::Main)],
            sections: vec![
                section("words", fields, Vec::new(), Vec::new()),
                section("parts", Vec::new(), rows, add.collect()),
            ],
        },
    })
}

/// What the family that a plan is written for is called on the desk.
fn whose(view: &View<'_>, plan: &Fields) -> Result<Option<String>, Trouble> {
    for row in view.journal.of_kind(Kind::CaseFamily)? {
        let (_, case) = view.record(&row.subject)?;
        if text(&case, "family") == text(plan, "plan_for") {
            return Ok(text(&case, NAME_OF_CASE).filter(|name| !name.trim().is_empty()).map(str::to_owned));
        }
    }
    Ok(None)
}

/// The family that a part's plan is written for, said under its title; nothing where that
/// is not known.
pub(in crate::screen) fn text_for(view: &View<'_>, part: &Fields) -> Result<String, Trouble> {
    let Some(plan) = text(part, "plan").filter(|_| view.desk) else { return Ok(String::new()) };
    let name = whose(view, &view.record(plan)?.1)?;
    Ok(name.map(|name| view.words().with("plan-part-for", &[("name", name.into())])).unwrap_or_default())
}

/// Says in a part's form what stands now in the family's record.
pub(in crate::screen) fn say_what_stands(view: &View<'_>, field: &str, rows: &mut [FieldRow]) {
    let Some(now) = view.in_family(|family| says::stands(family, field)).flatten() else { return };
    for row in rows {
        let said = view.words().with("plan-stands-now", &[("value", now.as_str().into())]);
        row.hint =
            [said.as_str(), &row.hint].into_iter().filter(|said| !said.is_empty()).collect::<Vec<_>>().join(" \u{b7} ");
    }
}

fn row(view: &View<'_>, id: &str, part: &Fields) -> ListRow {
    let said = says::on_desk(view, part);
    let detail = if said.is_empty() { view.words().say("plan-part-nothing") } else { said };
    let open = Event::Go { place: Place::Entry { id: id.to_owned() } };
    view.text_row(says::title(view, part), detail).opens(format!("open-{id}"), open)
}
