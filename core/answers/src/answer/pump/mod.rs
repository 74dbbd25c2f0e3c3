//! Pump: does it pull to its specification, how does it wear, and what does a
//! level mean.
//!
//! In: [`crate::record::GaugeCheck`]s and the gauges they were made with.
//! [`gauge_error`] says how far a gauge may be wrong, [`pull`] what the readings
//! of one place say, [`verdict`] whether that meets a [`limits`] range and what
//! would settle it. [`sides`], [`applied`] and [`doubts`] look beside it; [`wear`]
//! holds checks against each other over time, [`age`] the pump against its years,
//! [`levels`] makes the curve by which a level on the dial is so many mmHg,
//! [`speed_steps`] what a step of its speed is, and [`next_place`] says where the gauge is read next.
//! [`calibration`] says whether a gauge was past its date, [`two_gauges`] whether two can both be right.

pub mod age;
pub mod applied;
pub mod calibration;
pub mod doubts;
pub mod gauge_error;
pub mod levels;
pub mod limits;
pub mod next_place;
pub mod pull;
pub mod sides;
pub mod speed_steps;
pub mod two_gauges;
pub mod verdict;
pub mod wear;

pub use gauge_error::GaugeError;
pub use limits::{Grade, Limits, Whose};
pub use pull::{NoPull, Pull, Repeat};
pub use verdict::{judge, Judged, Settles, Verdict};
