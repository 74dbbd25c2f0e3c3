//! A trace drawn: all of it, and a few cycles of it.

use super::plot::{empty, Height};
use super::trace_inputs::TraceLook;
use crate::answer::trace::{AsRead, Seconds};
use crate::quantity::say_decimal;
use crate::record::mark::Phase;
use crate::screen::shapes::{Phase as ShownPhase, PlotColumn, PlotCourse, PlotPicture, PlotStretch, RibbonPoint, Tick};
use crate::screen::View;
use crate::time::Span;

impl TraceLook<'_, '_> {
    /// A few cycles, as a line; a dropout breaks it.
    pub(super) fn close_up(&self) -> PlotPicture {
        let words = self.view.words();
        let close = &self.found.close;
        let height = Height::over(self.view, close.values.iter().flatten().map(|value| self.drawn(*value)), true);
        let count = close.values.len().max(2) as f32 - 1.0;
        let points: Vec<Option<RibbonPoint>> = close
            .values
            .iter()
            .enumerate()
            .map(|(place, value)| {
                let at = height.at(self.drawn((*value)?));
                Some(RibbonPoint { at: place as f32 / count, low: at, middle: at, high: at })
            })
            .collect();
        let courses = points
            .split(Option::is_none)
            .map(|run| PlotCourse { points: run.iter().flatten().cloned().collect(), dashed: false })
            .filter(|course| course.points.len() > 1)
            .collect();
        let seconds = f64::from(count) * close.step.get();
        PlotPicture {
            courses,
            ticks: ticks(self.view, seconds),
            scale: height.labels(self.view),
            legend: words.say("trace-close-legend"),
            spoken: words.with("trace-close-spoken", &[("seconds", say_decimal(seconds, 0).into())]),
            ..empty()
        }
    }

    pub(super) fn picture(&self) -> PlotPicture {
        let words = self.view.words();
        let vacuum = |value: AsRead| self.drawn(value);
        let shown = self.found.picture.iter().flatten().map(|column| vacuum(column.high));
        let height = Height::over(self.view, shown, true);
        let count = self.found.picture.len().max(1) as f32;
        let columns = self
            .found
            .picture
            .iter()
            .enumerate()
            .filter_map(|(place, column)| {
                let column = column.as_ref()?;
                Some(PlotColumn {
                    at: (place as f32 + 0.5) / count,
                    low: height.at(vacuum(column.low)),
                    high: height.at(vacuum(column.high)),
                })
            })
            .collect();
        let whole = self.found.duration.get().max(f64::MIN_POSITIVE);
        let across = |seconds: Seconds| ((seconds.get() / whole) as f32).clamp(0.0, 1.0);
        let stretches = match self.found.segments.len() {
            0 | 1 => Vec::new(),
            _ => self
                .found
                .segments
                .iter()
                .map(|segment| PlotStretch {
                    from: across(segment.from),
                    to: across(segment.to),
                    phase: match segment.phase {
                        Some(Phase::Letdown) => ShownPhase::Letdown,
                        Some(Phase::Expression) => ShownPhase::Expression,
                        Some(Phase::Rest) => ShownPhase::Rest,
                        None => ShownPhase::Unsaid,
                    },
                    label: self.phase_text(segment),
                })
                .collect(),
        };
        PlotPicture {
            columns,
            stretches,
            ticks: ticks(self.view, whole),
            scale: height.labels(self.view),
            legend: words.say("trace-legend"),
            spoken: words.with(
                "trace-spoken",
                &[
                    ("seconds", say_decimal(whole, 0).into()),
                    ("cycles", self.found.overall.count.get().into()),
                    ("highest", self.pressure(self.found.overall.highest).into()),
                ],
            ),
            ..empty()
        }
    }
}

/// Labels along the time of a trace, in seconds or in minutes.
fn ticks(view: &View<'_>, seconds: f64) -> Vec<Tick> {
    let words = view.words();
    const STEPS: [f64; 12] = [1.0, 2.0, 5.0, 10.0, 20.0, 30.0, 60.0, 120.0, 300.0, 600.0, 1800.0, 7200.0];
    let step = STEPS.into_iter().find(|step| seconds / step <= 5.0).unwrap_or(seconds);
    (0..)
        .map(|n| f64::from(n) * step)
        .take_while(|at| *at <= seconds)
        .map(|at| Tick { at: (at / seconds) as f32, label: words.running(Span::milliseconds((at * 1000.0) as i64)) })
        .collect()
}
