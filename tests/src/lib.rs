//! Drawwell held against the outside, against faults, and against a day in a
//! life. The tests stand in folders beside `src`; here is what they share.

#![forbid(unsafe_code)]

pub mod chance;
pub mod comfort_family;
pub mod demo_family;
pub mod fuzzed;
pub mod gauge_bench;
pub mod handed_over;
pub mod person;
pub mod place;
pub mod refilling_family;
pub mod simulated_family;
pub mod simulated_pump;
pub mod ten_years;
pub mod tired_family;
pub mod visiting;
pub mod written;
