//! The family file: the record as it goes to the consultant, change by change.
//!
//! JSON lines: a header, then one change a line with the device that made it, its number
//! there, its stamp and what it replaces. So the file can be taken in twice, an older one
//! after a newer, or one of each parent's phones, in any order, and the record is the same.
//! What the person leaves out is not in it; what was replaced or taken out goes as "was here,
//! not given". It goes signed with the family's key ([`super::sealed::signed`]) and sealed
//! ([`super::sealed`]). A file of version 1 was signed by nobody.

mod header;
mod read;
mod write;

pub use header::Header;
pub use read::{is_one, read, FamilyFile};
pub use write::{sign, write};

/// The version this program writes, and the newest it reads.
pub const VERSION: u64 = 2;
/// The ending of a sealed family file.
pub const ENDING: &str = "drawwell-family";
