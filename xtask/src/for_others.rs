//! Files for other programs, judged by those programs' own libraries.

use std::{fs, path::PathBuf};

use crate::{
    maven,
    place::{Build, Places},
    process,
    stop::Stop,
};

/// Every unit we write, by the UCUM library of the National Library of Medicine.
pub(crate) fn units(places: &Places) -> Result<(), Stop> {
    let folder = places.tests_with("ucum");
    let written = write(places)?;
    let mut install = process::command(places, if cfg!(windows) { "npm.cmd" } else { "npm" });
    install.args(["ci", "--silent", "--no-audit", "--no-fund", "--ignore-scripts", "--prefix"]);
    process::run(install.arg(&folder))?;
    let mut check = process::command(places, "node");
    process::run(check.arg(folder.join("check.mjs")).arg(written.join("units.json")))
}

/// Health records by HL7's validator, as HAPI carries it.
pub(crate) fn health_records(places: &Places) -> Result<(), Stop> {
    let written = write(places)?.join("health-record");
    let mut validate = maven::alone(places, &places.tests_with("fhir"))?;
    validate.arg(format!("-Ddrawwell.bundles={}", written.display()));
    process::run(validate.arg("test"))
}

/// Writes them anew, so that none is left of an older program.
pub(crate) fn write(places: &Places) -> Result<PathBuf, Stop> {
    let folder = places.for_others();
    if folder.exists() {
        fs::remove_dir_all(&folder).map_err(|error| Stop::new(format!("{}: {error}", folder.display())))?;
    }
    process::run(process::command(places, places.program(Build::Debug, "files-for-others")).arg(&folder))?;
    Ok(folder)
}
