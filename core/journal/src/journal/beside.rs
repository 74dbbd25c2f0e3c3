//! Files beside a journal: its name with an ending.

use std::path::{Path, PathBuf};

/// A path with an ending added to its name.
pub(super) fn beside(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}
