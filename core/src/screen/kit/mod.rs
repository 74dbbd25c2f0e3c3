//! Kit: pumps, parts, flanges, gauges, and what is found out about them.
//!
//! This file lists what there is. What a pump's checks say is gathered in [`crate::gather::kit`];
//! [`pump`] shows it with [`pump_text`], [`pump_parts`], [`wear`] and [`levels`], in [`pump_words`]; [`check`]
//! leads through a check with a gauge, [`flange_fit`] through flanges; [`trace`] shows what a trace says
//! ([`trace_text`]) and how it looks ([`trace_pictures`]); [`comfort`] what is comfortable; [`dial`] and [`plot`] draw.

mod check;
mod comfort;
mod dial;
mod flange_fit;
mod level_words;
mod levels;
mod plot;
mod pump;
mod pump_parts;
mod pump_text;
mod pump_words;
mod trace;
mod trace_inputs;
mod trace_pictures;
mod trace_text;
mod wear;

pub(super) use check::show as show_check;
pub(super) use comfort::{
    above_plan_notice, begin_trial, ceiling_kept, in_short, rows_while_running, search_offer, searched,
    show as show_comfort, show_letdown, show_trial, trial_notice,
};
pub(super) use flange_fit::{show as show_fit, sign_name};
pub(super) use level_words::level_text;
pub(super) use pump::{checked, limits_rules, show as show_pump};
pub(super) use trace::show as show_trace;

use super::shapes::{Action, Event, ListGroup, ListScreen, Place, Screen, Sign};
use super::View;
use crate::quantity::{Entered, Length, LengthUnit, Quantity, Vacuum, VacuumUnit};
use crate::record::{text, whole_number, Fields, Gauge, Kind};
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Kit, words.say("place-kit"), words.say("kit-subtitle"))?;
    frame.notices.extend(comfort::flange_notice(view)?);
    let mut flanges = group(view, Kind::Flange)?;
    let open = Action::new("fit", words.say("fit-open"), Event::Go { place: Place::Fit }).sign(Sign::Kit);
    flanges.add.insert(0, open.detail(flange_fit::due(view)?));
    let groups = vec![
        group(view, Kind::Pump)?,
        flanges,
        group(view, Kind::Part)?,
        group(view, Kind::Gauge)?,
        comfort::group(view)?,
    ];
    Ok(Screen::List { frame, list: ListScreen { intro: words.say("kit-intro"), groups } })
}

/// Everything of a kind, with the way to add another.
pub(super) fn group(view: &View<'_>, kind: Kind) -> Result<ListGroup, Trouble> {
    let words = view.words();
    let name = kind.name();
    let mut rows = Vec::new();
    for row in view.journal.of_kind(kind)? {
        let (_, fields) = view.record(&row.subject)?;
        let title = view.name_of(kind, &fields);
        let mut detail = detail(view, kind, &fields)?;
        if kind == Kind::Pump {
            let said = pump::in_short(view, &row.subject)?;
            detail = [detail, said].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" \u{b7} ");
        }
        let id = row.subject.clone();
        let place = if kind == Kind::Pump { Place::Pump { id } } else { Place::Entry { id } };
        rows.push(pump_words::opens(view, format!("open-{}", row.subject), title, detail, place));
    }
    Ok(ListGroup {
        key: name.to_owned(),
        title: words.say(&format!("kinds-{name}")),
        empty: if rows.is_empty() { words.say(&format!("none-{name}")) } else { String::new() },
        rows,
        add: vec![Action::new(
            format!("add-{name}"),
            words.say(&format!("add-{name}")),
            Event::Add { kind: name.to_owned(), days_back: 0 },
        )
        .sign(Sign::Add)],
    })
}

pub(super) fn detail(view: &View<'_>, kind: Kind, fields: &Fields) -> Result<String, Trouble> {
    let words = view.words();
    let mut parts = Vec::new();
    let mut choice = |key: &str| {
        if let Some(value) = text(fields, key) {
            parts.push(words.say(&format!("choice-{key}-{value}")));
        }
    };
    match kind {
        Kind::Pump => {
            choice("grade");
            choice("power");
            if let Some(levels) = whole_number(fields, "levels") {
                parts.push(words.with("levels", &[("count", levels.into())]));
            }
            let vacuum = |key: &str| fields.get(key).and_then(Entered::<Vacuum>::from_json);
            if let (Some(low), Some(high)) = (vacuum("maximum_vacuum_low"), vacuum("maximum_vacuum_high")) {
                parts.push(range(view, &low, &high));
            }
        }
        Kind::Part => {
            if let Some(pump) = text(fields, "pump") {
                parts.extend(view.name_of_id(pump)?);
            }
            parts.extend(text(fields, "side").map(|side| words.say(&format!("choice-side-{side}"))));
        }
        Kind::Flange => {
            choice("side");
            if let Some(size) = fields.get("size").and_then(Entered::<Length>::from_json) {
                if text(fields, "name").is_some() {
                    parts.push(words.entered(&size, LengthUnit::Millimeter));
                }
            }
        }
        Kind::Gauge => {
            if let Some(span) = fields.get("span").and_then(Entered::<Vacuum>::from_json) {
                let unit = Gauge::read(fields).reads_in.unwrap_or(view.settings.vacuum);
                parts.push(words.with("gauge-span", &[("span", words.entered(&span, unit).into())]));
            }
            if let Some(class) = text(fields, "accuracy_class") {
                parts.push(words.with("gauge-class", &[("class", class.into())]));
            }
        }
        Kind::Child => {
            if let Some(weeks) = whole_number(fields, "gestation_weeks") {
                let days = whole_number(fields, "gestation_days").unwrap_or(0);
                parts.push(words.with("born-at", &[("weeks", weeks.into()), ("days", days.into())]));
            }
        }
        _ => {}
    }
    let date_key = if kind == Kind::Child { "birth" } else { "in_use_since" };
    if let Some(date) = text(fields, date_key).and_then(|d| chrono::NaiveDate::parse_from_str(d, "%Y-%m-%d").ok()) {
        let key = if kind == Kind::Child { "born-on" } else { "since-date" };
        parts.push(words.with(key, &[("date", words.plain_date(date).into())]));
    }
    Ok(parts.join(" \u{b7} "))
}

fn range(view: &View<'_>, low: &Entered<Vacuum>, high: &Entered<Vacuum>) -> String {
    let words = view.words();
    let unit: VacuumUnit = view.settings.vacuum;
    let say = |e: &Entered<Vacuum>| {
        crate::quantity::say_decimal(e.quantity().in_unit(unit), crate::quantity::Unit::places(unit))
    };
    words.with("range", &[("low", say(low).into()), ("high", say(high).into()), ("unit", words.unit(unit).into())])
}
