//! Where things lie in the work tree and in the target folder.

use std::path::{Path, PathBuf};

use crate::{library, machine::Consent, stop::Stop};

/// Which of Cargo's two builds is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Build {
    /// Quick to make, for checks.
    Debug,
    /// Quick to run, for a person.
    Release,
}

impl Build {
    fn folder(self) -> &'static str {
        match self {
            Self::Debug => "debug",
            Self::Release => "release",
        }
    }
}

/// The two roots everything else is named from, and what may be done to the machine around them.
#[derive(Debug)]
pub(crate) struct Places {
    root: PathBuf,
    target: PathBuf,
    consent: Consent,
}

impl Places {
    /// Asks Cargo, which started this program.
    pub(crate) fn find(consent: Consent) -> Result<Self, Stop> {
        let unknown = || Stop::new("start this as `cargo xtask`, anywhere in the work tree");
        let manifest = std::env::var_os("CARGO_MANIFEST_DIR").map(PathBuf::from).ok_or_else(unknown)?;
        let program = std::env::current_exe().map_err(|_| unknown())?;
        let root = manifest.parent().ok_or_else(unknown)?;
        let target = program.parent().and_then(Path::parent).ok_or_else(unknown)?;
        Ok(Self { root: root.to_path_buf(), target: target.to_path_buf(), consent })
    }

    /// Whether what is missing may be installed.
    pub(crate) fn consent(&self) -> Consent {
        self.consent
    }

    pub(crate) fn root(&self) -> &Path {
        &self.root
    }

    pub(crate) fn app_shell(&self) -> PathBuf {
        self.root.join("app-shell")
    }

    pub(crate) fn surface_config(&self) -> PathBuf {
        self.root.join("bindings").join("uniffi.toml")
    }

    pub(crate) fn python_tests(&self) -> PathBuf {
        self.root.join("tests").join("python")
    }

    /// Tests that another program's library makes, by its name.
    pub(crate) fn tests_with(&self, name: &str) -> PathBuf {
        self.root.join("tests").join(name)
    }

    /// What the program writes for other programs to judge.
    pub(crate) fn for_others(&self) -> PathBuf {
        self.target.join("for-others")
    }

    /// Visit sheets that the program set, for other programs to judge.
    pub(crate) fn sheets(&self) -> PathBuf {
        self.target.join("sheets")
    }

    /// What Maven compiles besides the sources; it goes with Maven's own `clean`.
    pub(crate) fn kotlin_surface(&self) -> PathBuf {
        self.app_shell().join("surface").join("target").join("generated-sources")
    }

    /// The Python module, with the library it loads beside it.
    pub(crate) fn python_surface(&self) -> PathBuf {
        self.target.join("python").join("surface")
    }

    pub(crate) fn python_home(&self) -> PathBuf {
        self.target.join("python").join("venv")
    }

    /// The invented network, and what is made of it.
    pub(crate) fn network(&self) -> PathBuf {
        self.target.join("network")
    }

    /// What a tour draws.
    pub(crate) fn tour(&self) -> PathBuf {
        self.target.join("tour")
    }

    /// What people install.
    pub(crate) fn packages(&self) -> PathBuf {
        self.target.join("packages")
    }

    /// The pictures that the pages show.
    pub(crate) fn shown(&self) -> PathBuf {
        self.root.join("docs").join("pictures")
    }

    pub(crate) fn scratch(&self) -> PathBuf {
        self.target.join("xtask")
    }

    pub(crate) fn library_folder(&self, build: Build) -> PathBuf {
        self.target.join(build.folder())
    }

    pub(crate) fn library(&self, build: Build) -> PathBuf {
        self.library_folder(build).join(library::file_name(std::env::consts::OS))
    }

    /// A program of this workspace.
    pub(crate) fn program(&self, build: Build, name: &str) -> PathBuf {
        self.library_folder(build).join(format!("{name}{}", std::env::consts::EXE_SUFFIX))
    }
}
