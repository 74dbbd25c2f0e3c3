//! `cargo xtask app`: everything from the core to the open window.

use crate::{
    maven,
    place::{Build, Places},
    process,
    stop::Stop,
    surface,
    tool::{self, Tool},
};

/// Builds core, surface and shell, and opens the shell with the words given.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    tool::need(places, &[Tool::Java, Tool::Maven])?;
    build(places)?;
    process::run(&mut maven::start(places, Build::Release, "drawwell.desktop.MainKt", words)?)
}

/// Everything the open window needs; also what the pictures are made with.
pub(crate) fn build(places: &Places) -> Result<(), Stop> {
    process::run(process::cargo(places).args(["build", "--release", "-p", "drawwell-bindings"]))?;
    process::run(process::cargo(places).args(["build", "-p", "drawwell-generator"]))?;
    surface::kotlin(places, Build::Release)?;
    process::run(maven::command(places, Build::Release)?.args(["--quiet", "install", "-DskipTests"]))
}
