//! Where the files lie that tests read.

use std::path::{Path, PathBuf};

/// A file of `demo-data`.
pub fn demo_data(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..").join("demo-data").join(name)
}
