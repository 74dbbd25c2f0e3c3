//! A report as a picture. What was suppressed is not drawn; what it is of stands on top.

use std::collections::BTreeMap;

use plotters::prelude::*;

use super::listed::Shape;
use super::small_cells::FAMILIES;
use super::{Published, Report};
use crate::table::Cell;
use crate::trouble::Stop;

const SIZE: (u32, u32) = (960, 600);
/// Told apart in print and by who sees few colours (Okabe and Ito 2008).
const COLOURS: [RGBColor; 7] = [
    RGBColor(0, 114, 178),
    RGBColor(213, 94, 0),
    RGBColor(0, 158, 115),
    RGBColor(204, 121, 167),
    RGBColor(86, 180, 233),
    RGBColor(230, 159, 0),
    RGBColor(0, 0, 0),
];

/// Days and weeks that are told are no further apart: refills are told of every second week.
const STEP: i64 = 2;

/// Where a value stands, how high, and the ends of its spread.
#[derive(Debug, Clone, Copy)]
struct Mark {
    at: i64,
    value: i64,
    spread: Option<(i64, i64)>,
}

/// Draws a report as SVG.
///
/// # Errors
/// Where it can't be drawn.
pub fn draw(report: &Report, published: &Published) -> Result<String, Stop> {
    let mut svg = String::new();
    let failed = |_| Stop::refused(format!("{} can't be drawn", report.name));
    drawn(report, published, &mut svg).map_err(failed)?;
    Ok(svg)
}

type Failed = Box<dyn std::error::Error>;

fn drawn(report: &Report, published: &Published, svg: &mut String) -> Result<(), Failed> {
    let (shape, along) = report.picture;
    let shown = figure_of(published);
    let word = |cell: Option<&Cell>| match cell {
        Some(Cell::Whole(whole)) => whole.to_string(),
        Some(Cell::Text(text)) => text.clone(),
        Some(Cell::Null) | None => "unknown".to_owned(),
    };
    let mut places: Vec<String> = Vec::new();
    let mut series: BTreeMap<String, Vec<Mark>> = BTreeMap::new();
    for row in &published.rows {
        let figure = |name: &str| published.cell(row, name).and_then(Cell::whole);
        let Some(value) = figure(shown) else { continue };
        let at = match (shape, published.cell(row, along)) {
            (Shape::Lines, Some(Cell::Whole(at))) => *at,
            (_, cell) => {
                let place = word(cell);
                let known = places.iter().position(|other| *other == place);
                known.unwrap_or_else(|| {
                    places.push(place);
                    places.len() - 1
                }) as i64
            }
        };
        let spread = figure("p10").zip(figure("p90"));
        let others = report.cells.iter().filter(|column| **column != along);
        let name = others.map(|column| word(published.cell(row, column))).collect::<Vec<_>>().join(", ");
        series.entry(name).or_default().push(Mark { at, value, spread });
    }
    let marks = || series.values().flatten();
    let top = marks().map(|mark| mark.spread.map_or(mark.value, |(_, high)| high)).max().unwrap_or(1).max(1);
    let bottom = marks().map(|mark| mark.spread.map_or(mark.value, |(low, _)| low)).min().unwrap_or(0).min(0);
    let (first, last) = (marks().map(|m| m.at).min().unwrap_or(0), marks().map(|m| m.at).max().unwrap_or(1));
    let root = SVGBackend::with_string(svg, SIZE).into_drawing_area();
    root.fill(&WHITE)?;
    let mut chart = ChartBuilder::on(&root)
        .caption(report.question, ("sans-serif", 22))
        .margin(16)
        .x_label_area_size(56)
        .y_label_area_size(72)
        .build_cartesian_2d(first as f64 - 0.5..last as f64 + 0.5, bottom as f64..top as f64 * 1.05)?;
    let name_of = |at: &f64| match shape {
        Shape::Lines => format!("{at:.0}"),
        Shape::Bars => {
            let whole = (at - at.round()).abs() < 0.01;
            let place = usize::try_from(at.round() as i64).ok().and_then(|at| places.get(at));
            place.filter(|_| whole).cloned().unwrap_or_default()
        }
    };
    chart
        .configure_mesh()
        .disable_x_mesh()
        .x_labels(if shape == Shape::Bars { 2 * places.len().max(1) + 1 } else { 12 })
        .x_label_formatter(&name_of)
        .x_desc(along)
        .y_label_formatter(&|value| format!("{value:.0}"))
        .light_line_style(TRANSPARENT)
        .y_desc(if shown == FAMILIES { shown.to_owned() } else { format!("{shown}, {}", report.unit) })
        .draw()?;
    let count = series.len().max(1) as f64;
    for (number, (name, marks)) in series.iter().enumerate() {
        let colour = COLOURS.get(number % COLOURS.len()).copied().unwrap_or(BLACK);
        match shape {
            Shape::Lines => {
                let stroke = colour.stroke_width(2);
                let key = move |(x, y)| PathElement::new(vec![(x, y), (x + 16, y)], stroke);
                // What is not told is a gap.
                for (place, run) in marks.chunk_by(|one, next| next.at <= one.at + STEP).enumerate() {
                    chart.draw_series(bands(run).map(|band| Polygon::new(band, colour.mix(0.15).filled())))?;
                    let line = run.iter().map(|mark| (mark.at as f64, mark.value as f64));
                    let drawn = chart.draw_series(LineSeries::new(line, stroke).point_size(2))?;
                    if place == 0 {
                        drawn.label(name).legend(key);
                    }
                }
            }
            Shape::Bars => {
                let width = 0.8 / count;
                let left = number as f64 * width - 0.4;
                let bars = marks.iter().map(|mark| {
                    let from = mark.at as f64 + left;
                    Rectangle::new([(from, 0.0), (from + width * 0.92, mark.value as f64)], colour.filled())
                });
                chart
                    .draw_series(bars)?
                    .label(name)
                    .legend(move |(x, y)| Rectangle::new([(x, y - 5), (x + 12, y + 5)], colour.filled()));
            }
        }
    }
    if series.len() > 1 {
        chart.configure_series_labels().background_style(WHITE.mix(0.8)).border_style(BLACK.mix(0.3)).draw()?;
    }
    root.present()?;
    Ok(())
}

/// The ends of a spread, around each stretch that has them.
fn bands(run: &[Mark]) -> impl Iterator<Item = Vec<(f64, f64)>> + '_ {
    run.chunk_by(|one, next| one.spread.is_some() == next.spread.is_some()).filter_map(|stretch| {
        let end = |mark: &Mark, high: bool| {
            let (at_least, at_most) = mark.spread?;
            Some((mark.at as f64, if high { at_most } else { at_least } as f64))
        };
        let high = stretch.iter().filter_map(|mark| end(mark, true));
        let low = stretch.iter().rev().filter_map(|mark| end(mark, false));
        let around: Vec<(f64, f64)> = high.chain(low).collect();
        (!around.is_empty()).then_some(around)
    })
}

/// The middle where there is one, else how many families.
fn figure_of(published: &Published) -> &'static str {
    if published.at("p50").is_some() {
        "p50"
    } else {
        FAMILIES
    }
}
