//! Trace: what a pump does, cycle by cycle, as a digital manometer wrote it down.
//!
//! In: a [`TraceFile`], pressure over time in the file's own unit. Out: [`Findings`], in
//! that unit still, because the unit is a field of its own that may be corrected without
//! the file; every threshold is a share of what the pressure moves, or of the noise, and
//! none a number of mmHg. [`turns`] finds peaks and valleys, [`cycle`] measures one cycle
//! and [`top`] its height, [`phases`] parts the session into patterns, [`figures`] says
//! what the cycles of each show together, [`doubts`] what may be wrong with the trace,
//! and [`kept`] makes of it what a journal keeps.

mod close;
mod cycle;
mod doubts;
mod figures;
mod file;
mod kept;
mod measure;
mod noise;
mod phases;
mod picture;
mod top;
mod turns;

pub use close::CloseUp;
pub use doubts::{Clipped, Offset};
pub use figures::{Cycles, Spread, STOPPED_FROM, WEAK_BELOW};
pub use file::{Notes, Samples, TimeUnit, TraceFile};
pub use measure::{AsRead, AsReadPerMinute, AsReadPerSecond, Seconds};
pub use phases::Pattern;
pub use picture::{Column, MOST_COLUMNS};

use crate::quantity::Share;
use crate::record::mark::Phase;
use thiserror::Error;

/// No fewer cycles show a pattern.
pub const LEAST_CYCLES: usize = 3;
/// A cycle of fewer samples may be another one: a sine shows its highest vacuum to within 5 %
/// at ten samples, and to within 20 % at five.
pub const LEAST_SAMPLES_IN_A_CYCLE: f64 = 5.0;

/// Why nothing is said of a trace.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum CannotTell {
    /// Nothing in it moves as a pump does.
    #[error("no cycle")]
    NoCycles,
    /// Fewer than [`LEAST_CYCLES`].
    #[error("too few cycles")]
    TooFewCycles,
    /// Too few samples fall on a cycle, see [`LEAST_SAMPLES_IN_A_CYCLE`].
    #[error("sampled too slowly for its cycles")]
    SampledTooSlowly,
}

/// A run of cycles of one pattern.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Segment {
    /// From the valley before its first cycle,
    pub from: Seconds,
    /// to the valley after its last.
    pub to: Seconds,
    /// Which phase of the two it is, where the session has two.
    pub phase: Option<Phase>,
    /// What its cycles show.
    pub cycles: Cycles,
}

/// What a trace shows.
#[derive(Debug, Clone, PartialEq)]
pub struct Findings {
    /// From the first sample to the last.
    pub duration: Seconds,
    /// All cycles, each counted against what is usual in its segment.
    pub overall: Cycles,
    /// Segments in order, at least one.
    pub segments: Vec<Segment>,
    /// What the segments are together.
    pub pattern: Pattern,
    /// When one segment goes over into the next.
    pub switches: Vec<Seconds>,
    /// The standard deviation of the noise.
    pub noise: AsRead,
    /// Zero is not where the air is.
    pub offset: Option<Offset>,
    /// The gauge seems to end below what the pump pulls.
    pub clipped: Option<Clipped>,
    /// How long the pressure moved without a cycle that could be told.
    pub unread: Seconds,
    /// What was noted while the file was read; its dropouts too.
    pub notes: Notes,
    /// At most [`MOST_COLUMNS`] columns of equal length; None in a dropout.
    pub picture: Vec<Option<Column>>,
    /// A few cycles from the middle of the longest segment.
    pub close: CloseUp,
}

/// Reads a trace's cycles.
///
/// # Errors
/// Where the trace has no cycles that could be told; never for an unknown unit.
pub fn findings(file: &TraceFile) -> Result<Findings, CannotTell> {
    let values = file.samples.values();
    let step = file.samples.step().get();
    let noise = noise::noise(values, step);
    let cycles: Vec<cycle::Cycle> = turns::turns(values, step, noise)
        .iter()
        .flat_map(|turns| cycle::measured(values, step, noise, turns))
        .collect();
    if cycles.is_empty() {
        return Err(CannotTell::NoCycles);
    }
    if cycles.len() < LEAST_CYCLES {
        return Err(CannotTell::TooFewCycles);
    }
    if phases::usual_period(&cycles).is_some_and(|period| period < LEAST_SAMPLES_IN_A_CYCLE * step) {
        return Err(CannotTell::SampledTooSlowly);
    }
    let bounds = phases::segments(&cycles);
    let (pattern, phases) = phases::phases(&cycles, &bounds);
    let segments: Vec<Segment> =
        bounds.iter().zip(phases).filter_map(|(at, phase)| segment(&cycles, *at, phase)).collect();
    let amplitude = phases::usual_amplitude(&cycles).ok_or(CannotTell::NoCycles)?;
    let notes = Notes {
        dropped: Seconds::new(rounded(file.notes.dropped.get())),
        native_step: Seconds::new(rounded(file.notes.native_step.get())),
        at_extreme: Share::of(rounded(file.notes.at_extreme.fraction())),
        ..file.notes
    };
    let longest = segments.iter().max_by(|a, b| length(a).total_cmp(&length(b))).ok_or(CannotTell::NoCycles)?;
    let around = Seconds::new((longest.from.get() + longest.to.get()) / 2.0);
    let period = Seconds::new(phases::usual_period(&cycles).unwrap_or(step));
    let close = close::close_up(&file.samples, around, period);
    Ok(Findings {
        duration: Seconds::new(rounded(file.samples.duration().get())),
        overall: figures::figures(&cycles, &bounds).ok_or(CannotTell::NoCycles)?,
        switches: segments.iter().skip(1).map(|segment| segment.from).collect(),
        segments,
        pattern,
        noise: AsRead::new(rounded(noise)),
        offset: doubts::offset(values, step, noise, amplitude, &cycles),
        clipped: doubts::clipped(values, step, noise, amplitude, notes.at_extreme, &cycles),
        unread: Seconds::new(rounded(doubts::unread(values, step, amplitude, &cycles))),
        notes,
        picture: picture::picture(values),
        close,
    })
}

fn length(segment: &Segment) -> f64 {
    segment.to.get() - segment.from.get()
}

fn segment(cycles: &[cycle::Cycle], (from, to): (usize, usize), phase: Option<Phase>) -> Option<Segment> {
    let part = cycles.get(from..to)?;
    let of = |at: f64| Seconds::new(rounded(at));
    Some(Segment {
        from: of(part.first()?.from),
        to: of(part.last()?.to),
        phase,
        cycles: figures::figures(part, &[(0, part.len())])?,
    })
}

/// To six figures: more are not known, and what a journal keeps is then what was found.
fn rounded(value: f64) -> f64 {
    format!("{value:.5e}").parse().unwrap_or(value)
}
