//! What really is there and really comes, which the family never sees.
//!
//! Each side fills at its own rate, slower the fuller it is, and somewhat
//! faster in the small hours. What is drawn is a share of what is there.

use super::{curve::along, story};
use crate::chance::Chance;

const LEFT_SHARE: f64 = 0.45;
/// What a side holds, in mL, before it stops filling.
const LEFT_ROOM: f64 = 190.0;
const RIGHT_ROOM: f64 = 230.0;
/// Rates are taken anew so often.
const STEP_HOURS: f64 = 0.25;

/// Both sides, since the birth.
pub(super) struct Milk {
    left: f64,
    right: f64,
    /// Up to when they have filled, in hours since the birth day began.
    hour: f64,
}

/// What came from each side, in mL; none where a side took no part.
#[derive(Clone, Copy)]
pub(super) struct Came {
    pub(super) left: Option<f64>,
    pub(super) right: Option<f64>,
}

impl Milk {
    pub(super) fn at_birth() -> Self {
        Self { left: 2.0, right: 2.0, hour: 4.0 }
    }

    /// Lets time pass.
    pub(super) fn fill_until(&mut self, hour: f64) {
        while self.hour < hour {
            let step = STEP_HOURS.min(hour - self.hour);
            let day = (self.hour / 24.0).floor();
            let mood = Chance::on(day as i64, "mood").around(1.0, 0.05);
            let made = story::made_in_a_day(self.hour / 24.0) * mood / 24.0 * step;
            let made = made * of_the_clock(self.hour - day * 24.0);
            self.left += made * LEFT_SHARE * (1.0 - self.left / LEFT_ROOM).max(0.05);
            self.right += made * (1.0 - LEFT_SHARE) * (1.0 - self.right / RIGHT_ROOM).max(0.05);
            self.hour += step;
        }
    }

    /// Takes a share of what each side holds.
    pub(super) fn draw(&mut self, left: Option<f64>, right: Option<f64>) -> Came {
        Came { left: take(&mut self.left, left), right: take(&mut self.right, right) }
    }

    /// Takes from the fuller side until enough is had, as a child does.
    pub(super) fn drink(&mut self, wanted: f64, from_left: bool) -> f64 {
        let side = if from_left { &mut self.left } else { &mut self.right };
        let drunk = wanted.min(*side * 0.8);
        *side -= drunk;
        drunk
    }

    pub(super) fn left_is_fuller(&self) -> bool {
        self.left / LEFT_SHARE > self.right / (1.0 - LEFT_SHARE)
    }
}

fn take(side: &mut f64, share: Option<f64>) -> Option<f64> {
    let came = *side * share?.clamp(0.0, 0.97);
    *side -= came;
    Some(came)
}

/// How the rate goes with the hour of the day, about 1.
fn of_the_clock(hour: f64) -> f64 {
    const RATE: &[(f64, f64)] =
        &[(0.0, 1.10), (4.0, 1.22), (8.0, 1.12), (13.0, 0.92), (19.0, 0.80), (22.0, 0.92), (24.0, 1.10)];
    along(RATE, hour)
}
