//! What a trace shows, in sentences, and what may be wrong with it.

use super::pump_words::section;
use super::trace_inputs::{Against, TraceLook};
use crate::answer::trace::{
    AsRead, AsReadPerMinute, AsReadPerSecond, Clipped, Cycles, Offset, Pattern, Seconds, Segment, TimeUnit,
};
use crate::answer::Estimate;
use crate::quantity::{say_decimal, LeakUnit, Quantity, Speed, SpeedUnit, Unit, Vacuum, VacuumUnit};
use crate::record::choices::VACUUM_UNITS;
use crate::screen::shapes::{Action, Event, FindingsScreen, ListRow, Notice, Section, Tone};
use std::cmp::Ordering;

/// Less than so many seconds without a cycle are the ends of a trace.
const LEAST_UNREAD: f64 = 2.0;

/// No pump makes as many cycles a minute: where only more could not be told, nothing is said of it.
const NONE_SO_FAST: f64 = 200.0;

impl TraceLook<'_, '_> {
    pub(super) fn render(&self) -> FindingsScreen {
        let words = self.view.words();
        let main = self.main();
        let rate = main.rate.as_ref();
        let headline = self.headline(rate);
        let figure = [rate.map(|rate| self.rate(rate)), Some(self.pressure(main.peak.usual))]
            .into_iter()
            .flatten()
            .collect::<Vec<_>>()
            .join(" \u{b7} ");
        // What the figures rest on, which may be a part of them all.
        let (of, all) = (main.count.get(), self.found.overall.count.get());
        let rests = words.with(
            if of == all { "trace-caption" } else { "trace-caption-part" },
            &[
                ("peak", self.spread(&main.peak).into()),
                ("rest", self.spread(&main.rest).into()),
                ("cycles", of.into()),
                ("all", all.into()),
            ],
        );
        let mut lines = self.collapse_lines();
        lines.extend(self.pattern_lines());
        lines.push(rests);
        lines.extend(self.cycle_lines(main));
        lines.extend(self.doubt_lines());
        lines.push(words.say("pump-defers"));
        let picture = Section { plot: Some(self.picture()), ..section(self.view, "trace-picture") };
        let rows: Vec<ListRow> = self.found.segments.iter().map(|segment| self.segment(segment)).collect();
        let phases = Section { rows, ..section(self.view, "trace-phases") };
        let close = Section { plot: Some(self.close_up()), ..section(self.view, "trace-close") };
        // People would rather look than read: what it shows in words comes after.
        let shows = Section { lines, ..section(self.view, "trace-shows") };
        let mut sections = vec![picture, close, shows];
        if self.found.segments.len() > 1 {
            sections.push(phases);
        }
        FindingsScreen {
            // One headline: the figures behind it are its caption.
            spoken: [headline.as_str(), figure.as_str()].join(". "),
            headline,
            figure: String::new(),
            caption: figure,
            dial: None,
            lines: Vec::new(),
            asks: self.asks(),
            actions: Vec::new(),
            sections,
        }
    }

    pub(super) fn headline(&self, rate: Option<&Estimate<Speed>>) -> String {
        let words = self.view.words();
        if let Some(lost) = self.collapses().first() {
            let within = (lost.to.get() - lost.from.get()).ceil().max(1.0) as i64;
            return words.with(
                "trace-lost",
                &[
                    ("before", self.pressure(lost.before).into()),
                    ("after", self.pressure(lost.after).into()),
                    ("seconds", within.into()),
                    ("at", self.at(lost.from).into()),
                ],
            );
        }
        let Some(rate) = rate else { return words.say("trace-no-one-rate") };
        let (range, whose) = match &self.against {
            Against::Maker(range) => (range, "maker"),
            Against::Usual(range) => (range, "usual"),
            Against::Stimulation(range) => (range, "stimulation"),
        };
        if self.perhaps_stimulation() {
            let band = self.rules.stimulation_cycles;
            let ends = [band.low, band.high].map(|end| say_decimal(end.canonical(), 0));
            let [low, high] = ends;
            return words.with("trace-perhaps-stimulation", &[("low", low.into()), ("high", high.into())]);
        }
        // Its whole range lies beyond before it is called so.
        let place = if rate.high < range.low {
            "slower"
        } else if rate.low > range.high {
            "faster"
        } else {
            "within"
        };
        words.with(
            &format!("trace-{place}-{whose}"),
            &[
                ("low", say_decimal(range.low.canonical(), 0).into()),
                ("high", say_decimal(range.high.canonical(), 0).into()),
            ],
        )
    }

    /// What to look at first, and the rate, which a headline of a lost pull does not say.
    pub(super) fn collapse_lines(&self) -> Vec<String> {
        let words = self.view.words();
        let count = self.collapses().len();
        let mut lines = Vec::new();
        if count > 1 {
            lines.push(words.with("trace-lost-again", &[("count", count.into())]));
        }
        if count > 0 {
            lines.push(words.say("trace-lost-do"));
        }
        lines
    }

    pub(super) fn pattern_lines(&self) -> Vec<String> {
        let words = self.view.words();
        let at = |seconds: &Seconds| self.at(*seconds);
        match (self.found.pattern, self.found.switches.first()) {
            (Pattern::One, _) | (_, None) => vec![words.say("trace-one-pattern")],
            (Pattern::LetdownAndExpression, Some(first)) => {
                vec![words.with("trace-two-patterns", &[("at", at(first).into())])]
            }
            (Pattern::Changing, Some(first)) => vec![words.with("trace-changes", &[("at", at(first).into())])],
        }
    }

    pub(super) fn cycle_lines(&self, cycles: &Cycles) -> Vec<String> {
        let words = self.view.words();
        let mut lines = Vec::new();
        if let Some(share) = cycles.at_vacuum {
            lines.push(words.with("trace-at-vacuum", &[("percent", share.per_cent().into())]));
        }
        if let (Some(rise), Some(release)) = (cycles.rise, cycles.release) {
            let seconds = |s: Seconds| say_decimal(s.get(), 2);
            lines.push(
                words.with(
                    "trace-rise-release",
                    &[("rise", seconds(rise).into()), ("release", seconds(release).into())],
                ),
            );
        }
        let overall = &self.found.overall;
        let percent = |share: crate::quantity::Share| say_decimal(share.fraction() * 100.0, 0);
        lines.push(match overall.missed.get() == 0 && overall.weak_share.fraction() <= 0.0 {
            true => words.say("trace-none-missed"),
            false => words.with(
                "trace-missed-weak",
                &[("missed", percent(overall.missed_share).into()), ("weak", percent(overall.weak_share).into())],
            ),
        });
        if overall.stops.get() > 0 {
            lines.push(words.with("trace-stops", &[("count", overall.stops.get().into())]));
        }
        if let (Some(drift), Some(unit)) = (&cycles.peak_drift, self.unit) {
            let key = match self.way(drift, unit) {
                Some(Ordering::Less) => "trace-sinks",
                Some(_) => "trace-rises",
                None => "trace-steady",
            };
            lines.push(self.moved(key, drift.value.get(), [drift.low.get(), drift.high.get()], unit));
        }
        if let (Some(by), Some(unit)) = (&self.found.rest_rises, self.unit) {
            lines.push(self.moved("trace-rest-rises", by.value.get(), [by.low.get(), by.high.get()], unit));
        }
        if let (Some(leak), Some(unit)) = (&cycles.leak, self.unit) {
            lines.push(self.leak(leak, unit));
        }
        lines
    }

    /// Which way something moves; None where its range holds that it does not, or it is next to nothing.
    pub(super) fn way(&self, drift: &Estimate<AsReadPerMinute>, unit: VacuumUnit) -> Option<Ordering> {
        let words = self.view.words();
        let said = |by: f64| words.vacuum(Vacuum::of(by.abs(), unit));
        let moves = said(drift.value.get()) != said(0.0);
        if drift.high.get() < 0.0 && moves {
            Some(Ordering::Less)
        } else if drift.low.get() > 0.0 && moves {
            Some(Ordering::Greater)
        } else {
            None
        }
    }

    /// By how much something moved, without its sign, and the range of it.
    pub(super) fn moved(&self, key: &str, by: f64, ends: [f64; 2], unit: VacuumUnit) -> String {
        let words = self.view.words();
        let of = |value: f64| Vacuum::of(value.abs(), unit);
        let [least, most] = if by < 0.0 { [ends[1], ends[0]] } else { ends };
        words.with(
            key,
            &[("by", words.vacuum(of(by)).into()), ("range", words.vacuum_range(of(least), of(most)).into())],
        )
    }

    pub(super) fn leak(&self, leak: &Estimate<AsReadPerSecond>, unit: VacuumUnit) -> String {
        let words = self.view.words();
        if leak.low.get() <= 0.0 {
            return words.say("trace-no-leak");
        }
        let in_unit = |value: AsReadPerSecond| match self.view.settings.vacuum {
            VacuumUnit::Kilopascal => {
                let unit_read = LeakUnit::KilopascalPerSecond;
                words.with_unit(say_decimal(value.leak(unit).in_unit(unit_read), 2), unit_read)
            }
            _ => {
                let unit_read = LeakUnit::MillimeterOfMercuryPerSecond;
                words.with_unit(say_decimal(value.leak(unit).in_unit(unit_read), 1), unit_read)
            }
        };
        words.with(
            "trace-leak",
            &[
                ("by", in_unit(leak.value).into()),
                ("low", in_unit(leak.low).into()),
                ("high", in_unit(leak.high).into()),
            ],
        )
    }

    /// Noise, offset, clipping, dropouts, and what was assumed: said, not hidden.
    pub(super) fn doubt_lines(&self) -> Vec<String> {
        let words = self.view.words();
        let notes = &self.found.notes;
        let noise = self.pressure(self.found.noise);
        let mut lines = vec![match noise == self.pressure(AsRead::new(0.0)) {
            true => words.say("trace-no-noise"),
            false => words.with("trace-noise", &[("noise", noise.into())]),
        }];
        if let (Some(by), Some(unit)) = (&self.found.zero, self.unit) {
            let key = if by.value.get() < 0.0 { "trace-zero-down" } else { "trace-zero-up" };
            lines.push(self.moved(key, by.value.get(), [by.low.get(), by.high.get()], unit));
        }
        match self.found.offset {
            Some(Offset::Still(off)) => {
                lines.push(words.with("trace-offset-still", &[("off", self.pressure(off).into())]));
            }
            Some(Offset::AboveAmbient(off)) => {
                lines.push(words.with("trace-offset-above", &[("off", self.pressure(off).into())]));
            }
            None => {}
        }
        if let Some(Clipped { at, share }) = self.found.clipped {
            lines.push(
                words.with("trace-clipped", &[("at", self.pressure(at).into()), ("percent", share.per_cent().into())]),
            );
        }
        if let Some(spikes) = notes.spikes.filter(|spikes| spikes.get() > 0) {
            lines.push(words.with("trace-spikes", &[("count", spikes.get().into())]));
        }
        if let Some(fastest) = self.found.fastest.filter(|fastest| fastest.canonical() < NONE_SO_FAST) {
            let readings = say_decimal(1.0 / notes.native_step.get(), 0);
            let rate = words.with_unit(say_decimal(fastest.canonical(), 0), SpeedUnit::PerMinute);
            lines.push(words.with("trace-fastest", &[("readings", readings.into()), ("rate", rate.into())]));
        }
        if notes.dropouts.get() > 0 {
            lines.push(words.with(
                "trace-dropouts",
                &[("count", notes.dropouts.get().into()), ("seconds", say_decimal(notes.dropped.get(), 1).into())],
            ));
        }
        if self.found.unread.get() >= LEAST_UNREAD {
            let seconds = say_decimal(self.found.unread.get(), 0);
            lines.push(words.with("trace-unread", &[("seconds", seconds.into())]));
        }
        if let Some(line) = notes.first_passed_over {
            lines.push(words.with(
                "trace-passed-over",
                &[("count", notes.passed_over.get().into()), ("line", line.get().to_string().into())],
            ));
        }
        if notes.sign_turned {
            lines.push(words.say("trace-sign-turned"));
        }
        if let Some(unit) = notes.time_unit_assumed {
            lines.push(words.say(match unit {
                TimeUnit::Second => "trace-time-seconds",
                TimeUnit::Millisecond => "trace-time-milliseconds",
                TimeUnit::Microsecond => "trace-time-microseconds",
                TimeUnit::Minute => "trace-time-minutes",
            }));
        }
        if notes.times_spread {
            lines.push(words.say("trace-times-spread"));
        }
        lines
    }

    pub(super) fn asks(&self) -> Vec<Notice> {
        let words = self.view.words();
        let meant = |unit: &str, key: String, label: String| {
            Action::new(key, label, Event::MeantIn { id: self.id.to_owned(), unit: unit.to_owned() })
        };
        let notice = |key: &str, text: String, actions: Vec<Action>| Notice {
            key: key.to_owned(),
            tone: Tone::Asks,
            spoken: text.clone(),
            text,
            actions,
        };
        let Some(unit) = self.unit else {
            let actions = VACUUM_UNITS
                .iter()
                .filter_map(|ucum| {
                    let unit = VacuumUnit::from_ucum(ucum)?;
                    let name: String = ucum.chars().filter(char::is_ascii_alphanumeric).collect();
                    Some(meant(ucum, format!("meant-{name}"), words.unit(unit)))
                })
                .collect();
            return vec![notice("unit", words.say("asks-trace-unit"), actions)];
        };
        let highest = self.found.overall.highest;
        let read = highest.vacuum(unit);
        if unit == VacuumUnit::MillimeterOfMercury && !self.unit_is_right && read < self.rules.likely_kilopascal {
            let text = words.with(
                "asks-kilopascal",
                &[
                    ("read", words.vacuum(read).into()),
                    ("meant", words.vacuum(highest.vacuum(VacuumUnit::Kilopascal)).into()),
                ],
            );
            let actions = vec![
                meant("kPa", "meant-kPa".to_owned(), words.say("meant-kilopascal")),
                meant("mm[Hg]", "meant-mmHg".to_owned(), words.say("readings-are-right")),
            ];
            return vec![notice("kilopascal", text, actions)];
        }
        if self.perhaps_stimulation() {
            let phase = |typed: &str, label: &str| {
                let field = "trace_phase".to_owned();
                let event = Event::Enter { id: self.id.to_owned(), field, typed: typed.to_owned() };
                Action::new(format!("trace-phase-{typed}"), words.say(label), event)
            };
            let actions = vec![phase("letdown", "phase-letdown"), phase("expression", "phase-expression")];
            return vec![notice("stimulation", words.say("asks-trace-phase"), actions)];
        }
        Vec::new()
    }

    pub(super) fn segment(&self, segment: &Segment) -> ListRow {
        let words = self.view.words();
        let title = words.with(
            "trace-segment",
            &[
                ("phase", self.phase_text(segment).into()),
                ("from", self.at(segment.from).into()),
                ("to", self.at(segment.to).into()),
            ],
        );
        let mut parts: Vec<String> = segment.cycles.rate.iter().map(|rate| self.rate(rate)).collect();
        parts.push(words.with("trace-peak", &[("peak", self.spread(&segment.cycles.peak).into())]));
        parts.push(words.with("trace-rest", &[("rest", self.spread(&segment.cycles.rest).into())]));
        if let (Some(drift), Some(unit)) = (&segment.cycles.peak_drift, self.unit) {
            let key =
                self.way(drift, unit).map(|way| if way.is_lt() { "trace-sinks-short" } else { "trace-rises-short" });
            parts.extend(key.map(|key| self.moved(key, drift.value.get(), [drift.low.get(), drift.high.get()], unit)));
        }
        self.view.text_row(title, parts.join(" \u{b7} "))
    }
}
