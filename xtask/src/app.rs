//! `cargo xtask app`: everything from the core to the open window.

use crate::{place::Places, process, shell, stop::Stop};

/// Builds core, surface and shell, and opens the shell with the words given.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    shell::build(places)?;
    // Files are named from where the person stands.
    process::run(shell::program(places, &[])?.args(words).current_dir("."))
}
