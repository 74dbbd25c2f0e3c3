//! The Java that Maven runs on, and the shell with it: the first that is new enough, of
//! `JAVA_HOME`, the path, and the folders where systems keep theirs. One of 11 that stands
//! on the path before one of 21 is passed over.

use std::{
    fs,
    path::{Path, PathBuf},
    process::{Command, Stdio},
};

/// The oldest Java that Compose runs on.
const OLDEST: u32 = 17;

/// Where it lies, if there is one.
pub(crate) fn home() -> Option<PathBuf> {
    first_new_enough(candidates())
}

fn first_new_enough(homes: Vec<PathBuf>) -> Option<PathBuf> {
    homes.into_iter().find(|home| version(home).is_some_and(|version| version >= OLDEST))
}

/// Its program.
pub(crate) fn program() -> PathBuf {
    beside("java")
}

/// Another program of the same kit.
pub(crate) fn beside(name: &str) -> PathBuf {
    home().map_or_else(|| name.into(), |home| home.join("bin").join(executable(name)))
}

/// Whether it can open a window: Debian parts that from the rest.
pub(crate) fn opens_windows(home: &Path) -> bool {
    !cfg!(target_os = "linux") || home.join("lib").join("libawt_xawt.so").is_file()
}

fn executable(name: &str) -> String {
    format!("{name}{}", std::env::consts::EXE_SUFFIX)
}

fn candidates() -> Vec<PathBuf> {
    let mut homes: Vec<PathBuf> = std::env::var_os("JAVA_HOME").map(PathBuf::from).into_iter().collect();
    let path = std::env::var_os("PATH").unwrap_or_default();
    homes.extend(std::env::split_paths(&path).filter_map(|folder| home_of(&folder.join(executable("java")))));
    for (folder, below) in KEPT_IN {
        let mut found: Vec<PathBuf> = fs::read_dir(folder)
            .into_iter()
            .flatten()
            .filter_map(|entry| Some(entry.ok()?.path().join(below)))
            .filter(|home| home.join("bin").join(executable("java")).is_file())
            .collect();
        found.sort();
        homes.extend(found);
    }
    homes
}

/// Folders where systems keep theirs, and where in one of them its home is.
const KEPT_IN: [(&str, &str); 5] = [
    ("/usr/lib/jvm", ""),
    ("/Library/Java/JavaVirtualMachines", "Contents/Home"),
    ("/opt/homebrew/opt", "libexec/openjdk.jdk/Contents/Home"),
    ("/usr/local/opt", "libexec/openjdk.jdk/Contents/Home"),
    ("C:\\Program Files\\Eclipse Adoptium", ""),
];

/// The home behind a program on the path, which is often a chain of links.
fn home_of(program: &Path) -> Option<PathBuf> {
    Some(fs::canonicalize(program).ok()?.parent()?.parent()?.to_path_buf())
}

fn version(home: &Path) -> Option<u32> {
    if let Ok(release) = fs::read_to_string(home.join("release")) {
        let line = release.lines().find(|line| line.starts_with("JAVA_VERSION="))?;
        return read_version(line);
    }
    let said = Command::new(home.join("bin").join(executable("java"))).arg("-version").stdin(Stdio::null()).output();
    read_version(&String::from_utf8_lossy(&said.ok()?.stderr))
}

/// The version in what Java says of itself: 17 in `"17.0.15"`, 8 in `"1.8.0_392"`.
fn read_version(said: &str) -> Option<u32> {
    let quoted = said.split('"').nth(1)?;
    let mut numbers = quoted.split(|c: char| !c.is_ascii_digit()).map(str::parse);
    match numbers.next()?.ok()? {
        1 => numbers.next()?.ok(),
        version => Some(version),
    }
}

#[cfg(test)]
mod tests {
    use super::{first_new_enough, read_version};

    #[test]
    fn one_that_is_too_old_is_passed_over_though_it_stands_first() {
        let folder = std::env::temp_dir().join(format!("drawwell-xtask-{}-java", std::process::id()));
        let home = |name: &str, release: &str| {
            let home = folder.join(name);
            std::fs::create_dir_all(&home).unwrap();
            std::fs::write(home.join("release"), release).unwrap();
            home
        };
        let old = home("eleven", "IMPLEMENTOR=\"x\"\nJAVA_VERSION=\"11.0.24\"\n");
        let new = home("twenty one", "JAVA_VERSION=\"21.0.4\"\n");
        let none = folder.join("none");
        assert_eq!(first_new_enough(vec![none.clone(), old.clone(), new.clone()]), Some(new));
        assert_eq!(first_new_enough(vec![none, old]), None);
        std::fs::remove_dir_all(folder).unwrap();
    }

    #[test]
    fn its_own_words_give_its_version() {
        assert_eq!(read_version("openjdk version \"17.0.15\" 2025-04-15\nOpenJDK Runtime"), Some(17));
        assert_eq!(read_version("openjdk version \"21\" 2023-09-19"), Some(21));
        assert_eq!(read_version("java version \"1.8.0_392\""), Some(8));
        assert_eq!(read_version("openjdk version \"25-ea\" 2025-09-16"), Some(25));
        assert_eq!(read_version("JAVA_VERSION=\"21.0.4\""), Some(21));
        assert_eq!(read_version("command not found"), None);
        assert_eq!(read_version("openjdk version \"x\""), None);
    }
}
