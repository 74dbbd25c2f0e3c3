//! Laws of the journal and of the statistics, over records and series made by chance.

#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test that meets what it did not expect stops there"
)]

mod comfort;
mod comfort_laws;
mod comfort_record;
mod fold_laws;
mod kept_days;
mod kept_milk;
mod local_days;
mod model;
mod night_search;
mod plan_cost;
mod pumps;
mod refill;
mod sessions_a_day;
mod since;
mod statistics_chance;
mod statistics_laws;
mod supply;
mod trace_limits;
mod traces;
mod two_phones;
