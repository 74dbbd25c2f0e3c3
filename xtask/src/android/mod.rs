//! The Android host, without Gradle: what Maven can't do for it.
//!
//! Maven fetches, compiles and tests; `libraries` lays AndroidX's archives
//! together before it, `resources` compiles and links what lies in `res`.
//! After it, `native` builds the core for phones, `dex` translates the
//! classes, `package` puts all of it into one signed file, and `readback`
//! asks the system's own tools what that file is. `archive` reads and writes
//! zips for all of them. Read `apk` first.

pub(crate) mod apk;
pub(crate) mod archive;
mod dex;
mod libraries;
mod native;
mod package;
mod readback;
mod resources;
mod room;

pub(crate) use room::linked;

use crate::{place::Places, stop::Stop};

/// Lays out what Maven compiles and tests the Android host against.
pub(crate) fn prepare(places: &Places) -> Result<(), Stop> {
    libraries::lay_out(places)?;
    resources::link(places)
}

/// `cargo xtask android`: the same for a person who runs Maven by hand.
pub(crate) fn run(places: &Places, words: &[String]) -> Result<(), Stop> {
    if !words.is_empty() {
        return Err(Stop::new("cargo xtask android"));
    }
    prepare(places)
}
