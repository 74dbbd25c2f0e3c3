//! Times as written, put into seconds from the first row, in order.

use super::cells::Time;
use crate::answer::trace::TimeUnit;
use crate::statistics::{mean, median};
use crate::trouble::{Detail, Trouble};

/// Numbers without a unit are seconds, unless they lie this far apart as a rule: then no
/// cycle could be seen in them, and they are milliseconds.
const MILLISECONDS_FROM: f64 = 2.0;
/// Samples further apart than this show no cycle.
const LONGEST_STEP: f64 = 0.5;
/// More rows at one time are not a clock that counts whole seconds.
const MOST_AT_ONE_TIME: usize = 5_000;
/// One unit taken for the other makes a step a thousand times too long; a true gap is
/// followed by steps as usual.
const THOUSAND: std::ops::Range<f64> = 300.0..3_000.0;
/// How many such steps in a row there are then.
const STEPS_IN_A_ROW: u32 = 3;
/// When a time runs back by about a thousand, it is of the other unit.
const BACK_BY: std::ops::Range<f64> = 500.0..2_000.0;
/// A step this much longer than the rows at one time account for is a gap after them.
const GAP_AFTER: f64 = 2.0;

/// The order of a file's times.
pub(super) struct Clock {
    unit: f64,
    /// Between two different times, as a rule.
    step: f64,
    /// Between two rows.
    pub(super) native_step: f64,
    pub(super) assumed: Option<TimeUnit>,
    around: f64,
    origin: Option<f64>,
    last: Option<Seen>,
    long: Run,
    short: Run,
    /// Pressures that share the last time.
    waiting: Vec<f64>,
    first_group: bool,
    pub(super) spread: u64,
}

struct Seen {
    /// As it was written, for a comparison of units.
    number: f64,
    at: f64,
    line: u64,
    jumped: bool,
}

/// Steps of a kind, in a row.
#[derive(Default)]
struct Run {
    length: u32,
    line: u64,
}

impl Run {
    fn goes_on(&mut self, is: bool, line: u64) -> bool {
        match is {
            false => self.length = 0,
            true if self.length == 0 => *self = Self { length: 1, line },
            true => self.length += 1,
        }
        self.length >= STEPS_IN_A_ROW
    }
}

impl Clock {
    /// From the times of the first rows and the unit the file says.
    pub(super) fn of(times: &[Time], said: Option<TimeUnit>) -> Result<Self, Trouble> {
        let numbers = times.iter().any(|time| matches!(time, Time::Number(_)));
        let raw: Vec<f64> = times
            .iter()
            .map(|time| match time {
                Time::Number(at) | Time::Date(at) | Time::Clock { seconds: at, .. } => *at,
            })
            .collect();
        let steps: Vec<f64> =
            raw.iter().zip(raw.iter().skip(1)).map(|(from, to)| to - from).filter(|step| *step > 0.0).collect();
        let usual = median(&steps).unwrap_or(0.0);
        let near: Vec<f64> = steps.iter().copied().filter(|step| (0.5 * usual..=1.5 * usual).contains(step)).collect();
        let step = mean(&near).unwrap_or(usual);
        let assumed = match said {
            None if numbers && usual >= MILLISECONDS_FROM => Some(TimeUnit::Millisecond),
            None if numbers => Some(TimeUnit::Second),
            _ => None,
        };
        let unit = if numbers { said.or(assumed).map_or(1.0, |unit| unit.length().get()) } else { 1.0 };
        // Where a clock counts whole seconds, many rows share one.
        let same = raw.iter().zip(raw.iter().skip(1)).filter(|(from, to)| from == to).count() as f64;
        let shared = if same > steps.len() as f64 * 0.1 { 1.0 + same / (steps.len() as f64).max(1.0) } else { 1.0 };
        let native_step = step * unit / shared;
        if native_step > LONGEST_STEP {
            return Err(Trouble::bad("", "bad-trace-steps").with("step", Detail::number(native_step, 2)));
        }
        Ok(Self {
            unit,
            step: step * unit,
            native_step,
            assumed,
            around: 0.0,
            origin: None,
            last: None,
            long: Run::default(),
            short: Run::default(),
            waiting: Vec::new(),
            first_group: true,
            spread: 0,
        })
    }

    /// Takes a row; gives those to `lay` whose time is clear by now.
    pub(super) fn take(
        &mut self,
        (time, pressure): (Time, f64),
        line: u64,
        lay: &mut impl FnMut(f64, f64) -> Result<(), Trouble>,
    ) -> Result<(), Trouble> {
        let (number, at) = self.seconds(time);
        let at = at - *self.origin.get_or_insert(at);
        if let Some(last) = &self.last {
            let step = at - last.at;
            if step == 0.0 {
                if self.waiting.len() >= MOST_AT_ONE_TIME {
                    return Err(about("bad-trace-still", line));
                }
                self.waiting.push(pressure);
                return Ok(());
            }
            let back = last.number / number;
            if step < 0.0 {
                if BACK_BY.contains(&back) && matches!(time, Time::Number(_)) {
                    return Err(about("bad-trace-mixed", if last.jumped { last.line } else { line }));
                }
                return Err(about("bad-trace-back", line));
            }
            let steps = step / self.step;
            let long = self.long.goes_on(THOUSAND.contains(&steps), line);
            if long || self.short.goes_on(THOUSAND.contains(&steps.recip()), line) {
                return Err(about("bad-trace-mixed", if long { self.long.line } else { self.short.line }));
            }
            let jumped = steps >= THOUSAND.start;
            let from = last.at;
            self.lay_waiting(from, Some(at), lay)?;
            self.last = Some(Seen { number, at, line, jumped });
        } else {
            self.last = Some(Seen { number, at, line, jumped: false });
        }
        self.waiting.push(pressure);
        Ok(())
    }

    /// The rows that still waited.
    pub(super) fn end(&mut self, lay: &mut impl FnMut(f64, f64) -> Result<(), Trouble>) -> Result<(), Trouble> {
        match self.last.as_ref().map(|last| last.at) {
            Some(at) => self.lay_waiting(at, None, lay),
            None => Ok(()),
        }
    }

    /// Rows that share a time are spread evenly up to the next: a clock that counts whole
    /// seconds says no more.
    fn lay_waiting(
        &mut self,
        from: f64,
        to: Option<f64>,
        lay: &mut impl FnMut(f64, f64) -> Result<(), Trouble>,
    ) -> Result<(), Trouble> {
        let n = self.waiting.len() as f64;
        let usual = n * self.native_step;
        let room = to.map_or(usual, |to| to - from);
        let (start, room) = match to {
            // A file begins within a second: its rows end where the next begins.
            Some(to) if self.first_group && n > 1.0 && usual < room => (to - usual, usual),
            _ if room > GAP_AFTER * usual => (from, usual),
            _ => (from, room),
        };
        self.first_group = false;
        if n > 1.0 {
            self.spread += self.waiting.len() as u64;
        }
        for (place, pressure) in self.waiting.drain(..).enumerate() {
            lay(start + room * place as f64 / n, pressure)?;
        }
        Ok(())
    }

    /// As written, and in seconds; a clock that begins anew goes on.
    fn seconds(&mut self, time: Time) -> (f64, f64) {
        match time {
            Time::Number(number) => (number, number * self.unit),
            Time::Date(at) => (at, at),
            Time::Clock { seconds, around } => {
                let at = seconds + self.around;
                let before = self.last.as_ref().zip(self.origin).map(|(last, origin)| last.at + origin);
                if before.is_some_and(|before| at < before - around / 2.0) {
                    self.around += around;
                }
                (seconds, seconds + self.around)
            }
        }
    }
}

fn about(key: &'static str, line: u64) -> Trouble {
    Trouble::bad("", key).with("line", line)
}
