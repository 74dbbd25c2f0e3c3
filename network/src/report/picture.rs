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
    let (shape, along, each) = report.picture;
    let figure = if published.at("p50").is_some() { "p50" } else { FAMILIES };
    let word = |cell: Option<&Cell>| match cell {
        Some(Cell::Whole(whole)) => whole.to_string(),
        Some(Cell::Text(text)) => text.clone(),
        Some(Cell::Null) | None => "unknown".to_owned(),
    };
    let mut places: Vec<String> = Vec::new();
    let mut series: BTreeMap<String, Vec<Mark>> = BTreeMap::new();
    for row in &published.rows {
        let figure = |name: &str| published.cell(row, name).and_then(Cell::whole);
        let Some(value) = figure(figure_of(published)) else { continue };
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
        series.entry(word(published.cell(row, each))).or_default().push(Mark { at, value, spread });
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
        .y_desc(format!("{figure}, {}", if figure == FAMILIES { "families" } else { report.unit }))
        .draw()?;
    let count = series.len().max(1) as f64;
    for (number, (name, marks)) in series.iter().enumerate() {
        let colour = COLOURS.get(number % COLOURS.len()).copied().unwrap_or(BLACK);
        match shape {
            Shape::Lines => {
                let band = marks.iter().filter_map(|mark| mark.spread.map(|spread| (mark.at, spread)));
                let band: Vec<(i64, (i64, i64))> = band.collect();
                let high = band.iter().map(|(at, (_, high))| (*at as f64, *high as f64));
                let low = band.iter().rev().map(|(at, (low, _))| (*at as f64, *low as f64));
                chart.draw_series([Polygon::new(high.chain(low).collect::<Vec<_>>(), colour.mix(0.15).filled())])?;
                let line = LineSeries::new(marks.iter().map(|m| (m.at as f64, m.value as f64)), colour.stroke_width(2));
                chart
                    .draw_series(line)?
                    .label(name)
                    .legend(move |(x, y)| PathElement::new(vec![(x, y), (x + 16, y)], colour.stroke_width(2)));
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

/// The middle where there is one, else how many families.
fn figure_of(published: &Published) -> &'static str {
    if published.at("p50").is_some() {
        "p50"
    } else {
        FAMILIES
    }
}
