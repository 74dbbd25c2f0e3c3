//! The native library as it goes out: stripped, and without a trace of where it was built.

use std::{
    fs,
    path::{Path, PathBuf},
};

use crate::{
    library,
    place::{Build, Places},
    process,
    stop::Stop,
};

/// In the release profile, with link-time optimisation, under a target folder of its own: what
/// is built for a person here is not built anew for it.
pub(super) fn release(places: &Places) -> Result<PathBuf, Stop> {
    let target = places.scratch().join("release");
    let mut build = process::cargo(places);
    build.args(["build", "--profile", "shipped", "-p", "drawwell-bindings", "--lib", "--locked", "--target-dir"]);
    build.arg(&target);
    // Every path that a compiler could write down gets the same name wherever it lies.
    let cargo_home = std::env::var_os("CARGO_HOME").map(PathBuf::from).or_else(|| {
        let home = std::env::var_os(if cfg!(windows) { "USERPROFILE" } else { "HOME" })?;
        Some(PathBuf::from(home).join(".cargo"))
    });
    let mut renamed = vec![(places.root().to_path_buf(), "/drawwell")];
    renamed.extend(cargo_home.map(|home| (home, "/cargo")));
    let rust: Vec<String> =
        renamed.iter().map(|(from, to)| format!("--remap-path-prefix={}={to}", from.display())).collect();
    build.env("CARGO_ENCODED_RUSTFLAGS", rust.join("\u{1f}"));
    // C's flags are parted at spaces, so a folder with one in it keeps its name.
    let c: Vec<String> = renamed
        .iter()
        .filter(|(from, _)| !from.to_string_lossy().contains(char::is_whitespace))
        .map(|(from, to)| format!("-ffile-prefix-map={}={to}", from.display()))
        .collect();
    build.env("CFLAGS", c.join(" "));
    process::run(&mut build)?;
    stripped(places, &target.join("shipped").join(library::file_name(std::env::consts::OS)))
}

/// The one that the tests ran on.
pub(super) fn as_tested(places: &Places) -> Result<PathBuf, Stop> {
    stripped(places, &places.library(Build::Debug))
}

/// A copy without symbols, where there is a program that takes them out.
fn stripped(places: &Places, library: &Path) -> Result<PathBuf, Stop> {
    let name = library::file_name(std::env::consts::OS);
    let copy = places.scratch().join("stripped").join(name);
    let folder = copy.parent().unwrap_or(&copy);
    fs::create_dir_all(folder).map_err(|error| Stop::at(folder, &error))?;
    fs::copy(library, &copy).map_err(|error| Stop::at(&copy, &error))?;
    if cfg!(target_os = "linux") {
        process::run(process::command(places, "strip").arg("--strip-unneeded").arg(&copy))?;
    }
    Ok(copy)
}
