//! `cargo xtask demo`: the invented family, written anew.

use crate::{place::Places, process, stop::Stop};

/// Runs the generator that stands in `tests`.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    if !words.is_empty() {
        return Err(Stop::new("cargo xtask demo"));
    }
    process::run(process::cargo(places).args(["run", "--quiet", "-p", "drawwell-tests", "--bin", "demo-family"]))
}
