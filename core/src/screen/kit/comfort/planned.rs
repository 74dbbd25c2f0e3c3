//! A setting that the consultant's plan says to stay below: said when it is passed, and how
//! sessions stood to it.

use crate::gather::planned_ceiling::{exceeded_now, kept_to, planned_ceilings, PlannedCeiling};
use crate::record::{moment, text, Fields, Kind, Session};
use crate::screen::shapes::{Action, Event, Notice, Place, Tone, Weight};
use crate::screen::View;
use crate::time::{LocalDay, Moment};
use crate::trouble::Trouble;

/// While a session runs above it.
pub(in crate::screen) fn notice(view: &View<'_>, session: &Session) -> Result<Option<Notice>, Trouble> {
    let Some(above) = exceeded_now(view, session)? else { return Ok(None) };
    let words = view.words();
    let text = words.with("plan-ceiling-passed", &[("setting", setting(view, &above).into())]);
    let open = Event::Go { place: Place::Plan { id: above.plan } };
    let actions = vec![Action::new("plan-ceiling-open", words.say("plan-ceiling-open"), open).weight(Weight::Quiet)];
    Ok(Some(Notice { key: "plan-ceiling".to_owned(), tone: Tone::Quiet, spoken: text.clone(), text, actions }))
}

/// As the plan says it.
fn setting(view: &View<'_>, ceiling: &PlannedCeiling) -> String {
    let words = view.words();
    match (ceiling.level, ceiling.vacuum) {
        (Some(level), _) => words.with("comfort-level", &[("level", level.get().into())]),
        (None, Some(vacuum)) => words.vacuum(vacuum),
        (None, None) => String::new(),
    }
}

/// Of each ceiling in force by its part, how sessions since stood to it.
pub(in crate::screen) fn kept(view: &View<'_>, part: &str) -> Result<Option<String>, Trouble> {
    let ceiling = planned_ceilings(view)?.into_iter().find(|one| one.part == part);
    ceiling.map(|ceiling| line(view, &ceiling)).transpose()
}

/// Of a part that asks for a search, how often that was done since it was accepted.
pub(in crate::screen) fn searched(view: &View<'_>, part: &Fields) -> Result<Option<String>, Trouble> {
    if text(part, "plan_part") != Some("search") {
        return Ok(None);
    }
    let Some(since) = moment(part, "answered") else { return Ok(None) };
    let searches = view.journal.fields_of_kind_since(Kind::Search, since.instant())?.len();
    let on = LocalDay::of(&since, view.settings.day_start);
    let needs = [("date", view.words().short_date(on).into()), ("searches", searches.into())];
    Ok(Some(view.words().with("plan-search-done", &needs)))
}

/// The same of all of them, for the sheet: what is not to be passed, and how it went.
pub(super) fn in_short(view: &View<'_>) -> Result<Vec<(String, String)>, Trouble> {
    let in_force = planned_ceilings(view)?;
    in_force.iter().map(|one| Ok((setting(view, one), line(view, one)?))).collect()
}

fn line(view: &View<'_>, ceiling: &PlannedCeiling) -> Result<String, Trouble> {
    let words = view.words();
    let stood = kept_to(view, ceiling)?;
    let on = LocalDay::of(&Moment::new(ceiling.since, view.zone), view.settings.day_start);
    let needs = [
        ("date", words.short_date(on).into()),
        ("within", stood.within.get().into()),
        ("above", stood.above.get().into()),
        ("unknown", stood.unknown.get().into()),
    ];
    let told = stood.within.get() + stood.above.get();
    Ok(words.with(if told > 0 { "plan-ceiling-kept" } else { "plan-ceiling-unknown" }, &needs))
}
