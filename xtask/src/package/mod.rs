//! `cargo xtask package`: what people install.
//!
//! In: the core in the release profile, the shell's jars, a Java runtime made for them. Out:
//! on Linux one tree, as a `.tar.gz` and as a `.deb`; elsewhere what jpackage makes of it. A
//! tree of files lies in `app-shell/desktop/package`. `core` builds the library so that two
//! builds of one commit are the same to the byte, `notices` writes licences and SBOM, `tree`
//! lays out, `deb` packs, `foreign` asks jpackage, `tried` installs it in a Debian root of its own.

mod core;
mod deb;
mod foreign;
mod notices;
mod tree;
pub(crate) mod tried;

use std::{fs, path::PathBuf};

use crate::{
    machine::{self, Tool},
    place::Places,
    shell,
    stop::Stop,
};

/// Which core goes in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Core {
    /// The release profile with link-time optimisation.
    Release,
    /// That of the tests, so that packing can be tried without another build.
    AsTested,
}

/// The version of everything here.
const VERSION: &str = env!("CARGO_PKG_VERSION");

/// Builds and packs.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    if !words.is_empty() {
        return Err(Stop::new("cargo xtask package"));
    }
    machine::need(places, &[Tool::Make, Tool::Notices, Tool::Bom])?;
    for made in make(places, Core::Release)? {
        println!("{}", made.display());
    }
    Ok(())
}

/// The files that came of it.
fn make(places: &Places, core: Core) -> Result<Vec<PathBuf>, Stop> {
    shell::build(places)?;
    let folder = places.packages();
    if folder.exists() {
        fs::remove_dir_all(&folder).map_err(|error| Stop::at(&folder, &error))?;
    }
    fs::create_dir_all(&folder).map_err(|error| Stop::at(&folder, &error))?;
    let library = match core {
        Core::Release => core::release(places)?,
        Core::AsTested => core::as_tested(places)?,
    };
    if !cfg!(target_os = "linux") {
        return foreign::make(places, &library);
    }
    let tree = tree::lay_out(places, &library)?;
    if core == Core::Release {
        notices::write(places, &tree.documents())?;
    }
    Ok(vec![tree.packed()?, deb::pack(places, &tree)?])
}
