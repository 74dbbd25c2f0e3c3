//! What the package is made of: licences with their texts, and an SBOM (CycloneDX) of each half.

use std::{fs, path::Path};

use crate::{
    maven,
    place::{Build, Places},
    process,
    stop::Stop,
    workspace,
};

pub(super) fn write(places: &Places, to: &Path) -> Result<(), Stop> {
    rust(places, to)?;
    java(places, to)
}

fn rust(places: &Places, to: &Path) -> Result<(), Stop> {
    let package = places.app_shell().join("desktop").join("package");
    let manifest = places.root().join("bindings").join("Cargo.toml");
    let mut about = process::cargo(places);
    about.args(["about", "generate", "--offline", "--fail", "--manifest-path"]).arg(&manifest);
    about.arg("--config").arg(package.join("about.toml")).arg("--output-file").arg(to.join("licences-rust.html"));
    process::run(about.arg(package.join("about.hbs")))?;
    let mut bom = process::cargo(places);
    bom.args(["cyclonedx", "--format", "json", "--spec-version", "1.5", "--override-filename", "sbom", "--quiet"]);
    process::run(bom.arg("--manifest-path").arg(&manifest))?;
    // It writes one beside every crate of the workspace.
    for folder in workspace::folders(places)? {
        let written = folder.join("sbom.json");
        if !written.is_file() {
            continue;
        }
        if Some(folder.as_path()) == manifest.parent() {
            let kept = to.join("sbom-core.cdx.json");
            fs::copy(&written, &kept).map_err(|error| Stop::at(&kept, &error))?;
        }
        fs::remove_file(&written).map_err(|error| Stop::at(&written, &error))?;
    }
    Ok(())
}

fn java(places: &Places, to: &Path) -> Result<(), Stop> {
    let mut ask = maven::command(places, Build::Debug)?;
    ask.args(["--quiet", "--projects", "desktop", "--also-make", "-Dmaven.test.skip=true", "package"]);
    ask.args([
        "org.codehaus.mojo:license-maven-plugin:2.7.0:add-third-party",
        "org.cyclonedx:cyclonedx-maven-plugin:2.9.1:makeBom",
        "-Dlicense.excludedScopes=test",
        "-Dlicense.excludedGroups=drawwell",
        "-Dcyclonedx.skipNotDeployed=false",
        "-DincludeTestScope=false",
        "-DoutputFormat=json",
        "-DoutputName=sbom",
    ]);
    process::run(&mut ask)?;
    let target = places.app_shell().join("desktop").join("target");
    for (from, name) in [
        (target.join("generated-sources").join("license").join("THIRD-PARTY.txt"), "licences-java.txt"),
        (target.join("sbom.json"), "sbom-shell.cdx.json"),
    ] {
        let kept = to.join(name);
        fs::copy(&from, &kept).map_err(|error| Stop::at(&from, &error))?;
    }
    Ok(())
}
