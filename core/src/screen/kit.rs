//! Pumps, parts and flanges.

use super::shapes::{Action, Event, ListGroup, ListRow, ListScreen, Place, Screen, Sign, Weight};
use super::View;
use crate::quantity::{Entered, Length, LengthUnit, Quantity, Vacuum, VacuumUnit};
use crate::record::{text, whole, Fields, Kind};
use crate::trouble::Trouble;

pub(super) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let frame = view.frame(&Place::Kit, words.say("place-kit"), words.say("kit-subtitle"))?;
    let groups =
        [Kind::Pump, Kind::Part, Kind::Flange].map(|kind| group(view, kind)).into_iter().collect::<Result<_, _>>()?;
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
        let detail = detail(view, kind, &fields)?;
        let spoken = words.with("row-spoken", &[("title", title.clone().into()), ("detail", detail.clone().into())]);
        let open = Event::Go { place: Place::Entry { id: row.subject.clone() } };
        rows.push(ListRow {
            open: Some(
                Action::new(format!("open-{}", row.subject), title.clone(), open)
                    .spoken(spoken.clone())
                    .weight(Weight::Quiet),
            ),
            title,
            detail,
            spoken,
        });
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

fn detail(view: &View<'_>, kind: Kind, fields: &Fields) -> Result<String, Trouble> {
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
            if let Some(levels) = whole(fields, "levels") {
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
        }
        Kind::Flange => {
            choice("side");
            if let Some(size) = fields.get("size").and_then(Entered::<Length>::from_json) {
                if text(fields, "name").is_some() {
                    parts.push(words.entered(&size, LengthUnit::Millimeter));
                }
            }
        }
        Kind::Child => {
            if let Some(weeks) = whole(fields, "gestation_weeks") {
                let days = whole(fields, "gestation_days").unwrap_or(0);
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
