//! The native libraries that lie in jars, laid out beside each other: Java would unpack them into
//! the person's home at every machine's first start, which may not be writable.

use std::{
    fs,
    path::{Path, PathBuf},
};

use crate::{android::archive, keep, place::Places, stop::Stop};

/// Where they lie for who starts the app from here.
pub(crate) fn folder(places: &Places) -> PathBuf {
    places.scratch().join("natives")
}

/// Settings for Java that find them there, and unpack nothing.
pub(crate) fn settings(folder: &str) -> [String; 3] {
    [
        format!("-Dskiko.library.path={folder}"),
        format!("-Djna.boot.library.path={folder}"),
        "-Djna.nounpack=true".to_owned(),
    ]
}

/// Lays them out from the jars that hold some.
pub(crate) fn unpack(jars: &[PathBuf], to: &Path) -> Result<(), Stop> {
    let holds = |jar: &&PathBuf| {
        let name = jar.file_name().unwrap_or_default().to_string_lossy();
        name.starts_with("skiko-awt-runtime") || name.starts_with("jna-")
    };
    let mut found = 0;
    for jar in jars.iter().filter(holds) {
        for (name, bytes) in archive::entries(jar)? {
            if let Some(name) = for_this_machine(&name, std::env::consts::OS, std::env::consts::ARCH) {
                keep::write_if_changed(&to.join(name), &bytes)?;
                found += 1;
            }
        }
    }
    // One that draws and one that calls the core: without them no window opens.
    if found < 2 {
        return Err(Stop::new(format!("of the shell's native libraries {found} of 2 were found in its jars")));
    }
    fs::metadata(to).map(|_| ()).map_err(|error| Stop::at(to, &error))
}

/// The file's own name, if it is a library for this system.
fn for_this_machine<'a>(entry: &'a str, system: &str, arch: &str) -> Option<&'a str> {
    let (folder, name) = entry.rsplit_once('/').unwrap_or(("", entry));
    if ![".so", ".dylib", ".jnilib", ".dll"].iter().any(|ending| name.ends_with(ending)) {
        return None;
    }
    // Skia's jar is for one system alone; JNA's holds a folder for each.
    let jna = match (system, arch) {
        ("linux", "x86_64") => "linux-x86-64",
        ("linux", _) => "linux-aarch64",
        ("macos", "x86_64") => "darwin-x86-64",
        ("macos", _) => "darwin-aarch64",
        (_, "x86_64") => "win32-x86-64",
        _ => "win32-aarch64",
    };
    (folder.is_empty() || folder == format!("com/sun/jna/{jna}")).then_some(name)
}

#[cfg(test)]
mod tests {
    use super::for_this_machine;

    #[test]
    fn a_library_is_taken_for_its_own_system() {
        let here = |entry| for_this_machine(entry, "linux", "x86_64");
        assert_eq!(here("libskiko-linux-x64.so"), Some("libskiko-linux-x64.so"));
        assert_eq!(here("com/sun/jna/linux-x86-64/libjnidispatch.so"), Some("libjnidispatch.so"));
        assert_eq!(here("com/sun/jna/darwin-aarch64/libjnidispatch.jnilib"), None);
        assert_eq!(here("META-INF/MANIFEST.MF"), None);
        assert_eq!(here("libskiko-linux-x64.so.sha256"), None);
    }
}
