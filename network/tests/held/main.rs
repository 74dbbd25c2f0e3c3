//! A network held to what is true of it: who is in it, who is not, and what nobody can see.

#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test that meets what it did not expect stops there"
)]

mod commands;
mod consents;
mod differencing;
mod docs;
mod killed;
mod reports;
mod shared;
mod stores;
