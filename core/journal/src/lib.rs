#![forbid(unsafe_code)]
#![warn(clippy::missing_errors_doc)]
//! The journal: where everything that was written down is kept, on one device or several.
//!
//! No answer and no screen: what works with records alone (a second phone, a copy) needs no more
//! than this crate. Read [`journal`] first.

pub mod journal;
pub mod private_file;

use drawwell_base::{limits, quantity, record, time, trouble};
