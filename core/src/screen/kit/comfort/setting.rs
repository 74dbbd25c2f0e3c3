//! A setting in words and along a picture: in mmHg, or in the levels of a pump.

use super::super::plot::Height;
use crate::answer::comfort::Axis;
use crate::quantity::{Level, Vacuum};
use crate::screen::shapes::Tick;
use crate::screen::View;

/// Labels along levels.
const MOST_LABELS: u32 = 6;

/// A setting that can be said and drawn.
pub(super) trait Setting: Axis + PartialOrd {
    /// In words.
    fn say(self, view: &View<'_>) -> String;
    /// A range in words.
    fn say_between(view: &View<'_>, low: Self, high: Self) -> String;
    /// A height just wide enough for what is shown.
    fn ladder(view: &View<'_>, shown: &[Self]) -> Ladder<Self>;
}

/// A height that settings are drawn at.
pub(super) struct Ladder<Q> {
    at: Box<dyn Fn(Q) -> f32>,
    /// Its labels.
    pub(super) labels: Vec<Tick>,
}

impl<Q> Ladder<Q> {
    pub(super) fn at(&self, setting: Q) -> f32 {
        (self.at)(setting)
    }
}

impl Setting for Vacuum {
    fn say(self, view: &View<'_>) -> String {
        view.words().vacuum(self)
    }

    fn say_between(view: &View<'_>, low: Self, high: Self) -> String {
        view.words().vacuum_range(low, high)
    }

    fn ladder(view: &View<'_>, shown: &[Self]) -> Ladder<Self> {
        let height = Height::over(view, shown.iter().copied(), false);
        Ladder { at: Box::new(move |vacuum| height.at(vacuum)), labels: height.labels(view) }
    }
}

impl Setting for Level {
    fn say(self, view: &View<'_>) -> String {
        view.words().with("comfort-level", &[("level", self.get().into())])
    }

    fn say_between(view: &View<'_>, low: Self, high: Self) -> String {
        view.words().with("comfort-levels", &[("low", low.get().into()), ("high", high.get().into())])
    }

    fn ladder(view: &View<'_>, shown: &[Self]) -> Ladder<Self> {
        let top = shown.iter().max().map_or(1, |level| level.get()).saturating_add(1);
        let at = move |level: Self| (level.get() as f32 / top as f32).clamp(0.0, 1.0);
        let step = top.div_ceil(MOST_LABELS).max(1);
        let labels = (0..=top).step_by(step as usize);
        let mut labels: Vec<Tick> =
            labels.map(|level| Tick { at: at(Self::new(level)), label: level.to_string() }).collect();
        // What they are once, at the top.
        if let Some(top) = labels.last_mut() {
            top.label = view.words().with("comfort-level", &[("level", top.label.as_str().into())]);
        }
        Ladder { at: Box::new(at), labels }
    }
}
