//! Held to programs of others that are installed here: `age`, `minisign`. `.ci/run` brings
//! them; on Debian, `apt-get install age minisign`.

#![allow(
    clippy::expect_used,
    clippy::indexing_slicing,
    clippy::panic,
    clippy::unwrap_used,
    reason = "a test that meets what it did not expect stops there"
)]

mod age_tool;
mod minisign_tool;
mod plan_file;

use std::process::{Command, Output};

/// Runs another program; one that is not installed is said.
fn run(program: &str, arguments: &[&str]) -> Output {
    Command::new(program)
        .args(arguments)
        .output()
        .unwrap_or_else(|_| panic!("{program} is not installed: `.ci/run` brings it"))
}
