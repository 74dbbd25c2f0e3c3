//! The parts of a pump, how long it ran, and its years.

use super::pump_words::{date_at_noon, opens, section};
use crate::answer::pump::age::{age, AgainstLife, Age};
use crate::gather::kit::PumpInputs;
use crate::quantity::say_decimal;
use crate::record::{text, Kind, Sides};
use crate::screen::shapes::Part;
use crate::screen::shapes::{Action, Event, Place, Section, Sign};
use crate::screen::View;
use crate::time::{Instant, Span};
use crate::trouble::Trouble;

/// Parts of a pump that came into use on a day that was said: record, name, day, until.
pub(super) struct PartInUse {
    pub id: String,
    pub name: String,
    pub kind: Option<String>,
    pub since: Option<(chrono::NaiveDate, Instant)>,
    pub until: Option<(chrono::NaiveDate, Instant)>,
}

/// The parts of a pump.
pub(super) fn parts_of(view: &View<'_>, pump: &str) -> Result<Vec<PartInUse>, Trouble> {
    let words = view.words();
    let mut found = Vec::new();
    for row in view.journal.of_kind(Kind::Part)? {
        let (_, fields) = view.record(&row.subject)?;
        if text(&fields, "pump") != Some(pump) {
            continue;
        }
        let name = view.name_of(Kind::Part, &fields);
        let side = text(&fields, "side").filter(|side| *side != "both");
        let name = match side {
            Some(side) => words.with(
                "mark-on-side",
                &[("what", name.into()), ("side", words.say(&format!("choice-side-{side}")).into())],
            ),
            None => name,
        };
        let date = |key: &str| text(&fields, key).and_then(|date| date_at_noon(view, date));
        found.push(PartInUse {
            id: row.subject.clone(),
            name,
            kind: text(&fields, "part").map(str::to_owned),
            since: date("in_use_since"),
            until: date("until"),
        });
    }
    Ok(found)
}

pub(super) fn parts(view: &View<'_>, look: &PumpInputs) -> Result<Section, Trouble> {
    let words = view.words();
    let mut rows = Vec::new();
    for part in parts_of(view, &look.id)? {
        let mut detail = Vec::new();
        if let Some((date, since)) = part.since {
            detail.push(words.with("since-date", &[("date", words.plain_date(date).into())]));
            let until = part.until.map_or(view.now, |(_, until)| until);
            detail.extend(ran_text(view, &look.id, since, until)?);
        }
        if let Some((date, _)) = part.until {
            detail.push(words.with("until-date", &[("date", words.plain_date(date).into())]));
        }
        let place = Place::Entry { id: part.id.clone() };
        rows.push(opens(view, format!("open-{}", part.id), part.name, detail.join(" \u{b7} "), place));
    }
    let add = Event::Add { kind: Kind::Part.name().to_owned(), days_back: 0 };
    let actions = vec![Action::new("add-part", words.say("add-part"), add).sign(Sign::Add)];
    Ok(Section { rows, actions, ..section(view, "parts") })
}

/// How long a pump ran, in words; nothing where it did not.
pub(super) fn ran_text(view: &View<'_>, pump: &str, from: Instant, until: Instant) -> Result<Option<String>, Trouble> {
    let words = view.words();
    let ran = view.journal.ran(pump, from, until)?;
    if ran.sessions.get() == 0 {
        return Ok(None);
    }
    let hours = say_decimal(ran.span.in_minutes() as f64 / 60.0, 0);
    let key = if ran.of_unknown_length.get() > 0 { "ran-at-least" } else { "ran" };
    Ok(Some(words.with(key, &[("hours", hours.into()), ("sessions", ran.sessions.get().into())])))
}

/// Its years, hours and warranty.
pub(super) fn years(view: &View<'_>, look: &PumpInputs) -> Result<Section, Trouble> {
    let words = view.words();
    let mut lines = Vec::new();
    let today = view.today().date();
    if let Some((since, at)) = text(&look.fields, "in_use_since").and_then(|date| date_at_noon(view, date)) {
        let Age { span, against_life } = age(since, today, look.grade, &look.rules);
        let months = (span.in_minutes() as f64 / 60.0 / crate::guidance::MONTH_HOURS).floor() as i64;
        lines.push(
            words.with("pump-age", &[("date", words.plain_date(since).into()), ("months", months.max(0).into())]),
        );
        let (from, to) = look.rules.motor_life;
        let in_months = |span: Span| (span.in_minutes() as f64 / 60.0 / crate::guidance::MONTH_HOURS).round() as i64;
        if let Some(against) = against_life {
            let key = match against {
                AgainstLife::Before => "life-before",
                AgainstLife::Within => "life-within",
                AgainstLife::Beyond => "life-beyond",
            };
            lines.push(words.with(key, &[("from", in_months(from).into()), ("to", in_months(to).into())]));
        }
        lines.extend(ran_text(view, &look.id, at.minus(Span::hours(24)), view.now)?);
    }
    if let Some((until, _)) = text(&look.fields, "warranty_until").and_then(|date| date_at_noon(view, date)) {
        let key = if until >= today { "warranty-until" } else { "warranty-was-until" };
        lines.push(words.with(key, &[("date", words.plain_date(until).into())]));
    }
    Ok(Section { lines, ..section(view, "years") })
}

/// The sign of a side.
pub(super) fn part_of(side: Sides) -> Option<Part> {
    match side {
        Sides::Left => Some(Part::Left),
        Sides::Right => Some(Part::Right),
        Sides::Both => None,
    }
}

/// Names of parts, joined.
pub(super) fn names(parts: &[PartInUse], ids: &[String]) -> String {
    let names: Vec<&str> =
        ids.iter().filter_map(|id| parts.iter().find(|p| p.id == *id)).map(|p| p.name.as_str()).collect();
    names.join(", ")
}
