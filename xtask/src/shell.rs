//! The shell's desktop host as a program: built by Maven, run by Java.

use std::{ffi::OsString, process::Command};

use crate::{
    java, maven,
    place::{Build, Places},
    process,
    stop::Stop,
    surface,
    tool::{self, Tool},
};

/// Everything the window needs, from the core on; what is there already stays.
pub(crate) fn build(places: &Places) -> Result<(), Stop> {
    tool::need(places, &[Tool::Java, Tool::Maven])?;
    process::run(process::cargo(places).args(["build", "--release", "-p", "drawwell-bindings"]))?;
    process::run(process::cargo(places).args(["build", "-p", "drawwell-generator"]))?;
    surface::kotlin(places, Build::Release)?;
    process::run(maven::command(places, Build::Release)?.args([
        "--quiet",
        "--projects",
        "desktop",
        "--also-make",
        "package",
        "-Dmaven.test.skip=true",
    ]))
}

/// The program with settings for Java, ready to be given words.
pub(crate) fn program(places: &Places, settings: &[&str]) -> Result<Command, Stop> {
    let target = places.app_shell().join("desktop").join("target");
    let classes = [target.join("classes"), target.join("libraries").join("*")];
    let classes = std::env::join_paths(classes).map_err(|error| Stop::new(error.to_string()))?;
    let mut library = OsString::from("-Djna.library.path=");
    library.push(places.library_folder(Build::Release));
    let mut java = process::command(places, java::program());
    java.args(settings).arg(library).arg("-cp").arg(classes).arg("drawwell.desktop.MainKt");
    Ok(java)
}
