//! Tonight: when to express next, and how much sleep that leaves.
//!
//! [`gathered`] reads what the record says; [`frame`] is what is kept to; [`standing`] lays nights and fixed points on instants;
//! [`search`] finds the cheapest plan on a grid; [`plan`] makes it from what was really
//! done and tells [`why`] and what [`gives_way`].

pub mod frame;
pub mod gathered;
pub mod gives_way;
pub mod plan;
pub mod search;
pub mod standing;
pub mod why;

pub use frame::{Frame, Habit, Origin, Sourced};
pub use gathered::Gathered;
pub use gives_way::GivesWay;
pub use plan::{plan, Basis, Emptying, Facts, Night, Plan, Planned};
pub use standing::{Standing, Stretch};
pub use why::Why;
