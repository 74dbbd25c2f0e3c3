//! Supply: how much milk is made, whether that holds, and since when not.
//!
//! In: [`crate::record::Removal`]s. [`intervals`] turns them into what each
//! side gave over each interval, [`ordinary`] tells which of those are likely
//! whole, [`day`] spreads them over local days. From days come a [`series`],
//! its [`level`] and its [`course`], how it stands [`now`]; [`since`] when it changed, what else
//! changed then ([`concurrent`]), and the running [`watch`]; [`summary`] puts together what is told.
//! [`against`] what it is held, and the [`hours`] of a day.

pub mod against;
pub mod against_before;
pub mod began;
pub mod concurrent;
pub mod course;
pub mod day;
pub mod hours;
pub mod intake;
pub mod interval;
pub mod intervals;
pub mod level;
pub mod now;
pub mod ordinary;
pub mod packed;
pub mod quiet_hours;
pub mod series;
pub mod since;
pub mod summary;
pub mod watch;

pub use day::{Calendar, DayProduction, PartOfDay, Spread};
pub use intervals::{Interval, IntervalStatus, Side};
pub use series::{Of, Series};
