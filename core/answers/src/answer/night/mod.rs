//! Tonight: when to express next, and how much sleep that leaves.
//!
//! [`gathered`] is what the record says, [`facts`] what of it a plan is made from; [`frame`] is what
//! is kept to; [`occurrences`] lays nights and fixed points on instants, [`schedule`] all of it on the grid of
//! [`task`], and [`search`] finds the cheapest plan there; [`plan`] makes it from what was really
//! done and tells [`why`] and which constraints are [`unmet`]. [`reminders`] call for the next session;
//! [`looking_back`] tells what nights were, [`gaps`] how far sessions are apart.

pub mod facts;
pub mod frame;
pub mod gaps;
pub mod gathered;
pub mod looking_back;
pub mod occurrences;
pub mod plan;
pub mod reminders;
mod schedule;
pub mod search;
pub mod task;
pub mod unmet;
pub mod why;

pub use facts::{Basis, Emptying, Facts};
pub use frame::{Frame, Habit, Origin, Sourced};
pub use gaps::longest_by_day;
pub use gathered::{Gathered, NightInputs};
pub use looking_back::{nights_that_were, NightThatWas};
pub use occurrences::{PointOccurrence, Stretch};
pub use plan::{plan, Night, Plan, Planned};
pub use reminders::{reminders, Reminder, Reminds};
pub use unmet::UnmetConstraint;
pub use why::Why;
