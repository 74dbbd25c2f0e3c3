//! A plan that came, part by part.

use super::says;
use crate::gather::plan::parts_of_plan;
use crate::record::plan_part::part_before;
use crate::record::{moment, text, Fields, Kind};
use crate::screen::kit::{ceiling_kept, searched};
use crate::screen::shapes::{Action, Event, FindingsScreen, Place, Screen, Section, Sign, Weight};
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::{Kind as TroubleKind, Trouble};

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (kind, plan) = view.record(id)?;
    if kind != Kind::Plan {
        return Err(Trouble::new(TroubleKind::Missing, "trouble-no-such-record"));
    }
    // Where it did not come, it is being written: on the consultant's own desk.
    if !plan.contains_key("came") {
        return super::show_on_desk(view, id, &plan);
    }
    let place = Place::Plan { id: id.to_owned() };
    let mut frame = view.frame(&place, words.say("kind-plan"), String::new())?;
    frame.back = Some(view.back());
    let parts = parts_of_plan(view.journal, id)?;
    let open = parts.iter().filter(|(_, part)| text(part, "answer").is_none()).count();
    let from = text(&plan, "plan_from").filter(|name| !name.trim().is_empty());
    let headline = match from {
        Some(from) => words.with("plan-from", &[("name", from.into())]),
        None => words.say("plan-from-nobody"),
    };
    let day = |at| words.date(LocalDay::of(&at, view.settings.day_start));
    let caption =
        moment(&plan, "at").map(|at| words.with("plan-made", &[("date", day(at).into())])).unwrap_or_default();
    let mut lines: Vec<String> =
        text(&plan, "plan_words").filter(|said| !said.trim().is_empty()).map(str::to_owned).into_iter().collect();
    lines.push(words.say(if open > 0 { "plan-nothing-holds" } else { "plan-all-answered" }));
    lines.push(words.say("plan-defers"));
    let mut actions = Vec::new();
    if open > 0 {
        actions.push(
            Action::new("plan-accept-all", words.say("plan-accept-all"), Event::PlanAcceptAll { plan: id.to_owned() })
                .weight(Weight::Main),
        );
    }
    let sections = parts.iter().map(|(id, part)| section(view, id, part)).collect::<Result<Vec<_>, _>>()?;
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [&headline, &caption].into_iter().chain(&lines).map(String::as_str).collect::<Vec<_>>().join(" "),
            headline,
            figure: String::new(),
            caption,
            dial: None,
            lines,
            asks: Vec::new(),
            actions,
            sections,
        },
    })
}

fn section(view: &View<'_>, id: &str, part: &Fields) -> Result<Section, Trouble> {
    let words = view.words();
    let mut lines = says::lines(view, part)?;
    if let (None, Some((_, before))) = (text(part, "answer"), view.journal.record(&part_before(id))?) {
        let key = if text(&before, "answer") == Some("accepted") { "plan-accepted-before" } else { "plan-left-before" };
        let said = says::as_it_was(view, &before)?;
        lines.push(words.with(key, &[("said", said.into())]));
    }
    let answer = |accept: bool| {
        let key = if accept { "plan-accept" } else { "plan-leave" };
        Action::new(format!("{key}-{id}"), words.say(key), Event::PlanAnswer { part: id.to_owned(), accept })
            .sign(if accept { Sign::In } else { Sign::Skip })
    };
    let actions = match text(part, "answer") {
        Some("accepted") => {
            lines.push(words.say("plan-is-accepted"));
            lines.extend(ceiling_kept(view, id)?);
            lines.extend(searched(view, part)?);
            Vec::new()
        }
        Some(_) => {
            lines.push(words.say("plan-is-left"));
            vec![answer(true)]
        }
        None => vec![answer(true), answer(false)],
    };
    Ok(Section { lines, actions, ..crate::screen::section::section(id, says::title(view, part)) })
}
