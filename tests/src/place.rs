//! Where the files lie that tests read.

use std::path::{Path, PathBuf};

/// A file of `demo-data`.
pub fn demo_data(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..").join("demo-data").join(name)
}

/// Every sentence that a person reads, all rooms one after the other.
pub fn sentences() -> String {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/locales/en");
    let read = |entry: std::io::Result<std::fs::DirEntry>| std::fs::read_to_string(entry?.path());
    let rooms: std::io::Result<Vec<String>> = std::fs::read_dir(folder).and_then(|all| all.map(read).collect());
    rooms.unwrap_or_default().join("\n")
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
