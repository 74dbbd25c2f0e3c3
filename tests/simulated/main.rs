//! Laws of the journal, over records made by chance.

#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test that meets what it did not expect stops there"
)]

mod fold_laws;
mod model;
mod two_phones;
