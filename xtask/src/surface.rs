//! `cargo xtask surface`: the Kotlin and Python faces of the core, and nothing else.

use crate::{
    generate::{self, Language},
    keep, library,
    place::{Build, Places},
    process,
    stop::Stop,
};

/// Builds what is needed and writes both faces, or Kotlin's alone.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    match words.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        [] => {
            build(places)?;
            kotlin(places, Build::Debug)?;
            python(places)
        }
        ["kotlin"] => {
            build(places)?;
            kotlin(places, Build::Debug)
        }
        _ => Err(Stop::new("cargo xtask surface [kotlin]")),
    }
}

/// The library, and what writes its faces: in one go, so that both share what they stand on.
pub(crate) fn build(places: &Places) -> Result<(), Stop> {
    process::run(process::cargo(places).args(["build", "-p", "drawwell-bindings", "-p", "drawwell-generator"]))
}

/// Kotlin, where the shell's build looks for it.
pub(crate) fn kotlin(places: &Places, build: Build) -> Result<(), Stop> {
    generate::write(places, build, Language::Kotlin)
}

/// Python, with the library beside the module, where the module looks for it.
pub(crate) fn python(places: &Places) -> Result<(), Stop> {
    generate::write(places, Build::Debug, Language::Python)?;
    let beside = places.python_surface().join(library::file_name(std::env::consts::OS));
    keep::copy_if_changed(&places.library(Build::Debug), &beside).map(|_| ())
}
