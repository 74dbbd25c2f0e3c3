//! A trace with its unit and what it is held against, and how its figures are written.

use crate::answer::trace::{AsRead, Collapse, Cycles, Findings, Seconds, Segment, Spread};
use crate::answer::Estimate;
use crate::guidance::{CycleRange, KitRules};
use crate::quantity::{say_decimal, Entered, Quantity, Speed, SpeedUnit, Unit, Vacuum, VacuumUnit};
use crate::record::mark::Phase;
use crate::record::{flag, text, Fields};
use crate::screen::View;
use crate::time::Span;
use crate::trouble::Trouble;

/// Against which cycles a trace is held.
pub(super) enum Against {
    Maker(CycleRange),
    Usual(CycleRange),
}

/// A trace with its unit and what it is held against.
pub(super) struct TraceLook<'t, 'v> {
    pub(super) view: &'t View<'v>,
    pub(super) id: &'t str,
    pub(super) found: &'t Findings,
    /// None until somebody says in which unit it is.
    pub(super) unit: Option<VacuumUnit>,
    pub(super) unit_is_right: bool,
    pub(super) rules: KitRules,
    pub(super) against: Against,
}

pub(super) fn length(segment: &Segment) -> f64 {
    segment.to.get() - segment.from.get()
}

impl<'t, 'v> TraceLook<'t, 'v> {
    pub(super) fn over(view: &'t View<'v>, id: &'t str, fields: &Fields, found: &'t Findings) -> Result<Self, Trouble> {
        let rules = KitRules::read(view.rules()?);
        let pump = match text(fields, "pump") {
            Some(pump) => view.journal.record(pump)?.map(|(_, fields)| fields).unwrap_or_default(),
            None => Fields::new(),
        };
        let stated = |key: &str| pump.get(key).and_then(Entered::<Speed>::from_json).map(|e| e.quantity());
        let against = match (stated("cycles_low"), stated("cycles_high")) {
            (Some(low), Some(high)) => Against::Maker(CycleRange { low, high }),
            _ => Against::Usual(rules.usual_cycles),
        };
        Ok(Self {
            view,
            id,
            found,
            unit: text(fields, "unit").and_then(VacuumUnit::from_ucum),
            unit_is_right: flag(fields, "unit_is_right"),
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

    /// The cycles that are held against a range: those of expression where there is one, else of the longest
    /// segment; all of them where none has a rate of its own.
    pub(super) fn main(&self) -> &Cycles {
        let longest = |phase: Option<Phase>| {
            let of = self.found.segments.iter().filter(move |s| s.phase == phase);
            of.max_by(|a, b| length(a).total_cmp(&length(b)))
        };
        let one_rate = self.found.overall.rate.is_some();
        let main = longest(Some(Phase::Expression)).or_else(|| longest(None).filter(|_| one_rate));
        main.map_or(&self.found.overall, |segment| &segment.cycles)
    }

    /// Where the pull was lost, in order.
    pub(super) fn collapses(&self) -> &[Collapse] {
        self.found.collapses.as_deref().unwrap_or_default()
    }

    pub(super) fn at(&self, seconds: Seconds) -> String {
        self.view.words().running(Span::milliseconds((seconds.get() * 1000.0) as i64))
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
