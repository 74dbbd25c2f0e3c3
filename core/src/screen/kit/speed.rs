//! A pump's speed: what each step of its dial is, and whether it is set apart from vacuum.

use super::count::{range, rate};
use super::pump_words::{opens, section};
use crate::gather::kit::PumpInputs;
use crate::gather::speed_steps::speed_steps;
use crate::record::{text, whole_number};
use crate::screen::shapes::{Action, Event, Place, Section, Sign, Weight};
use crate::screen::View;
use crate::trouble::Trouble;

/// What is known of it; none where the pump has no motor.
pub(super) fn section_of(view: &View<'_>, look: &PumpInputs) -> Result<Option<Section>, Trouble> {
    if text(&look.fields, "grade") == Some("hand") {
        return Ok(None);
    }
    let words = view.words();
    let mut lines = Vec::new();
    if let Some(how) = text(&look.fields, "settings_apart") {
        let how = words.say(&format!("choice-settings-apart-{how}"));
        lines.push(words.with("speed-apart", &[("how", how.into())]));
    }
    if let Some(count) = whole_number(&look.fields, "speed_steps") {
        lines.push(words.with("speed-dial", &[("count", count.into())]));
    }
    let rows = speed_steps(view, &look.id)?
        .into_iter()
        .map(|step| {
            let title = words.with("speed-step", &[("step", step.step.get().into())]);
            let need = [("rate", rate(view, &step.speed).into()), ("range", range(view, &step.speed).into())];
            let detail = words.with(if step.by_trace { "speed-by-trace" } else { "speed-counted" }, &need);
            let place = match step.by_trace {
                true => Place::Trace { id: step.id.clone() },
                false => Place::SpeedCount { id: step.id.clone() },
            };
            opens(view, format!("open-{}", step.id), title, detail, place)
        })
        .collect();
    let count = Event::BeginCount { pump: look.id.clone() };
    let actions = vec![Action::new("count", words.say("speed-count"), count).sign(Sign::Faster).weight(Weight::Quiet)];
    Ok(Some(Section { lines, rows, actions, ..section(view, "speed") }))
}
