//! Trial: two ways compared in drawn order, and what can be told of changes that were no trial.
//!
//! In: how it was set up ([`design`]), and its sessions as they were done. Out: which way is
//! better by the outcome that was chosen first, or that it makes no difference that matters, or
//! that it can't be told yet ([`verdict`]); when it is to stop at once ([`stop`]). A change of one
//! Tuesday gets a before and after ([`before_after`]), which is weaker.

pub mod before_after;
pub mod design;
pub mod most;
pub mod outcome;
pub mod pairs;
pub mod stop;
pub mod verdict;

pub use before_after::{before_after, BeforeAfter};
pub use design::{order, read_order, write_order, Design, SetUp, Way};
pub use most::{flow, time_to, time_to_most, SoFar, MOST};
pub use outcome::{Apart, Milk, Outcome, Reached};
pub use pairs::Done;
pub use stop::{closes, stops, Stop};
pub use verdict::{answer, TrialAnswer, Verdict};
