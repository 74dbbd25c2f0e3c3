//! Tonight: when to express next, and how much sleep that leaves.

pub mod search;
