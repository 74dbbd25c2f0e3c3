//! What an answer needs, read from the record.
//!
//! In: a [`Record`], which is the journal at a moment with its settings and rules, read once a
//! call. Out: facts, and the answers to them. Nothing is written here, nothing is said in words,
//! and nothing is decided but what to read. One file a question, called as its room in
//! [`crate::answer`] is; [`days`] are what most of them rest on.

pub(crate) mod amount_scale;
pub(crate) mod asks;
pub(crate) mod caution;
pub mod changed;
pub mod comfort;
pub(crate) mod concurrent;
pub mod consent;
mod day_gap;
pub mod days;
mod expected;
pub mod flange_first;
pub(crate) mod flange_fit;
pub(crate) mod keeping;
pub(crate) mod kit;
pub mod levels;
pub(crate) mod next_session;
pub mod night;
pub(crate) mod plan;
pub mod planned_ceiling;
pub mod pumps;
pub(crate) mod reasons;
pub mod record;
pub mod refill;
pub mod search;
mod shared;
pub(crate) mod so_far;
pub(crate) mod supply;
pub(crate) mod tonight;
pub mod trial;
mod watched;

pub(crate) use day_gap::middle_of_longest_gap;
pub use record::Record;
pub use shared::Shared;
pub use watched::Watched;
