//! Where the files lie that tests read.

use std::path::{Path, PathBuf};

/// A file of `demo-data`.
pub fn demo_data(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..").join("demo-data").join(name)
}

/// Every sentence that a person reads, all rooms one after the other.
pub fn sentences() -> String {
    rooms_of_sentences().into_iter().map(|(_, said)| said).collect::<Vec<_>>().join("\n")
}

/// The files of sentences: the name of each, and what it holds.
pub fn rooms_of_sentences() -> Vec<(String, String)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/locales/en");
    let read = |entry: std::io::Result<std::fs::DirEntry>| {
        let path = entry?.path();
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        Ok((name, std::fs::read_to_string(path)?))
    };
    let rooms: std::io::Result<Vec<_>> = std::fs::read_dir(folder).and_then(|all| all.map(read).collect());
    rooms.unwrap_or_default()
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
