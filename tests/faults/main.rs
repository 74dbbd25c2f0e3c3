//! What goes wrong, and that nothing is lost by it.

#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test that meets what it did not expect stops there"
)]

mod bad_input;
mod comfort_input;
mod damaged_file;
mod desk_keeps;
mod epochs;
mod every_step_fails;
mod exchange_file;
mod hostile;
mod incoming_file;
mod kept_inputs;
mod killed;
mod locked_full_newer;
mod sealed;
mod trace_file;
