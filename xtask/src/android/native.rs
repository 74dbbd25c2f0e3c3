//! The core for phones, by `cargo ndk`.

use std::{fs, path::Path};

use super::{archive::Entry, room};
use crate::{machine, place::Places, process, stop::Stop};

/// What a phone calls its kind, and what Rust does.
const KINDS: [(&str, &str); 2] = [("arm64-v8a", "aarch64-linux-android"), ("x86_64", "x86_64-linux-android")];

/// The oldest system that the package runs on, as its manifest says.
const OLDEST: &str = "26";

/// What is not on this machine of what the core for phones is built with.
pub(crate) fn lacking(places: &Places) -> Option<String> {
    let kit = std::env::var_os("ANDROID_NDK_HOME").filter(|home| Path::new(home).is_dir());
    if kit.is_none() {
        return Some("ANDROID_NDK_HOME names no folder".into());
    }
    if !machine::answers(process::cargo(places).args(["ndk", "--version"])) {
        return Some("cargo-ndk is missing: cargo install cargo-ndk --locked".into());
    }
    let missing = KINDS.iter().map(|(_, target)| *target).find(|target| !has_target(places, target));
    missing.map(|target| format!("Rust for phones is missing: rustup target add {target}"))
}

fn has_target(places: &Places, target: &str) -> bool {
    let said = process::command(places, "rustc").args(["--print", "target-libdir", "--target", target]).output();
    said.is_ok_and(|it| it.status.success() && Path::new(String::from_utf8_lossy(&it.stdout).trim()).is_dir())
}

/// Builds it for each kind of phone: each library with its place in the package.
pub(crate) fn build(places: &Places) -> Result<Vec<Entry>, Stop> {
    let folder = room::packages(places).join("native");
    room::fresh(&folder)?;
    let mut build = process::cargo(places);
    build.args(["ndk", "--platform", OLDEST]);
    for (kind, _) in KINDS {
        build.args(["--target", kind]);
    }
    process::run(build.arg("--output-dir").arg(&folder).args(["build", "--release", "-p", "drawwell-bindings"]))?;
    libraries_of(&folder)
}

/// What else is native: JNA's own library, and AndroidX's.
pub(crate) fn of_others(places: &Places) -> Result<Vec<Entry>, Stop> {
    let mut found = libraries_of(&room::target(places, room::LIBRARIES).join("jni"))?;
    let jna = super::archive::entries(&room::tool(places, "jna.aar"))?;
    found.extend(jna.into_iter().filter_map(|(name, bytes)| {
        let (kind, file) = name.strip_prefix("jni/")?.split_once('/')?;
        is_ours(kind).then(|| (format!("lib/{kind}/{file}"), bytes))
    }));
    Ok(found)
}

fn libraries_of(folder: &Path) -> Result<Vec<Entry>, Stop> {
    let mut found = Vec::new();
    for kind in room::within(folder)? {
        let name = kind.file_name().unwrap_or_default().to_string_lossy().into_owned();
        if !is_ours(&name) {
            continue;
        }
        for file in room::within(&kind)? {
            let bytes = fs::read(&file).map_err(|error| Stop::at(&file, &error))?;
            let file = file.file_name().unwrap_or_default().to_string_lossy().into_owned();
            found.push((format!("lib/{name}/{file}"), bytes));
        }
    }
    Ok(found)
}

fn is_ours(kind: &str) -> bool {
    KINDS.iter().any(|(ours, _)| *ours == kind)
}
