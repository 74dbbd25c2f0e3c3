//! Leaving files alone that already say what they should, so that whoever
//! builds from them by their date has nothing to do again.

use std::{
    collections::BTreeSet,
    fs,
    hash::{DefaultHasher, Hash, Hasher},
    io,
    path::{Path, PathBuf},
};

use crate::stop::Stop;

/// Writes a file unless it holds these bytes already; tells whether it wrote.
pub(crate) fn write_if_changed(path: &Path, bytes: &[u8]) -> Result<bool, Stop> {
    match fs::read(path) {
        Ok(old) if old == bytes => return Ok(false),
        Err(error) if error.kind() != io::ErrorKind::NotFound => return Err(Stop::at(path, &error)),
        _ => {}
    }
    if let Some(folder) = path.parent() {
        fs::create_dir_all(folder).map_err(|error| Stop::at(folder, &error))?;
    }
    // Beside it first: a program that has the old file loaded keeps it whole.
    let fresh = path.with_extension("fresh");
    fs::write(&fresh, bytes).map_err(|error| Stop::at(&fresh, &error))?;
    fs::rename(&fresh, path).map_err(|error| Stop::at(path, &error))?;
    Ok(true)
}

/// Copies a file unless its copy is the same already; tells whether it copied.
pub(crate) fn copy_if_changed(from: &Path, to: &Path) -> Result<bool, Stop> {
    write_if_changed(to, &fs::read(from).map_err(|error| Stop::at(from, &error))?)
}

/// Makes the files of one ending below `to` the same as those below `from`,
/// and leaves every other file where it is. Tells how many it touched.
pub(crate) fn mirror(from: &Path, to: &Path, ending: &str) -> Result<usize, Stop> {
    let wanted = below(from, ending)?;
    let mut touched = 0;
    for stale in below(to, ending)?.difference(&wanted) {
        let stale = to.join(stale);
        fs::remove_file(&stale).map_err(|error| Stop::at(&stale, &error))?;
        touched += 1;
    }
    for name in &wanted {
        touched += usize::from(copy_if_changed(&from.join(name), &to.join(name))?);
    }
    Ok(touched)
}

/// The files of one ending below a folder, named from it. No folder, no files.
pub(crate) fn below(folder: &Path, ending: &str) -> Result<BTreeSet<PathBuf>, Stop> {
    let mut found = BTreeSet::new();
    let mut waiting = vec![folder.to_path_buf()];
    while let Some(here) = waiting.pop() {
        let entries = match fs::read_dir(&here) {
            Ok(entries) => entries,
            Err(error) if error.kind() == io::ErrorKind::NotFound => continue,
            Err(error) => return Err(Stop::at(&here, &error)),
        };
        for entry in entries {
            let path = entry.map_err(|error| Stop::at(&here, &error))?.path();
            if path.is_dir() {
                waiting.push(path);
            } else if path.extension().is_some_and(|it| it == ending) {
                found.extend(path.strip_prefix(folder).map(Path::to_path_buf).ok());
            }
        }
    }
    Ok(found)
}

/// Words that change when any of the files does.
pub(crate) fn fingerprint(files: &[PathBuf]) -> Result<String, Stop> {
    let mut hash = DefaultHasher::new();
    for file in files {
        fs::read(file).map_err(|error| Stop::at(file, &error))?.hash(&mut hash);
    }
    Ok(format!("{:016x}", hash.finish()))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A folder of this test's own, gone when the test is.
    struct Folder(PathBuf);

    impl Folder {
        fn new(name: &str) -> Self {
            let path = std::env::temp_dir().join(format!("drawwell-xtask-{}-{name}", std::process::id()));
            fs::create_dir_all(&path).unwrap();
            Self(path)
        }
    }

    impl Drop for Folder {
        fn drop(&mut self) {
            let _ = fs::remove_dir_all(&self.0);
        }
    }

    #[test]
    fn a_file_that_says_the_same_is_not_touched() {
        let folder = Folder::new("same");
        let file = folder.0.join("deep/down/file.kt");
        assert!(write_if_changed(&file, b"one").unwrap());
        let before = fs::metadata(&file).unwrap().modified().unwrap();
        assert!(!write_if_changed(&file, b"one").unwrap());
        assert_eq!(fs::metadata(&file).unwrap().modified().unwrap(), before);
        assert!(write_if_changed(&file, b"two").unwrap());
        assert_eq!(fs::read(&file).unwrap(), b"two");
    }

    #[test]
    fn a_mirror_takes_out_what_is_gone_and_spares_other_kinds() {
        let folder = Folder::new("mirror");
        let (from, to) = (folder.0.join("from"), folder.0.join("to"));
        write_if_changed(&from.join("a/new.kt"), b"new").unwrap();
        write_if_changed(&to.join("a/old.kt"), b"old").unwrap();
        write_if_changed(&to.join("a/stamp.txt"), b"stamp").unwrap();
        assert_eq!(mirror(&from, &to, "kt").unwrap(), 2);
        assert_eq!(mirror(&from, &to, "kt").unwrap(), 0);
        assert!(to.join("a/new.kt").exists());
        assert!(!to.join("a/old.kt").exists());
        assert!(to.join("a/stamp.txt").exists());
    }

    #[test]
    fn a_fingerprint_tells_files_and_their_borders_apart() {
        let folder = Folder::new("print");
        let (one, two) = (folder.0.join("one"), folder.0.join("two"));
        let print = |first: &[u8], second: &[u8]| {
            fs::write(&one, first).unwrap();
            fs::write(&two, second).unwrap();
            fingerprint(&[one.clone(), two.clone()]).unwrap()
        };
        assert_eq!(print(b"ab", b"c"), print(b"ab", b"c"));
        assert_ne!(print(b"ab", b"c"), print(b"a", b"bc"));
        assert_ne!(print(b"ab", b"c"), print(b"ab", b"d"));
    }
}
