//! `cargo xtask pictures DIR`: every screen as a picture, without a display.

use crate::{place::Places, process, shell, stop::Stop};

/// Runs the shell's picture program over the real core.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    let [folder] = words else {
        return Err(Stop::new("cargo xtask pictures DIR"));
    };
    let folder = std::path::absolute(folder).map_err(|error| Stop::new(format!("{folder}: {error}")))?;
    std::fs::create_dir_all(&folder).map_err(|error| Stop::at(&folder, &error))?;
    shell::build(places)?;
    process::run(shell::program(places, &["-Djava.awt.headless=true"])?.arg("--pictures").arg(folder))
}
