//! The family file: the record as it goes to the consultant, change by change.
//!
//! JSON lines: a header, then one change a line with the device that made it, its number
//! there, its stamp and what it replaces. So the file can be taken in twice, an older one
//! after a newer, or one of each parent's phones, in any order, and the record is the same.
//! What the person leaves out is not in it. It goes sealed ([`super::sealed`]).

mod header;
mod read;
mod write;

pub use header::Header;
pub use read::{read, FamilyFile};
pub use write::write;

/// The version this program writes, and the newest it reads.
pub const VERSION: u64 = 1;
/// The ending of a sealed family file.
pub const ENDING: &str = "drawwell-family";
