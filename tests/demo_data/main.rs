//! What lies in `demo-data`: the invented family, the schema of the exchange
//! form, and the page that explains it. Each is held against core.

#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test that meets what it did not expect stops there"
)]

mod family;
mod page;
mod record;
mod schema;
