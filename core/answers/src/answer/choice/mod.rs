//! Choice: which pump, from the figures that technical sheets state, before a gauge can touch one.
//!
//! In: what is wanted ([`crate::record::Wanted`]), what is offered ([`crate::record::Offered`]), rules.
//! Out: for each pump the same lines in the same order ([`line`], which say what [`says`] lists), each by a rule; what to ask whoever
//! offers it ([`seller`]); what to ask before a figure is believed ([`doubts`]); until when letdown comes
//! easiest ([`early`]). No score, no order of merit, no verdict on a maker: what is not stated is not known.
//! [`reaches`] is how a stated range stands to a limit.

pub mod doubts;
pub mod early;
mod grade;
pub mod line;
mod motor;
pub mod reaches;
pub mod says;
pub mod seller;
mod shared_use;

pub use doubts::{doubts, Doubt};
pub use early::{early, Early};
pub use line::{lines, of_stated_vacuum};
pub use reaches::{reaches, Reaches};
pub use says::{Aspect, Claim, CyclesAre, Found, Line, Says, Strength};
pub use seller::{questions, Question};
