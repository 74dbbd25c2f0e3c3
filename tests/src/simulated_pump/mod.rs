//! A pump of known truth on a gauge that is not perfect: runs of letdown and of expression
//! pattern and rests in any order, and what a gauge adds to them. Its equations are none that
//! `core/answers/src/answer/trace` fits.

pub mod tables;
pub mod wave;

use std::fmt::Write;

use crate::chance::Chance;
use drawwell_core::statistics::median;
use wave::{Wave, WAVES};

/// What befalls a trace.
#[derive(Debug, Clone, Copy, Default)]
pub struct Kind {
    /// Readings a second, 25 or 50 where none is set.
    pub readings: Option<f64>,
    /// Which of [`WAVES`]; by chance where none is set.
    pub wave: Option<usize>,
    /// The gauge's own noise in mmHg; by chance up to 1.2 where none is set.
    pub noise: Option<f64>,
    /// Cycles a minute of the one pattern; by chance where none is set.
    pub rate: Option<f64>,
    /// Letdown and expression, else one pattern.
    pub two_phases: bool,
    /// The pump stands still now and then.
    pub rests: bool,
    /// Single cycles do not come.
    pub misses: bool,
    /// Single cycles pull half.
    pub weak: bool,
    /// The gauge ends below what is pulled.
    pub clip: bool,
    /// Single readings are wrong.
    pub spikes: bool,
    /// The gauge's zero moves.
    pub zero: bool,
    /// The pump loses its pull within a minute.
    pub collapse: bool,
    /// The pump loses up to a sixth of its pull each minute, which is no collapse.
    pub sag: bool,
    /// Each of the above by chance, whatever is set.
    pub anything: bool,
}

/// A run of cycles of one pattern, as it truly was.
#[derive(Debug, Clone, Copy)]
pub struct Run {
    /// When it begins, in seconds,
    pub from: f64,
    /// and when it ends.
    pub to: f64,
    /// Cycles a minute.
    pub rate: f64,
    /// The median of its cycles' highest vacuum, as far as the gauge can show it.
    pub peak: f64,
    /// Cycles that came.
    pub cycles: usize,
    /// Its pull stays, but for what a sound pump wanders.
    pub steady: bool,
    /// How one cycle of it goes.
    pub wave: &'static str,
}

/// A pull that was lost.
#[derive(Debug, Clone, Copy)]
pub struct Lost {
    /// When it begins to fall, in seconds,
    pub from: f64,
    /// and when it no longer does.
    pub to: f64,
    /// What was left of it.
    pub left: f64,
}

/// What is true of a trace.
#[derive(Debug, Clone, Default)]
pub struct Truth {
    /// In order, without the rests between them.
    pub runs: Vec<Run>,
    /// Cycles that came,
    pub came: u32,
    /// and those that did not.
    pub missed: u32,
    /// Where the pull was lost.
    pub lost: Option<Lost>,
    /// By how much the gauge's zero moved, from first to last reading, in mmHg.
    pub zero: f64,
    /// Where the gauge ended, in mmHg.
    pub clipped: Option<f64>,
    /// Wrong readings, two in a row counted as one.
    pub spikes: u32,
    /// By how much the pull of a sound pump changes in a minute.
    pub drift: f64,
}

/// A pump's run, or none while it stands still.
struct Part {
    seconds: f64,
    pattern: Option<Pattern>,
}

#[derive(Clone, Copy)]
struct Pattern {
    rate: f64,
    height: f64,
    rest: f64,
    wave: Wave,
}

/// One cycle as it came; a missed one has no height.
struct Cycle {
    from: f64,
    period: f64,
    height: f64,
    part: usize,
}

/// What fell to one trace.
struct Chosen {
    kind: Kind,
    readings: f64,
    parts: Vec<Part>,
    lost: Option<Lost>,
    /// A share of the pull by the second.
    sag: f64,
    still: f64,
}

/// So many cycles go beyond a gauge's end, or it has none.
const LEAST_CLIPPED: usize = 15;

/// The text of a file as a gauge writes it, and what is true of it.
pub fn trace(kind: &Kind, seed: u64) -> (String, Truth) {
    let mut chance = Chance::seeded(seed);
    let chosen = Chosen::by(kind, &mut chance);
    let (cycles, mut truth) = chosen.cycles(&mut chance);
    let text = chosen.written(&cycles, &mut truth, &mut chance);
    (text, truth)
}

impl Chosen {
    fn by(kind: &Kind, chance: &mut Chance) -> Self {
        let mut kind = *kind;
        if kind.anything {
            let mut may = |share: f64| chance.happens(share);
            kind = Kind {
                two_phases: may(0.7),
                rests: may(0.4),
                misses: may(0.4),
                weak: may(0.3),
                clip: may(0.2),
                spikes: may(0.5),
                zero: may(0.4),
                collapse: may(0.3),
                ..kind
            };
        }
        let readings = kind.readings.unwrap_or_else(|| if chance.happens(0.5) { 25.0 } else { 50.0 });
        let wave = |chance: &mut Chance| {
            let which = kind.wave.unwrap_or_else(|| chance.whole(0, WAVES.len() as i64 - 1) as usize);
            Wave::of(which, chance)
        };
        let slow = Pattern {
            rate: kind.rate.unwrap_or_else(|| chance.between(38.0, 75.0)),
            height: chance.between(130.0, 290.0),
            rest: chance.between(0.0, 30.0),
            wave: wave(chance),
        };
        let fast = Pattern {
            rate: (slow.rate * chance.between(1.4, 2.2)).min(130.0),
            height: slow.height * chance.between(0.3, 0.7),
            rest: slow.rest * chance.between(0.2, 1.0),
            wave: wave(chance),
        };
        let run = |pattern: Pattern, least: f64, most: f64, chance: &mut Chance| Part {
            seconds: chance.between(least, most).max(24.0 * 60.0 / pattern.rate),
            pattern: Some(pattern),
        };
        let mut parts = Vec::new();
        let runs = match kind.two_phases {
            false => vec![slow; chance.whole(1, if kind.rests { 3 } else { 1 }) as usize],
            true => {
                // In any order, but never twice the same in a row.
                let count = chance.whole(2, 4) as usize;
                let first = usize::from(chance.happens(0.25));
                (0..count).map(|n| if (n + first).is_multiple_of(2) { fast } else { slow }).collect()
            }
        };
        for (n, pattern) in runs.iter().enumerate() {
            if n > 0 && kind.rests && (!kind.two_phases || chance.happens(0.6)) {
                parts.push(Part { seconds: chance.between(12.0, 40.0), pattern: None });
            }
            let is_slow = pattern.rate == slow.rate;
            let (least, most) = match (is_slow, runs.len()) {
                (_, 1) => (150.0, 300.0),
                (true, _) => (70.0, 170.0),
                (false, _) => (30.0, 80.0),
            };
            parts.push(run(*pattern, least, most, chance));
        }
        let mut chosen = Self { kind, readings, parts, lost: None, sag: 0.0, still: 0.0 };
        if chance.happens(0.6) {
            chosen.still = chance.between(0.5, 4.0);
        }
        if kind.sag {
            chosen.sag = -chance.between(0.03, 0.16) / 60.0;
        }
        if kind.collapse {
            chosen.loses(slow, chance);
        }
        chosen
    }

    /// In one of the slow runs, with cycles before and after it.
    fn loses(&mut self, slow: Pattern, chance: &mut Chance) {
        let rate = slow.rate;
        let mut from = self.still;
        let mut runs = Vec::new();
        for part in &self.parts {
            if part.pattern.is_some_and(|pattern| pattern.rate == rate) {
                runs.push((from, from + part.seconds));
            }
            from += part.seconds;
        }
        let Some((from, to)) = runs.get(chance.whole(0, runs.len() as i64 - 1) as usize) else { return };
        let aside = 15.0 * 60.0 / rate;
        let room = to - from - 2.0 * aside;
        let lasts = chance.between(1.0, 50.0).min(0.8 * room);
        let begins = from + aside + chance.between(0.0, room - lasts);
        // Of the peak, with the rest it stands on, less than two thirds are left.
        let most = 0.63 - 0.37 * slow.rest / slow.height;
        // What the gauge did not show cannot be seen to fall.
        let most = if self.kind.clip { 0.7 * most } else { most };
        let left = chance.between(0.3, most.max(0.31));
        self.lost = Some(Lost { from: begins, to: begins + lasts, left });
    }

    /// What is left of the pull at a time: it runs out, or falls evenly.
    fn left(&self, at: f64) -> f64 {
        let sagged = 1.0 + self.sag * at;
        let Some(lost) = self.lost else { return sagged };
        let gone = ((at - lost.from) / (lost.to - lost.from)).clamp(0.0, 1.0);
        let gone = if lost.left > 0.45 { gone } else { (1.0 - (-3.0 * gone).exp()) / (1.0 - (-3.0_f64).exp()) };
        sagged * (1.0 - (1.0 - lost.left) * gone)
    }

    fn cycles(&self, chance: &mut Chance) -> (Vec<Cycle>, Truth) {
        let mut truth = Truth { lost: self.lost, ..Truth::default() };
        let mut cycles = Vec::new();
        let mut from = self.still;
        let mut wander = 0.0;
        for (number, part) in self.parts.iter().enumerate() {
            let Some(pattern) = part.pattern else {
                from += part.seconds;
                continue;
            };
            let (begins, ends) = (from, from + part.seconds);
            let mut last_missed = 2;
            while from < ends {
                let period = 60.0 / pattern.rate * (1.0 + 0.006 * chance.normal());
                // Neighbours are alike: what wears a pump's pull down does not throw dice.
                wander = 0.7 * wander + 0.005 * chance.normal();
                let near_edge = from - begins < 3.0 * period || ends - from < 4.0 * period;
                let may = |share: f64, chance: &mut Chance| !near_edge && chance.happens(share);
                let missed = self.kind.misses && last_missed > 0 && may(0.05, chance);
                let weak = self.kind.weak && may(0.06, chance);
                last_missed = if missed { 0 } else { last_missed + 1 };
                let left = self.left(from + period / 2.0);
                let height = pattern.height * left * (1.0 + wander);
                let height = match (missed, weak) {
                    (true, _) => 0.0,
                    (_, true) => 0.4 * height,
                    _ => height,
                };
                truth.missed += u32::from(missed);
                truth.came += u32::from(!missed);
                cycles.push(Cycle { from, period, height, part: number });
                from += period;
            }
        }
        (cycles, truth)
    }

    fn written(&self, cycles: &[Cycle], truth: &mut Truth, chance: &mut Chance) -> String {
        let end = cycles.last().map_or(0.0, |cycle| cycle.from + cycle.period) + chance.between(0.2, 2.0);
        let highest = cycles.iter().map(|cycle| self.peak(cycle)).fold(0.0, f64::max);
        if self.kind.zero {
            let sign = if chance.happens(0.5) { -1.0 } else { 1.0 };
            truth.zero = sign * highest * chance.between(0.06, 0.25);
        }
        let runs_out = chance.happens(0.5);
        let zero_by = truth.zero;
        let zero = |at: f64| {
            let gone = (at / end).clamp(0.0, 1.0);
            zero_by * if runs_out { (1.0 - (-2.0 * gone).exp()) / (1.0 - (-2.0_f64).exp()) } else { gone }
        };
        let most = highest * chance.between(0.75, 0.92);
        let beyond = |cycle: &&Cycle| self.peak(cycle) + zero(cycle.from) > 1.01 * most;
        // A gauge is at its end in a run of cycles, or there is none.
        let clips = self.kind.clip && cycles.iter().filter(beyond).count() >= LEAST_CLIPPED;
        truth.clipped = clips.then_some(most);
        truth.runs = self.runs(cycles, truth, &zero);
        truth.drift = self.sag * 60.0 * self.parts.iter().find_map(|part| part.pattern).map_or(0.0, |p| p.height);
        let noise = self.kind.noise.unwrap_or_else(|| chance.between(0.0, 1.2));
        let finest = if chance.happens(0.3) { 0.5 } else { 0.1 };
        let unsteady = chance.between(0.02, 0.12) / self.readings;
        let stamped = chance.between(0.0, 0.002);
        let bad = self.bad_rows((end * self.readings) as u32, truth, chance);
        let mut text = "time (s),pressure (mmHg)\n".to_owned();
        let mut cycle = cycles.iter().peekable();
        let (mut base, mut last) = (0.0, 0.0);
        for row in 0..(end * self.readings) as u32 {
            let at = f64::from(row + 1) / self.readings + unsteady * chance.normal();
            while cycle.peek().is_some_and(|cycle| cycle.from + cycle.period <= at) {
                cycle.next();
            }
            let running = cycle.peek().filter(|cycle| cycle.from <= at);
            let pattern = running.and_then(|cycle| self.pattern(cycle));
            // The resting vacuum comes and goes with the pump, not at once.
            let rest = pattern.map_or(0.0, |pattern| pattern.rest);
            base += (rest - base) * (1.0 - (-(at - last) / 0.2).exp());
            last = at;
            let pulled = match (running, pattern) {
                (Some(cycle), Some(pattern)) => cycle.height * pattern.wave.at((at - cycle.from) / cycle.period),
                _ => 0.0,
            };
            let mut value = base + pulled + zero(at) + noise * chance.normal();
            if let Some(most) = truth.clipped {
                value = value.min(most);
            }
            if let Some((_, wrong)) = bad.iter().find(|(bad, _)| *bad == row) {
                value = *wrong;
            }
            let value = (value / finest).round() * finest;
            let at = at + stamped * chance.normal();
            if !chance.happens(0.001) {
                writeln!(text, "{at:.3},{value:.1}").unwrap_or_default();
            }
        }
        text
    }

    /// Rows that hold what was never there: one alone, or two in a row.
    fn bad_rows(&self, rows: u32, truth: &mut Truth, chance: &mut Chance) -> Vec<(u32, f64)> {
        let mut bad: Vec<(u32, f64)> = Vec::new();
        if !self.kind.spikes {
            return bad;
        }
        for _ in 0..chance.whole(1, 12) {
            let row = chance.whole(20, i64::from(rows) - 20) as u32;
            if bad.iter().any(|(there, _)| there.abs_diff(row) < 20) {
                continue;
            }
            let value = match chance.whole(0, 3) {
                0 => 0.0,
                1 => chance.between(350.0, 500.0),
                2 => chance.between(-150.0, -40.0),
                _ => chance.between(0.0, 350.0),
            };
            truth.spikes += 1;
            bad.push((row, value));
            if chance.happens(0.2) {
                bad.push((row + 1, value));
            }
        }
        bad
    }

    fn pattern(&self, cycle: &Cycle) -> Option<Pattern> {
        self.parts.get(cycle.part)?.pattern
    }

    fn peak(&self, cycle: &Cycle) -> f64 {
        self.pattern(cycle).map_or(0.0, |pattern| pattern.rest) + cycle.height
    }

    /// Each part's run, parted again where the pull is lost.
    fn runs(&self, cycles: &[Cycle], truth: &Truth, zero: &impl Fn(f64) -> f64) -> Vec<Run> {
        let mut runs = Vec::new();
        for (number, part) in self.parts.iter().enumerate() {
            let Some(pattern) = part.pattern else { continue };
            let mine: Vec<&Cycle> = cycles.iter().filter(|cycle| cycle.part == number).collect();
            let (Some(first), Some(last)) = (mine.first(), mine.last()) else { continue };
            let (begins, ends) = (first.from, last.from + last.period);
            let edges = match self.lost {
                Some(lost) if begins < lost.from && lost.to < ends => {
                    vec![(begins, lost.from, true), (lost.from, lost.to, false), (lost.to, ends, true)]
                }
                _ => vec![(begins, ends, true)],
            };
            for (from, to, steady) in edges {
                let there =
                    |cycle: &&&Cycle| from <= cycle.from + cycle.period / 2.0 && cycle.from + cycle.period / 2.0 < to;
                let peaks: Vec<f64> = mine
                    .iter()
                    .filter(there)
                    .filter(|cycle| cycle.height > 0.0)
                    .map(|cycle| {
                        let at = cycle.from + cycle.period / 2.0;
                        let shown = self.peak(cycle) + zero(at);
                        truth.clipped.map_or(shown, |most| shown.min(most)) - zero(at)
                    })
                    .collect();
                let Some(peak) = median(&peaks) else { continue };
                let (cycles, wave) = (peaks.len(), pattern.wave.name());
                runs.push(Run { from, to, rate: pattern.rate, peak, cycles, steady, wave });
            }
        }
        runs
    }
}
