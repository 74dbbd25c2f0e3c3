//! Trace: what a pump does, cycle by cycle, as a digital manometer wrote it down.
//!
//! In: a [`TraceFile`], pressure over time in the file's own unit. Out: [`Findings`], in
//! that unit still, because the unit is a field of its own that may be corrected without
//! the file; every threshold is a share of what the pressure moves, or of the noise, and
//! none a number of mmHg. [`turns`] finds peaks and valleys, [`cycle`] measures one cycle
//! and [`top`] its height, [`collapse`] finds where the pull is lost, [`phases`] parts the
//! session into patterns, [`usual`] measures each cycle anew by the usual one, [`zero`] takes
//! away what the gauge's zero moved, [`typical`] is what most of them go by, [`figures`] says
//! what the cycles of each show together, [`doubts`] what may be wrong with the trace, and
//! [`stored`] makes of it what a journal keeps.

mod close;
mod collapse;
mod cycle;
mod doubts;
mod figures;
mod file;
mod measure;
mod noise;
mod phases;
mod picture;
mod rounding;
mod squares;
mod stored;
mod top;
mod turns;
mod typical;
mod usual;
mod zero;

pub use close::CloseUp;
pub use collapse::Collapse;
pub use doubts::{Clipped, Offset};
pub use figures::{Cycles, Spread, WEAK_BELOW};
pub use file::{Notes, Samples, TimeUnit, TraceFile};
pub use measure::{AsRead, AsReadPerMinute, AsReadPerSecond, Seconds};
pub use phases::Pattern;
pub use picture::{Column, MOST_COLUMNS};
pub use typical::STOPPED_FROM;

use crate::answer::Estimate;
use crate::quantity::{Count, Quantity, Share, Speed, SpeedUnit};
use crate::record::mark::Phase;
use cycle::Cycle;
use rounding::rounded;
use thiserror::Error;

/// No fewer cycles show a pattern.
pub const LEAST_CYCLES: usize = 3;
/// A cycle of fewer samples may be another one: a sine shows its highest vacuum to within 5 %
/// at ten samples, and to within 20 % at five.
pub const LEAST_SAMPLES_IN_A_CYCLE: f64 = 5.0;

/// So many cycles on either side of one say how long it takes.
const NEIGHBOURS: usize = 4;

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
    /// When one pattern goes over into the next.
    pub switches: Vec<Seconds>,
    /// The standard deviation of the noise.
    pub noise: AsRead,
    /// Zero is not where the air is.
    pub offset: Option<Offset>,
    /// The gauge seems to end below what the pump pulls.
    pub clipped: Option<Clipped>,
    /// Where the pull was lost, in order; None where nobody looked for it.
    pub collapses: Option<Vec<Collapse>>,
    /// By how much the gauge's zero moved; vacuum is reckoned from it.
    pub zero: Option<Estimate<AsRead>>,
    /// By how much the resting vacuum rose while the highest stayed: the pump lets go less and less.
    pub rest_rises: Option<Estimate<AsRead>>,
    /// From this rate on cycles fall between the samples; None where nobody asked.
    pub fastest: Option<Speed>,
    /// How long the pressure moved without a cycle that could be told.
    pub unread: Seconds,
    /// What was noted while the file was read; its dropouts too.
    pub notes: Notes,
    /// At most [`MOST_COLUMNS`] columns of equal length; None in a dropout.
    pub picture: Vec<Option<Column>>,
    /// A few cycles from the middle of the longest segment.
    pub close: CloseUp,
}

impl Findings {
    /// The cycles that a trace is judged by: those of expression where there is one, else of the longest segment; all
    /// of them where none has a rate of its own.
    pub fn main(&self) -> &Cycles {
        let longest = |phase: Option<Phase>| {
            let of = self.segments.iter().filter(move |s| s.phase == phase);
            of.max_by(|a, b| length(a).total_cmp(&length(b)))
        };
        let one_rate = self.overall.rate.is_some();
        let main = longest(Some(Phase::Expression)).or_else(|| longest(None).filter(|_| one_rate));
        main.map_or(&self.overall, |segment| &segment.cycles)
    }
}

/// Reads a trace's cycles.
///
/// # Errors
/// Where the trace has no cycles that could be told; never for an unknown unit.
pub fn findings(file: &TraceFile) -> Result<Findings, CannotTell> {
    let (values, step) = (file.samples.values(), file.samples.step().get());
    let noise = noise::noise(&file.samples);
    let (mut cycles, narrow) = cycles(&file.samples, noise)?;
    let falls = collapse::falls(&cycles);
    let bounds = phases::segments(&cycles, &falls);
    let amplitude = typical::usual_amplitude(&cycles).ok_or(CannotTell::NoCycles)?;
    let clipped = doubts::clipped(&file.samples, noise, amplitude, file.notes.at_extreme, &cycles);
    for (from, to) in &bounds {
        let part = cycles.get_mut(*from..*to).unwrap_or_default();
        // A gauge at its end shows that end exactly.
        if !clipped.as_ref().is_some_and(|clipped| doubts::reaches(clipped, part, amplitude)) {
            usual::measure(&file.samples, noise, part);
        }
    }
    let strongest = bounds.iter().filter_map(|(from, to)| typical::usual_amplitude(cycles.get(*from..*to)?));
    let strongest = strongest.fold(amplitude, f64::max);
    let (zero, rest_rises) = match zero::moves(&cycles, (&bounds, &falls), (noise, strongest), clipped.is_none()) {
        Some(zero::Moves::Zero(zero)) => (Some(zero), None),
        Some(zero::Moves::Rest(by)) => (None, Some(by)),
        None => (None, None),
    };
    if let Some(zero) = &zero {
        cycles.iter_mut().zip(&zero.course).for_each(|(cycle, zero)| cycle.zero = *zero);
    }
    // A zero that moved goes above ambient too, and is said.
    let said_alone = |offset: &Offset| zero.is_none() || matches!(offset, Offset::Still(_));
    let (pattern, phases) = phases::phases(&cycles, &bounds, &falls);
    let segments: Vec<Segment> =
        bounds.iter().zip(phases).filter_map(|(at, phase)| segment(&cycles, *at, phase)).collect();
    let begins = segments.iter().zip(&bounds).skip(1);
    let switches = begins.filter(|(_, (at, _))| !phases::is_of_a_fall(&falls, *at)).map(|(to, _)| to.from).collect();
    let notes = Notes {
        dropped: Seconds::new(rounded(file.notes.dropped.get())),
        native_step: Seconds::new(rounded(file.notes.native_step.get())),
        at_extreme: Share::of(rounded(file.notes.at_extreme.fraction())),
        spikes: file.notes.spikes.map(|spikes| Count::new(spikes.get().saturating_add(narrow))),
        ..file.notes
    };
    let longest = segments.iter().max_by(|a, b| length(a).total_cmp(&length(b))).ok_or(CannotTell::NoCycles)?;
    let around = Seconds::new((longest.from.get() + longest.to.get()) / 2.0);
    let period = Seconds::new(typical::usual_period(&cycles).unwrap_or(step));
    let close = close::close_up(&file.samples, around, period);
    Ok(Findings {
        duration: Seconds::new(rounded(file.samples.duration().get())),
        overall: figures::figures(&cycles, &bounds).ok_or(CannotTell::NoCycles)?,
        switches,
        segments,
        pattern,
        noise: AsRead::new(rounded(noise)),
        offset: doubts::offset(values, step, noise, amplitude, &cycles).filter(said_alone),
        clipped,
        collapses: Some(falls.iter().filter_map(|fall| collapse::of_fall(&cycles, *fall)).collect()),
        zero: zero.map(|zero| zero.moved),
        rest_rises,
        fastest: Some(fastest(file.samples.step())),
        unread: Seconds::new(rounded(doubts::unread(values, step, amplitude, &cycles))),
        notes,
        picture: picture::picture(values),
        close,
    })
}

/// The cycles, and how many movements were too narrow for one.
fn cycles(samples: &Samples, noise: f64) -> Result<(Vec<Cycle>, u32), CannotTell> {
    let (values, step) = (samples.values(), samples.step().get());
    let mut narrow = 0_u32;
    let mut cycles: Vec<Cycle> = Vec::new();
    for turns in turns::turns(values, step, noise) {
        let (turns, left_out) = turns::wide(values, turns);
        narrow = narrow.saturating_add(left_out);
        cycles.extend(cycle::measured(values, step, noise, &turns));
    }
    if cycles.is_empty() {
        return Err(CannotTell::NoCycles);
    }
    if cycles.len() < LEAST_CYCLES {
        return Err(CannotTell::TooFewCycles);
    }
    let cycles = slow_enough(cycles, step);
    if cycles.len() < LEAST_CYCLES {
        return Err(CannotTell::SampledTooSlowly);
    }
    Ok((cycles, narrow))
}

/// Cycles that have samples enough; a stretch of others is not read.
fn slow_enough(cycles: Vec<Cycle>, step: f64) -> Vec<Cycle> {
    let told: Vec<bool> = (0..cycles.len())
        .map(|at| {
            let around = cycles.get(at.saturating_sub(NEIGHBOURS)..(at + NEIGHBOURS + 1).min(cycles.len()));
            around.and_then(typical::usual_period).is_none_or(|period| period >= LEAST_SAMPLES_IN_A_CYCLE * step)
        })
        .collect();
    let next = told.iter().copied().skip(1).chain([true]);
    let all = cycles.into_iter().zip(told.iter().copied().zip(next));
    // The time to a cycle that is not read is no period.
    all.filter(|(_, (told, _))| *told)
        .map(|(cycle, (_, next))| Cycle { period: cycle.period.filter(|_| next), ..cycle })
        .collect()
}

/// A cycle needs [`LEAST_SAMPLES_IN_A_CYCLE`].
fn fastest(step: Seconds) -> Speed {
    Speed::of(rounded(60.0 / (LEAST_SAMPLES_IN_A_CYCLE * step.get())), SpeedUnit::PerMinute)
}

fn length(segment: &Segment) -> f64 {
    segment.to.get() - segment.from.get()
}

fn segment(cycles: &[Cycle], (from, to): (usize, usize), phase: Option<Phase>) -> Option<Segment> {
    let part = cycles.get(from..to)?;
    let of = |at: f64| Seconds::new(rounded(at));
    Some(Segment {
        from: of(part.first()?.from),
        to: of(part.last()?.to),
        phase,
        cycles: figures::figures(part, &[(0, part.len())])?,
    })
}
