//! Caution: must somebody look now?
//!
//! In: signs that were written down, pain of the sessions, what the watch and the pump
//! checks say, and what was dealt with. Out: every [`Caution`] there was, each with what it
//! was seen in and what became of it: [`finding`] and [`because`]. [`sign`] reads an entry; [`body`], [`fever`] and
//! [`lasting`] read signs, [`comfort`] pain, [`pull`] a pump; [`life`] says how a caution
//! begins and ends. Nothing here is a diagnosis. Limits and sources are data:
//! [`crate::guidance::CautionRules`].

mod because;
pub mod birth;
pub mod body;
pub mod comfort;
mod context;
mod fever;
mod finding;
mod lasting;
mod life;
pub mod pull;
pub mod sign;

pub use because::{Became, Because, Dealt, Where};
pub use birth::Births;
pub use finding::{in_order, Caution};
pub use sign::BodySign;
