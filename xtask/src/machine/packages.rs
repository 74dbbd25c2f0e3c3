//! How each tool comes onto a machine: the only place that knows packages.
//!
//! Debian's names were tried; those of the other managers are from their public package
//! lists and from memory.

use super::{manager::Manager, tool::Tool};

/// How a tool is brought.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum From {
    /// By the machine's package manager, under the names it has for it.
    Packages(Names),
    /// By rustup.
    Component(&'static str),
    /// Built by Cargo from its registry.
    Crate { name: &'static str, version: &'static str, features: &'static str },
}

/// What each manager calls it; nothing where it has none.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) struct Names {
    apt: &'static [&'static str],
    dnf: &'static [&'static str],
    pacman: &'static [&'static str],
    brew: &'static [&'static str],
    winget: &'static [&'static str],
}

impl Names {
    pub(super) fn by(self, manager: Manager) -> &'static [&'static str] {
        match manager {
            Manager::Apt => self.apt,
            Manager::Dnf => self.dnf,
            Manager::Pacman => self.pacman,
            Manager::Brew => self.brew,
            Manager::Winget => self.winget,
        }
    }
}

/// Where a tool comes from.
pub(super) fn of(tool: Tool) -> From {
    From::Packages(match tool {
        Tool::Formatter => return From::Component("rustfmt"),
        Tool::Linter => return From::Component("clippy"),
        Tool::Deny => return From::Crate { name: "cargo-deny", version: "0.20.2", features: "default" },
        Tool::Notices => return From::Crate { name: "cargo-about", version: "0.9.3", features: "cli" },
        Tool::Bom => return From::Crate { name: "cargo-cyclonedx", version: "0.5.9", features: "default" },
        Tool::Make => Names {
            apt: &["make", "perl"],
            dnf: &["make", "perl-core"],
            pacman: &["make", "perl"],
            brew: &["make", "perl"],
            winget: &["StrawberryPerl.StrawberryPerl"],
        },
        Tool::Python => Names {
            apt: &["python3", "python3-venv"],
            dnf: &["python3"],
            pacman: &["python"],
            brew: &["python"],
            winget: &["Python.Python.3.12"],
        },
        Tool::Node => Names {
            apt: &["nodejs", "npm"],
            dnf: &["nodejs", "nodejs-npm"],
            pacman: &["nodejs", "npm"],
            brew: &["node"],
            winget: &["OpenJS.NodeJS.LTS"],
        },
        Tool::Poppler => {
            let name = &["poppler-utils"];
            Names { apt: name, dnf: name, pacman: &["poppler"], brew: &["poppler"], winget: &[] }
        }
        Tool::Java | Tool::Window => Names {
            apt: &["default-jdk"],
            dnf: &["java-21-openjdk-devel"],
            pacman: &["jdk21-openjdk"],
            brew: &["openjdk@21"],
            winget: &["EclipseAdoptium.Temurin.21.JDK"],
        },
        Tool::Maven => {
            let name = &["maven"];
            Names { apt: name, dnf: name, pacman: name, brew: name, winget: &[] }
        }
        Tool::Drawing => Names {
            apt: &["libgl1", "libfontconfig1", "libfreetype6", "libx11-6"],
            dnf: &["libglvnd-glx", "fontconfig", "freetype", "libX11"],
            pacman: &["libglvnd", "fontconfig", "freetype2", "libx11"],
            ..Names::default()
        },
        Tool::Fonts => Names {
            apt: &["fontconfig", "fonts-dejavu-core"],
            dnf: &["fontconfig", "dejavu-sans-fonts"],
            pacman: &["fontconfig", "ttf-dejavu"],
            ..Names::default()
        },
        Tool::Age => {
            let name = &["age"];
            Names { apt: name, dnf: name, pacman: name, brew: name, winget: &["FiloSottile.age"] }
        }
        Tool::Minisign => {
            let name = &["minisign"];
            Names { apt: name, dnf: name, pacman: name, brew: name, winget: &["jedisct1.minisign"] }
        }
        Tool::Codes => {
            let name = &["zbar"];
            Names { apt: &["zbar-tools"], dnf: name, pacman: name, brew: name, winget: &[] }
        }
        Tool::Resources => Names { apt: &["aapt"], ..Names::default() },
        Tool::Alignment => Names { apt: &["zipalign"], ..Names::default() },
        Tool::Signature => Names { apt: &["apksigner"], ..Names::default() },
        Tool::Bootstrap => Names { apt: &["mmdebstrap"], ..Names::default() },
    })
}
