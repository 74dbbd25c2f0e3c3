//! A person's day, through the reducer: what is pressed, and what is then seen.

#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test that meets what it did not expect stops there"
)]

mod carried_over;
mod caseload;
mod cautions;
mod clocks_that_disagree;
mod comfort;
mod comfort_screens;
mod compare;
mod consent;
mod day_and_entry;
mod erasing;
mod every_sign;
mod first_screen;
mod handed_over;
mod just_pumped;
mod kept_milk;
mod kit_and_family;
mod kit_check;
mod kit_fit;
mod kit_trace;
mod left_running;
mod only_shown;
mod pictures_in_words;
mod plain_words;
mod plan;
mod plan_ceiling;
mod ranges_and_bounds;
mod seen_and_stored;
mod sentences;
mod session_in_taps;
mod sharing;
mod so_far;
mod speed_search;
mod supply;
mod supply_asks;
mod supply_bad_input;
mod supply_now;
mod supply_pictures;
mod terms;
mod tonight;

mod travel_and_clock_changes;
mod trial;
mod undo;
mod visit_sheet;
