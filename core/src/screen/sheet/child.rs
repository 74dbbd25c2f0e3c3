//! The children: age, corrected too where born preterm, and weights.

use super::section::{of_rows, row};
use super::span::Stretch;
use crate::answer::age::Age;
use crate::guidance::SupplyRules;
use crate::quantity::{Entered, Mass};
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
    for child in &children {
        let (kind, fields) = view.record(&child.subject)?;
        let notes = [born(view, &fields, rules), weights(view, span, &child.subject, only)?];
        let notes: Vec<String> = notes.into_iter().filter(|note| !note.is_empty()).collect();
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

/// Its latest weights within the span. A weight that names no child is the only child's.
fn weights(view: &View<'_>, span: Stretch, child: &str, only: bool) -> Result<String, Trouble> {
    let words = view.words();
    let mut told = Vec::new();
    let since = span.from.begins(view.zone, view.settings.day_start);
    for found in view.journal.of_kind_since(Kind::Weight, since)?.into_iter().rev() {
        let (_, fields) = view.record(&found.subject)?;
        let of = text(&fields, "child");
        let at = moment(&fields, "at").filter(|at| at.instant() <= view.now);
        let weight = fields.get("weight").and_then(Entered::<Mass>::from_json);
        let (Some(at), Some(weight)) = (at, weight) else { continue };
        if of == Some(child) || (of.is_none() && only) {
            let day = LocalDay::of(&at, view.settings.day_start);
            let weight = words.entered(&weight, view.settings.mass);
            let on = words.short_date(day);
            told.push(words.with("sheet-weight-on", &[("weight", weight.into()), ("date", on.into())]));
        }
    }
    told.truncate(WEIGHTS);
    told.reverse();
    Ok(told.join(", "))
}
