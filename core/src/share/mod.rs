//! What leaves the record and what comes in: today the exchange form.
//!
//! In: a journal. Out: bytes another program or another phone can read. Nothing
//! is worked out here.

pub mod exchange;
