#![forbid(unsafe_code)]
#![warn(clippy::missing_errors_doc)]
//! The answers to the questions of the trade, with the methods and the rules that they go by.
//!
//! In: facts, whoever read them. Out: estimates with their ranges. There is no store below this
//! crate, so that it also answers for many records at once. Read [`answer`] first.

pub mod answer;
pub mod guidance;
pub mod statistics;

use drawwell_base::{quantity, record, time, trouble};
