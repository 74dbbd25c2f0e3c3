//! Supply: how much milk is made, whether that holds, and since when not.
//!
//! In: [`crate::record::Removal`]s. [`intervals`] turns them into what each
//! side gave over each interval, [`ordinary`] tells which of those are likely
//! whole, [`day`] spreads them over local days. From days come a [`series`],
//! its [`level`] and its [`course`], how it stands [`now`]; [`since`] when it changed, what
//! [`beside`] changed then, and the running [`watch`]; [`said`] puts together what is told.
//! [`against`] what it is held, and the [`hours`] of a day.

pub mod against;
pub mod against_before;
pub mod began;
pub mod beside;
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
pub mod said;
pub mod series;
pub mod since;
pub mod watch;

pub use day::{Calendar, DayProduction, PartOfDay, Spread};
pub use intervals::{Interval, Side, Standing};
pub use series::{Of, Series};
