//! The scale along a column: how much its top stands for, and how fine a step is.

use super::Record;
use crate::quantity::{say_decimal, Quantity, Unit, Volume, VolumeUnit};
use crate::record::{Amount, Session};
use crate::trouble::Trouble;

/// Tops a column can have, in the unit that is read.
fn tops(unit: VolumeUnit) -> &'static [f64] {
    match unit {
        VolumeUnit::Milliliter => {
            &[10.0, 20.0, 40.0, 60.0, 80.0, 120.0, 160.0, 200.0, 300.0, 400.0, 600.0, 1000.0, 2000.0]
        }
        VolumeUnit::FluidOunce => &[0.5, 1.0, 2.0, 3.0, 4.0, 6.0, 8.0, 12.0, 16.0, 24.0, 40.0, 64.0],
    }
}

/// The top where nothing is known yet.
fn usual_top(unit: VolumeUnit) -> f64 {
    match unit {
        VolumeUnit::Milliliter => 120.0,
        VolumeUnit::FluidOunce => 4.0,
    }
}

/// How many earlier sessions the scale looks at.
const LOOKS_BACK: u32 = 12;
/// Room above the largest of them.
const ROOM: f64 = 1.25;

/// What one press of a step changes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Step {
    /// The step in `unit`.
    pub(crate) by: f64,
    /// The unit.
    pub(crate) unit: VolumeUnit,
}

/// The scale of a column.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct AmountScale {
    top: f64,
    unit: VolumeUnit,
}

impl AmountScale {
    /// A scale that holds these volumes with room above; the usual one where
    /// there are none.
    pub(crate) fn for_volumes(volumes: impl Iterator<Item = Volume>, unit: VolumeUnit) -> Self {
        Self::with_room_for(volumes.map(|v| v.in_unit(unit)).reduce(f64::max).unwrap_or(usual_top(unit) / ROOM), unit)
    }

    fn with_room_for(largest: f64, unit: VolumeUnit) -> Self {
        let wanted = largest * ROOM;
        let top = tops(unit).iter().copied().find(|t| *t >= wanted);
        Self { top: top.or_else(|| tops(unit).last().copied()).unwrap_or(wanted), unit }
    }

    /// The scale for a session's columns: as wide as the sessions before it
    /// need, and never narrower while its own amounts are being drawn.
    pub(crate) fn for_session(record: &Record<'_>, session: &Session) -> Result<Self, Trouble> {
        let unit = record.settings.volume;
        let mut volumes = Vec::new();
        let by = session.started.as_ref().map_or(record.now, |m| m.instant());
        for row in record.journal.latest_sessions(by, LOOKS_BACK)? {
            if row.subject == session.id {
                continue;
            }
            let other = record.session(&row.subject)?;
            let amounts = if session.together.is_some() {
                vec![other.together.clone(), sum(&other)]
            } else {
                vec![other.left.clone(), other.right.clone(), half(&other)]
            };
            volumes.extend(amounts.into_iter().flatten().filter_map(|a| a.known()));
        }
        let scale = Self::for_volumes(volumes.into_iter(), unit);
        let own = [&session.left, &session.right, &session.together].into_iter().flatten().filter_map(Amount::known);
        match own.map(|v| v.in_unit(unit)).reduce(f64::max) {
            Some(own) if own >= scale.top => Ok(Self::with_room_for(own, unit)),
            _ => Ok(scale),
        }
    }

    /// Where a volume stands, 0 to 1.
    pub(crate) fn height(&self, volume: Volume) -> f32 {
        ((volume.in_unit(self.unit) / self.top) as f32).clamp(0.0, 1.0)
    }

    /// The unit it is read in.
    pub(crate) fn unit(&self) -> VolumeUnit {
        self.unit
    }

    /// The figures at each height a thumb can mean, from the ground up.
    pub(crate) fn figures(&self) -> Vec<(f32, String)> {
        let step = self.drawn_step();
        (0..)
            .map(|n| f64::from(n) * step)
            .take_while(|value| *value <= self.top + step / 2.0)
            .map(|value| (((value / self.top) as f32).clamp(0.0, 1.0), say_decimal(value, 2)))
            .collect()
    }

    /// The figures of the four quarters of its height.
    pub(crate) fn quarters(&self) -> [(f32, String); 4] {
        [0.25, 0.5, 0.75, 1.0_f64].map(|at| (at as f32, say_decimal(self.top * at, self.unit.places() + 1)))
    }

    fn drawn_step(&self) -> f64 {
        let steps: &[f64] = match self.unit {
            VolumeUnit::Milliliter => &[0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0],
            VolumeUnit::FluidOunce => &[0.05, 0.1, 0.25, 0.5, 1.0, 2.0],
        };
        steps.iter().copied().find(|s| self.top / s <= 40.0).or_else(|| steps.last().copied()).unwrap_or(1.0)
    }

    /// The step beside the column.
    pub(crate) fn step(&self) -> Step {
        let by = match self.unit {
            VolumeUnit::Milliliter if self.top <= 20.0 => 1.0,
            VolumeUnit::Milliliter => 5.0,
            VolumeUnit::FluidOunce => 0.25,
        };
        Step { by, unit: self.unit }
    }

    /// The fine step, for a thumb that holds.
    pub(crate) fn fine_step(&self) -> Step {
        let by = match self.unit {
            VolumeUnit::Milliliter if self.top <= 20.0 => 0.1,
            VolumeUnit::Milliliter => 1.0,
            VolumeUnit::FluidOunce => 0.05,
        };
        Step { by, unit: self.unit }
    }
}

fn sum(session: &Session) -> Option<Amount> {
    let (left, right) = (session.left.as_ref()?.known()?, session.right.as_ref()?.known()?);
    let sum = left.canonical() + right.canonical();
    Some(Amount::Known(crate::quantity::Entered::of(sum, VolumeUnit::Milliliter)))
}

fn half(session: &Session) -> Option<Amount> {
    let both = session.together.as_ref()?.known()?;
    Some(Amount::Known(crate::quantity::Entered::of(both.canonical() / 2.0, VolumeUnit::Milliliter)))
}
