//! Letdown: how soon the first comes and how many there are, by setting, speed, place and hour.
//!
//! In: what was marked, session by session. Out: medians with their ranges, what is usual beside
//! them, and whether it comes later than it used to. A letdown that nobody felt is not none: a
//! session without one marked says nothing of when it came.

mod heard;
mod told;

pub use heard::{heard_in, Heard, How};
pub use told::{letdowns, Group, Later, Letdowns, Timing};
