//! A trace of pressure: what was found in its file, and how it was made.

use super::trace_inputs::TraceLook;

use super::pump_words::section;
use crate::answer::trace::Findings;
use crate::record::{moment, text, Fields, Kind};
use crate::screen::shapes::{Action, Event, FindingsScreen, Place, Screen, Section, Sign, Weight};
use crate::screen::{field_row, View};
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Fields of the set-up, as they stand under what was found.
const SET_UP: [&str; 8] = ["pump", "side", "level", "speed_step", "trace_phase", "connected", "ran_on", "unit"];

pub(in crate::screen) fn show(view: &View<'_>, id: &str) -> Result<Screen, Trouble> {
    let words = view.words();
    let (_, fields) = view.record(id)?;
    let pump = text(&fields, "pump").map(|pump| view.name_of_id(pump)).transpose()?.flatten();
    let subtitle = moment(&fields, "at").map_or_else(String::new, |at| {
        words.with("trace-on", &[("date", words.date(LocalDay::of(&at, view.settings.day_start)).into())])
    });
    let title = pump.unwrap_or_else(|| words.say("kind-trace"));
    let mut frame = view.frame(&Place::Trace { id: id.to_owned() }, title, subtitle)?;
    frame.back = Some(view.back());
    let found = fields.get("findings").and_then(Findings::from_json);
    let mut screen = match &found {
        Some(found) => TraceLook::over(view, id, &fields, found)?.render(),
        // What another version found is kept, and not shown.
        None => no_file(view, if fields.contains_key("findings") { "trace-other-way" } else { "trace-no-file" }),
    };
    let pick = Action::new("pick", words.say("trace-pick"), Event::PickTrace { trace: id.to_owned() }).sign(Sign::In);
    screen.actions = vec![
        pick.weight(if found.is_some() { Weight::Plain } else { Weight::Main }),
        Action::new("details", words.say("pump-details"), Event::Go { place: Place::Entry { id: id.to_owned() } })
            .weight(Weight::Quiet),
    ];
    screen.sections.push(set_up(view, id, &fields)?);
    Ok(Screen::Findings { frame, findings: screen })
}

fn no_file(view: &View<'_>, key: &str) -> FindingsScreen {
    let words = view.words();
    let (headline, caption) = (words.say(key), words.say(&format!("{key}-caption")));
    FindingsScreen {
        spoken: [headline.as_str(), caption.as_str()].join(". "),
        headline,
        figure: String::new(),
        caption,
        dial: None,
        lines: Vec::new(),
        asks: Vec::new(),
        actions: Vec::new(),
        sections: Vec::new(),
    }
}

fn set_up(view: &View<'_>, id: &str, fields: &Fields) -> Result<Section, Trouble> {
    let mut rows = Vec::new();
    for key in SET_UP {
        if let Some(spec) = Kind::Trace.field(key) {
            rows.extend(field_row::rows(view, id, Kind::Trace, spec, fields)?);
        }
    }
    Ok(Section { fields: rows, ..section(view, "trace-set-up") })
}
