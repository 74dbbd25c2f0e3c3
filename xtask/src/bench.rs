//! `cargo xtask bench`: the benchmarks of every room.

use crate::{place::Places, process, stop::Stop};

/// Runs them; what is given goes on to Cargo.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    process::run(process::cargo(places).args(["bench", "--workspace"]).args(words))
}
