//! Which flange to try, why, and what to look for.

use super::pump_words::{bare, opens, section};
use crate::answer::flange_fit::{
    candidates, grew, measure_again, measured, stands, Candidates, InUse, Measured, Points, Sign as FitSign,
};
use crate::gather::flange_fit::FitLook;
use crate::quantity::{say_decimal, Length, LengthUnit, Quantity};
use crate::record::{Kind, SETTINGS};
use crate::screen::shapes::{Action, Event, FindingsScreen, Place, Screen, Section, Sign, Weight};
use crate::screen::{field_row, View};
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Measurements that are listed.
const LISTED: usize = 12;

pub(in crate::screen) fn show(view: &View<'_>) -> Result<Screen, Trouble> {
    let words = view.words();
    let mut frame = view.frame(&Place::Fit, words.say("fit-title"), words.say("fit-subtitle"))?;
    frame.back = Some(view.back());
    let fit = FitLook::over(view)?;
    // What is said comes under the one thing to do.
    let mut says = fit.lines(view);
    says.push(words.say("fit-no-verdict"));
    let mut sections: Vec<Section> = ["left", "right"].iter().filter_map(|side| fit.side(view, side)).collect();
    sections.push(Section { lines: says, ..bare("says") });
    sections.push(in_stock(view)?);
    sections.push(fit.before(view));
    sections.retain(|s| !(s.lines.is_empty() && s.rows.is_empty() && s.fields.is_empty()));
    let (headline, figure, caption) = fit.head(view);
    let measure = Event::Add { kind: Kind::Fit.name().to_owned(), days_back: 0 };
    Ok(Screen::Findings {
        frame,
        findings: FindingsScreen {
            spoken: [headline.as_str(), figure.as_str(), caption.as_str()].join(" "),
            headline,
            figure,
            caption,
            dial: None,
            lines: Vec::new(),
            asks: Vec::new(),
            actions: vec![Action::new("measure", words.say("fit-measure"), measure)
                .sign(Sign::Add)
                .weight(Weight::Main)],
            sections,
        },
    })
}

/// Said where it is time to measure again; empty where it is not.
pub(super) fn due(view: &View<'_>) -> Result<String, Trouble> {
    let fit = FitLook::over(view)?;
    let due = fit.measured_last().is_some_and(|last| measure_again(last, &fit.rules) <= view.now);
    Ok(if due { view.words().say("fit-due") } else { String::new() })
}

impl FitLook {
    fn head(&self, view: &View<'_>) -> (String, String, String) {
        let words = view.words();
        let (left, right) = (self.candidates("left"), self.candidates("right"));
        if left.is_none() && right.is_none() {
            return (words.say("fit-not-measured"), String::new(), words.say("fit-not-measured-caption"));
        }
        let alike = left.is_some() && left.as_ref().map(|c| (c.from, c.to)) == right.as_ref().map(|c| (c.from, c.to));
        let figure = match (&left, &right) {
            (Some(left), Some(_)) if alike => render(view, left),
            _ => [("left", &left), ("right", &right)]
                .into_iter()
                .filter_map(|(side, found)| {
                    let found = found.as_ref()?;
                    let side = words.say(&format!("side-{side}"));
                    Some(words.with("fit-side-figure", &[("side", side.into()), ("sizes", render(view, found).into())]))
                })
                .collect::<Vec<_>>()
                .join("\n"),
        };
        let caption = words.with(
            "fit-caption",
            &[("least", length(self.rules.gap_least).into()), ("most", length(self.rules.gap_most).into())],
        );
        (words.say("fit-headline"), figure, caption)
    }

    fn lines(&self, view: &View<'_>) -> Vec<String> {
        let words = view.words();
        let mut lines = Vec::new();
        if let (Some(left), Some(right)) = (self.candidates("left"), self.candidates("right")) {
            if left.diameter != right.diameter {
                lines.push(words.say("fit-sides-differ"));
            }
        }
        let (low, high) = self.rules.comes_with;
        lines.push(words.with("fit-comes-with", &[("low", length(low).into()), ("high", length(high).into())]));
        if let Some(last) = self.measured_last() {
            let again = measure_again(last, &self.rules);
            let date = LocalDay::of(&crate::time::Moment::new(again, view.zone), view.settings.day_start);
            let key = if again <= view.now { "fit-measure-again-now" } else { "fit-measure-again" };
            lines.push(words.with(key, &[("date", words.plain_date(date.date()).into())]));
        }
        lines
    }

    fn side(&self, view: &View<'_>, side: &str) -> Option<Section> {
        let words = view.words();
        let measured = self.latest(side)?;
        let found = candidates(&measured.nipple, &self.stock, &self.rules)?;
        let mut lines = vec![words.with(
            "fit-measured",
            &[
                ("diameter", mm(view, found.diameter).into()),
                ("from", length(found.from).into()),
                ("to", mm(view, found.to).into()),
            ],
        )];
        match (found.in_stock.as_slice(), found.nearest) {
            ([], Some(nearest)) => {
                lines.push(words.with("fit-none-in-stock", &[("nearest", mm(view, nearest).into())]));
            }
            ([], None) => lines.push(words.say("fit-no-stock")),
            (sizes, _) => {
                let sizes: Vec<String> = sizes.iter().map(|size| length(*size)).collect();
                lines.push(words.with("fit-in-stock", &[("sizes", sizes.join(", ").into())]));
            }
        }
        if let Some(by) = grew(&measured.nipple).filter(|by| by.canonical().abs() > 0.0) {
            let key = if by.canonical() > 0.0 { "fit-grew" } else { "fit-shrank" };
            lines.push(words.with(key, &[("by", mm(view, Length::from_canonical(by.canonical().abs())).into())]));
        }
        for (_, size) in self.in_use.iter().filter(|(of, _)| of == side || of == "both") {
            let key = match stands(*size, &found) {
                InUse::Within => "fit-in-use-within",
                InUse::Smaller => "fit-in-use-smaller",
                InUse::Larger => "fit-in-use-larger",
            };
            lines.push(words.with(key, &[("size", mm(view, *size).into())]));
        }
        let rows = signs(view, &measured);
        Some(Section { lines, rows, ..section(view, &format!("fit-{side}")) })
    }

    /// Earlier measurements.
    fn before(&self, view: &View<'_>) -> Section {
        let words = view.words();
        let rows = self
            .measured
            .iter()
            .take(LISTED)
            .map(|(id, fields)| {
                let at = crate::record::moment(fields, "at");
                let title = at.map(|at| words.plain_date(LocalDay::of(&at, view.settings.day_start).date()));
                let sides: Vec<String> = ["left", "right"]
                    .iter()
                    .filter_map(|side| {
                        let nipple = measured(fields, side)?.nipple;
                        let diameter = nipple.before.or(nipple.after)?;
                        Some(words.with(
                            "side-value",
                            &[
                                ("side", words.say(&format!("side-{side}")).into()),
                                ("value", mm(view, diameter).into()),
                            ],
                        ))
                    })
                    .collect();
                let place = Place::Entry { id: id.clone() };
                opens(view, format!("open-{id}"), title.unwrap_or_default(), sides.join(" \u{b7} "), place)
            })
            .collect();
        Section { rows, ..section(view, "measured") }
    }
}

/// What a sign of how a flange fits is called.
pub(in crate::screen) fn sign_name(view: &View<'_>, sign: &FitSign) -> String {
    let field = FitSign::ALL.iter().find(|(s, _)| s == sign).map_or("", |(_, field)| *field);
    view.words().say(&format!("field-{}", field.replace('_', "-")))
}

/// What each sign that was seen asks to try; that none was seen is said too.
fn signs(view: &View<'_>, measured: &Measured) -> Vec<crate::screen::shapes::ListRow> {
    let words = view.words();
    let name = |sign: &FitSign| sign_name(view, sign);
    let mut rows: Vec<_> = measured
        .signs
        .iter()
        .map(|sign| {
            let key = match sign.points() {
                Points::Smaller => "fit-try-smaller",
                Points::Larger => "fit-try-larger",
                Points::Either => "fit-try-other",
            };
            view.text_row(name(sign), words.say(key))
        })
        .collect();
    if rows.is_empty() && !measured.not_seen.is_empty() {
        let names: Vec<String> = measured.not_seen.iter().map(name).collect();
        rows.push(view.text_row(words.say("fit-not-seen"), names.join(", ")));
    }
    if rows.is_empty() {
        rows.push(view.text_row(words.say("fit-signs-open"), words.say("fit-signs-open-detail")));
    }
    rows
}

/// The sizes that the consultant has, typed once.
fn in_stock(view: &View<'_>) -> Result<Section, Trouble> {
    let settings = view.journal.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
    let fields = match Kind::Settings.field("flange_sizes") {
        Some(spec) => field_row::rows(view, SETTINGS, Kind::Settings, spec, &settings)?,
        None => Vec::new(),
    };
    Ok(Section { fields, ..section(view, "stock") })
}

fn length(length: Length) -> String {
    say_decimal(length.canonical(), 1)
}

fn mm(view: &View<'_>, size: Length) -> String {
    view.words().with_unit(length(size), LengthUnit::Millimeter)
}

/// The sizes to try in short.
fn render(view: &View<'_>, found: &Candidates) -> String {
    let words = view.words();
    let unit = words.unit(LengthUnit::Millimeter);
    match found.in_stock.as_slice() {
        [] => words.with(
            "range",
            &[("low", length(found.from).into()), ("high", length(found.to).into()), ("unit", unit.into())],
        ),
        sizes => {
            let sizes: Vec<String> = sizes.iter().map(|size| length(*size)).collect();
            words.with_unit(sizes.join(", "), LengthUnit::Millimeter)
        }
    }
}
