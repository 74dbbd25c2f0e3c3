//! What must be on the machine, and one line for each that is not.

use std::process::{Command, Stdio};

use crate::{java, maven, place::Places, process, python, stop::Stop};

/// Something that people install.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Tool {
    Formatter,
    Linter,
    Deny,
    Python,
    Node,
    Poppler,
    Java,
    Maven,
    Resources,
    Alignment,
    Signature,
}

/// The oldest Java that Compose runs on.
const JAVA: u32 = 17;

impl Tool {
    /// The line for a machine that lacks it.
    pub(crate) fn missing(self) -> String {
        match self {
            Self::Formatter => "rustfmt is missing: rustup component add rustfmt".into(),
            Self::Linter => "clippy is missing: rustup component add clippy".into(),
            Self::Deny => "cargo-deny is missing: cargo install cargo-deny --locked".into(),
            Self::Python => "Python 3 with venv is missing: install python3 and python3-venv".into(),
            Self::Node => "Node.js with npm is missing: install nodejs and npm".into(),
            Self::Poppler => "poppler is missing: install poppler-utils".into(),
            Self::Java => {
                format!("Java {JAVA} is missing: install a JDK, {JAVA} or newer, and put it on the path")
            }
            Self::Maven => "Maven is missing: install maven, 3.8 or newer, and put mvn on the path".into(),
            Self::Resources => "aapt2 is missing: install Android's build tools, or Debian's aapt".into(),
            Self::Alignment => "zipalign is missing: install Android's build tools, or Debian's zipalign".into(),
            Self::Signature => "apksigner is missing: install Android's build tools, or Debian's apksigner".into(),
        }
    }

    fn is_there(self, places: &Places) -> bool {
        match self {
            Self::Formatter => answers(process::cargo(places).args(["fmt", "--version"])),
            Self::Linter => answers(process::cargo(places).args(["clippy", "--version"])),
            Self::Deny => answers(process::cargo(places).args(["deny", "--version"])),
            Self::Python => answers(Command::new(python::SYSTEM).args(["-c", "import venv, ensurepip"])),
            Self::Node => answers(Command::new("npm").arg("--version")),
            Self::Poppler => answers(Command::new("pdftotext").arg("-v")),
            Self::Java => java::version().is_some_and(|version| version >= JAVA),
            Self::Maven => maven::program(&places.app_shell()).is_some(),
            Self::Resources => answers(Command::new("aapt2").arg("version")),
            // Asked for nothing it answers that this is wrong, which is an answer.
            Self::Alignment => Command::new("zipalign").stdout(Stdio::null()).stderr(Stdio::null()).status().is_ok(),
            Self::Signature => answers(Command::new("apksigner").arg("--version")),
        }
    }
}

/// Stops with a line for each tool that is missing.
pub(crate) fn need(places: &Places, tools: &[Tool]) -> Result<(), Stop> {
    let missing: Vec<String> = tools.iter().filter(|tool| !tool.is_there(places)).map(|tool| tool.missing()).collect();
    if missing.is_empty() {
        Ok(())
    } else {
        Err(Stop::new(missing.join("\n")))
    }
}

/// Whether a command can be run at all and likes being asked.
pub(crate) fn answers(command: &mut Command) -> bool {
    command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null()).status().is_ok_and(|it| it.success())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_missing_tool_is_one_line_that_says_what_to_install() {
        for tool in [
            Tool::Formatter,
            Tool::Linter,
            Tool::Deny,
            Tool::Python,
            Tool::Node,
            Tool::Poppler,
            Tool::Java,
            Tool::Maven,
            Tool::Resources,
            Tool::Alignment,
            Tool::Signature,
        ] {
            let line = tool.missing();
            assert_eq!(line.lines().count(), 1, "{line}");
            assert!(line.contains(" is missing: "), "{line}");
            assert!(line.contains("install") || line.contains("add"), "{line}");
        }
    }

    #[test]
    fn a_program_that_is_not_there_does_not_answer() {
        assert!(!answers(&mut Command::new("drawwell-no-such-program")));
    }
}
