//! The plan that comes back: what the consultant proposes, for one family, signed by her.
//!
//! JSON lines: a header, the plan, and each of its parts in the exchange form. The text is
//! signed ([`super::sealed::signed`]) and sealed for the family's key, so that
//! `age -d FILE | gunzip` gives four lines of a minisign signature and then what it signs.

mod read;
mod write;

use crate::limits;

pub use read::{read, ReadPlan};
pub use write::{write, Addressee};

/// The version this program writes, and the newest it reads.
pub const VERSION: u64 = 2;
/// The ending of a plan's file.
pub const ENDING: &str = "drawwell-plan";
/// No plan has more parts.
pub const MOST_PARTS: usize = limits::PLAN_PARTS;

/// The record that a plan becomes on the phone.
fn subject_of(id: &str) -> String {
    format!("plan-{id}")
}
