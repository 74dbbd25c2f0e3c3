//! The Java that Maven runs on, and the shell with it: `JAVA_HOME` before the path.

use std::{
    path::{Path, PathBuf},
    process::{Command, Stdio},
};

pub(crate) fn program() -> PathBuf {
    beside("java")
}

/// Another program of the same kit.
pub(crate) fn beside(name: &str) -> PathBuf {
    match std::env::var_os("JAVA_HOME") {
        Some(home) => Path::new(&home).join("bin").join(name),
        None => name.into(),
    }
}

/// Its version, if there is one.
pub(crate) fn version() -> Option<u32> {
    let said = Command::new(program()).arg("-version").stdin(Stdio::null()).output().ok()?;
    read_version(&String::from_utf8_lossy(&said.stderr))
}

/// The version in what `java -version` says: 17 in `"17.0.15"`, 8 in `"1.8.0_392"`.
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
    use super::read_version;

    #[test]
    fn its_own_words_give_its_version() {
        assert_eq!(read_version("openjdk version \"17.0.15\" 2025-04-15\nOpenJDK Runtime"), Some(17));
        assert_eq!(read_version("openjdk version \"21\" 2023-09-19"), Some(21));
        assert_eq!(read_version("java version \"1.8.0_392\""), Some(8));
        assert_eq!(read_version("openjdk version \"25-ea\" 2025-09-16"), Some(25));
        assert_eq!(read_version("command not found"), None);
        assert_eq!(read_version("openjdk version \"x\""), None);
    }
}
