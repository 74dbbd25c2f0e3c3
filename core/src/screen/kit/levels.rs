//! What a pump's levels pull, drawn and said.

use super::plot::{empty, Height};
use super::pump_parts::part_of;
use super::{pump_parts, pump_words};
use crate::answer::pump::levels::{LevelCurve, LevelPull};
use crate::gather::kit::{CheckInputs, PumpInputs};
use crate::quantity::Level;
use crate::record::Sides;
use crate::screen::shapes::{PlotCourse, PlotPicture, PlotPoint, RibbonPoint, Section, Tick};
use crate::screen::View;
use crate::time::LocalDay;
use crate::trouble::Trouble;

/// Labels along the levels.
const MOST_LABELS: u32 = 12;

/// The latest curve of a pump with more than one level.
pub(super) fn section(view: &View<'_>, look: &PumpInputs) -> Result<Option<Section>, Trouble> {
    let words = view.words();
    let latest = look.checks.iter().rev().find_map(|looked| Some((looked, curve(look, looked)?)));
    let Some((looked, curve)) = latest else { return Ok(None) };
    let mut lines = vec![words.with(
        "levels-from-check",
        &[(
            "date",
            looked
                .check
                .at
                .as_ref()
                .map(|at| words.plain_date(LocalDay::of(at, view.settings.day_start).date()))
                .unwrap_or_default()
                .into(),
        )],
    )];
    let levels = all_levels(&curve, look.levels);
    let unknown: Vec<&Option<LevelPull>> = levels.iter().filter(|level| level.is_none()).collect();
    if !unknown.is_empty() {
        lines.push(words.say("levels-outside"));
    }
    let new_since: Vec<String> = pump_parts::parts_of(view, &look.id)?
        .into_iter()
        .filter(|part| part.since.is_some_and(|(_, since)| since > curve.from))
        .map(|part| part.name)
        .collect();
    if !new_since.is_empty() {
        lines.push(words.with("levels-new-part", &[("names", new_since.join(", ").into())]));
    }
    let in_figures: Vec<String> = levels
        .iter()
        .flatten()
        .map(|pull| {
            words.with(
                if pull.was_read() { "level-in-figures" } else { "level-in-figures-between" },
                &[
                    ("level", pull.level.get().into()),
                    ("value", words.vacuum(pull.vacuum.value).into()),
                    ("low", words.low().vacuum_figure(pull.vacuum.low).into()),
                    ("high", words.high().vacuum_figure(pull.vacuum.high).into()),
                ],
            )
        })
        .collect();
    let rows = vec![view.text_row(words.say("levels-in-figures"), in_figures.join("\n"))];
    Ok(Some(Section { lines, rows, plot: Some(picture(view, &curve, &levels)), ..pump_words::section(view, "levels") }))
}

fn curve(look: &PumpInputs, looked: &CheckInputs) -> Option<LevelCurve> {
    let curve = LevelCurve::of(&looked.check, looked.gauge.as_ref()?, look.levels, Sides::Both)?;
    (curve.read().len() > 1 && look.doubts(looked).is_empty()).then_some(curve)
}

/// Every level from the first to the last, as far as it is known.
fn all_levels(curve: &LevelCurve, last: Option<Level>) -> Vec<Option<LevelPull>> {
    let read_to = curve.read().last().map_or(0, |read| read.level.get());
    let last = last.map_or(read_to, |last| last.get().max(read_to));
    let first = curve.read().first().map_or(1, |read| read.level.get().min(1));
    (first..=last).map(|level| curve.at(Level::new(level))).collect()
}

fn picture(view: &View<'_>, curve: &LevelCurve, levels: &[Option<LevelPull>]) -> PlotPicture {
    let words = view.words();
    let known: Vec<&LevelPull> = levels.iter().flatten().collect();
    let height = Height::over(view, known.iter().map(|pull| pull.vacuum.high), true);
    let count = levels.len().max(1) as f32;
    let across = |place: usize| (place as f32 + 0.5) / count;
    let first = curve.read().first().map_or(1, |read| read.level.get().min(1));
    let placed: Vec<(f32, &LevelPull)> =
        levels.iter().enumerate().filter_map(|(place, pull)| Some((across(place), pull.as_ref()?))).collect();
    let step = (levels.len() as u32).div_ceil(MOST_LABELS).max(1);
    PlotPicture {
        courses: vec![PlotCourse {
            points: placed
                .iter()
                .map(|(at, pull)| RibbonPoint {
                    at: *at,
                    // Each level carries its own range; a ribbon would saw between them.
                    low: height.at(pull.vacuum.value),
                    middle: height.at(pull.vacuum.value),
                    high: height.at(pull.vacuum.value),
                })
                .collect(),
            dashed: false,
        }],
        points: placed
            .iter()
            .map(|(at, pull)| PlotPoint {
                at: *at,
                low: height.at(pull.vacuum.low),
                middle: height.at(pull.vacuum.value),
                high: height.at(pull.vacuum.high),
                part: part_of(Sides::Both),
                open: !pull.was_read(),
            })
            .collect(),
        ticks: (0..levels.len() as u32)
            .filter(|place| place % step == 0)
            .map(|place| Tick { at: across(place as usize), label: (first + place).to_string() })
            .collect(),
        scale: height.labels(view),
        legend: words.say("levels-legend"),
        spoken: match (known.first(), known.last()) {
            (Some(low), Some(high)) => words.with(
                "levels-spoken",
                &[
                    ("first", low.level.get().into()),
                    ("low", words.vacuum(low.vacuum.value).into()),
                    ("last", high.level.get().into()),
                    ("high", words.vacuum(high.vacuum.value).into()),
                ],
            ),
            _ => String::new(),
        },
        ..empty()
    }
}
