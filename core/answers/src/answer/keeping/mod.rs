//! Keeping: until when milk is good, what is left of it, and which to use first.
//!
//! In: a container as it was filled with everything that happened to it, and a set of rules. Out:
//! where it is and how ([`state`]), which clock runs and until when ([`clock`]), what is left with
//! sums that always add up ([`kept`]), and what can't be done with it ([`refusal`]); which rules are in force ([`in_force`]), what to use first
//! for an amount ([`use_first`]), and how long what is frozen lasts ([`lasts`]). Where the rules say
//! nothing, nothing is said.

pub mod clock;
pub mod in_force;
pub mod kept;
pub mod lasts;
pub mod refusal;
pub mod state;
pub mod use_first;

pub use clock::{Clock, GoodUntil, Untold};
pub use in_force::{in_force, InForce, StepsBack};
pub use kept::{keep, Kept, TakenOut};
pub use lasts::lasts;
pub use refusal::{refused, Refusal};
pub use state::{Odd, State};
pub use use_first::{use_first, Chosen};
