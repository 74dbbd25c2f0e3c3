//! Where the files lie that tests read.

use std::path::{Path, PathBuf};

/// A file of `demo-data`.
pub fn demo_data(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..").join("demo-data").join(name)
}

/// Inputs of a reader that the fuzzer kept.
pub fn corpus(name: &str) -> PathBuf {
    fuzz().join("corpus").join(name)
}

/// The fuzzer's targets.
pub fn fuzz_targets() -> PathBuf {
    fuzz().join("fuzz_targets")
}

fn fuzz() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..").join("fuzz")
}
