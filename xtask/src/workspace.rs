//! The crates of the workspace, as Cargo tells them: nobody keeps a second list.

use std::path::{Path, PathBuf};

use serde_json::Value;

use crate::{place::Places, process, stop::Stop};

/// The folder of every crate of the workspace.
pub(crate) fn folders(places: &Places) -> Result<Vec<PathBuf>, Stop> {
    let told = process::output(process::cargo(places).args(["metadata", "--format-version", "1", "--no-deps"]))?;
    read(&told)
}

fn read(told: &str) -> Result<Vec<PathBuf>, Stop> {
    let told: Value = serde_json::from_str(told).map_err(|error| Stop::new(format!("cargo metadata: {error}")))?;
    let packages = told.get("packages").and_then(Value::as_array).into_iter().flatten();
    let manifests = packages.filter_map(|package| package.get("manifest_path").and_then(Value::as_str));
    let folders: Vec<PathBuf> =
        manifests.filter_map(|manifest| Some(Path::new(manifest).parent()?.to_owned())).collect();
    match folders.is_empty() {
        true => Err(Stop::new("cargo metadata names no crate")),
        false => Ok(folders),
    }
}

/// What a crate is built of, by name: itself and everything below it, what its tests need apart.
pub(crate) fn built_of(places: &Places, package: &str) -> Result<Vec<String>, Stop> {
    let told = process::output(process::cargo(places).args([
        "tree",
        "--package",
        package,
        "--edges",
        "normal,build",
        "--prefix",
        "none",
        "--format",
        "{p}",
    ]))?;
    Ok(told.lines().filter_map(|line| line.split_whitespace().next()).map(str::to_owned).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_folder_a_crate_and_nothing_told_is_an_error() {
        let told = r#"{ "packages": [{ "manifest_path": "/w/core/Cargo.toml" }, { "manifest_path": "/w/core/base/Cargo.toml" }] }"#;
        assert_eq!(read(told).unwrap(), [Path::new("/w/core"), Path::new("/w/core/base")]);
        assert!(read(r#"{ "packages": [] }"#).is_err() && read("no").is_err());
    }
}
