//! The file from its first line to its last, and whether it is a trace at all.

use std::io::BufRead;

use super::cells::Time;
use super::clock::Clock;
use super::grid::Grid;
use super::layout::{is_comment, Layout};
use super::rows::Rows;
use crate::answer::trace::{Notes, Seconds, TraceFile};
use crate::quantity::{Count, Quantity, Share, Vacuum, VacuumUnit};
use crate::trouble::{Detail, Trouble};

/// A shorter trace shows no pattern: two cycles of a slow one.
const SHORTEST_SECONDS: f64 = 3.0;
/// A pressure that moves by less than this share of itself does not move.
const MOVES: f64 = 1e-6;
/// Vacuum ends where the air does: 760 mmHg at the sea, and no place or weather adds 140.
const BEYOND_MMHG: f64 = 900.0;
/// Absolute pressure is the air's when the pump rests, in hPa (ICAO standard atmosphere: 700
/// at 3,000 m), and never falls near zero.
const AIR_HPA: std::ops::RangeInclusive<f64> = 700.0..=1_100.0;
const ABSOLUTE_NEVER_BELOW: f64 = 0.4;
/// Times are said to be spread where so many of the rows share theirs with others.
const SPREAD_SHARE: f64 = 0.1;

pub(super) fn read(file: &mut dyn BufRead) -> Result<TraceFile, Trouble> {
    let mut rows = Rows::of(file);
    let (layout, first_lines) = Layout::find(&mut rows)?;
    let times: Vec<Time> = first_lines.iter().filter_map(|(_, text)| layout.row(text)).map(|(time, _)| time).collect();
    if times.len() == 1 && first_lines.len() == 1 {
        return Err(Trouble::bad("", "bad-trace-one-sample"));
    }
    let clock = Clock::of(&times, layout.time_unit)?;
    let grid = Grid::of(clock.native_step);
    let mut reading = Reading { layout, clock, grid, seen: Seen::default() };
    for (number, text) in &first_lines {
        reading.take(*number, text)?;
    }
    while let Some(row) = rows.next()? {
        reading.take(row.number, row.text)?;
    }
    reading.end()
}

struct Reading {
    layout: Layout,
    clock: Clock,
    grid: Grid,
    seen: Seen,
}

/// What was seen of the rows.
#[derive(Default)]
struct Seen {
    rows: u64,
    passed_over: u64,
    first_passed_over: Option<u64>,
    highest: Extreme,
    lowest: Extreme,
}

/// The furthest value to one side, how often it was there, and in which line first.
#[derive(Default)]
struct Extreme {
    value: Option<f64>,
    count: u64,
    line: u64,
}

impl Extreme {
    fn take(&mut self, value: f64, further: impl Fn(f64, f64) -> bool, line: u64) {
        match self.value {
            Some(there) if there == value => self.count += 1,
            Some(there) if !further(value, there) => {}
            _ => *self = Self { value: Some(value), count: 1, line },
        }
    }
}

impl Reading {
    fn take(&mut self, line: u64, text: &str) -> Result<(), Trouble> {
        let Some(row) = self.layout.row(text) else {
            if self.seen.rows > 0 && !is_comment(text) && !text.trim().is_empty() {
                self.seen.passed_over += 1;
                self.seen.first_passed_over.get_or_insert(line);
            }
            return Ok(());
        };
        self.seen.rows += 1;
        self.seen.highest.take(row.1, |new, there| new > there, line);
        self.seen.lowest.take(row.1, |new, there| new < there, line);
        let grid = &mut self.grid;
        self.clock.take(row, line, &mut |at, pressure| grid.take(at, pressure))
    }

    fn end(mut self) -> Result<TraceFile, Trouble> {
        let grid = &mut self.grid;
        self.clock.end(&mut |at, pressure| grid.take(at, pressure))?;
        self.grid.end();
        let (Some(highest), Some(lowest)) = (self.seen.highest.value, self.seen.lowest.value) else {
            return Err(Trouble::bad("", "bad-trace-no-rows"));
        };
        if self.seen.rows == 1 {
            return Err(Trouble::bad("", "bad-trace-one-sample"));
        }
        let duration = self.grid.duration();
        if duration < SHORTEST_SECONDS {
            return Err(Trouble::bad("", "bad-trace-short").with("seconds", Detail::number(duration, 2)));
        }
        let furthest = highest.abs().max(lowest.abs());
        if highest - lowest <= MOVES * furthest {
            return Err(Trouble::bad("", "bad-trace-constant").with("value", Detail::number(highest, 1)));
        }
        let turned = self.grid.is_turned();
        let extreme = if turned { &self.seen.lowest } else { &self.seen.highest };
        if is_absolute(lowest, highest, self.layout.unit) {
            return Err(Trouble::bad("", "bad-trace-absolute"));
        }
        // Without a unit, what is beyond in the smallest of them is beyond in all.
        let unit = self.layout.unit.unwrap_or(VacuumUnit::CentimeterOfWater);
        if Vacuum::of(furthest, unit).canonical() > BEYOND_MMHG {
            let beyond = if lowest.abs() > highest.abs() { &self.seen.lowest } else { &self.seen.highest };
            let line = beyond.line;
            return Err(Trouble::bad("", "bad-trace-beyond")
                .with("line", line)
                .with("value", Detail::number(furthest, 1)));
        }
        let count = |number: u64| Count::new(u32::try_from(number).unwrap_or(u32::MAX));
        let rows = self.seen.rows as f64;
        let unit = self.layout.unit;
        let (dropouts, dropped) = (self.grid.dropouts, self.grid.dropped);
        let resampled = self.grid.samples(turned).ok_or_else(|| Trouble::bad("", "bad-trace-still"))?;
        let notes = Notes {
            rows: count(self.seen.rows),
            passed_over: count(self.seen.passed_over),
            first_passed_over: self.seen.first_passed_over.map(count),
            dropouts: Count::new(dropouts),
            dropped: Seconds::new(dropped),
            spikes: resampled.spikes,
            native_step: Seconds::new(self.clock.native_step),
            sign_turned: turned,
            time_unit_assumed: self.clock.assumed,
            times_spread: self.clock.spread as f64 > SPREAD_SHARE * rows,
            at_extreme: Share::of(extreme.count as f64 / rows),
        };
        Ok(TraceFile { samples: resampled.samples, unit, notes })
    }
}

/// Whether the pressure is counted from nothing and not from the air.
fn is_absolute(lowest: f64, highest: f64, unit: Option<VacuumUnit>) -> bool {
    let never_near_zero = lowest > ABSOLUTE_NEVER_BELOW * highest && highest > 0.0;
    let of_air = |unit: VacuumUnit| AIR_HPA.contains(&Vacuum::of(highest, unit).in_unit(VacuumUnit::Millibar));
    // Without a unit, 70 to 110 may as well be a light pull in mmHg as the air in kPa.
    let large = [VacuumUnit::MillimeterOfMercury, VacuumUnit::Millibar, VacuumUnit::CentimeterOfWater];
    never_near_zero && unit.map_or_else(|| large.into_iter().any(of_air), of_air)
}
