//! Plans that wait for an answer, and those that were answered.

use crate::gather::plan::parts_of_plan;
use crate::record::{moment, text, Kind};
use crate::screen::shapes::{Action, Event, ListGroup, Notice, Place, Sign, Tone, Weight};
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// A plan that came: its record, from whom, when, and how many parts wait.
struct Came {
    id: String,
    from: String,
    day: String,
    waits: usize,
}

fn all(view: &View<'_>) -> Result<Vec<Came>, Trouble> {
    let words = view.words();
    let mut found = Vec::new();
    for row in view.journal.of_kind(Kind::Plan)?.into_iter().rev() {
        let (_, plan) = view.record(&row.subject)?;
        if !plan.contains_key("came") {
            continue;
        }
        let parts = parts_of_plan(view.journal, &row.subject)?;
        let name = text(&plan, "plan_from").filter(|name| !name.trim().is_empty());
        let day = moment(&plan, "at").map(|at| words.short_date(LocalDay::of(&at, view.settings.day_start)));
        found.push(Came {
            id: row.subject,
            from: name.map_or_else(
                || words.say("plan-from-nobody"),
                |name| words.with("plan-from", &[("name", name.into())]),
            ),
            day: day.unwrap_or_default(),
            waits: parts.iter().filter(|(_, part)| text(part, "answer").is_none()).count(),
        });
    }
    Ok(found)
}

/// A quiet line on the first screen until every part is answered.
pub(in crate::screen) fn notice(view: &View<'_>) -> Result<Option<Notice>, Trouble> {
    let words = view.words();
    Ok(all(view)?.into_iter().find(|came| came.waits > 0).map(|came| {
        let text = words.with("plan-waits", &[("from", came.from.into())]);
        Notice {
            key: "plan-waits".to_owned(),
            tone: Tone::Asks,
            spoken: text.clone(),
            text,
            actions: vec![Action::new(
                "open-plan",
                words.say("plan-open"),
                Event::Go { place: Place::Plan { id: came.id } },
            )
            .sign(Sign::Visit)
            .weight(Weight::Quiet)],
        }
    }))
}

/// Plans as rows that open; none where none came.
pub(in crate::screen) fn group(view: &View<'_>) -> Result<Option<ListGroup>, Trouble> {
    let words = view.words();
    let rows: Vec<_> = all(view)?
        .into_iter()
        .map(|came| {
            let waits = match came.waits {
                0 => words.say("plan-all-answered"),
                waits => words.with("plan-parts-wait", &[("count", (waits as i64).into())]),
            };
            let open = Event::Go { place: Place::Plan { id: came.id.clone() } };
            let row = view.text_row(came.from, format!("{} \u{b7} {waits}", came.day));
            row.opens(format!("open-{}", came.id), open)
        })
        .collect();
    Ok((!rows.is_empty()).then(|| ListGroup {
        key: "plans".to_owned(),
        title: words.say("plans-title"),
        rows,
        empty: String::new(),
        add: Vec::new(),
    }))
}
