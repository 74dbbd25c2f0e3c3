//! One file an outside source: values that others published, held here.

#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test that meets what it did not expect stops there"
)]

mod comfort_libraries;
mod corrected_age;
mod gauges_and_air;
mod health_record;
mod helsel_hirsch;
mod iana_zones;
mod milk_over_time;
mod nile;
mod nist_strd;
mod reference_libraries;
mod refill_scipy;
mod regions_cldr;
mod rfc5545_local_time;
mod rules_at_their_bounds;
mod rules_of_cautions;
mod rules_of_comfort;
mod rules_of_keeping;
mod rules_of_kit;
mod rules_of_supply;
mod rules_of_the_night;
mod sequential_bounds;
mod single_case;
mod supply_values;
mod traces;
mod tzdata_zones;
mod ucum_factors;
mod wilcoxon_hollander_wolfe;
