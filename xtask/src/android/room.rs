//! Where the Android host's things lie.

use std::{
    fs, io,
    path::{Path, PathBuf},
};

use crate::{place::Places, stop::Stop};

/// The module whose `target` holds AndroidX, laid together.
pub(crate) const LIBRARIES: &str = "android-libs";
/// The same for tests.
pub(crate) const TEST_LIBRARIES: &str = "android-test-libs";

pub(crate) fn target(places: &Places, module: &str) -> PathBuf {
    places.app_shell().join(module).join("target")
}

/// What Maven fetched to build with, not to build in.
pub(crate) fn tool(places: &Places, name: &str) -> PathBuf {
    target(places, LIBRARIES).join("tools").join(name)
}

/// The host's own sources.
pub(crate) fn sources(places: &Places) -> PathBuf {
    places.app_shell().join("android").join("src").join("main")
}

/// Manifest, resources and their names in Java.
pub(crate) fn linked(places: &Places) -> PathBuf {
    target(places, "android").join("linked")
}

/// Where packages and the steps towards them lie.
pub(crate) fn packages(places: &Places) -> PathBuf {
    places.scratch().join("android")
}

/// A folder with nothing in it.
pub(crate) fn fresh(folder: &Path) -> Result<(), Stop> {
    match fs::remove_dir_all(folder) {
        Err(error) if error.kind() != io::ErrorKind::NotFound => return Err(Stop::at(folder, &error)),
        _ => {}
    }
    fs::create_dir_all(folder).map_err(|error| Stop::at(folder, &error))
}

/// What a folder holds, in order.
pub(crate) fn within(folder: &Path) -> Result<Vec<PathBuf>, Stop> {
    let entries = fs::read_dir(folder).map_err(|error| Stop::at(folder, &error))?;
    let mut found = entries
        .map(|entry| entry.map(|it| it.path()).map_err(|error| Stop::at(folder, &error)))
        .collect::<Result<Vec<_>, _>>()?;
    found.sort();
    Ok(found)
}
