//! Resources: compiled one folder at a time, then linked with the manifest
//! into a package without code, and into names for Java.

use std::{fs, path::Path, process::Command};

use super::room;
use crate::{keep, place::Places, process, stop::Stop};

pub(crate) const PROGRAM: &str = "aapt2";

/// What goes into the package as it is: where it lies, and where it goes.
const ASSETS: [(&str, &str, &[&str]); 2] = [
    ("app-shell/ui/src/main/resources/drawwell/typefaces", "drawwell/typefaces", &["ttf", "txt"]),
    ("demo-data", "drawwell/demo", &["jsonl", "clock"]),
];

/// Compiles a folder of resources; an archive that has none is passed over.
pub(crate) fn compile(folder: &Path, to: &Path) -> Result<(), Stop> {
    if !folder.is_dir() {
        return Ok(());
    }
    let above = to.parent().unwrap_or(to);
    fs::create_dir_all(above).map_err(|error| Stop::at(above, &error))?;
    process::run(Command::new(PROGRAM).arg("compile").arg("--dir").arg(folder).arg("-o").arg(to))
}

/// Links the host's resources with those of AndroidX.
pub(crate) fn link(places: &Places) -> Result<(), Stop> {
    let (linked, libraries) = (room::linked(places), room::target(places, room::LIBRARIES));
    room::fresh(&linked)?;
    let own = linked.join("own.flata");
    compile(&room::sources(places).join("res"), &own)?;
    gather_assets(places, &linked.join("assets"))?;

    let packages = libraries.join("packages.txt");
    let packages = fs::read_to_string(&packages).map_err(|error| Stop::at(&packages, &error))?;
    let mut link = process::command(places, PROGRAM);
    link.args(["link", "--auto-add-overlay", "--no-version-vectors", "--version-name", env!("CARGO_PKG_VERSION")]);
    link.arg("--version-code").arg(version_code(env!("CARGO_PKG_VERSION")).to_string());
    link.arg("-I").arg(room::tool(places, "framework.jar"));
    link.arg("--manifest").arg(room::sources(places).join("AndroidManifest.xml"));
    link.arg("--java").arg(linked.join("java")).arg("--extra-packages").arg(packages);
    link.arg("-A").arg(linked.join("assets")).arg("-o").arg(linked.join("resources.apk"));
    for compiled in room::within(&libraries.join("compiled"))? {
        link.arg("-R").arg(compiled);
    }
    process::run(link.arg("-R").arg(own))
}

fn gather_assets(places: &Places, to: &Path) -> Result<(), Stop> {
    for (from, folder, endings) in ASSETS {
        let from = places.root().join(from);
        for ending in endings {
            keep::mirror(&from, &to.join(folder), ending)?;
        }
    }
    Ok(())
}

/// A number that grows with the version: 1.2.3 is 10203.
fn version_code(version: &str) -> u32 {
    version.split('.').map(|part| part.parse().unwrap_or(0)).fold(0, |code, part: u32| code * 100 + part)
}

#[cfg(test)]
mod tests {
    use super::version_code;

    #[test]
    fn a_later_version_has_a_greater_number() {
        assert_eq!(version_code("1.2.3"), 10203);
        assert!(version_code("0.10.0") > version_code("0.9.9"));
    }
}
