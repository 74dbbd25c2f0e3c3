//! Tonight: when to express next, and how much sleep that leaves.
//!
//! [`gathered`] is what the record says, [`facts`] what of it a plan is made from; [`frame`] is what
//! is kept to; [`standing`] lays nights and fixed points on instants, [`laid`] all of it on the grid of
//! [`task`], and [`search`] finds the cheapest plan there; [`plan`] makes it from what was really
//! done and tells [`why`] and what [`gives_way`]. [`reminders`] call for the next session;
//! [`looking_back`] tells what nights were, [`gaps`] how far sessions are apart.

pub mod facts;
pub mod frame;
pub mod gaps;
pub mod gathered;
pub mod gives_way;
mod laid;
pub mod looking_back;
pub mod plan;
pub mod reminders;
pub mod search;
pub mod standing;
pub mod task;
pub mod why;

pub use facts::{Basis, Emptying, Facts};
pub use frame::{Frame, Habit, Origin, Sourced};
pub use gaps::longest_by_day;
pub use gathered::{Gathered, Kept};
pub use gives_way::GivesWay;
pub use looking_back::{nights_that_were, NightThatWas};
pub use plan::{plan, Night, Plan, Planned};
pub use reminders::{reminders, Reminder, Reminds};
pub use standing::{Standing, Stretch};
pub use why::Why;
