//! `cargo xtask apk`: the package for a phone, or one line on why there is none.

use std::path::PathBuf;

use super::{dex, native, package, readback, room};
use crate::{
    machine::{self, Tool},
    maven,
    place::{Build, Places},
    process,
    stop::Stop,
    surface,
};

/// Builds it whole. Where the core can't be built for a phone nothing is made:
/// a package without it would install and then not open.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    if !words.is_empty() {
        return Err(Stop::new("cargo xtask apk"));
    }
    machine::need(places, &[Tool::Make, Tool::Java, Tool::Maven, Tool::Resources, Tool::Alignment, Tool::Signature])?;
    if let Some(lacking) = native::lacking(places) {
        return Err(Stop::new(format!("no package is made: {lacking}")));
    }
    build_host(places)?;
    let libraries = native::build(places)?;
    let made = room::packages(places).join("drawwell.apk");
    package::make(places, &dex::translate(places)?, &libraries, &made)?;
    readback::check(&made, true)?;
    println!("{}", made.display());
    Ok(())
}

/// What can be tried without an NDK: a package that lacks the core and all
/// other native libraries, and says so in its name. It is read back, and never
/// meant for a phone. The host's classes are those that Maven left.
pub(crate) fn without_core(places: &Places) -> Result<(), Stop> {
    let made: PathBuf = room::packages(places).join("without-native-libraries.apk");
    package::make(places, &dex::translate(places)?, &[], &made)?;
    readback::check(&made, false)?;
    println!("a package without native libraries, good for reading back alone: {}", made.display());
    Ok(())
}

fn build_host(places: &Places) -> Result<(), Stop> {
    process::run(process::cargo(places).args(["build", "-p", "drawwell-bindings", "-p", "drawwell-generator"]))?;
    surface::kotlin(places, Build::Debug)?;
    super::prepare(places)?;
    let mut maven = maven::command(places, Build::Debug)?;
    process::run(maven.args(["--quiet", "--projects", "android", "--also-make", "package", "-Dmaven.test.skip=true"]))
}
