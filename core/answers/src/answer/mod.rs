//! A folder for each question of the trade, worked out from facts.
//!
//! In: facts, whoever read them, and rules from [`crate::guidance`].
//! Out: estimates, each with its range and what it rests on, or that it cannot
//! be told yet. No journal and no sentence in here. Read [`supply`] first.

pub mod age;
pub mod caution;
pub mod comfort;
pub mod consent;
mod estimate;
pub mod flange_fit;
pub mod keeping;
pub mod letdown;
pub mod milk_by_vacuum;
pub mod night;
pub mod pump;
pub mod refill;
pub mod search;
pub mod supply;
pub mod trace;
pub mod trial;

pub use estimate::{Estimate, RestsOn, CONFIDENCE};
