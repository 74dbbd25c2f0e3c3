//! Where the Android host's things lie.

use std::{
    fs,
    hash::{DefaultHasher, Hash, Hasher},
    io,
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

/// Manifest, resources and their names in Java. Robolectric's Android can't open a file below a
/// folder that is named with more than ASCII, so there it lies among the system's passing files.
pub(crate) fn linked(places: &Places) -> PathBuf {
    outside_if_not_ascii(target(places, "android").join("linked"), &std::env::temp_dir())
}

fn outside_if_not_ascii(usual: PathBuf, passing: &Path) -> PathBuf {
    if usual.to_str().is_some_and(str::is_ascii) {
        return usual;
    }
    let mut hash = DefaultHasher::new();
    usual.hash(&mut hash);
    passing.join(format!("drawwell-linked-{:016x}", hash.finish()))
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_android_reads_lies_under_a_name_that_it_can_read() {
        let passing = Path::new("/tmp");
        let plain = PathBuf::from("/home/mara/my code/target/linked");
        assert_eq!(outside_if_not_ascii(plain.clone(), passing), plain);
        let one = outside_if_not_ascii(PathBuf::from("/home/zo\u{eb}/target/linked"), passing);
        assert!(one.starts_with(passing) && one.to_str().is_some_and(str::is_ascii), "{}", one.display());
        assert_ne!(one, outside_if_not_ascii(PathBuf::from("/home/b\u{f8}/target/linked"), passing));
    }
}
