//! What a plan is made from.

use super::frame::Frame;
use crate::quantity::Volume;
use crate::record::{FixedPoint, PlanChange};
use crate::time::{Instant, Zone};

/// An emptying that was: sessions close to each other are one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Emptying {
    /// When it began, where that is known; else its end.
    pub from: Instant,
    /// When it was over.
    pub at: Instant,
}

/// What a plan is made from.
pub struct Facts<'a> {
    /// The present.
    pub now: Instant,
    /// The zone the person is in.
    pub zone: Zone,
    /// What is kept to.
    pub frame: &'a Frame,
    /// Emptyings of the last two days, in order.
    pub emptyings: &'a [Emptying],
    /// The session that runs, since when.
    pub running: Option<Instant>,
    /// Fixed points.
    pub points: &'a [FixedPoint],
    /// Changes by hand, in the order they were made.
    pub changes: &'a [PlanChange],
    /// Milk lost to slower refilling between two emptyings, where that can be told.
    pub lost: &'a dyn Fn(Instant, Instant) -> Volume,
}

/// What the plan could go by.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Basis {
    /// The last emptying.
    Emptying(Instant),
    /// Nothing was ever written down: the frame alone.
    FrameAlone,
    /// Nothing was written down since: what was is unknown.
    Silence {
        /// The last emptying.
        since: Instant,
    },
}
