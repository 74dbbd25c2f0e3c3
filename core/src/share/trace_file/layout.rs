//! How a file's rows are written, found out from the first of them.

use std::collections::VecDeque;

use super::cells::{number, time, Separator, Time};
use super::header::{heading, pressure_unit, Heading};
use super::rows::Rows;
use crate::answer::trace::TimeUnit;
use crate::quantity::VacuumUnit;
use crate::trouble::Trouble;

/// So many rows show how the others are written.
const ROWS_LOOKED_AT: usize = 256;
/// So many lines above the first row may say something of it.
const LINES_ABOVE: usize = 40;
/// The heading is among so many lines straight above the first row.
const HEADING_LINES: usize = 4;
/// Columns beyond this are not looked at.
const MOST_COLUMNS: usize = 64;

/// Where time and pressure stand, and what was said of them.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Layout {
    separator: Separator,
    time: usize,
    pressure: usize,
    /// The unit of numbers as times, where it is said.
    pub(super) time_unit: Option<TimeUnit>,
    /// The unit of the pressure, where it is said.
    pub(super) unit: Option<VacuumUnit>,
}

/// A line that was looked at: its number and text.
pub(super) type Line = (u64, String);

impl Layout {
    /// Time and pressure of a row; None where it has none.
    pub(super) fn row(&self, text: &str) -> Option<(Time, f64)> {
        let mut cells = self.separator.cells(text);
        if self.time < self.pressure {
            let time = time(cells.nth(self.time)?)?;
            Some((time, number(cells.nth(self.pressure - self.time - 1)?)?))
        } else {
            let pressure = number(cells.nth(self.pressure)?)?;
            Some((time(cells.nth(self.time.checked_sub(self.pressure + 1)?)?)?, pressure))
        }
    }

    /// Looks at the first rows. They are given back, for they were read.
    pub(super) fn find(rows: &mut Rows<'_>) -> Result<(Self, Vec<Line>), Trouble> {
        let (above, lines) = first_lines(rows)?;
        let (separator, shape) = shape(&lines).ok_or_else(|| Trouble::bad("", "bad-trace-no-rows"))?;
        let first = lines.iter().position(|(_, text)| Shape::of(separator, text) == shape).unwrap_or(0);
        let before: Vec<&str> = above.iter().map(String::as_str).chain(texts(&lines).take(first)).collect();
        let headings = headings(&before, separator, shape.cells);
        let data: Vec<&str> = texts(&lines).skip(first).collect();
        if commas_are_unclear(separator, &shape, headings.is_empty(), &data) {
            return Err(Trouble::bad("", "bad-trace-commas"));
        }
        let (time, pressure) = columns(&headings, &shape).ok_or_else(|| Trouble::bad("", "bad-trace-no-rows"))?;
        let of = |column: usize| headings.get(column).copied().unwrap_or_default();
        let beside = data.first().and_then(|row| separator.cells(row).nth(pressure + 1)).and_then(pressure_unit);
        let said = || pressure_unit(&before.join(" "));
        let unit = of(pressure).unit.or(beside);
        if let (None, Some(other)) = (unit, of(pressure).other_unit) {
            return Err(Trouble::bad("", "bad-trace-unit").with("unit", other));
        }
        let layout = Self { separator, time, pressure, time_unit: of(time).time_unit, unit: unit.or_else(said) };
        Ok((layout, lines))
    }
}

fn texts(lines: &[Line]) -> impl Iterator<Item = &str> {
    lines.iter().map(|(_, text)| text.as_str())
}

/// Lines above the first that looks like a row, and lines from there on.
fn first_lines(rows: &mut Rows<'_>) -> Result<(VecDeque<String>, Vec<Line>), Trouble> {
    let (mut above, mut lines, mut like_rows) = (VecDeque::new(), Vec::new(), 0);
    while like_rows < ROWS_LOOKED_AT && lines.len() < 4 * ROWS_LOOKED_AT {
        let Some(row) = rows.next()? else { break };
        let is_comment = is_comment(row.text);
        let like_row = !is_comment && Separator::ALL.iter().any(|by| Shape::of(*by, row.text).figures() >= 2);
        like_rows += usize::from(like_row);
        if like_row || !lines.is_empty() {
            lines.push((row.number, row.text.to_owned()));
        } else if !row.text.trim().is_empty() {
            above.push_back(row.text.trim_start_matches('#').trim().to_owned());
            if above.len() > LINES_ABOVE {
                above.pop_front();
            }
        }
    }
    Ok((above, lines))
}

pub(super) fn is_comment(text: &str) -> bool {
    text.trim_start().starts_with('#')
}

/// Which cells of a row are figures.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Shape {
    cells: usize,
    /// Bit by bit, from the first cell: a number; a time that is no number.
    numbers: u64,
    times: u64,
}

impl Shape {
    fn of(separator: Separator, text: &str) -> Self {
        let mut shape = Self { cells: 0, numbers: 0, times: 0 };
        for (at, cell) in separator.cells(text).take(MOST_COLUMNS).enumerate() {
            shape.cells = at + 1;
            match time(cell) {
                Some(Time::Number(_)) => shape.numbers |= 1 << at,
                Some(_) => shape.times |= 1 << at,
                None => {}
            }
        }
        shape
    }

    fn figures(&self) -> u32 {
        match self.numbers.count_ones() {
            0 => 0,
            numbers => numbers + self.times.count_ones(),
        }
    }

    fn has(bits: u64, column: usize) -> bool {
        column < MOST_COLUMNS && bits >> column & 1 == 1
    }
}

/// What parts the rows, and the shape most of them have.
fn shape(lines: &[Line]) -> Option<(Separator, Shape)> {
    let mut best: Option<(usize, Separator, Shape)> = None;
    for separator in Separator::ALL {
        let shapes: Vec<Shape> = texts(lines)
            .filter(|text| !is_comment(text))
            .map(|text| Shape::of(separator, text))
            .filter(|shape| shape.figures() >= 2)
            .collect();
        // The middle row has it, or one near: a vote of rows among themselves.
        let mut candidates: Vec<&Shape> = Vec::new();
        for shape in &shapes {
            if candidates.len() < 8 && !candidates.contains(&shape) {
                candidates.push(shape);
            }
        }
        for candidate in candidates {
            let votes = shapes.iter().filter(|shape| *shape == candidate).count();
            if best.as_ref().is_none_or(|(most, ..)| votes > *most) {
                best = Some((votes, separator, candidate.clone()));
            }
        }
    }
    best.map(|(_, separator, shape)| (separator, shape))
}

/// What the lines above say of each column; empty where they say nothing.
fn headings(above: &[&str], separator: Separator, columns: usize) -> Vec<Heading> {
    let mut words: Vec<String> = vec![String::new(); columns];
    let mut any = false;
    for line in above.iter().rev().take(HEADING_LINES) {
        let mut cells: Vec<String> = Vec::new();
        for cell in separator.cells(line.trim_start_matches('#').trim_start()) {
            match cells.last_mut() {
                // Between spaces a unit in brackets is a cell of its own.
                Some(last) if separator == Separator::Spaces && cell.starts_with(['(', '[', '/']) => {
                    last.push_str(cell)
                }
                _ => cells.push(cell.to_owned()),
            }
        }
        let same = cells.len() == columns || (cells.len() + 1 == columns && columns > 2);
        let says =
            cells.iter().map(|cell| heading(cell)).any(|it| it.time > 0 || it.pressure > 0 || it.other_unit.is_some());
        if !(same && says) {
            continue;
        }
        any = true;
        for (words, cell) in words.iter_mut().zip(cells) {
            words.push(' ');
            words.push_str(&cell);
        }
    }
    if any {
        words.iter().map(|words| heading(words)).collect()
    } else {
        Vec::new()
    }
}

/// Time and pressure: by their headings, else the first two columns of figures.
fn columns(headings: &[Heading], shape: &Shape) -> Option<(usize, usize)> {
    let figures = || (0..shape.cells).filter(|at| Shape::has(shape.numbers | shape.times, *at));
    let numbers = || (0..shape.cells).filter(|at| Shape::has(shape.numbers, *at));
    let of = |column: usize| headings.get(column).copied().unwrap_or_default();
    // The first of those that say it most surely.
    let most = |columns: Vec<usize>, surely: &dyn Fn(usize) -> u8| {
        columns
            .into_iter()
            .rev()
            .map(|at| (surely(at), at))
            .filter(|(surely, _)| *surely > 0)
            .max_by_key(|(surely, _)| *surely)
    };
    let pressure = most(numbers().collect(), &|at| of(at).pressure).map(|(_, at)| at);
    let time = most(figures().filter(|at| Some(*at) != pressure).collect(), &|at| {
        if of(at).pressure >= 2 {
            0
        } else {
            of(at).time + u8::from(Shape::has(shape.times, at))
        }
    })
    .map(|(_, at)| at);
    let time = time.or_else(|| figures().find(|at| Some(*at) != pressure && of(*at).pressure == 0))?;
    let pressure = pressure.or_else(|| numbers().find(|at| *at > time)).or_else(|| numbers().find(|at| *at != time))?;
    Some((time, pressure))
}

/// Whether commas may part both columns and decimals: `0,02,-120,5`.
fn commas_are_unclear(separator: Separator, shape: &Shape, no_heading: bool, rows: &[&str]) -> bool {
    let plain = |row: &&str| !row.contains(['.', ':', '"', 'e', 'E']);
    separator == Separator::Comma
        && no_heading
        && shape.cells >= 4
        && shape.cells.is_multiple_of(2)
        && shape.numbers.count_ones() as usize == shape.cells
        && rows.iter().all(plain)
}
