//! Comfort: the vacuum that gives milk without pain, for each side and phase.
//!
//! In: sessions with what was set by hand and how it felt ([`used`]). Out: the highest setting at
//! which discomfort is rare, with its range, or why that can't be told ([`ceiling`]); and whether
//! the flange is to be looked at first ([`suspect`]). A setting that was only carried over is in
//! none of it, and a session that says nothing of pain was not comfortable for that.

pub mod axis;
pub mod ceiling;
pub mod suspect;
pub mod used;

pub use axis::Axis;
pub use ceiling::{comfort, Ceiling, Comfort, Dot, Told};
pub use suspect::{flange_first, FlangeFirst, OtherCause};
pub use used::{felt_in, Felt, Strength};
