//! A trace with its unit and what it is held against, and how its figures are written.

use crate::answer::trace::{AsRead, Collapse, Cycles, Findings, Pattern, Seconds, Segment, Spread};
use crate::answer::Estimate;
use crate::guidance::{CycleRange, KitRules};
use crate::quantity::{say_decimal, Entered, Quantity, Speed, SpeedUnit, Unit, Vacuum, VacuumUnit};
use crate::record::{flag, text, Fields};
use crate::screen::View;
use crate::time::Span;
use crate::trouble::Trouble;

/// Against which cycles a trace is held.
pub(super) enum Against {
    Maker(CycleRange),
    Usual(CycleRange),
    /// The trace shows a stimulation phase alone, which is faster.
    Stimulation(CycleRange),
}

/// A trace with its unit and what it is held against.
pub(super) struct TraceLook<'t, 'v> {
    pub(super) view: &'t View<'v>,
    pub(super) id: &'t str,
    pub(super) found: &'t Findings,
    /// None until somebody says in which unit it is.
    pub(super) unit: Option<VacuumUnit>,
    pub(super) unit_is_right: bool,
    /// Somebody said which phase it shows.
    pub(super) phase_is_said: bool,
    pub(super) rules: KitRules,
    pub(super) against: Against,
}

impl<'t, 'v> TraceLook<'t, 'v> {
    pub(super) fn over(view: &'t View<'v>, id: &'t str, fields: &Fields, found: &'t Findings) -> Result<Self, Trouble> {
        let rules = KitRules::read(view.rules()?);
        let pump = match text(fields, "pump") {
            Some(pump) => view.journal.record(pump)?.map(|(_, fields)| fields).unwrap_or_default(),
            None => Fields::new(),
        };
        let stated = |key: &str| pump.get(key).and_then(Entered::<Speed>::from_json).map(|e| e.quantity());
        let phase = text(fields, "trace_phase");
        let against = match (stated("cycles_low"), stated("cycles_high")) {
            _ if phase == Some("letdown") => Against::Stimulation(rules.stimulation_cycles),
            (Some(low), Some(high)) => Against::Maker(CycleRange { low, high }),
            _ => Against::Usual(rules.usual_cycles),
        };
        Ok(Self {
            view,
            id,
            found,
            unit: text(fields, "unit").and_then(VacuumUnit::from_ucum),
            unit_is_right: flag(fields, "unit_is_right"),
            phase_is_said: phase.is_some(),
            rules,
            against,
        })
    }

    /// A pressure in the unit that is read, or as it stands in the file.
    pub(super) fn pressure(&self, value: AsRead) -> String {
        match self.unit {
            Some(unit) => self.view.words().vacuum(value.vacuum(unit)),
            None => say_decimal(value.get(), 1),
        }
    }

    pub(super) fn spread(&self, spread: &Spread<AsRead>) -> String {
        let figure = |value: AsRead| match self.unit {
            Some(unit) => self.view.words().vacuum_figure(value.vacuum(unit)),
            None => say_decimal(value.get(), 1),
        };
        self.view.words().with(
            "trace-spread",
            &[
                ("usual", self.pressure(spread.usual).into()),
                ("low", figure(spread.low).into()),
                ("high", figure(spread.high).into()),
            ],
        )
    }

    pub(super) fn rate(&self, rate: &Estimate<Speed>) -> String {
        let figure = say_decimal(rate.value.canonical(), 0);
        self.view.words().with_unit(figure, SpeedUnit::PerMinute)
    }

    /// The cycles that are held against a range.
    pub(super) fn main(&self) -> &Cycles {
        self.found.main()
    }

    /// Where the pull was lost, in order.
    pub(super) fn collapses(&self) -> &[Collapse] {
        self.found.collapses.as_deref().unwrap_or_default()
    }

    pub(super) fn at(&self, seconds: Seconds) -> String {
        self.view.words().running(Span::milliseconds((seconds.get() * 1000.0) as i64))
    }

    /// Whether it may show a stimulation phase alone: one pattern, faster than it is held against, and as fast as that
    /// phase is.
    pub(super) fn perhaps_stimulation(&self) -> bool {
        let range = match &self.against {
            Against::Maker(range) | Against::Usual(range) => range,
            Against::Stimulation(_) => return false,
        };
        let band = self.rules.stimulation_cycles;
        let fast = |rate: &Estimate<Speed>| rate.low > range.high && rate.value >= band.low && rate.value <= band.high;
        !self.phase_is_said && self.found.pattern == Pattern::One && self.main().rate.as_ref().is_some_and(fast)
    }

    pub(super) fn phase_text(&self, segment: &Segment) -> String {
        let words = self.view.words();
        match segment.phase {
            Some(phase) => words.say(&format!("phase-{}", phase.name())),
            None => words.say("trace-stretch"),
        }
    }

    /// A pressure for drawing: never above ambient.
    pub(super) fn drawn(&self, value: AsRead) -> Vacuum {
        let unit = self.unit.unwrap_or(self.view.settings.vacuum);
        Vacuum::from_canonical(value.vacuum(unit).canonical().max(0.0))
    }
}
