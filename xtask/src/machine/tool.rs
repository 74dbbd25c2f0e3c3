//! What may be asked for, and whether it is there.

use std::process::{Command, Stdio};

use super::manager::on_path;
use crate::{java, maven, place::Places, process, python};

/// Something that people install: its name here, and what a person calls it.
macro_rules! tools {
    ($($tool:ident $called:literal),* $(,)?) => {
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
        pub(crate) enum Tool { $($tool),* }

        impl Tool {
            /// All of them.
            #[cfg(test)]
            pub(super) const ALL: &'static [Self] = &[$(Self::$tool),*];

            /// What a person calls it.
            pub(super) fn called(self) -> &'static str {
                match self { $(Self::$tool => $called),* }
            }
        }
    };
}

tools! {
    Formatter "rustfmt",
    Linter "clippy",
    Deny "cargo-deny",
    Notices "cargo-about",
    Bom "cargo-cyclonedx",
    Make "make and Perl, which OpenSSL is built with",
    Python "Python 3 with venv",
    Node "Node.js with npm",
    Poppler "poppler (pdftotext, pdftoppm)",
    Java "a JDK, 17 or newer",
    Window "a JDK that opens windows, 17 or newer",
    Maven "Maven, 3.8 or newer",
    Drawing "the libraries that draw (GL, fontconfig, freetype, X11)",
    Fonts "fontconfig with a font",
    Age "age",
    Minisign "minisign",
    Codes "zbarimg",
    Resources "aapt2, of Android's build tools",
    Alignment "zipalign, of Android's build tools",
    Signature "apksigner, of Android's build tools",
    Bootstrap "mmdebstrap",
}

impl Tool {
    pub(super) fn is_there(self, places: &Places) -> bool {
        match self {
            Self::Formatter => answers(process::cargo(places).args(["fmt", "--version"])),
            Self::Linter => answers(process::cargo(places).args(["clippy", "--version"])),
            Self::Deny => answers(process::cargo(places).args(["deny", "--version"])),
            Self::Notices => answers(process::cargo(places).args(["about", "--version"])),
            Self::Bom => answers(process::cargo(places).args(["cyclonedx", "--version"])),
            Self::Make => {
                // OpenSSL's own set-up asks for modules that a bare Perl has not.
                let perl =
                    answers(Command::new("perl").args(["-MIPC::Cmd", "-MFindBin", "-MFile::Compare", "-e", "1"]));
                perl && (cfg!(windows) || answers(Command::new("make").arg("--version")))
            }
            Self::Python => answers(Command::new(python::SYSTEM).args(["-c", "import venv, ensurepip"])),
            Self::Node => answers(Command::new("npm").arg("--version")),
            Self::Poppler => answers(Command::new("pdftotext").arg("-v")),
            Self::Java => java::home().is_some(),
            Self::Window => java::home().is_some_and(|home| java::opens_windows(&home)),
            Self::Maven => maven::program(&places.app_shell()).is_some(),
            Self::Drawing => !cfg!(target_os = "linux") || DRAWN_WITH.iter().all(|name| library_is_there(name)),
            Self::Fonts => {
                !cfg!(target_os = "linux")
                    || process::output(Command::new("fc-list").arg(":")).is_ok_and(|it| !it.is_empty())
            }
            Self::Age => answers(Command::new("age").arg("--version")),
            Self::Minisign => answers(Command::new("minisign").arg("-v")),
            Self::Codes => answers(Command::new("zbarimg").arg("--version")),
            Self::Resources => answers(Command::new("aapt2").arg("version")),
            // Asked for nothing it answers that this is wrong.
            Self::Alignment => on_path("zipalign").is_some(),
            Self::Signature => answers(Command::new("apksigner").arg("--version")),
            Self::Bootstrap => answers(Command::new("mmdebstrap").arg("--version")),
        }
    }
}

/// What Compose draws with, also where nothing is on a screen.
const DRAWN_WITH: [&str; 4] = ["libGL.so.1", "libfontconfig.so.1", "libfreetype.so.6", "libX11.so.6"];

fn library_is_there(name: &str) -> bool {
    let known = Command::new("/sbin/ldconfig").arg("-p").stdin(Stdio::null()).stderr(Stdio::null()).output();
    match known {
        Ok(known) => String::from_utf8_lossy(&known.stdout).contains(name),
        // A system with no list of its libraries has its own way of finding them.
        Err(_) => true,
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
    fn a_program_that_is_not_there_does_not_answer() {
        assert!(!answers(&mut Command::new("drawwell-no-such-program")));
    }
}
