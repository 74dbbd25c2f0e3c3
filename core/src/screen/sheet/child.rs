//! The children: age, corrected too where born preterm, and weights.

use super::section::{of_rows, row};
use super::span::Stretch;
use crate::answer::age::Age;
use crate::guidance::SupplyRules;
use crate::quantity::{Entered, Mass, MassUnit, Quantity};
use crate::record::{date, moment, text, whole_number, Fields, Kind};
use crate::screen::shapes::SheetSection;
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Weights told of each child, the latest.
const WEIGHTS: usize = 3;

pub(super) fn render(view: &View<'_>, span: Stretch, rules: &SupplyRules) -> Result<Option<SheetSection>, Trouble> {
    let children = view.journal.of_kind(Kind::Child)?;
    let only = children.len() == 1;
    let mut rows = Vec::new();
    let mut read = Vec::new();
    for child in &children {
        let (kind, fields) = view.record(&child.subject)?;
        let weighed = weighed(view, span, &child.subject, only)?;
        read.push((kind, fields, weighed));
    }
    let young = read.iter().any(|(_, fields, _)| !is_older(view, fields));
    for (kind, fields, weighed) in read {
        // Beside a younger one, an older child matters here where it was weighed in these days.
        if young && weighed.is_empty() && is_older(view, &fields) {
            continue;
        }
        // Two lines: how it began, and how it grows.
        let line =
            |parts: [String; 2]| parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join("; ");
        let began = line([birth(view, &fields), born(view, &fields, rules)]);
        let grows = line([weights(view, &weighed), gain(view, &weighed)]);
        let notes: Vec<String> = [began, grows].into_iter().filter(|note| !note.is_empty()).collect();
        rows.push(row(view.name_of(kind, &fields), age(view, &fields).unwrap_or_default(), notes.join("\n")));
    }
    Ok(of_rows(view, "child", rows))
}

fn age(view: &View<'_>, fields: &Fields) -> Option<String> {
    Age::on(view.today().date(), date(fields, "birth")?).map(|age| line_of(view, age))
}

fn line_of(view: &View<'_>, age: Age) -> String {
    let words = view.words();
    match age {
        Age::Weeks { weeks, days } => words.with("age-weeks", &[("weeks", weeks.into()), ("days", days.into())]),
        Age::Months { months } => words.with("age-months", &[("months", months.into())]),
        Age::Years { years } => words.with("age-years", &[("years", years.into())]),
        Age::NotYetDue { days } => words.with("age-not-yet-due", &[("days", days.into())]),
    }
}

/// At how many weeks it was born, and how old that makes it counted from its due date.
fn born(view: &View<'_>, fields: &Fields, rules: &SupplyRules) -> String {
    let words = view.words();
    let Some(weeks) = whole_number(fields, "gestation_weeks") else { return String::new() };
    let days = whole_number(fields, "gestation_days").unwrap_or(0);
    let born = words.with("sheet-born-at", &[("weeks", weeks.into()), ("days", days.into())]);
    let corrected = date(fields, "birth")
        .filter(|_| weeks < rules.preterm_below_weeks.get())
        .and_then(|birth| Age::corrected_on(view.today().date(), birth, weeks, days));
    match corrected {
        Some(age) => words.with("sheet-corrected", &[("age", line_of(view, age).into()), ("born", born.into())]),
        None => born,
    }
}

/// Whether it is spoken of in years: milk is then seldom expressed for it.
fn is_older(view: &View<'_>, fields: &Fields) -> bool {
    let age = date(fields, "birth").and_then(|birth| Age::on(view.today().date(), birth));
    matches!(age, Some(Age::Years { .. }))
}

/// The day it was born, and what it weighed then.
fn birth(view: &View<'_>, fields: &Fields) -> String {
    let words = view.words();
    let on = date(fields, "birth").map(|birth| words.plain_date(birth));
    let weight = fields.get("birth_weight").and_then(Entered::<Mass>::from_json);
    let weight = weight.map(|weight| words.entered(&weight, view.settings.mass));
    match (on, weight) {
        (Some(date), Some(weight)) => {
            words.with("sheet-born-on-weighing", &[("date", date.into()), ("weight", weight.into())])
        }
        (Some(date), None) => words.with("sheet-born-on", &[("date", date.into())]),
        (None, Some(weight)) => words.with("sheet-birth-weight", &[("weight", weight.into())]),
        (None, None) => String::new(),
    }
}

/// A weight with its day.
struct Weighed {
    on: LocalDay,
    weight: Entered<Mass>,
}

/// Its weights within the span, by time. A weight that names no child is the only child's.
fn weighed(view: &View<'_>, span: Stretch, child: &str, only: bool) -> Result<Vec<Weighed>, Trouble> {
    let mut found = Vec::new();
    let since = span.from.begins(view.zone, view.settings.day_start);
    for row in view.journal.of_kind_since(Kind::Weight, since)? {
        let (_, fields) = view.record(&row.subject)?;
        let of = text(&fields, "child");
        let at = moment(&fields, "at").filter(|at| at.instant() <= view.now);
        let weight = fields.get("weight").and_then(Entered::<Mass>::from_json);
        let (Some(at), Some(weight)) = (at, weight) else { continue };
        if of == Some(child) || (of.is_none() && only) {
            found.push(Weighed { on: LocalDay::of(&at, view.settings.day_start), weight });
        }
    }
    Ok(found)
}

/// The latest of them.
fn weights(view: &View<'_>, weighed: &[Weighed]) -> String {
    let words = view.words();
    let latest = weighed.iter().skip(weighed.len().saturating_sub(WEIGHTS));
    let said = latest.map(|one| {
        let weight = words.entered(&one.weight, view.settings.mass);
        words.with("sheet-weight-on", &[("weight", weight.into()), ("date", words.short_date(one.on).into())])
    });
    said.collect::<Vec<_>>().join(", ")
}

/// How much more it weighs each day, from the first of these weights to the last.
fn gain(view: &View<'_>, weighed: &[Weighed]) -> String {
    let words = view.words();
    let (Some(first), Some(last)) = (weighed.first(), weighed.last()) else { return String::new() };
    let days = last.on.days_since(first.on);
    if days <= 0 {
        return String::new();
    }
    let gained = last.weight.quantity().canonical() - first.weight.quantity().canonical();
    let figure = words.signed_figure(gained / days as f64, 0);
    words.with("sheet-gain", &[("gain", words.with_unit(figure, MassUnit::Gram).into()), ("days", days.into())])
}
