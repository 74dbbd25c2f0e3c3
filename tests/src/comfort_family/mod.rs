//! Families whose comfort, milk and trials are known: what is asked of the answers, and how often
//! they are right.

pub mod ceiling;
pub mod milk;
pub mod trial;
