//! A dial like the gauge in the hand.

use super::pump_words;
use crate::answer::pump::Limits;
use crate::gather::kit::SideInputs;
use crate::quantity::{say_decimal, Quantity, Unit, Vacuum, VacuumUnit};
use crate::record::Sides;
use crate::screen::shapes::{DialArc, DialHand, DialPicture, Tick};
use crate::screen::View;

/// The sweep of a dial where no gauge gives it, in mmHg: that of the gauge pumps are
/// usually tested with (common practice, no source).
const USUAL_SPAN: f64 = 450.0;
/// Steps between ticks, in any unit.
const STEPS: [f64; 9] = [1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0, 200.0, 500.0];
const MOST_TICKS: f64 = 10.0;

/// What the sweep stands for.
#[derive(Clone, Copy)]
pub(super) struct Sweep {
    top: f64,
    unit: VacuumUnit,
}

impl Sweep {
    /// Wide enough for a gauge's span, or the usual one, and for what is shown on it.
    pub(super) fn of(span: Option<Vacuum>, shown: impl Iterator<Item = Vacuum>, unit: VacuumUnit) -> Self {
        let most = shown.map(Quantity::canonical).fold(0.0, f64::max);
        // A gauge for full vacuum would leave a pump's range in a corner.
        let span = span.map(Quantity::canonical).filter(|span| *span <= 1.4 * USUAL_SPAN).unwrap_or(USUAL_SPAN);
        Self { top: Vacuum::from_canonical(span.max(most * 1.05)).in_unit(unit), unit }
    }

    pub(super) fn at(self, vacuum: Vacuum) -> f32 {
        ((vacuum.in_unit(self.unit) / self.top) as f32).clamp(0.0, 1.0)
    }

    fn ticks(self) -> Vec<Tick> {
        let step = STEPS.into_iter().find(|step| self.top / step <= MOST_TICKS).unwrap_or(self.top);
        (0..)
            .map(|n| f64::from(n) * step)
            .take_while(|value| *value <= self.top * 1.000_001)
            .map(|value| Tick { at: (value / self.top) as f32, label: say_decimal(value, 1) })
            .collect()
    }
}

/// The letter or word beside a hand.
fn tip(view: &View<'_>, side: Sides) -> String {
    match side {
        Sides::Left => view.words().say("dial-left"),
        Sides::Right => view.words().say("dial-right"),
        Sides::Both => String::new(),
    }
}

/// The range along the rim, with its label.
fn arc(view: &View<'_>, limits: &Limits, sweep: Sweep) -> Option<DialArc> {
    let (low, high) = (limits.low, limits.high.or(limits.usually_to));
    if low.is_none() && high.is_none() {
        return None;
    }
    Some(DialArc {
        from: low.map_or(0.0, |low| sweep.at(low)),
        to: high.map_or(1.0, |high| sweep.at(high)),
        label: pump_words::limits_text(view, limits),
    })
}

/// Sides with their error against a range.
pub(super) fn of_sides(view: &View<'_>, sides: &[SideInputs], limits: &Limits, span: Option<Vacuum>) -> DialPicture {
    let words = view.words();
    let unit = view.settings.vacuum;
    let pulls: Vec<_> = sides.iter().filter_map(|s| s.pull.as_ref().ok().map(|pull| (s.side, pull.estimate))).collect();
    let shown = pulls.iter().map(|(_, e)| e.high).chain(limits.low).chain(limits.high).chain(limits.usually_to);
    let sweep = Sweep::of(span, shown, unit);
    let arcs: Vec<DialArc> = arc(view, limits, sweep).into_iter().collect();
    let figures: Vec<String> = pulls.iter().map(|(_, e)| words.vacuum_figure(e.value)).collect();
    let mut spoken: Vec<String> = pulls
        .iter()
        .map(|(side, e)| {
            words.with(
                "dial-spoken",
                &[
                    ("side", pump_words::side_text(view, *side).into()),
                    ("value", words.vacuum(e.value).into()),
                    ("range", words.vacuum_range(e.low, e.high).into()),
                ],
            )
        })
        .collect();
    spoken.extend(arcs.iter().map(|arc| words.with("dial-spoken-range", &[("range", arc.label.clone().into())])));
    DialPicture {
        hands: pulls
            .iter()
            .map(|(side, e)| DialHand {
                low: sweep.at(e.low),
                at: sweep.at(e.value),
                high: sweep.at(e.high),
                label: tip(view, *side),
            })
            .collect(),
        legend: words.say("dial-legend"),
        arcs,
        ticks: sweep.ticks(),
        figure: figures.join(" \u{b7} "),
        unit: words.unit(unit),
        spoken: spoken.join(" "),
    }
}

/// Bare readings, one hand each, as the gauge shows them.
pub(super) fn of_readings(
    view: &View<'_>,
    readings: &[(Sides, Vacuum)],
    span: Option<Vacuum>,
    unit: VacuumUnit,
) -> DialPicture {
    let words = view.words();
    let sweep = Sweep::of(span, readings.iter().map(|(_, vacuum)| *vacuum), unit);
    let figure = |vacuum: Vacuum| say_decimal(vacuum.in_unit(unit), unit.places());
    DialPicture {
        arcs: Vec::new(),
        hands: readings
            .iter()
            .map(|(side, vacuum)| {
                let at = sweep.at(*vacuum);
                DialHand { low: at, at, high: at, label: tip(view, *side) }
            })
            .collect(),
        ticks: sweep.ticks(),
        figure: readings.last().map(|(_, vacuum)| figure(*vacuum)).unwrap_or_default(),
        unit: words.unit(unit),
        legend: String::new(),
        spoken: words.with(
            "dial-readings-spoken",
            &[
                ("count", (readings.len() as i64).into()),
                ("last", readings.last().map(|(_, v)| words.with_unit(figure(*v), unit)).unwrap_or_default().into()),
            ],
        ),
    }
}
